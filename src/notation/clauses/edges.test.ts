import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 7. Rows are our own; how each is understood is common practice, no source.
describe("Edges other than the last row", () => {
  it.each([
    ["working along row ends, sc in next 12", "(along row-ends) (sc @ next 12 st)"],
    ["working in free loops of foundation ch, sc in next 12", "(along foundation) (sc @ next 12 st)"],
    ["working on other side of foundation ch, sc in each ch across", "(along foundation) (sc @ each ch ..)"],
    ["in free loops of Rnd 3, sc in each st around", "(along free-loops of-row 3) (sc @ each st ..)"],
    ["Sc along neck edge", "(evenly make sc (along neck))"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
