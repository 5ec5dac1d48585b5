import { expect, it } from "vitest";
import { found } from "./rows-in.ts";

// That a picot stands on its stitch and takes no place of the edge is common practice, no source. The rows are our own.
const ring = (row: string, picots: number): string =>
  `Ch 24, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join. (24 sc)\nRnd 2: Ch 1, ${row} (24 sc, ${picots} picots)`;

it.each([
  "*sc in next 2 sc, ch 4, sl st in 4th ch from hook, sc in next sc; rep from * around, join.",
  "*sc in next 2 sc, ch 4, sl st in 4th ch from hook (picot), sc in next sc*, repeat from * to * around, join.",
  "*sc in next 3 sc, ch 5, sl st in last sc made; rep from * around, join.",
  "*sc in next 3 sc, ch 5, sl st in sc just made; rep from * around, join.",
])("counts a chain closed by a slip stitch as a picot: %s", (row) => {
  expect(found(ring(row, 8))).toEqual([]);
  expect(found(ring(row, 9))).toEqual(["rows/count-differs Rnd 2"]);
});

it("counts chains closed in the same place, which have no other name", () => {
  const edging = (picots: number): string =>
    `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 1, sc in first sc, *ch 2, sl st in same place, sc in next sc; rep from * to end. (20 sc, ${picots} picots)`;
  expect(found(edging(19))).toEqual([]);
  expect(found(edging(20))).toEqual(["rows/count-differs Row 2"]);
});
