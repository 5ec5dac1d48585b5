import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { rulesCannotHold } from "./rules-cannot-hold.ts";

it("says what, why and what to do", () =>
  expect(
    said(rulesCannotHold, {
      rules: [
        { words: "body sts is a multiple of 4 plus 1", line: 12 },
        { words: "body sts is even", line: 13 },
      ],
      tight: true,
    }),
  ).toEqual([
    "2 rules cannot hold, whatever the counts.",
    "They are: body sts is a multiple of 4 plus 1 (line 12) and body sts is even (line 13).",
    "Change or take out any one of them; the others then hold together.",
  ]));
