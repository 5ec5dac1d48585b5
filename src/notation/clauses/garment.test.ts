import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, sections 7 and 9; trade handbook, section 5.2. Rows are our own; how each is understood is common practice, no source.
describe("What garments say beyond single rows", () => {
  it.each([
    ["Work the Full increase rnd 3 (2, 3) times.", '(rows "full increase rnd" x3/2/3)'],
    [
      "Work (even round twice, decrease round once) 4 times.",
      '(bracket-repeat 4 : (rows "even round" x2) (rows "decrease round" x1))',
    ],
    [
      "Work the increase rnd once and the even rnd 3 times, 8 (9, 10) times over.",
      '(bare-repeat 8/9/10 : (rows "increase rnd" x1) (rows "even rnd" x3))',
    ],
    [
      "work the increase row again on every 4th row 10 (11, 12) times",
      '(rows "increase row" x10/11/12 every 4)',
    ],
    [
      "Work Rows 1 and 2 alternately for 14 more rows, ending with a WS row.",
      "(rows 1,2 for 14 rows end-WS)",
    ],
    ["Rep last 4 rows 3 times more, then the 2nd and 3rd rows once.", "(rows last 4 x3) (rows 2,3 x1)"],
    ["sc in the underside of each of 14 (16, 18) ch", "(sc @ next each 14/16/18 foundation)"],
    [
      "2 sc in the end of each of the next 3 rows, skip next row",
      "(sc x2 @ next each 3 row-end) (skip @ next row-end)",
    ],
    ["sc in each sc to 1 st before marked sc", "(sc @ each sc ..to[@ any marked before 1])"],
    [
      "(ch 1, sk next sc, sc in next sc) to last sc before next marked sc",
      "(bracket-repeat ..to[@ next marked before 1] : (ch 1) (skip @ next sc) (sc @ next sc))",
    ],
    [
      "From each end count 32 (35, 40) dc and mark the last of them.",
      "(place-marker @ nth #32/35/40 dc from-start) (place-marker @ nth #32/35/40 dc from-end)",
    ],
    [
      "sc around; join. 88 (88, 92) sc and 4 ch-2 sps: back 32 (34, 36), sleeves 12 each, front 32 (34, 36).",
      "(sc @ each st ..) (join sl st) (aside) (claim 88/88/92 sc + 4 ch-sp-2)",
    ],
    [
      "dc across (102 sts: 56 dc and 46 ch-1 sps)",
      "(dc @ each st ..) (claim 102 any) (claim 56 dc + 46 ch-sp-1)",
    ],
    ["dc across (14 sts: 7 on each side)", "(dc @ each st ..) (claim 14 any) (claim 7 any each-side)"],
    [
      "sc around; join. 19 groups on each short side, 4 corners; 300 dc.",
      "(sc @ each st ..) (join sl st) (claim 19 unit each-side) (claim 4 unit + 300 dc)",
    ],
    ["Rep Row 2. (294, 302 sts)", "(rows 2) (claim 294 any #0) (claim 302 any #1)"],
    [
      "skip next corner ch-2 sp, next 36 (36, 38) sts and next corner ch-2 sp, hdc in next 4 sts",
      "(skip @ next corner-ch2-sp) (skip @ next 36/36/38 st) (skip @ next corner-ch2-sp) (hdc @ next 4 st)",
    ],
    [
      "dc in each st to point sp, (2 dc, ch 2, 2 dc) in point sp",
      "(dc @ each st ..to[@ next point-sp]) (group @ next point-sp : (dc x2) (ch 2) (dc x2))",
    ],
    [
      "sc to last 6 (7, 8) sts, turn, leaving these 6 (7, 8) sts unworked.",
      "(sc @ each st ..last 6/7/8) (turn) (leave 6/7/8)",
    ],
    [
      "on the first sleeve sk the first 5 sts, hdc in next 36 sts",
      "(along other) (skip @ first 5 st) (hdc @ next 36 st)",
    ],
    [
      "Join C with a sl st in the st at the right-hand end of the last row.",
      "(join-yarn C with sl st @ next st)",
    ],
    ["sc in each dc, 2 sts fewer", "(sc @ each dc) (claim 2 any dec)"],
    ["At the end of the last row, do not turn.", "(aside)"],
    ["Work the rib and the body as for the Back.", '(as "Back")'],
    [
      "Work as for the right mitten as far as the end of Rnd 6 (9, 10)",
      '(as "right mitten" until end-row 6/9/10)',
    ],
    ["1 long sc 2 rnds below", "(spike-sc x1 @ next st 2-below)"],
    ["Cut the yarn, thread the tail through the last 6 sts and pull tight.", "(fasten-off) (aside)"],
    ["The sleeve has 46 (46, 48) rnds.", "(aside)"],
    ["Turn the bag inside out.", "(aside)"],
    ["Using colour A and 4 mm hook, ch 20", "(colour A) (hook 4mm) (ch 20)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
