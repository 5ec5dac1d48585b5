import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 3. Rows are our own; how each is understood is common practice, no source.
describe("Repeats", () => {
  it.each([
    [
      "*sc in next 6 sts, sc2tog; rep from * across, turn.",
      "(star-repeat .. : (sc @ next 6 st) (sc2tog)) (turn)",
    ],
    [
      "*dc, sk 1; rep from * to last 4 sts, dc in last 4.",
      "(star-repeat ..last 4 : (dc) (skip @ next 1 st)) (dc @ last 4 st)",
    ],
    [
      "*ch 1, dc in next st; rep from * 3 (3, 4) more times",
      "(star-repeat 3/3/4-more : (ch 1) (dc @ next st))",
    ],
    ["*ch 1, dc in next st; repeat from * 5 times", "(star-repeat 5-either-extra : (ch 1) (dc @ next st))"],
    ["*hdc, ch 1* repeat from * to * 8 times", "(star-pair-repeat 8-either-total : (hdc) (ch 1))"],
    ["*hdc, ch 1* rep between * * 3 times", "(star-pair-repeat 3-either-total : (hdc) (ch 1))"],
    ["*sc in next st, ch 1* around", "(star-pair-repeat .. : (sc @ next st) (ch 1))"],
    [
      "*dc in next st, ch 1*, sc in next st, rep from * to * twice",
      "(dc @ next st) (ch 1) (sc @ next st) (star-pair-repeat 2-either-total : (dc @ next st) (ch 1))",
    ],
    ["*2 sc, 1 dec* = 27 sc", "(star-pair-repeat unsaid : (sc x2) (dec x1)) (claim 27 sc)"],
    [
      "*2 dc in next ch-sp; rep from *. End with dc in last st.",
      "(star-repeat unsaid : (dc x2 @ next sp)) (dc @ last st)",
    ],
    ["(sc in next 6, inc) 5 times", "(bracket-repeat 5 : (sc @ next 6 st) (inc))"],
    ["[dc, ch 1] x 9", "(bracket-repeat 9 : (dc) (ch 1))"],
    ["(4 dc, inc)*8", "(bracket-repeat 8 : (dc x4) (inc))"],
    ["[dc, ch 1] 7 (9, 10) times", "(bracket-repeat 7/9/10 : (dc) (ch 1))"],
    ["[dc, ch 1] 0 (1, 0) time", "(bracket-repeat 0/1/0 : (dc) (ch 1))"],
    ["(2 sc in next st, sc in next 4) around", "(bracket-repeat .. : (sc x2 @ next st) (sc @ next 4 st))"],
    ["(sc, inc) to last 2 sts", "(bracket-repeat ..last 2 : (sc) (inc))"],
    [
      "[sc2tog, ch 1] across to last 5 sts, sc in next st",
      "(bracket-repeat ..last 5 : (sc2tog) (ch 1)) (sc @ next st)",
    ],
    ["(sc, 2 sc in next st) repeat 6 times", "(bracket-repeat 6 : (sc) (sc x2 @ next st))"],
    [
      "(2dc, sc) 6 times",
      "(bracket-repeat 6 : (choice n-alone {(dc @ next each 2 st)} {(dc x2 @ next st)}) (sc))",
    ],
    ["(2 sc, inc) x 7", "(bracket-repeat 7 : (sc x2) (inc))"],
    [
      "1 sc in next st, 2 sc in next st, repeat to end",
      "(bare-repeat .. : (sc x1 @ next st) (sc x2 @ next st))",
    ],
    [
      "Ch 1, sc in first st, ch 1, sk 1, sc in next st, repeat to end",
      "(ch 1) (choice bare-repeat-unit {(sc @ first st) (ch 1) (bare-repeat .. : (skip @ next 1 st) (sc @ next st))} {(bare-repeat .. : (sc @ first st) (ch 1) (skip @ next 1 st) (sc @ next st))})",
    ],
    ["Ch 1, sc in next 3, inc; rep from * around", "(ch 1) (bare-repeat .. : (sc @ next 3 st) (inc))"],
    [
      "*3 dc in next sp, ch 1**, sc in next sc; rep from * ending last rep at **",
      "(star-repeat unsaid end-before 2 : (dc x3 @ next sp) (ch 1) (sc @ next sc))",
    ],
    [
      "*3 dc in next sp, ch 1**, sc in next sc* rep 3 times ending last rep at **",
      "(star-pair-repeat 3-either-total end-before 2 : (dc x3 @ next sp) (ch 1) (sc @ next sc))",
    ],
    [
      "*dc in next 3, ch 1; rep from * across, ending with 2 sc in last st",
      "(star-repeat .. : (dc @ next 3 st) (ch 1)) (sc x2 @ last st)",
    ],
    [
      "*dc in next 3, ch 1; rep from * across, end last rep with dc in tch",
      "(choice end-of-last-repeat {(star-repeat .. end-before 1 : (dc @ next 3 st) (ch 1)) (dc @ any tch)} {(star-repeat .. : (dc @ next 3 st) (ch 1)) (dc @ any tch)})",
    ],
    [
      "*ch 2, sc in each of next 6 sts; rep from * across, omitting 4 sc at end of last rep",
      "(star-repeat .. end-before 2 : (ch 2) (sc @ next each 2 st) (sc @ next each 4 st))",
    ],
    [
      "*ch 1, hdc in each of next 3 sts; rep from *, ending hdc in each of last 3 sts",
      "(choice ending-of-repeat {(star-repeat unsaid : (ch 1) (hdc @ next each 3 st)) (hdc @ last each 3 st)} {(star-repeat unsaid end-before 1 : (ch 1) (hdc @ next each 3 st)) (hdc @ last each 3 st)})",
    ],
    [
      "*(sc, ch 1) twice, sk 1; rep from * across",
      "(star-repeat .. : (bracket-repeat 2 : (sc) (ch 1)) (skip @ next 1 st))",
    ],
    ["[*dc, ch 1* 3 times, sc] twice", "(bracket-repeat 2 : (star-pair-repeat 3 : (dc) (ch 1)) (sc))"],
    [
      "sc in first sc, (sk next sc, 3 hdc in next sc), repeat from ( to ) once more",
      "(sc @ first sc) (bracket-repeat 1-more : (skip @ next sc) (hdc x3 @ next sc))",
    ],
    ["#dc in next st, ch 1; rep from # across", "(star-repeat .. : (dc @ next st) (ch 1))"],
    ["*dc, ch 1; rep from * to end of row", "(star-repeat .. : (dc) (ch 1))"],
    [
      "*sc in next 2, ch 2, sk 2; rep from * to within last 3 sts",
      "(star-repeat ..last 3 : (sc @ next 2 st) (ch 2) (skip @ next 2 st))",
    ],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
