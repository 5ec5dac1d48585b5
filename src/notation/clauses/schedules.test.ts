import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 7; trade handbook, section 3.6. Rows are our own; how each is understood is common practice, no source.
describe("Shaping told over many rows", () => {
  it.each([
    [
      "inc 1 st each end of next row, then every 4th row 6 (7, 7) times",
      "(schedule inc 1 each-end first 1 every 4 x6/7/7)",
    ],
    ["dec 1 st at neck edge every row 5 times", "(schedule dec 1 neck-edge every 1 x5)"],
    [
      "inc 1 st at each end of 4th row and every foll 6th row until there are 60 sts",
      "(schedule inc 1 each-end first 4 every 6 until 60 sts)",
    ],
    ["dec 1 st each end every other row 5 times", "(schedule dec 1 each-end every 2 x5)"],
    ["Dec 1 st at beg of next 3 rows", "(schedule dec 1 beginning every 1 x3)"],
    [
      "at the same time, dec 1 st at armhole edge every row 4 times",
      "(schedule dec 1 armhole-edge every 1 x4 together)",
    ],
    ["Decrease 1 every 8 rows 4 times", "(schedule dec 1 one-edge every 8 x4)"],
    ["dec 6 sts evenly", "(evenly dec 6)"],
    ["work 48 (52, 56) sc evenly along edge", "(evenly make 48/52/56 sc (along all-round))"],
    ["sc evenly around", "(evenly make sc)"],
    ["inc evenly to 84 sts", "(evenly inc to 84)"],
    ["dec 4 sts evenly across - 60 sts", "(evenly dec 4) (claim 60 any)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
