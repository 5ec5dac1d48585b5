import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { stitchesLeftOver } from "./stitches-left-over.ts";

it("counts what is worked and what stays", () =>
  expect(
    said(stitchesLeftOver, {
      row: "Row 6",
      before: "Row 5",
      cases: [{ size: "one size", left: 1, have: 24 }],
    }),
  ).toEqual([
    "Row 6 ends before Row 5 does.",
    "Row 5 has 24 sts: Row 6 takes 23 and 1 stays unworked.",
    "Work the last st of Row 5 too.",
    'Write "leave last st unworked" where that is meant.',
  ]));

it("says several sizes in lists", () =>
  expect(
    said(stitchesLeftOver, {
      row: "Row 6",
      before: "Row 5",
      cases: [
        { size: "2X", left: 2, have: 110 },
        { size: "3X", left: 4, have: 120 },
      ],
    }),
  ).toEqual([
    "Row 6 ends before Row 5 does in sizes 2X and 3X.",
    "Row 5 has 110 and 120 sts: Row 6 takes 108 and 116 and 2 and 4 stay unworked.",
    "Work the last 2 and 4 sts of Row 5 too in sizes 2X and 3X.",
    'Write "leave last 2 and 4 sts unworked" where that is meant in sizes 2X and 3X.',
  ]));
