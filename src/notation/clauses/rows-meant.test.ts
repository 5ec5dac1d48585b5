import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 6. Rows are our own; how each is understood is common practice, no source.
describe("Rows by reference and by measure", () => {
  it.each([
    ["Rep Rows 3 and 4.", "(rows 3,4)"],
    ["Rep Row 2.", "(rows 2)"],
    ["As Row 2.", "(rows 2)"],
    ["Same as 3rd.", "(rows 3)"],
    ["same as rnd 8", "(rows 8)"],
    ["Work as Row 2.", "(rows 2)"],
    ["Rep Rows 2-5", "(rows 2-5)"],
    ["Repeat 2nd and 3rd rows", "(rows 2,3)"],
    ["Rep last 2 rows 4 (5, 5) times more - 38 (40, 44) sts.", "(rows last 2 x4/5/5) (claim 38/40/44 any)"],
    ["Rep last row 3 times.", "(rows last 1 x3)"],
    ["Repeat this row until piece measures 20 cm", "(rows last 1 until 20cm)"],
    ["Rep Rows 2 and 3 until desired length", "(rows 2,3 until from-other)"],
    ["Rep Row 2, (40, 44, 48)", "(rows 2) (claim 40/44/48 any)"],
    [
      "Rep Rows 2-5 until 26 (28, 30) rows are done, ending with a WS row.",
      "(rows 2-5 until 26/28/30 rows end-WS)",
    ],
    [
      'Rep Rows 2 and 3 until piece measures 11 (11½, 12)" from beg',
      "(rows 2,3 until 27.94/29.21/30.48cm from-beginning)",
    ],
    ["Rep Row 4 until 20 (24, 28) sts rem.", "(rows 4 until 20/24/28 sts)"],
    ["Rep Rows 1 and 2 for a total of 12 rows", "(rows 1,2 until 12 rows)"],
    ["Rep Rows 1 and 2 for 12 (14, 16) more rows", "(rows 1,2 for 12/14/16 rows)"],
    ["Rep Rows 1 and 2 until 6 more rows have been worked", "(rows 1,2 for 6 rows)"],
    [
      "work even until piece measures 28 cm from beg, end Row 5",
      "(even until 28cm from-beginning end-row 5)",
    ],
    ["Keeping patt correct, work even for 6 rows.", "(even in-pattern 6 rows)"],
    ["work 3 rows even", "(even 3 rows)"],
    ["work straight for 10 rows", "(even 10 rows)"],
    ["Cont in patt until piece measures 9 in [23 cm]", "(even in-pattern until 22.86cm)"],
    ["sc in each st around until piece measures 5 in", "(sc @ each st ..) (even in-pattern until 12.7cm)"],
    ["work in patt to last 6 (6, 7) sts, turn", "(in-pattern @ each st ..last 6/6/7) (turn)"],
    ["patt across next 20 sts", "(in-pattern @ next 20 st)"],
    ["work across first 44 sts", "(in-pattern @ first 44 st)"],
    ["Rep #2 and #3", "(rows 2,3)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
