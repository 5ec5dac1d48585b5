import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, sections 2 and 7. Rows are our own; how each is understood is common practice, no source.
describe("Skipping and leaving", () => {
  it.each([
    ["sk next 2 ch", "(skip @ next 2 ch)"],
    ["miss 1 st", "(skip @ next 1 st)"],
    ["sk3", "(skip @ next 3 st)"],
    ["sk ch-3", "(skip @ next ch3-sp)"],
    ["skip to next ch-1 sp", "(skip to @ next ch1-sp)"],
    [
      "ch 6 (6, 8), sk next 22 (24, 26) sts, dc in next 30 (32, 34)",
      "(ch 6/6/8) (skip @ next 22/24/26 st) (dc @ next 30/32/34 st)",
    ],
    ["sc in next 17 (19, 22) sts; leave rem sts unworked, turn", "(sc @ next 17/19/22 st) (leave) (turn)"],
    ["leaving last 4 sts unworked", "(leave 4)"],
    ["leave rest of row unworked", "(leave)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
