import { expect, it } from "vitest";
import { found } from "./rows-in.ts";

// A round's own chain with what stands beside it is its first group: common practice, no source. The rows are our own.
const rounds = (count: number, last: string): string =>
  `V-stitch (V-st): (dc, ch 1, dc) in same st or sp.\nCh 4 at the start of a round counts as dc and ch 1.\n\nSKIRT\nCh 28, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join with sl st in first sc. (28 sc)\nRnd 2: Ch 4, dc in same st as join (first V-st made), sk 1 sc, *V-st in next sc, sk 1 sc; rep from * around, join in 3rd ch of ch-4. (14 V-sts)\nRnd 3: Sl st in first ch-1 sp, ch 4, dc in same sp, ${last}, join in 3rd ch of ch-4. (${count} V-sts)`;

it.each(["V-st in ch-1 sp of each V-st around", "*V-st in next V-st; rep from * around"])(
  "counts the first V-st of a round with the others: %s",
  (words) => {
    expect(found(rounds(14, words))).toEqual([]);
    expect(found(rounds(15, words))).toEqual(["rows/count-differs Rnd 3"]);
  },
);
