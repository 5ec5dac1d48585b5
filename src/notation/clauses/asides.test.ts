import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 10. Rows are our own; how each is understood is common practice, no source.
describe("Words that change nothing, and words not understood", () => {
  it.each([
    ["sc across loosely", "(sc @ each st ..) (aside)"],
    ["Being careful not to twist ch, join with sl st in first ch", "(aside) (join sl st @ first ch)"],
    ["You are now working in rounds.", "(aside)"],
    ["Ch 3 (see Pattern Notes), dc across", "(ch 3) (aside) (dc @ each st ..)"],
    ["(mine came out a little wide)", "(aside)"],
    ["sc in next 4 sts (this is the cuff), dc in next 4", "(sc @ next 4 st) (aside) (dc @ next 4 st)"],
    ["Take a break and have some tea.", "(aside)"],
    [
      "sc in next 4, frobnicate the wug, dc in next 4",
      '(sc @ next 4 st) (REMARK "frobnicate the wug") (dc @ next 4 st)',
    ],
    ["blorf 3", '(REMARK "blorf 3")'],
    ["ch 40 (or ch 44 for a wider band)", "(ch 40) (aside)"],
    ["fasten off, leaving a long tail for sewing", "(fasten-off) (aside)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
