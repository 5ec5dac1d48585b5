import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 8. Rows are our own; how each is understood is common practice, no source.
describe("Words for some sizes", () => {
  it.each([
    ["Sizes M and L only: sc in next 4, dc in last st.", "(sizes 1,2 : (sc @ next 4 st) (dc @ last st))"],
    [
      "For size S: ch 3. Sizes M and L only: ch 4, sc in next st.",
      "(sizes 0 : (ch 3)) (sizes 1,2 : (ch 4) (sc @ next st))",
    ],
    ["End here for S.", "(sizes-end 0)"],
    ["Size L only: End here.", "(sizes-end 2)"],
    ["sc in next 4, [M, L only: dc in last st]", "(sc @ next 4 st) (sizes 1,2 : (dc @ last st))"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
