import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 2. Rows are our own; how each is understood is common practice, no source.
describe("Places", () => {
  it.each([
    ["sc in 4th tr of fan", "(sc @ nth #4 tr of[@ next fan])"],
    ["dc in center dc of next 3-dc group", "(dc @ center dc of[@ next group])"],
    ["dc in dc, sc in ch-sp", "(dc @ next dc) (sc @ next sp)"],
    ["2 dc in next ch-3 sp", "(dc x2 @ next ch3-sp)"],
    ["dc in 2ch-sp", "(dc @ next ch2-sp)"],
    ["sc under next ch-1", "(sc @ next ch1-sp)"],
    ["sc in next loop", "(sc @ next sp)"],
    ["sc in corner sp", "(sc @ next corner-sp)"],
    ["2 dc in chain 2 space", "(dc x2 @ next ch2-sp)"],
    ["sc in the next 4 ch sps", "(sc @ next 4 sp)"],
    ["sc in ch.5 sp", "(sc @ next ch5-sp)"],
    ["sc in each sc and ch-1 sp across", "(sc @ each sc&ch1-sp ..)"],
    ["hdc in every st across, including the ch-2 sps", "(hdc @ each st&ch2-sp ..)"],
    ["dc in top of beg ch-3", "(dc @ any tch3)"],
    ["dc in 3rd ch of turning ch", "(dc @ nth #3 ch of[@ any tch])"],
    ["hdc to marked st, sc in marked st", "(hdc @ each st ..to[@ any marked]) (sc @ any marked)"],
    ["sc in next skipped st", "(sc @ next skipped)"],
    ["2 sc in end of each dc row", "(sc x2 @ each row-end)"],
    ["sc in each row end", "(sc @ each row-end)"],
    ["dc between next 2 sts", "(dc @ next between)"],
    ["2 dc in space between clusters", "(dc x2 @ next between)"],
    ["tr in sc 2 rows below", "(tr @ next sc 2-below)"],
    ["sc in next free loop", "(sc @ next free-loop)"],
    ["sc in each of remaining 5 sts", "(sc @ next each 5 st)"],
    ["sc in every other st", "(sc @ every-other st)"],
    ["sc in second to last st", "(sc @ nth #2 st from-end)"],
    ["sc in center of shell", "(sc @ center st of[@ next shell])"],
    ["2 sc in both sts", "(sc x2 @ next each 2 st)"],
    ["sc in next 2-ch loop", "(sc @ next ch2-sp)"],
    ["dc in sc at end of row", "(dc @ next sc)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
