import { describe, expect, it } from "vitest";
import { found } from "./rows-in.ts";

const NOTE = "Note: Ch 1 does not count as a st throughout.\n\n";

describe("the side that faces as the yarn is joined", () => {
  const border = (side: string): string =>
    `${NOTE}PATCH\nCh 9.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 8 sts.\nRow 2 (WS): Ch 1, sc in each st across. 8 sts. Fasten off.\n\nBORDER\nWith RS facing, join yarn with a sl st in first st of Row 2.\nRow 1 (${side}): Ch 1, sc in each of next 8 sts, turn. 8 sts.\nRow 2: Ch 1, sc in each st across. 8 sts.`;

  it("is held against the label of the first row", () => {
    expect(found(border("RS"))).toEqual([]);
    expect(found(border("WS"))).toEqual(["rows/side-contradicts-turns Row 1"]);
  });
});

describe("rows worked to a measure and ended with a side", () => {
  const panel = (side: string): string =>
    `${NOTE}PANEL\nCh 9.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 8 sts.\nRow 2 (WS): Ch 1, sc in each st across, turn. 8 sts.\nRep Row 2 until piece measures 20 cm, ending with a WS row.\nNext row (${side}): Ch 1, sc in each st across. 8 sts. Fasten off.`;

  it("say the side of the next row", () => {
    expect(found(panel("RS"))).toEqual([]);
    expect(found(panel("WS"))).toEqual(["rows/side-contradicts-turns Next row"]);
  });
});
