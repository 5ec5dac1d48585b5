import { describe, expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { counts, found } from "./rows-in.ts";
import { workPattern } from "./work-pattern.ts";

/*
 * How rows are laid out on a page: steps on lines of their own, sentences broken by empty lines, several rows in one paragraph,
 * marks that stand for others. The rows are our own; the counts can be checked on the fingers.
 */

const LAYOUTS: readonly (readonly [what: string, pattern: string, counts: string])[] = [
  [
    "a label alone on its line, each step on a line below",
    "Ch 13.\nRow 1\nSc in 2nd ch from hook\nsc in next 5 ch\n3 sc in last 6 ch\nturn\nRow 2\nCh 1\nsc in each st across",
    "Row 1: 24, Row 2: 24",
  ],
  [
    "steps with a dash before each",
    "Ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2\nTurn work\n- ch 1\n- 2 sc in first st\n- 1 sc in each stitch (x4)\n- 2 sc in last st",
    "Row 1: 6, Row 2: 8",
  ],
  [
    "a sentence that an empty line breaks",
    "Ch 9.\n\nRow 1: Sc in 2nd ch from hook and in each of the\n\nnext 6 ch, 2 sc in last ch, turn.\n\nRow 2: Ch 1, sc in each st (see General\n\nNotes) across.",
    "Row 1: 9, Row 2: 9",
  ],
  [
    "a star at the head of a line that the line before calls",
    "Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, * sc in next 3 sts, 2 sc in next st, rep from\n* across, turn.",
    "Row 1: 12, Row 2: 15",
  ],
  [
    "a place on the line below its stitch",
    "Foundation:\nCh\n12.\nRow 1:\nHdc\nin 3rd ch from hook (skipped chs do not count) and in each ch across, turn.",
    "Row 1: 10",
  ],
  [
    "ordinal rows in one paragraph",
    "SOLE: Ch 9, 1 sc in 2nd st from hook and in each remaining st of ch, ch 1 to turn all rows. 2nd and 3rd ROWS: 1 sc in each sc. 4th ROW: 2 sc in first sc, 1 sc in each sc. NEXT 2 ROWS: Same as 2nd row.",
    ": 8, 2nd and 3rd ROWS: 8, 4th ROW: 9, NEXT 2 ROWS: 9",
  ],
  [
    "numbers with a full stop, all in one paragraph",
    "1. Ch 3, join with sl st to form ring. Ch 1, 7 sc in ring.2. 2 sc in each sc. (14 sc)3. (1 sc in next sc, 2 sc in next sc) around. 4. Sc in each sc around.5-7. Sc in each sc around.",
    ": 7, 2: 14, 3: 21, 4: 21, 5-7: 21",
  ],
  [
    "numbers with a colon that leave rows out",
    "Ch 21, join to first ch. 1: Ch 1, sc in each ch, join. (21) 2: Ch 1, sc in each st, join. (21) 5: Ch 1, 2 sc in first st, sc in each st, join. (22) 6: Ch 1, sc in each st, join. (22)",
    "1: 21, 2: 21, 5: 22, 6: 22",
  ],
  [
    "upright strokes for brackets",
    "Rnd 1: 8 sc in magic ring. (8)\nRnd 2: |inc, sc in next st| x4 (12)\nRnd 3: |sc in next 2 sts, inc| 4 times (16)",
    "Rnd 1: 8, Rnd 2: 12, Rnd 3: 16",
  ],
  [
    "abbreviations explained where they stand",
    "Starting at hem chain (ch) 15.\nRow 1: 1 single crochet (sc) in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each stitch (st) across. Turn.\nRow 3: Ch 1, 13 sc (single crochet), slip stitch (sl st) in last st.",
    "Row 1: 14, Row 2: 14, Row 3: 13",
  ],
];

/** Rows called again, with how many rows the piece has then. */
const AGAIN: readonly (readonly [words: string, last: number, stitches: number])[] = [
  ["Repeat Row 2 until you have 31 rows for the main panel.", 31, 18],
  ["Repeat row 2 for a total of 16 rows.", 16, 18],
  [
    "Repeat last row until you have a total of 12 rows completed (including the row made with the small hook).",
    12,
    18,
  ],
  ["Repeat Row 2 for 9 more rows.", 11, 18],
  ["Continue as Row 2 for 6 rows.", 8, 18],
  ["Keep repeating Row 2 until you have 20 rows.", 20, 18],
  ["15 rows even.", 17, 18],
  ["Work even until 24 rows have been worked.", 24, 18],
  ["Row 3: Increase 1 at beginning of row.", 3, 19],
  ["Row 3: Dec 1 st at each end of row, turn.", 3, 16],
  ["Bind off 3 sts at beginning of next 2 rows.", 4, 12],
];

describe("rows called again", () => {
  it.each(AGAIN)("works %j", (words, last, stitches) => {
    const pattern = `Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.\n${words}`;
    const line = workPattern(readPattern(pattern))
      .pieces.flatMap((piece) => piece.lines)
      .at(-1);
    expect([line?.read, line?.last, line?.stitches]).toEqual([true, [last], [stitches]]);
    expect(found(pattern)).toEqual([]);
  });
});

/** Rows with what pages put about them; each keeps the 18 stitches. */
const NOISE: readonly string[] = [
  "Row 3: 🧶 Ch 1, sc in each st across, turn. (Video at 4:45)",
  "Row 3: Ch 1, sc in each st across, turn. 18 sts ♥",
  "Row 3: Ch&nbsp;1, sc in each st across &amp; turn.",
  "Row 3: Ch 1, sc in each st across, turn. &#8211; <b>18 sts</b>",
  "☐ Row 3: Ch 1, sc in each st across, turn.",
  "Row 3: Ch 1, sc in each st across, turn. You can place a marker at the end of this row if you like.",
  "Row 3: Ch 1, sc in next 3 sts; rep from another 5 times, turn.",
  "Row 3: Ch 1, sc in each of the following stitches. Turn.",
];

describe("what pages put about a row", () => {
  it.each(NOISE)("is no part of it: %s", (words) => {
    const pattern = `Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.\n${words}`;
    const line = workPattern(readPattern(pattern))
      .pieces.flatMap((piece) => piece.lines)
      .at(-1);
    expect([line?.label, line?.read, line?.stitches]).toEqual(["Row 3", true, [18]]);
    expect(found(pattern)).toEqual([]);
  });
});

describe("stitches that the last words of a row stop before", () => {
  const before = "Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n";
  it.each([
    ["Row 2: Sl st across 4 sts, ch 1, sc across to last 4 sts, turn.", "10"],
    ["Row 2: Ch 1, sc to within last 5 sts, turn.", "13"],
    ["Skip 4 sts of next row, attach red in next st and work to within last 4 sts.", "10"],
  ])("are left by %j", (words, count) => {
    expect(found(before + words)).toEqual([]);
    expect(counts(before + words).endsWith(`: ${count}`)).toBe(true);
  });

  it("one alone is more likely forgotten", () =>
    expect(found(`${before}Row 2: Ch 1, sc to last st, turn.`)).toEqual(["rows/stitches-left-over Row 2"]));
});

describe("sizes and parts told by the way", () => {
  it("finds two sizes that one sentence tells", () => {
    const pattern =
      "Use the numbers in brackets for the larger size.\n\nCh 15(19).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRows 2-9(11): Ch 1, sc in each st across, turn.\nNext row: Ch 1, sc in first four(five) sts, 2 sc in next st, sc to end. (15(19) sts)";
    expect(readPattern(pattern).sizes).toEqual(["smaller", "larger"]);
    expect(counts(pattern)).toBe("Row 1: 14/18, Rows 2-9(11): 14/18, Next row: 15/19");
    expect(found(pattern)).toEqual([]);
  });

  it("does not work a row in sizes that have a dash in each of its lists", () => {
    const pattern =
      "Sizes: S (M, L)\n\nCh 15 (19, 23).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in first - (8, 10) sts, dc in next - (10, 12) sts, turn. - (18, 22) sts.\nNext row: Ch 1, sc in each st across.";
    expect(counts(pattern)).toBe("Row 1: 14/18/22, Row 2: ?/18/22, Next row: 14/18/22");
    expect(found(pattern)).toEqual([]);
  });

  const back = "BACK\nCh 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n";
  const first = "1st row: Ch 1, sc in next 9 sts, turn. 2nd row: Ch 1, sc in each st across.";
  it("lets the first row of a part that divides leave the rest", () => {
    expect(found(`${back}To Shape Neck. ${first}`)).toEqual([]);
    expect(found(`${back}Stripes. ${first}`)).toContain("rows/stitches-left-over 1st row");
  });
});

describe("layouts", () => {
  it.each(LAYOUTS)("reads %s", (_, pattern, expected) => {
    expect(counts(pattern)).toBe(expected);
    expect(found(pattern).filter((line) => !line.includes("number"))).toEqual([]);
  });
});
