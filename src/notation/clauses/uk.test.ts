import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 10; trade handbook, section 5.2. Rows are our own; how each is understood is common practice, no source.
describe("British terms, read into US codes", () => {
  it.each([
    ["1 dc in each dc to end", "(sc x1 @ each sc ..)"],
    ["3 htr, miss 1 st, 2 tr in next st", "(hdc x3) (skip @ next 1 st) (dc x2 @ next st)"],
    ["dtr in next st, ttr in next st", "(tr @ next st) (dtr @ next st)"],
    ["1 tr in top of 3ch", "(dc x1 @ any tch3)"],
    ["join with ss to 3rd of 3ch", "(join sl st @ nth #3 ch of[@ any tch3])"],
    ["dc2tog over next 2 sts", "(sc2tog @ next 2 st)"],
    ["3ch (counts as 1tr), 1 tr in each of next 4 tr", "(ch 3 =dc) (dc x1 @ next each 4 dc)"],
  ])("%s", (row, tree) => expect(readRow(row, "UK")).toBe(tree));
});
