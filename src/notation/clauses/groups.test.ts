import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, sections 2 and 3. Rows are our own; how each is understood is common practice, no source.
describe("Several into one place", () => {
  it.each([
    ["(sc, ch 2, sc) in next st", "(group @ next st : (sc) (ch 2) (sc))"],
    ["[2 dc, 2ch, 2 dc] in corner sp", "(group @ next corner-sp : (dc x2) (ch 2) (dc x2))"],
    ["work (2 dc, ch 2, 2 dc) all in corner sp", "(group @ next corner-sp : (dc x2) (ch 2) (dc x2))"],
    ["in next sp make dc, ch 3 and dc, sc in next sp", "(group @ next sp : (dc) (ch 3) (dc)) (sc @ next sp)"],
    [
      "in next dc make (dc, ch 2) 3 times and dc",
      "(group @ next dc : (bracket-repeat 3 : (dc) (ch 2)) (dc))",
    ],
    ["1 hdc + 1 ch in each sc", "(group @ each sc : (hdc x1) (ch 1))"],
    ["1 sc and 1 hdc in next st", "(group @ next st : (sc x1) (hdc x1))"],
    ["(2 dc, ch 1, 2 dc) in each ch-2 sp around", "(group @ each ch2-sp .. : (dc x2) (ch 1) (dc x2))"],
    ["7 dc in next ch - fan made", '(dc x7 @ next ch "fan")'],
    ["(dc, ch 2, dc) in sp (V-st made)", '(group @ next sp "v-stitch" : (dc) (ch 2) (dc))'],
    [
      "2 dc, ch 2, 2 dc in corner sp, dc in next 3",
      "(choice list-before-space {(group @ next corner-sp : (dc x2) (ch 2) (dc x2))} {(dc x2) (ch 2) (dc x2 @ next corner-sp)}) (dc @ next 3 st)",
    ],
    [
      "dc, ch 1, dc in next st",
      "(choice list-before-stitch {(dc) (ch 1) (dc @ next st)} {(group @ next st : (dc) (ch 1) (dc))})",
    ],
    [
      "sc in next st, (2 sc, 4 dc), sc in next st",
      "(sc @ next st) (choice bracket-group-or-sequence {(sc x2) (dc x4)} {(group @ next st : (sc x2) (dc x4))}) (sc @ next st)",
    ],
    ["shell (see Special Stitches) in next sp", "(shell @ next sp)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
