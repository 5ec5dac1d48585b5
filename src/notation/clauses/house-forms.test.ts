import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, sections 2, 3, 6, 9 and 10. Rows are our own; how each is understood is common practice, no source.
describe("Forms of words met in leaflets and on hand-typed pages", () => {
  it.each([
    ["sc in the sts across", "(sc @ each st ..)"],
    ["hdc in next hdc across", "(hdc @ each hdc ..)"],
    ["sc in 2nd ch from hook and in ch across", "(sc @ nth #2 ch from-hook) (sc @ each ch ..)"],
    ["sk the single crochet, hdc in next 3 sts", "(skip @ next sc) (hdc @ next 3 st)"],
    ["ch 3, ss in the top of the dc just made", "(ch 3) (sl st @ same dc)"],
    ["in the ch-3 sp, ch 4, 2 tr, ch 3, 3 tr.", "(group @ next ch3-sp : (ch 4) (tr x2) (ch 3) (tr x3))"],
    [
      "*3 dc, ch 1, work 6 times total from *",
      "(star-repeat 6 : (choice n-alone {(dc @ next each 3 st)} {(dc x3 @ next st)}) (ch 1))",
    ],
    ["make 4 more rows", "(even 4 rows)"],
    ["1 row single crochet", "(even 1 rows sc)"],
    ["7 rows of 30 sc in circles", "(even 7 rows sc)"],
    ["dec 1 st at beg and end of each of the next 3 (4, 4) rows", "(schedule dec 1 each-end every 1 x3/4/4)"],
    ["miss first row end, 1 dc into each row end", "(skip @ first row-end) (dc x1 @ each row-end)"],
    ["rep Rows 3 and 4 over rem 2 (3, 4) shells", "(rows 3,4)"],
    ["from now on sc in the back loop of each st", "(loops back throughout)"],
    ["at the end of Row 8 do not ch 1", "(aside)"],
    ["do not skip first st, dc in first st", "(aside) (dc @ first st)"],
    ["with MC, join with ss", "(colour MC) (join sl st)"],
    ["with No. 7 hook ch 21", "(hook) (ch 21)"],
    ["chain (ch) 15, single crochet (sc) in 2nd chain (ch) from hook", "(ch 15) (sc @ nth #2 ch from-hook)"],
    ["miss 3ch (counts as dc), 1 dc in each ch to end", "(skip @ next 3 ch =dc) (dc x1 @ each ch ..)"],
    ["sc in each row across", "(sc @ each row-end ..)"],
    ["sc in the same ch you slip stitched into, and in each ch around", "(sc @ same ch) (sc @ each ch ..)"],
    ["sc in top of previous row's ch 3", "(sc @ any tch3)"],
    ["sc in hole made by chain 1 loop, hdc in next 4 sts", "(sc @ next sp) (hdc @ next 4 st)"],
    ["the last 2 rows (Rows 4 and 5) form the pattern", "(aside)"],
    ["sl st in first hdc (when you join, skip the ch 2 and sl st in the hdc)", "(sl st @ first hdc) (aside)"],
    ["to shape shoulders, sl st in first 5 sts", "(aside) (sl st @ first 5 st)"],
    ["sc in each ch across24 sc. Ch 1, turn", "(sc @ each ch ..) (ch 1) (turn) (claim 24 sc)"],
    ["ch 3, counts as dc, 19 more dc in ring", "(ch 3 =dc) (dc x19 @ any ring)"],
    ["ss into next dc and chain 1 space", "(sl st @ next dc) (sl st @ next ch1-sp)"],
    ["then repeat: *2 dc in each st*", "(aside) (star-pair-repeat unsaid : (dc x2 @ each st))"],
    ["ch 48 (inclusive 3 ch to turn with)", "(ch 48) (aside)"],
    ["using C1, make 35 ch", "(colour C1) (ch 35)"],
    ["sc/dc alternately to end, turn", "(bare-repeat .. : (sc @ next st) (dc @ next st)) (turn)"],
    ["sc in 2nd ch from hook & each of next 9chs", "(sc @ nth #2 ch from-hook) (sc @ next each 9 ch)"],
    ["sc2tog, turn24 sc.", "(sc2tog) (turn) (claim 24 sc)"],
    ["sc across (5 sc, 2 groups of 2 hdc. Total of 9 sts)", "(sc @ each st ..) (claim 9 any)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));

  it("takes movements behind a decrease told as follows for how it is made", () => {
    const read = readRow(
      "dec over next 2 sts as follows: draw up a loop in each of next 2 sts; yo and through all 3 loops. Sc in next st",
    );
    expect(read.startsWith("(dec @ next 2 st)")).toBe(true);
    expect(read).not.toContain("tog");
    expect(read).not.toContain("REMARK");
  });
});
