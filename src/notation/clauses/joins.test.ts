import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 4. Rows are our own; how each is understood is common practice, no source.
describe("Joining, turning, ending", () => {
  it.each([
    [
      "sc around, join with sl st in first sc. Fasten off.",
      "(sc @ each st ..) (join sl st @ first sc) (fasten-off)",
    ],
    ["hdc around; join.", "(hdc @ each st ..) (join sl st)"],
    ["dc in each st around, sl st in top of beg ch-3", "(dc @ each st ..) (join sl st @ any tch3)"],
    ["ss to 1st st to join", "(join sl st @ first st)"],
    ["join to first hdc made", "(join sl st @ first hdc)"],
    ["join to ch 2", "(join sl st @ any tch2)"],
    ["Ch 5, sl st in first ch to form a ring", "(ch 5) (join sl st @ first ch ring)"],
    ["Ch 4, close in ring.", "(ch 4) (join sl st ring)"],
    ["Ch 60, sl st tog to make a ring", "(ch 60) (join sl st ring)"],
    ["ch 1, join with hdc in first dc to form last loop", "(ch 1) (join hdc @ first dc)"],
    ["do not join; mark first st of each rnd", "(do-not-join) (place-marker @ first st)"],
    ["Do not turn.", "(do-not-turn)"],
    ["do not join, turn", "(do-not-join) (turn)"],
    ["sc across, ch 1, turn.", "(sc @ each st ..) (ch 1) (turn)"],
    ["Turn, ch 3.", "(turn) (ch 3)"],
    ["Slip stitch to join.", "(join sl st)"],
    ["End off.", "(fasten-off)"],
    ["sl st in first 6 (6, 7) sts, ch 1, sc in next 4", "(sl st @ first 6/6/7 st) (ch 1) (sc @ next 4 st)"],
    ["Work in a spiral.", "(do-not-join)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
