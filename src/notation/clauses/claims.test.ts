import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 9. Rows are our own; how each is understood is common practice, no source.
describe("Counts printed", () => {
  it.each([
    ["sc across (24)", "(sc @ each st ..) (claim 24 any)"],
    ["sc across (24 sts), turn.", "(sc @ each st ..) (turn) (claim 24 any)"],
    ["sc across, turn. (24 sts)", "(sc @ each st ..) (turn) (claim 24 any)"],
    ["sc across - 24 sts", "(sc @ each st ..) (claim 24 any)"],
    ["sc across—24 (28, 32) sts", "(sc @ each st ..) (claim 24/28/32 any)"],
    ["sc across: 24 sc", "(sc @ each st ..) (claim 24 sc)"],
    ["sc across [24 sts]", "(sc @ each st ..) (claim 24 any)"],
    ["sc across, turn. 24 sc.", "(sc @ each st ..) (turn) (claim 24 sc)"],
    ["Total 24", "(claim 24 any)"],
    ["sc across. You will have 24 sc.", "(sc @ each st ..) (claim 24 sc)"],
    ["sc around = 24 sts", "(sc @ each st ..) (claim 24 any)"],
    ["sc around {24}", "(sc @ each st ..) (claim 24 any)"],
    ["sc around <24>", "(sc @ each st ..) (claim 24 any)"],
    ["sc around ... 24 sts", "(sc @ each st ..) (claim 24 any)"],
    [
      "*shell in next sp; rep from * across (14 shells)",
      "(star-repeat .. : (shell @ next sp)) (claim 14 shell)",
    ],
    ["dc, ch 2 across (48 dc, 4 ch-2 sps)", "(bare-repeat .. : (dc) (ch 2)) (claim 48 dc + 4 ch-sp-2)"],
    ["hdc in each st (17hdc + 3ch)", "(hdc @ each st) (claim 17 hdc incl-ch)"],
    ["sc around (48 sc, incl ch 2)", "(sc @ each st ..) (claim 48 sc incl-ch)"],
    ["sc around (48 sts, not counting sl sts)", "(sc @ each st ..) (claim 48 any excl sl st)"],
    ["sc across - 4 sts inc", "(sc @ each st ..) (claim 4 any inc)"],
    ["dc around (increase 4 stitches this round)", "(dc @ each st ..) (claim 4 any inc)"],
    [
      "dec 1 st each end of next row - 2 (3, 3) sts at end of Row 10",
      "(schedule dec 1 each-end first 1) (claim 2/3/3 any of-row 10)",
    ],
    ["sc across (24 sts each side)", "(sc @ each st ..) (claim 24 any each-side)"],
    [
      "Rep Rows 2 and 3 (40 sts)(38 sts)(36 sts)",
      "(rows 2,3) (claim 40 any #0) (claim 38 any #1) (claim 36 any #2)",
    ],
    ["sc across, turn 75 (83, 91) sts.", "(sc @ each st ..) (turn) (claim 75/83/91 any)"],
    ["sc in each row end (18 sc), sc in next 4", "(sc @ each row-end) (aside) (sc @ next 4 st)"],
    ["dc around for total 84 (92, 96) hdc incl ch 2", "(dc @ each st ..) (claim 84/92/96 hdc incl-ch)"],
    ["32 sc", "(sc x32)"],
    ["Ch 1. 24 sc, turn.", "(ch 1) (sc x24) (turn)"],
    ["dc around (12 spokes and 12 open spaces)", "(dc @ each st ..) (claim 12 unit + 12 unit)"],
    ["dc in next st (6 sc)", "(dc @ next st) (claim 6 sc)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
