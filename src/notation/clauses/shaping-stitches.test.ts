import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 5. Rows are our own; how each is understood is common practice, no source.
describe("Increases and decreases", () => {
  it.each([
    ["sc2tog", "(sc2tog)"],
    ["2 dc tog", "(dc2tog)"],
    ["dc 2 tog", "(dc2tog)"],
    ["sc 2tog", "(sc2tog)"],
    ["dc3-tog", "(dc3tog)"],
    ["2sctog", "(sc2tog)"],
    ["3 dc2tog", "(dc2tog x3)"],
    ["dec over next 2 sts", "(dec @ next 2 st)"],
    ["dec 1, sc in next 4", "(dec) (sc @ next 4 st)"],
    ["hdc dec next 2 sts", "(hdc2tog @ next 2 st)"],
    ["invdec, sc in next 2", "(invdec) (sc @ next 2 st)"],
    ["inc, sc in next 3, inc in last st", "(inc) (sc @ next 3 st) (inc @ last st)"],
    ["sc inc", "(sc-inc)"],
    ["draw up a loop in each of next 2 sts, yo and draw through all 3 loops on hook", "(sc2tog @ next st)"],
    [
      "(yo, insert hook in next st, yo, pull up a loop, yo, pull through 2 loops) twice, yo, pull through all 3 loops on hook",
      "(dc2tog @ next st)",
    ],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
