import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { readingChosen } from "./reading-chosen.ts";

it("says both readings", () =>
  expect(
    said(readingChosen, {
      row: "Row 3",
      words: "rep from * to * 3 times",
      taken: "3 times in all",
      other: "3 times after the first",
    }),
  ).toEqual([
    '"rep from * to * 3 times" in Row 3 is read as 3 times in all.',
    "It can also be read as 3 times after the first, and then the counts come out otherwise.",
    "Write it so that it can be read one way only.",
  ]));
