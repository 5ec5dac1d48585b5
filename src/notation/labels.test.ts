import { describe, expect, it } from "vitest";
import { plainText } from "./glyphs.ts";
import { type LabelPlace, readLabel } from "./labels.ts";
import type { RowRange } from "./tree.ts";

const place = (sizes: number): LabelPlace => ({ sizes, colours: ["A", "B", "cream"], rounds: true });

/** The label in short: kind, rows, side, colour, and the words behind it. */
function read(text: string, sizes = 1): string | null {
  const found = readLabel(text, plainText(text), 0, text.length, place(sizes));
  if (!found) return null;
  const { label } = found;
  const said = (values: readonly (number | null)[]) => values.join("/");
  const range = ({ from, to }: RowRange) =>
    from === to ? said(from.values) : `${said(from.values)}-${said(to.values)}`;
  const open = label.open ? ` open${label.open.step}${label.open.parity ?? ""}` : "";
  const next = label.next ? ` next ${said(label.next.values)}` : "";
  return `${label.is}${label.rounds && label.is !== "round" ? "(rnd)" : ""} ${label.rows.map(range).join(",")}${next}${open}${label.side ? ` ${label.side}` : ""}${label.colour ? ` ${label.colour}` : ""} | ${text.slice(found.to, found.to + 14)}`;
}

