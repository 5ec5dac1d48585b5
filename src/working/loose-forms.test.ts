import { describe, expect, it } from "vitest";
import { counts, found } from "./rows-in.ts";

/** Ways of writing that are met on hand-made pages. Numbers follow from counting on the fingers. */
const last = (pattern: string): string => counts(pattern).split(", ").at(-1)?.split(": ")[1] ?? "";

describe("forms that a human reader forgives", () => {
  it("numbers rows by a figure with a full stop before the word", () => {
    const hat =
      "Hat\n\n1. row: 7 sc in magic ring. (7)\n2. row: 2sc in each st around (14)\n3. row: (sc in next st, 2sc in next st)*7 (21)\n4-5. row: sc in each st around (21)";
    expect(last(hat)).toBe("21");
    expect(found(hat)).toEqual([]);
    expect(found(hat.replace("(14)", "(15)"))).toContain("rows/count-differs 2");
  });

  it("tells the last turn of a repeat apart", () => {
    const row = (end: number): string =>
      `Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 30 sc.\nRow 2: Ch 1, sc in each of next 4 sts, *sc2tog, sc in next st**, sc in each of next 5 sts; rep from * once, then from * to ** once more, sc in each of last 7 sts. ${end} sc.`;
    expect(last(row(27))).toBe("27");
    expect(found(row(27))).toEqual([]);
    expect(found(row(28))).toEqual(["rows/count-differs Row 2"]);
  });

  it("hyphens the words of a place, and joins in any corner", () => {
    const square = (sides: string): string =>
      "Ch 5. Form a ring with 1 sl st in first ch.\nRnd 1: (Ch 3 (counts as dc), 2 dc, ch 2) in ring, *(3 dc, ch 2) in ch-ring; rep from * twice more; join with sl st in top of ch 3. Fasten off. 12 dc.\n" +
      `Join a new colour into any corner-sp.\nRnd 2: (Ch 3 (counts as dc), 2 dc, ch 2, 3 dc) into same corner-space, ch 1, *(3 dc, ch 2, 3 dc) in next corner-space, ch 1; rep from * ${sides}, join with sl st in top of ch-3. 24 dc.`;
    expect(found(square("to end"))).toEqual([]);
    expect(found(square("once more"))).not.toEqual([]);
  });

  it("says roughly how many rows, what a step is for, and that the last chain is left out", () => {
    const band =
      "Ch 16.\nRow 1: Sc in 2nd ch from hook and in each remain ch across, turn. 15 sc.\nRow 2: Ch 1, sc in each sc across to create a firm edge, turn. 15 sc.\n" +
      "Rows 3-12: Repeat row 2 for approximately 10 rows.";
    expect(last(band)).toBe("15");
    expect(found(band)).toEqual([]);
  });

  it("names what was made, and goes on where a line was broken inside a repeat", () => {
    const row =
      "Ch 26.\nRow 1: Sc in 2nd ch from hook, (sk 2 ch, 5 dc in next ch, sk 2, sc in next ch for a shell) 4 times, turn. 5 sc, 4 shells.";
    expect(found(row.replace(" 5 sc, 4 shells.", ""))).toEqual([]);
    const broken =
      "Ch 22.\n1st row: Sc in 2nd ch from hook and in each ch across. Turn. 21 sc.\n2nd row: Ch 1. Sc in next sc. *Ch 1. Skip next sc. Sc in next sc. Ch 1.\nSkip next sc. Sc in next sc. Rep from * to end. Turn.\n3rd row: Ch 1. Sc in each sc and each ch-1 sp to end. Turn. 21 sc.";
    expect(last(broken)).toBe("21");
    expect(found(broken)).toEqual([]);
  });
});
