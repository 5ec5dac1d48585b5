import { describe, expect, it } from "vitest";
import { isCountOnly, isInstruction, isRowEnd, isRowTotal } from "./evidence.ts";

const is = (text: string) => isInstruction(text, 0, text.length);

describe("instructions and talk", () => {
  it.each([
    "Ch 58.",
    "Chain 61 (65, 69).",
    "Work 4 more rows even.",
    "Sew side seams.",
    "Fasten off.",
    'Rep Rows 2 and 3 until piece measures 11 (11½, 12)" from beg.',
    "With 5 mm hook, ch 9.",
    "Repeat last 2 rows 4 (5, 6) times more.",
    "Work in patt to last 6 sts, turn.",
    "Do not fasten off and do not turn.",
    "Dec 1 st at each end of every 4th row 5 times.",
    "With RS facing, join yarn with a sl st in the next st.",
    "Change to 4 mm hook.",
    "11 rows even.",
    "Fsc 64, turn.",
  ])("takes %j as an instruction", (text) => expect(is(text)).toBe(true));

  it.each([
    "A textured pullover with a modified drop shoulder, worked flat from the hem up.",
    "I made mine in a soft cotton and I love it.",
    "The turning ch 1 never counts as a stitch.",
    "Ch 3 at beginning of row counts as first dc throughout.",
    "When only one number is given, it is for all sizes.",
    "The bumps move over by one stitch after each increase row; this is intended.",
    "Please do not sell this pattern.",
    "Bust: 87 (98.5, 110) cm",
    "Wash the pieces and dry them flat to the measurements.",
    "This vest has an easy fit and takes a weekend.",
  ])("takes %j as talk", (text) => expect(is(text)).toBe(false));

  it.each([
    "24 sts.",
    "[16 (18, 18, 20) sc]",
    "- 40 sts",
    "(36 dc, 12 sc)",
    "Total 24 sts.",
    "61 (69, 77, 83) (91, 97, 105, 111, 119) sts.",
  ])("reads %j as a bare count", (text) => expect(isCountOnly(text, 0, text.length)).toBe(true));

  it.each(["24 sc in next 24 sts.", "Ch 24.", "Row 24"])("does not read %j as a bare count", (text) =>
    expect(isCountOnly(text, 0, text.length)).toBe(false),
  );

  it("knows the end of a row that stands on its own line", () => {
    for (const text of ["Ch 1, turn.", "Turn.", "Chain 2 and turnover.", "Join."])
      expect(isRowEnd(text, 0, text.length)).toBe(true);
    expect(isRowEnd("Ch 58.", 0, 6)).toBe(false);
  });
});

describe("a sentence that says how many rows there are", () => {
  it.each([
    "You have now worked 44 rows.",
    "With the joining rnd the yoke has 23 (24, 25) rnds.",
    "The shawl has 81 rows in all.",
  ])("is %j", (text) => expect(isRowTotal(text, 0, text.length)).toBe(true));

  it.each(["The pattern has 4 rows, which you repeat.", "You have 8 rows left to work.", "Work 12 rows."])(
    "is not %j",
    (text) => expect(isRowTotal(text, 0, text.length)).toBe(false),
  );
});