describe("labels (notation survey, section 1)", () => {
  it.each([
    ["Row 7: Ch 1, sc in each st across, turn.", "row 7 | Ch 1, sc in ea"],
    ["Rnd 5: Ch 1, hdc around; join.", "round 5 | Ch 1, hdc arou"],
    ["Round 12. Sc around.", "round 12 | Sc around."],
    ["6th row - 1 sc in each of next 9 sc.", "row 6 | 1 sc in each o"],
    ["2D ROW-1 single crochet", "row 2 | 1 single croch"],
    ["First Row: Sc in 2nd ch from hook", "row 1 | Sc in 2nd ch f"],
    ["R8: (2 sc, inc) x 7 [28]", "round 8 | (2 sc, inc) x "],
    ["R4-6: 24 sc", "round 4-6 | 24 sc"],
    ["R4-R6: 24 sc", "round 4-6 | 24 sc"],
    ["Rows 2-22 Ch1, sc across", "row 2-22 | Ch1, sc across"],
    ["1st Row of pattern. Sc across", "row 1 | Sc across"],
    ["Next row (WS): Ch 1, sc2tog, sc to end.", "next  WS | Ch 1, sc2tog, "],
    ["Inc row: Ch 1, 2 sc in first st", "named  | Ch 1, 2 sc in "],
    ["Foundation row (RS): Sc in 2nd ch", "foundation  RS | Sc in 2nd ch"],
    ["Foundation: Ch 58.", "foundation  | Ch 58."],
    ["Set-up rnd: Ch 1, sc around", "foundation(rnd)  | Ch 1, sc aroun"],
    ["Row 1 (RS): Hdc in 3rd ch", "row 1 RS | Hdc in 3rd ch"],
    ["3rd row: (wrong side) Ch 3", "row 3 WS | Ch 3"],
    ["WS Round 4: Ch 1", "round 4 WS | Ch 1"],
    ["Row 9: RS - Ch 1, sc across", "row 9 RS | Ch 1, sc acros"],
    ["Row 2 -(right side): Sc in next", "row 2 RS | Sc in next"],
    ["Rows 5-12: Rep Row 4.", "row 5-12 | Rep Row 4."],
    ["Row 5 & 6: Sc across", "row 5,6 | Sc across"],
    ["Rows 3, 5 and 7: Sc across", "row 3,5,7 | Sc across"],
    ["Rnd 9 thru 11: Sc around", "round 9-11 | Sc around"],
    ["7th to 15th rows incl: Sc in each sc", "row 7-15 | Sc in each sc"],
    ["Rnd 5 to Rnd 9 (5 rounds): 30 sc", "round 5-9 | 30 sc"],
    ["Row 2-?: Sc across", "row 2 open1 | Sc across"],
    ["8th and every alt row: Sc across", "row 8 open2 | Sc across"],
    ["All even rows: Sc across", "row  open2even | Sc across"],
    ["Odd rows: ch1, 5sc", "row  open2odd | ch1, 5sc"],
    ["Row 3 and all following rows: Sc", "row 3 open1 | Sc"],
    ["Rows 1-Last Row: Chain 3", "row 1 open1 | Chain 3"],
    ["Row 6 ch 2, 14 htr", "row 6 | ch 2, 14 htr"],
    ["Row 1—1  dc in 5th st from hook", "row 1 | 1  dc in 5th s"],
    ["Rnd1: Ch2, work 5 sc", "round 1 | Ch2, work 5 sc"],
    ["Rnd2; work 3 sc into each sc", "round 2 | work 3 sc into"],
    ["Row 4 (cream): Sc across", "row 4 cream | Sc across"],
    ["Rnd 5, col B - Ch1, 1sc in same", "round 5 B | Ch1, 1sc in sa"],
    ["Row 4 (WS) (increase row): Ch 1, 2 sc in first st", "row 4 WS | Ch 1, 2 sc in "],
    ["Row 1 (Both Cups): Join yarn", "row 1 | Join yarn"],
    ["Rd 1: Right-side facing: Sc tbl in first fsc", "round 1 RS | Sc tbl in firs"],
    ["Round (Right hand) 15: Ch 1, sc in same st", "round 15 | Ch 1, sc in sa"],
    ["Row 13 – 27 same as row 7", "row 13-27 | same as row 7"],
    ["Rnd 10 – same as rnd 8", "round 10 | same as rnd 8"],
    ["Round 3 – 5 are the same as round 2.", "round 3-5 | are the same a"],
    ["Continuous Round: *ch.5, sc in nxt ch.5 sp.*", "named(rnd)  | *ch.5, sc in n"],
    ["Dec row 1: Sc in each of next 18", "named 1 | Sc in each of "],
    ["Pick-up row (WS): Ch 1, sc in the end", "named  WS | Ch 1, sc in th"],
    ["Next 4 Rows: Working in pat", "next  next 4 | Working in pat"],
    ["Round 9–14: Repeat rounds 7 -. 8.", "round 9-14 | Repeat rounds "],
    ["Row 2", "row 2 | "],
  ])("%s", (text, wanted) => expect(read(text)).toBe(wanted));

  it("reads graded numbers and ranges", () => {
    expect(read("Rows 8-19 (8-21, 8-25): Rep Row 2.", 3)).toBe("row 8-19/21/25 | Rep Row 2.");
    expect(read("Rows 8-19 (9-21, 10-25): Rep Row 2.", 3)).toBe("row 8/9/10-19/21/25 | Rep Row 2.");
    expect(read("Row (17, 19, 21): Sc across.", 3)).toBe("row 17/19/21 | Sc across.");
    expect(read("Round 14 - 30 (30, 32, 32): Hdc around.", 4)).toBe("round 14-30/30/32/32 | Hdc around.");
    expect(read("Rows 3-6 (9, 11): Sc across.", 3)).toBe("row 3-6/9/11 | Sc across.");
    expect(read("Rows 3-61 (69, 77, 83) (91, 97): Rep Row 2.", 6)).toBe(
      "row 3-61/69/77/83/91/97 | Rep Row 2.",
    );
    expect(read("Next 6 (8, 8, 10) rows: Sc across.", 4)).toBe("next  next 6/8/8/10 | Sc across.");
    expect(read("Rows 7-29 {33}: Repeat rows 3-6", 2)).toBe("row 7-29/33 | Repeat rows 3-");
    expect(read("Rows 3, 5, 7, 9: Sc across", 3)).toBe("row 3,5,7,9 | Sc across");
  });

  it.each([
    "Rows of the band are counted from the cast-on.",
    "Row 1 is the right side of the work.",
    "Rounds are joined with a sl st.",
    "Next, sew the side seams.",
    "Rep Row 2 until piece measures 10 cm.",
    "Repeat row 3 for a total of 26 rows",
    "Each row: begins with a chain",
    "A new row begins here.",
    "Rnd of applause",
    "Row count matters",
    "Foundation stitches are stretchy.",
  ])("does not take %j for a label", (text) => expect(read(text)).toBe(null));
});
