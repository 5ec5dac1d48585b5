import { describe, expect, it } from "vitest";
import { counts, found } from "./rows-in.ts";

/*
 * Ways that a count, a place or the beginning of a round is written, one small pattern for each: rows in, counts out, and nothing to
 * complain of. The rows are our own; the counts can be checked on the fingers.
 */

const V_STITCHES =
  "Ch 3 counts as dc.\nV-st = dc, ch 1, dc in same st.\nCh 16.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (15 sc)\nRow 2: Ch 3, sk next 2 sc, V-st in next sc, *sk 2 sc, V-st in next sc; rep from * to last 2 sc, sk 1 sc, dc in last sc, turn. (4 V-sts)\n";
const SQUARE =
  "Ch 5, join with sl st to form ring.\nRnd 1: Ch 3 (counts as first dc now and throughout), dc in ring, ch 2, *2 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of beg ch-3; 8 dc.\nRnd 2: ";
const CENTRE =
  "Ch 4, sl st in first ch to form ring.\nRow 1: Ch 3 (counts as dc throughout), 2 dc in ring, ch 2, 3 dc in ring, turn. (6 dc)\nRow 2: Ch 3, dc in first st, dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc to last st, 2 dc in top of tch, turn. (12 dc)\n";

const FORMS: readonly (readonly [what: string, pattern: string, counts: string])[] = [
  [
    "a space of each V-stitch, and the chain of the row below by its length",
    `${V_STITCHES}Row 3: Ch 3, V-st in ch-1 sp of each V-st, dc in ch 3, turn. (4 V-sts)\nRow 4: Ch 3, (dc, ch 1, 2 dc) in ch-1 sp of each V-st to end, dc in top of ch 3. (14 dc)`,
    "Row 1: 15, Row 2: 10, Row 3: 10, Row 4: 14",
  ],
  [
    "spaces of the next V-stitches by their number",
    `${V_STITCHES}Row 3: Ch 3, 2 dc in ch-1 sp of next 3 V-sts, leave rem sts unworked. (7 dc)`,
    "Row 1: 15, Row 2: 10, Row 3: 7",
  ],
  [
    "a round that begins with a group in the corner it slipped to",
    `${SQUARE}Sl st in next dc and in ch-2 sp, (ch 3, dc, ch 2, 2 dc) in same sp, *dc in next 2 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * twice more, dc in next 2 dc, join; 24 dc.`,
    "Rnd 1: 8, Rnd 2: 24",
  ],
  [
    "a round that begins in the middle of a petal and ends before it",
    "Ch 5, join with sl st to form ring.\nRnd 1: Ch 1, 8 sc in ring, join.\nRnd 2: Ch 1, sc in first sc, ch 4, sk 1 sc, *sc in next sc, ch 4, sk 1 sc; rep from * around, join.\nRnd 3: (Sl st, ch 1, sc, 3 dc, sc) in first ch-4 sp, (sc, 3 dc, sc) in each ch-4 sp around, join.\nRnd 4: Sl st to center dc of first petal, ch 1, sc in same st, ch 6, *sc in center dc of next petal, ch 6; rep from * around, join: 4 sc.",
    "Rnd 1: 8, Rnd 2: 4, Rnd 3: 20, Rnd 4: 4",
  ],
  [
    "a round that ends in a stitch of the last shell",
    "Rnd 1: Ch 1, 12 sc in magic ring, join.\nRnd 2: Ch 1, sc in same st, *sk 1 sc, 5 dc in next sc, sk 1 sc**, sc in next sc; rep from * around, ending last rep at **; join in first sc. (3 shells)\nRnd 3: Ch 5 (counts as dc, ch 2), sc in 3rd dc of shell, ch 2, *dc in next sc, ch 2, sc in 3rd dc of next shell, ch 2; rep from * around; join in 3rd ch of ch-5: 6 ch-2 sps.",
    "Rnd 1: 12, Rnd 2: 18, Rnd 3: 6",
  ],
  [
    "counts of the rows of a range side by side",
    `${CENTRE}Rows 3-4: Rep Row 2. (18, 24 dc)`,
    "Row 1: 6, Row 2: 12, Rows 3-4: 24",
  ],
  [
    "a repeat to so many stitches before a space, and chains counted as stitches",
    `${CENTRE}Row 3: Ch 3, dc in first st, *ch 1, sk next dc, dc in next dc; rep from * to 1 dc before ch-2 sp, dc in next dc, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in next dc, **dc in next dc, ch 1, sk next dc; rep from ** to tch, 2 dc in top of tch, turn. (18 sts, counting each ch-1 as a st)`,
    "Row 1: 6, Row 2: 12, Row 3: 14",
  ],
  [
    "a bracket that says what the count before it holds",
    "Ch 14.\nRow 1: 1 dc in 4th ch from hook, 1 dc in every ch to end. Turn - 12 dc (counting turning ch as 1 dc).",
    "Row 1: 12",
  ],
  [
    "a chain with what it stands for in brackets",
    "Rnd 1: Ch 1, 18 sc in magic ring, join.\nRnd 2: Ch 4 (dc + ch 1), skip next st, *dc in next st, ch 1, skip next st; rep from * around, join in 3rd ch of ch-4. 9 dc and 9 ch-1 sps",
    "Rnd 1: 18, Rnd 2: 9",
  ],
  [
    "slip stitches that are stitches of the row",
    "Rnd 1: 5 sc in magic ring (5)\nRnd 2: 2 sc in each sc around (10)\nRnd 3: Sl st in next 4 sts, hdc in next 6 sts (10)\nRnd 4: Sl st in next 4 sts, dc in next 6 sts (10)",
    "Rnd 1: 5, Rnd 2: 10, Rnd 3: 10, Rnd 4: 10",
  ],
  ["a ring of yarn by its letters", "BODY\nRnd 1) Mc, 7 sc (7)\nRnd 2) inc x7 (14)", "Rnd 1: 7, Rnd 2: 14"],
];

describe("forms of words", () => {
  it.each(FORMS)("reads %s", (_, pattern, expected) => {
    expect(found(pattern)).toEqual([]);
    expect(counts(pattern).replace(/^Foundation: \d+, /, "")).toBe(expected);
  });

  it("still tells counts of a range that do not come out, row by row", () => {
    expect(found(`${CENTRE}Rows 3-4: Rep Row 2. (18, 26 dc)`)).toEqual(["rows/count-differs Rows 3-4"]);
  });

  it("still tells stitches left behind the shell that a round ends in", () => {
    const short =
      "Rnd 1: Ch 1, 12 sc in magic ring, join.\nRnd 2: Ch 1, sc in same st, *sk 1 sc, 5 dc in next sc, sk 1 sc**, sc in next sc; rep from * around, ending last rep at **; join in first sc.\nRnd 3: Ch 5 (counts as dc, ch 2), sc in 3rd dc of shell, ch 2, dc in next sc, ch 2, sc in 3rd dc of next shell, ch 2, dc in next st, join.";
    expect(found(short)).toContain("rows/stitches-left-over Rnd 3");
  });
});
