import { describe, expect, it } from "vitest";
import { applyEdits, proveDesign } from "./prove.ts";

const found = (text: string) => proveDesign(text).findings.filter(({ severity }) => severity !== "note");

/** The text with the first remedy of a finding that can be applied. */
function mended(text: string, code: string): string {
  const edits = found(text).find((finding) => finding.code === code)?.todo[0]?.edits;
  if (!edits) throw new Error(`${code} offers no edit`);
  return applyEdits(text, edits);
}

describe("what is missing at the end of a row", () => {
  const ROWS =
    "Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts.\nRow 2: Ch 1, sc in each st across, turn. 12 sts.\n" +
    "Row 3: Ch 1, sc in each st across. 12 sts.\nRow 4: Ch 1, sc in each st across, turn. 12 sts.\nRow 5: Ch 1, sc in each st across, turn. 12 sts.\n";

  it("is a turn that is put before the count", () => {
    expect(found(ROWS).map(({ code }) => code)).toEqual(["rows/turn-missing"]);
    const after = mended(ROWS, "rows/turn-missing");
    expect(after).toContain("Row 3: Ch 1, sc in each st across, turn. 12 sts.");
    expect(found(after)).toEqual([]);
  });

  it("is a join, where the other rounds are joined", () => {
    const rounds =
      "Ch 4, join with sl st in first ch.\nRnd 1: Ch 1, 8 sc in ring; join with sl st in first sc. 8 sc.\nRnd 2: Ch 1, sc in each st around; join with sl st in first sc. 8 sc.\n" +
      "Rnd 3: Ch 1, sc in each st around. 8 sc.\nRnd 4: Ch 1, sc in each st around; join with sl st in first sc. 8 sc.\n";
    expect(found(rounds).map(({ code }) => code)).toEqual(["rows/join-missing"]);
    const after = mended(rounds, "rows/join-missing");
    expect(after).toContain("Rnd 3: Ch 1, sc in each st around; join with sl st in first st. 8 sc.");
    expect(found(after)).toEqual([]);
  });

  it("is a number that was left out, where the rows behind go on from it", () => {
    const rows =
      "Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts.\nRow 2: Ch 1, sc in each st across, turn. 12 sts.\n" +
      "Row 4: Ch 1, 2 sc in first st, sc in each st to end, turn. 13 sts.\nFasten off.\n";
    expect(found(rows).map(({ code }) => code)).toEqual(["rows/number-skips"]);
    const after = mended(rows, "rows/number-skips");
    expect(after).toContain("Row 3: Ch 1, 2 sc in first st");
    expect(found(after)).toEqual([]);
    // Where a row behind stands on the number, another number would only move the gap.
    const more = `${rows.replace("Fasten off.\n", "")}Row 5: Ch 1, sc in each st across, turn. 13 sts.\n`;
    expect(found(more)[0]?.todo.some(({ edits }) => edits)).toBe(false);
  });
});
