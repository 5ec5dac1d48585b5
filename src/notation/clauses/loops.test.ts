import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 5. Rows are our own; how each is understood is common practice, no source.
describe("Loop words and posts", () => {
  it.each([
    ["hdc blo across", "(hdc back-loop @ each st ..)"],
    ["BLO hdc across", "(hdc back-loop @ each st ..)"],
    ["24 hdc flo", "(hdc x24 front-loop)"],
    ["sc in back loop only of each st across", "(sc @ each st /back ..)"],
    ["sc in back lp of next 3 sts", "(sc @ next 3 st /back)"],
    ["sc in BLs across", "(sc @ each st /back ..)"],
    ["sc in blp of next st", "(sc @ next st /back)"],
    ["sc through both loops of next st", "(sc @ next st /both)"],
    ["working in front loops only, sc across", "(loops front) (sc @ each st ..)"],
    ["in back loops only, sc across", "(loops back) (sc @ each st ..)"],
    ["sc in back bump of each ch", "(sc @ each ch /back-bump)"],
    ["hdc in 3rd loop of each st around", "(hdc @ each st /third ..)"],
    ["flsc in next 4 sts", "(sc front-loop @ next 4 st)"],
    ["sc in each st around in back loops only", "(sc @ each st /back ..)"],
    ["fpdc around next st, bpdc around next st", "(fpdc @ next st) (bpdc @ next st)"],
    ["FPhdc around each of next 3 FPhdc", "(fphdc @ next each 3 fphdc)"],
    ["dc around post of next st", "(fpdc @ next st)"],
    ["dc around the back post of next dc", "(bpdc @ next dc)"],
    ["sc in next 3 sts tbl", "(sc @ next 3 st /back)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
