import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { notEnoughStitches } from "./not-enough-stitches.ts";

it("sets what is there against what is taken", () =>
  expect(
    said(notEnoughStitches, {
      row: "Row 4",
      before: "Row 3",
      cases: [{ size: "one size", have: 30, need: 31 }],
      words: "sc in next 6 sts",
    }),
  ).toEqual([
    'Row 4 runs out of stitches at "sc in next 6 sts".',
    "Row 3 has 30 sts; by the end of these words the row takes 31.",
    "Take 1 st fewer of Row 3.",
    "End Row 3 with at least 31 sts.",
  ]));

it("says several sizes in lists", () =>
  expect(
    said(notEnoughStitches, {
      row: "Row 4",
      before: "the foundation",
      cases: [
        { size: "M", have: 40, need: 42 },
        { size: "L", have: 44, need: 48 },
      ],
      words: "dc in last 2 sts",
    }),
  ).toEqual([
    'Row 4 runs out of stitches at "dc in last 2 sts" in sizes M and L.',
    "The foundation has 40 and 44 sts; by the end of these words the row takes 42 and 48.",
    "Take 2 and 4 sts fewer of the foundation in sizes M and L.",
    "End the foundation with at least 42 and 48 sts in sizes M and L.",
  ]));
