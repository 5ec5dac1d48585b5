import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, sections 2, 4 and 10. Rows are our own; how each is understood is common practice, no source.
describe("Chains and what they count as", () => {
  it.each([
    ["Ch 58.", "(ch 58)"],
    ["chain 58", "(ch 58)"],
    ["make 58ch", "(ch 58)"],
    ["Ch-58", "(ch 58)"],
    ["a chain of 58 sts", "(ch 58)"],
    ["58 chain sts", "(ch 58)"],
    ["Make a foundation chain of 61 stitches.", "(ch 61)"],
    ["Ch 58 (62, 66)", "(ch 58/62/66)"],
    ["Ch a multiple of 8 + 5", "(ch x8+5)"],
    ["Ch a multiple of 6 sts plus 1 (add 2 for base chain)", "(ch x6+3)"],
    ["ch, turn", "(ch 1) (turn)"],
    ["Ch 3 (counts as dc), dc in next st", "(ch 3 =dc) (dc @ next st)"],
    ["Ch 4 (= dc + ch 1), sk next ch", "(ch 4 =dc+ch 1) (skip @ next ch)"],
    ["Ch 3 (counts as first dc now and throughout)", "(ch 3 =dc!)"],
    ["ch 2, acts as first hdc, here and throughout, hdc in next st", "(ch 2 =hdc!) (hdc @ next st)"],
    ["Ch 1 (does not count as a st here and throughout), sc across", "(ch 1 =nothing!) (sc @ each st ..)"],
    ["Ch 1 (not a stitch), sc in same st", "(ch 1 =nothing) (sc @ same st)"],
    ["ch 3, turn (counts as dc)", "(ch 3 =dc) (turn)"],
    [
      "dc in 4th ch from hook (3 skipped chs count as dc), dc in each ch across",
      "(dc @ nth #4 ch from-hook skipped =dc) (dc @ each ch ..)",
    ],
    ["4 ch (in place of first tr), tr in next st", "(ch 4 =tr) (tr @ next st)"],
    ["ch 5 (counts as dc and ch-2 sp)", "(ch 5 =dc+ch 2)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
