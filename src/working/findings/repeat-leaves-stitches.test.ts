import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { repeatLeavesStitches } from "./repeat-leaves-stitches.ts";

it("counts the repeats, what they use and what they leave", () =>
  expect(
    said(repeatLeavesStitches, {
      row: "Row 12",
      before: "Row 11",
      cases: [{ size: "M", have: 66, takes: 8, fixed: 0 }],
    }),
  ).toEqual([
    "Row 12 does not come out even in size M.",
    "Row 11 ends with 66 sts. The repeat takes 8: 8 repeats use 64 and leave 2 unworked.",
    "Work the last 2 sts outside the repeat in size M.",
    "End Row 11 on a multiple of 8: 64 or 72 sts in size M.",
  ]));

it("sets the stitches outside the repeat aside", () =>
  expect(
    said(repeatLeavesStitches, {
      row: "Row 2",
      before: "Row 1",
      cases: [{ size: "one size", have: 12, takes: 5, fixed: 1 }],
    }),
  ).toEqual([
    "Row 2 does not come out even.",
    "Row 1 ends with 12 sts, 1 of them outside the repeat. The repeat takes 5: 2 repeats use 10 and leave 1 unworked.",
    "Work the last st outside the repeat.",
    // A multiple of 5 plus 1 is 11, 56 or 101: trade handbook, section 3.1; 16 is the next after 11.
    "End Row 1 on a multiple of 5 plus 1: 11 or 16 sts.",
  ]));

it("says several sizes in lists", () =>
  expect(
    said(repeatLeavesStitches, {
      row: "Rnd 5",
      before: "Rnd 4",
      cases: [
        { size: "S", have: 62, takes: 6, fixed: 0 },
        { size: "L", have: 76, takes: 6, fixed: 0 },
      ],
    }),
  ).toEqual([
    "Rnd 5 does not come out even in sizes S and L.",
    "Rnd 4 ends with 62 and 76 sts. The repeat takes 6: 10 and 12 repeats use 60 and 72 and leave 2 and 4 unworked.",
    "Work the last 2 and 4 sts outside the repeat in sizes S and L.",
    "End Rnd 4 on a multiple of 6: 60 or 66 sts in size S; 72 or 78 sts in size L.",
  ]));

it("offers no count without a repeat", () =>
  expect(
    said(repeatLeavesStitches, {
      row: "Row 2",
      before: "Row 1",
      cases: [
        { size: "S", have: 9, takes: 8, fixed: 4 },
        { size: "M", have: 17, takes: 12, fixed: 4 },
      ],
    }),
  ).toEqual([
    "Row 2 does not come out even in sizes S and M.",
    "Row 1 ends with 9 and 17 sts, 4 of them outside the repeat. " +
      "The repeat takes 8 and 12: 0 and 1 repeats use 0 and 12 and leave 5 and 1 unworked.",
    "Work the last 5 and 1 sts outside the repeat in sizes S and M.",
    "End Row 1 with 12 sts in size S; 16 or 28 sts in size M.",
  ]));

it("does not count repeats that take nothing", () =>
  expect(
    said(repeatLeavesStitches, {
      row: "Row 2",
      before: "Row 1",
      cases: [{ size: "one size", have: 20, takes: 0, fixed: 0 }],
    }),
  ).toEqual([
    "Row 2 does not come out even.",
    "Row 1 ends with 20 sts. The repeat takes none of them.",
    "Let the repeat take at least 1 st of Row 1.",
  ]));
