import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { repeatedRowDoesNotFit } from "./repeated-row-does-not-fit.ts";

it("says which time and why", () =>
  expect(
    said(repeatedRowDoesNotFit, {
      row: "Rows 5-12",
      repeated: "Rows 3 and 4",
      inner: "Row 8 ends with 62 sts and the repeat takes 4.",
      at: "the 3rd time, Row 9",
    }),
  ).toEqual([
    "Rows 5-12 cannot repeat Rows 3 and 4 all the way.",
    "The 3rd time, Row 9: Row 8 ends with 62 sts and the repeat takes 4.",
    "Change Rows 3 and 4 so that the end fits the beginning again.",
    "Write out the rows that cannot be repeats.",
  ]));
