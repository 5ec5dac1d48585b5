import { describe, expect, it } from "vitest";
import type { Terms } from "../../stitches/index.ts";
import { readPattern } from "../read-pattern.ts";
import { printClauses, printInstruction } from "./instruction.ts";
import type { PrintStyle } from "./style.ts";

const SIZES = ["S", "M", "L"];

/** The first row of a text, printed anew. */
function anew(text: string, style: Partial<PrintStyle> = {}, terms: Terms = "US"): string {
  const sizes = style.sizes ?? SIZES;
  const tree = readPattern(text, { terms, sizes });
  const row = tree.pieces.flatMap((piece) => piece.instructions)[0];
  if (!row) throw new Error(`no row in ${text}`);
  return printInstruction(row, { terms, sizes, ...style });
}

describe("rows in clean notation", () => {
  // Left: notation as it is met (notation survey, sections 1 to 9). Right: the style of print of the trade handbook, section 5.2.
  it.each([
    [
      "Row 7 (RS) - ch1, sc nx 5 sts, 2sc in last st. Turn - 24(26,28) sts",
      "Row 7 (RS): Ch 1, sc in next 5 sts, 2 sc in last st, turn. (24 (26, 28) sts)",
    ],
    ["6th row - 1 sc in each of next 9 sc.", "Row 6: Sc in each of next 9 sc."],
    ["Rnd 5: Ch 1, hdc around; join.", "Rnd 5: Ch 1, hdc in each st around; join."],
    [
      "R8: (2 sc in next st, sc in next 3) x 7 [28]",
      "Rnd 8: [2 sc in next st, sc in next 3 sts] 7 times. (28 sts)",
    ],
    [
      "Row 3: Ch 1, *sc in nxt 2 sts, ch1, sk 1; rep from * to last 4 sts, dc in last 4, turn.",
      "Row 3: Ch 1, *sc in next 2 sts, ch 1, skip next st; rep from * to last 4 sts, dc in last 4 sts, turn.",
    ],
    ["Row 2: (sc, ch 2, sc) in next ch-2 sp, turn", "Row 2: (sc, ch 2, sc) in next ch-2 sp, turn."],
    ["Rows 9-20: Rep Rows 3 & 4.", "Rows 9-20: Rep Rows 3 and 4."],
    ["Rows 8-19 (21, 25): Rep Row 2.", "Rows 8-19 (21, 25): Rep Row 2."],
    ["Next row (WS): Ch 1, sc2tog, sc to end", "Next row (WS): Ch 1, sc2tog, sc in each st to end."],
    [
      "Row 4: Ch 3 (counts as dc), dc in next st, leave rem sts unworked, turn.",
      "Row 4: Ch 3 (counts as dc), dc in next st, leave remaining sts unworked, turn.",
    ],
  ])("%s", (text, clean) => expect(anew(text)).toBe(clean));

  it("groups the sizes where there are more than five", () => {
    const sizes = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"];
    const row = "Row 2: Ch 1, sc in next 61 (69, 77, 83, 91, 97, 105, 111, 119) sts, turn.";
    expect(anew(row, { sizes })).toBe(
      "Row 2: Ch 1, sc in next 61 (69, 77, 83, 91) (97, 105, 111, 119) sts, turn.",
    );
  });

  it("says it in British terms: the names shift by one, and skip is miss (trade handbook, section 5.2)", () =>
    expect(
      anew("Row 1: Sk 2 ch, hdc in next ch, sc in next sc, dc in next dc, tr in last st, sl st in next st.", {
        terms: "UK",
      }),
    ).toBe(
      "Row 1: Miss next 2 ch, htr in next ch, dc in next dc, tr in next tr, dtr in last st, ss in next st.",
    ));

  it("sets the counts that it is given in place of those of the row", () => {
    const row = "Row 2: Ch 1, sc in each st across, turn. 24 (26, 28) sts.";
    expect(anew(row, { counts: () => "25 (27, 29) sts" })).toBe(
      "Row 2: Ch 1, sc in each st across, turn. (25 (27, 29) sts)",
    );
    expect(anew(row, { counts: () => "" })).toBe("Row 2: Ch 1, sc in each st across, turn.");
    expect(anew(row, { counts: () => null })).toBe(
      "Row 2: Ch 1, sc in each st across, turn. (24 (26, 28) sts)",
    );
  });

  it("prints the reading that was chosen, in words that have no other", () => {
    const row = "Rnd 3: (2 sc, sc in next st) 6 times.";
    expect(anew(row)).toBe("Rnd 3: [sc in each of next 2 sts, sc in next st] 6 times.");
    expect(anew(row, { chosen: () => 1 })).toBe("Rnd 3: [2 sc in next st, sc in next st] 6 times.");
  });

  it("prints clauses alone as they stand inside a row", () => {
    const tree = readPattern("Row 1: Ch 1, sc in each st across, turn.", { terms: "US", sizes: SIZES });
    const clauses = tree.pieces[0]?.instructions[0]?.clauses ?? [];
    expect(printClauses(clauses, { terms: "US", sizes: SIZES })).toBe("ch 1, sc in each st across, turn");
  });
});
