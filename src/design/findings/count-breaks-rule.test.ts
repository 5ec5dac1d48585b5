import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { countBreaksRule } from "./count-breaks-rule.ts";

it("says what, why and what to do", () =>
  expect(
    said(countBreaksRule, {
      count: "body sts",
      rule: "a multiple of 2 plus 1",
      cases: [{ size: "M", written: 76, off: null }],
    }),
  ).toEqual([
    '"body sts" breaks its rule in size M: a multiple of 2 plus 1.',
    "M: 76 is written.",
    "Choose all counts anew: loopwright grade.",
    "Or change the rule.",
  ]));
