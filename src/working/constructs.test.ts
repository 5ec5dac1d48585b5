import { describe, expect, it } from "vitest";
import { counts, found } from "./rows-in.ts";

/*
 * One small pattern for each way that rows are written: rows in, counts out, and nothing to complain of. The rows are our own.
 * The counts follow from the number of places taken and made; that they are right can be seen by counting on the fingers.
 */

const sc = (n: number): string =>
  `Note: Ch 1 does not count as a st throughout.\n\nCh ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n`;
const UK = (n: number): string =>
  `UK terms.\nNote: 1 ch does not count as a st throughout.\n\nMake ${n + 1} ch.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.\n`;
const sizes = "Sizes: S (M, L)\nNote: Ch 1 does not count as a st throughout.\n\n";
const last = (pattern: string): string => counts(pattern).split(", ").at(-1)?.split(": ")[1] ?? "";

const ROWS: readonly (readonly [what: string, pattern: string, count: string])[] = [
  // Foundations and rings
  ["a chain worked from the second", "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.", "10"],
  [
    "a chain worked from the third",
    "Ch 12.\nRow 1: Hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across.",
    "10",
  ],
  [
    "a chain worked from the fourth",
    "Ch 12.\nRow 1: Dc in 4th ch from hook (skipped 3 chs count as dc) and in each ch across.",
    "10",
  ],
  ["foundation stitches", "Row 1: Fsc 24.", "24"],
  ["a ring of yarn", "Rnd 1: 6 sc in magic ring.", "6"],
  [
    "a ring said after the chain that stands for a stitch",
    "Rnd 1: Ch 3 (counts as dc), 13 dc in magic ring, join.",
    "14",
  ],
  [
    "a chain of three that can be no ring",
    "Rnd 1: Ch 3, 9 dc in ring, join with sl st in top of ch 3. 10 dc.",
    "10",
  ],
  [
    "a ring of chains",
    "Ch 4, join with sl st to form a ring.\nRnd 1: Ch 1, 8 sc in ring, join with sl st in first sc.",
    "8",
  ],
  ["a ring of two chains", "Ch 2.\nRnd 1: 6 sc in 2nd ch from hook.", "6"],
  // Size lists
  [
    "lists in round brackets",
    `${sizes}Ch 11 (13, 15).\nRow 1: Sc in 2nd ch from hook and in each ch across.`,
    "10/12/14",
  ],
  [
    "lists in square brackets",
    `${sizes}Ch 11 [13, 15].\nRow 1: Sc in 2nd ch from hook and in each ch across.`,
    "10/12/14",
  ],
  [
    "a list in a repeat",
    `${sizes}Rnd 1: 6 sc in magic ring.\nRnd 2: (2 sc in next st, sc in next st) 3 (3, 3) times.`,
    "9/9/9",
  ],
  [
    "a clause for some sizes",
    `${sizes}Ch 11 (13, 15).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2 (sizes M and L only): Ch 1, 2 sc in first st, sc in each st across.`,
    "?/13/15",
  ],
  [
    "the turning chain named by one of its chains",
    `Ch 23.\nRow 1: Dc in 8th ch from hook, *ch 2, skip next 2 ch, dc in next ch; rep from * across, turn.\nRow 2: Ch 5 (counts as dc and ch 2), skip first dc, *dc in next dc, ch 2; rep from *, end with dc in 3rd ch, turn.`,
    "7",
  ],
  [
    "slip stitches before rows in pattern",
    `${sc(20)}Row 2: Sl st in first 3 sts, ch 1, work in patt to last 3 sts, turn. 14 sts.\nRow 3: Ch 1, sc2tog, work in patt to last 2 sts, sc2tog. 12 sts.`,
    "12",
  ],
  // Each, next, last, same
  ["each", `${sc(10)}Row 2: Ch 1, sc in each st across.`, "10"],
  ["next n", `${sc(10)}Row 2: Ch 1, sc in next 9 sts, 2 sc in last st.`, "11"],
  ["the same stitch", `${sc(10)}Row 2: Ch 1, sc in first st, sc in same st, sc in each st to end.`, "11"],
  ["to the last two", `${sc(10)}Row 2: Ch 1, sc in each st to last 2 sts, sc2tog.`, "9"],
  ["a number before the stitch", `${sc(10)}Row 2: Ch 1, 10 sc.`, "10"],
  ["a number behind the stitch", `${sc(10)}Row 2: Ch 1, sc 10.`, "10"],
  // Groups
  [
    "a group in one place",
    `${sc(10)}Row 2: Ch 1, sc in next 5 sts, (sc, hdc, sc) in next st, sc in next 4 sts.`,
    "12",
  ],
  [
    "shells over skips",
    `${sc(13)}Row 2: Ch 1, sc in first st, *sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st; rep from * across.`,
    "13",
  ],
  // Repeats
  [
    "a star and rep from star",
    `${sc(12)}Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * across.`,
    "16",
  ],
  [
    "a star to the last",
    `${sc(13)}Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * to last st, sc in last st.`,
    "17",
  ],
  [
    "a star and n times more",
    `${sc(12)}Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 3 more times.`,
    "16",
  ],
  [
    "a double star",
    `${sc(11)}Row 2: Ch 1, *sc in next 2 sts, ** 2 sc in next st; rep from * across, ending last rep at **.`,
    "14",
  ],
  ["brackets n times", `${sc(12)}Row 2: Ch 1, (sc in next 2 sts, sc2tog) 3 times.`, "9"],
  ["brackets x n", "Rnd 1: 6 sc in magic ring\nRnd 2: (inc) x 6\nRnd 3: (sc, inc) x 6", "18"],
  [
    "a repeat in a repeat",
    `${sc(12)}Row 2: Ch 1, *[sc in next st, 2 sc in next st] twice, sc in next 2 sts; rep from * across.`,
    "16",
  ],
  // Skips and chain spaces
  [
    "chains over skips",
    `${sc(9)}Row 2: Ch 1, sc in first st, *ch 1, sk 1, sc in next st; rep from * across.\nRow 3: Ch 1, sc in each st and ch-1 sp across.`,
    "9",
  ],
  [
    "chain spaces",
    `${sc(9)}Row 2: Ch 1, sc in first st, *ch 2, sk next 2 sts, sc in next 2 sts; rep from * across, turn.\nRow 3: Ch 1, *sc in next 2 sts, 2 sc in next ch-2 sp; rep from * across to last st, sc in last st.`,
    "9",
  ],
  [
    "corner spaces",
    "Note: Ch 3 counts as dc throughout.\n\nRnd 1: 4 sc in magic ring, join.\nRnd 2: Ch 3, dc in same st, ch 2, *2 dc in next st, ch 2; rep from * around, join.\nRnd 3: Sl st in next st and in ch-2 sp, ch 3, (dc, ch 2, 2 dc) in same sp, *(2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * around, join.",
    "16",
  ],
  // Loops and posts
  ["back loops", `${sc(10)}Row 2: Ch 1, sc blo in each st across.`, "10"],
  ["in back loop only", `${sc(10)}Row 2: Ch 1, working in back loops only, sc in each st across.`, "10"],
  ["the loops left free", `${sc(10)}Row 2: Ch 1, sc in front loop only of each st across, turn.`, "10"],
  ["posts", `${sc(10)}Row 2: Ch 1, *fpdc around next st, bpdc around next st; rep from * across.`, "10"],
  // Increases and decreases
  ["inc and dec", "Rnd 1: 6 sc in magic ring\nRnd 2: inc around\nRnd 3: (4 sc, dec) twice", "10"],
  ["three together", `${sc(9)}Row 2: Ch 1, *sc3tog; rep from * across.`, "3"],
  ["at each end", `${sc(10)}Row 2: Work in sc, inc 1 st at each end.`, "12"],
  [
    "at each end, told after the stitches",
    `${sc(10)}Row 2: Ch 1, sc across, inc 1 sc at beg and end of row.`,
    "12",
  ],
  [
    "lost at each end, told after the stitches",
    `${sc(10)}Row 2: Ch 1, sc across, decreasing 1 st at each end.`,
    "8",
  ],
  ["in first and last st", `${sc(10)}Row 2: 2 sc in first and last st, sc in each st between.`, "12"],
  [
    "in first and last st, told last",
    `${sc(10)}Row 2: Ch 1, sc in each st across, inc in first and last st.`,
    "12",
  ],
  ["all other sts", `${sc(10)}Row 2: Inc in 1st and last sc, sc in all other sc.`, "12"],
  ["2 tog", `${sc(10)}Row 2: Ch 1, work 2 tog over next 2 sts, sc in next 6 sts, 2 sts tog.`, "8"],
  ["3 together", `${sc(10)}Row 2: Ch 1, sc in next 7 sts, 3 sts together.`, "8"],
  [
    "a decrease over the same stitch and the next",
    `${sc(10)}Row 2: Ch 1, sc in first st, dec over same st and next st, sc in next 8 sts.`,
    "10",
  ],
  [
    "a decrease over two places",
    `${sc(10)}Row 2: Ch 1, sc in next 8 sts, dec over next st and last st.`,
    "9",
  ],
  [
    "an edge kept straight",
    `${sc(10)}Keeping side edge straight, dec 1 st at neck edge every row 3 times.`,
    "7",
  ],
  ["evenly with a number", `${sc(20)}Row 2: Ch 1, sc across, increasing 5 sts evenly.`, "25"],
  // Targets
  [
    "beg sc",
    "Rnd 1: 8 sc in magic ring, join with sl st in beg sc.\nRnd 2: Ch 1, 2 sc in each st around, join to beg sc.",
    "16",
  ],
  [
    "between stitches",
    `${sc(10)}Row 2: Ch 1, sc in first st, sc between each st across, sc in last st.`,
    "11",
  ],
  [
    "in gaps between shells",
    `${sc(13)}Row 2: Ch 1, sc in first st, *sk 2, shell in next st, sk 2, sc in next st; rep from * across.\nRow 3: Ch 3 (counts as dc), 3 dc in sp between next 2 shells, dc in last sc.`,
    "5",
  ],
  [
    "the middle of a corner as a limit",
    "Rnd 1: Ch 1, 8 sc in magic ring, join with sl st in first sc.\nRnd 2: Ch 1, (sc in next sc, 3 sc in next sc) 4 times, join.\nRnd 3: Ch 1, *sc in each sc to center sc of next corner, 3 sc in center sc; rep from * 3 more times, sc in each sc to end, join.",
    "24",
  ],
  ["a corner where the hook is", `${sc(10)}Row 2: Ch 1, sc in each st across, 2 sc in corner.`, "12"],
  [
    "a gloss between a stitch and its place",
    `${sc(10)}Row 2: Ch 1, single crochet (sc) in next 4 sts, half double crochet (hdc) in next 6 sts.`,
    "10",
  ],
  [
    "what the row is made of, said before",
    `${sc(20)}Row 2: Ch 1 and working in hdc, inc 5 hdc evenly.`,
    "25",
  ],
  ["to within the last", `${sc(10)}Row 2: Ch 1, work to within last 3 sts, turn.`, "7"],
  ["goes on across", `${sc(10)}Row 2: Sl st across 1st 3 sts and continue across.`, "7"],
  [
    "loops of the chain, said before",
    "Ch 11.\nRow 1: Working in back bar of each ch, sc in 2nd ch from hook and in each ch across.",
    "10",
  ],
  [
    "around the vertical bar",
    `${sc(10)}Row 2: Ch 1, sc in first st, dc around vertical bar of next sc, sc in next 8 sts.`,
    "10",
  ],
  ["a part of the row by its name", `${sc(10)}Row 2: Ch 1, sc in next 4 sc for gusset, ch 1, turn.`, "4"],
  [
    "a round closed by a stitch",
    "Rnd 1: Ch 1, (sc, ch 4) 5 times in magic ring, sc in ring, ch 2, hdc in first sc.\nRnd 2: Ch 1, sc in same sp, (ch 4, sc in next ch-4 sp) 5 times, ch 2, hdc in first sc to join.",
    "6",
  ],
  [
    "back where the round began",
    "Rnd 1: 12 sc in magic ring, join.\nRnd 2: *Ch 5, sk 1, sc in next sc; rep from * 4 more times, ch 3, dc in same place as beginning.",
    "5",
  ],
  [
    "rows on a part of a round",
    "Rnd 1: 12 sc in magic ring, join.\nRow 2: Ch 1, sc in next 5 sts, turn.",
    "5",
  ],
  // Repeats
  [
    "across, parted from the steps",
    "Rnd 1: 12 sc in magic ring.\nRnd 2: Sc in next 3 sc, 2 sc in next sc, around.",
    "15",
  ],
  [
    "a star lost on the page",
    `${sc(10)}Row 2: Ch 1, *sc in next st, ch 1, sk 1; rep from to last 2 sts, sc in last 2 sts.`,
    "6",
  ],
  [
    "in all, in brackets",
    `${sc(12)}Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; repeat until 3 times (4 in total).`,
    "16",
  ],
  ["work * to *", `${sc(10)}Row 2: Ch 1, sc in first st, *sc2tog, sc in next st*; work * to * across.`, "7"],
  [
    "the last chain left out",
    `${sc(10)}Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * across, omitting last ch 1.\nRow 3: Ch 1, sc in first sc, *2 sc in next ch-1 sp, sc in next sc; rep from * across.`,
    "13",
  ],
  [
    "stitches left out of the last repeat",
    `${sc(13)}Row 2: Ch 1, *ch 2, sk 2, hdc in next 3 sts; rep from * to end, omitting 2 hdc at end of last rep.`,
    "7",
  ],
  [
    "a chain that every turn of a repeat makes",
    "Note: Ch 1 does not count as a st.\n\nRnd 1: 12 sc in magic ring, join.\nRnd 2: *Ch 2, sk 1 sc, sc in next sc; rep from * around, join.\nRnd 3: Ch 1, 3 sc in each ch-2 sp around, join.",
    "18",
  ],
  [
    "the last stitch of a repeat by its place",
    "Note: Ch 3 counts as dc, ch 4 counts as dc, ch 1.\n\nCh 11.\nRow 1: Dc in 4th ch from hook and in each ch across, turn. (9 dc)\nRow 2: Ch 4, dc in next dc, *ch 1, dc in next dc; rep from * across, working last dc in top of ch 3, turn. (9 dc, 8 ch-1 sps)",
    "9",
  ],
  [
    "over all of it, with the way said before",
    `${sc(9)}Row 2: Ch 1, sc in first st, *ch 2, sk 1, sc in next st; rep from * across, turn.\nRow 3: Ch 1, sc in each sc across, 2 sc in each ch-2 sp, turn.`,
    "13",
  ],
  [
    "a picot of slip stitches in mid row",
    `${sc(10)}Row 2: Ch 1, *sc in next st, ch 3, sl st in 3rd ch from hook, sc in next st; rep from * across, turn.`,
    "10",
  ],
  // Turning chains
  [
    "a turning chain that counts",
    "Note: Ch 3 counts as a dc throughout.\n\nCh 12.\nRow 1: Dc in 4th ch from hook and in each ch across, turn.\nRow 2: Ch 3, dc in next st and in each st across.",
    "10",
  ],
  [
    "a turning chain that counts, told in the row",
    "Ch 12.\nRow 1: Dc in 4th ch from hook and in each ch across, turn.\nRow 2: Ch 3 (counts as dc), sk first st, dc in each st across.",
    "10",
  ],
  [
    "a turning chain that does not",
    "Note: Ch 2 does not count as a st.\n\nCh 12.\nRow 1: Hdc in 3rd ch from hook and in each ch across, turn.\nRow 2: Ch 2, hdc in each st across.",
    "10",
  ],
  // Rounds
  [
    "joined rounds",
    "Rnd 1: Ch 1, 6 sc in magic ring, join with sl st in first sc.\nRnd 2: Ch 1, 2 sc in each st around, join with sl st in first sc.",
    "12",
  ],
  [
    "spirals",
    "Rnd 1: 6 sc in magic ring. Do not join.\nRnd 2: 2 sc in each st around.\nRnd 3: (Sc in next st, 2 sc in next st) around.",
    "18",
  ],
  [
    "both sides of a chain",
    "Ch 6.\nRnd 1: 2 sc in 2nd ch from hook, sc in next 3 ch, 4 sc in last ch, working along other side of ch, sc in next 3 ch, 2 sc in last ch.",
    "14",
  ],
  // Rows again
  ["a range of rows", `${sc(10)}Rows 2-5: Ch 1, sc in each st across, turn.`, "10"],
  [
    "rows listed with and",
    `${sc(10)}Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.\nRows 3 and 4: Rep Row 2.`,
    "13",
  ],
  [
    "repeat a row",
    `${sc(10)}Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.\nRep Row 2 3 more times.`,
    "14",
  ],
  [
    "repeat the last two rows",
    `${sc(10)}Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.\nRow 3: Ch 1, sc in each st across, turn.\nRep last 2 rows 2 times more.`,
    "13",
  ],
  [
    "as another row",
    `${sc(10)}Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.\nRow 3: As row 2.`,
    "12",
  ],
  ["work even", `${sc(10)}Rows 2-7: Work even in sc.`, "10"],
  ["a schedule", `${sc(20)}Rows 2-25: Work in sc, inc 1 st each end of every 4th row 6 times.`, "32"],
  // Ends of rows
  [
    "stitches left unworked",
    `${sc(10)}Row 2: Ch 1, sc in next 7 sts, leave remaining 3 sts unworked, turn.\nRow 3: Ch 1, sc in each st across.`,
    "7",
  ],
  [
    "slip stitches across",
    `${sc(10)}Row 2: Sl st in first 3 sts, ch 1, sc in next 4 sts, turn, leaving remaining sts unworked.`,
    "4",
  ],
  [
    "rejoining at a place",
    `${sc(20)}Row 2: Ch 1, sc in next 8 sts, leave remaining sts unworked. Fasten off.\nRow 3: Skip next 4 unworked sts, rejoin yarn in next st, ch 1, sc in same st and in next 7 sts.`,
    "8",
  ],
  // UK terms
  ["UK double crochet", `${UK(10)}Row 2: 1 ch, 1 dc in each dc to end, turn.`, "10"],
  [
    "UK treble",
    `${UK(10)}Row 2: 3 ch (counts as 1 tr), miss first st, 1 tr in each of next 9 sts, turn.`,
    "10",
  ],
  [
    "UK miss",
    `${UK(9)}Row 2: 1 ch, 1 dc in first st, *1 ch, miss 1 st, 1 dc in next st; rep from * to end, turn.\nRow 3: 1 ch, 1 dc in each st and 1-ch sp to end.`,
    "9",
  ],
  ["UK decrease", `${UK(10)}Row 2: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog.`, "8"],
  // Words of their own
  [
    "a stitch defined in the pattern",
    "Special stitches\nShell: 5 dc in next st.\n\nNote: Ch 1 does not count as a st throughout.\n\nCh 14.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in first st, *sk 2 sts, shell, sk 2 sts, sc in next st; rep from * across.",
    "13",
  ],
];

describe("every way of writing a row", () => {
  it.each(ROWS)("%s", (_what, pattern, count) => {
    expect(last(pattern)).toBe(count);
    expect(found(pattern)).toEqual([]);
  });
});

it("takes a loop that nobody said before for a ring", () =>
  expect(counts("UK terms.\n\nRnd 1: 12 dc into loop, join with ss in first dc.")).toBe("Rnd 1: 12"));

it("holds a total that is the sum of its parts by the parts", () => {
  const row = "Row 2: Ch 1, sc in first st, *ch 1, sk 1, sc in next st; rep from * across, turn.";
  const plain = "Row 3: Ch 1, sc in each sc, leaving the ch-1 sps unworked, turn. 5 sts.";
  expect(found(`${sc(9)}${row} (9 sts: 5 sc and 4 ch-1 sps)\n${plain}`)).toEqual([]);
  expect(found(`${sc(9)}${row} (10 sts: 6 sc and 4 ch-1 sps)`)).toEqual(["rows/count-differs Row 2"]);
});

it("works a small ring of chains chain by chain where the row says so", () =>
  expect(
    counts(
      "Ch 12, join with sl st to form a ring.\nRnd 1: Ch 1, sc in each ch around, join with sl st in first sc.",
    ),
  ).toBe("Rnd 1: 12"));

it("does not let a round close over stitches that it left, even where the printed count agrees", () =>
  expect(
    found(
      "Rnd 1: 6 sc in magic ring. [6]\nRnd 2: 2 sc in each st around. [12]\nRnd 3: Sc in next 10 sts. [10]",
    ),
  ).toEqual(["rows/stitches-left-over Rnd 3"]));

it("takes stitches for the row's count that are just what it has and fit nowhere else", () => {
  expect(
    found(`${sc(20)}Row 2: Ch 1, sc in next 14 sts. 14 sc. Leave the remaining 6 unworked. Turn.`),
  ).toEqual([]);
  expect(last(`${sc(20)}Row 2: Ch 1, sc in next 10 sts. 10 sc.`)).toBe("20");
});

it("holds a list of counts behind a range by the rows in turn", () => {
  const rows =
    "Rnd 1: 6 sc in magic ring. 6 sc\nRnd 2: 2 sc in each sc. 12 sc\nRnd 3: Sc in each sc around, increase evenly by 4 sc. 16 sc\n";
  expect(found(`${rows}Rnds 4-5: Repeat Rnd 3. 20, 24 sc`)).toEqual([]);
  expect(found(`${rows}Rnds 4-5: Repeat Rnd 3. 20, 25 sc`)).toEqual(["rows/count-differs Rnds 4-5"]);
});

it("shapes two edges in the same rows", () =>
  expect(last(`${sc(20)}Dec 1 st at front and 2 at armhole every row 3 times.`)).toBe("11"));

it("calls a round cut short, joins it and goes on", () =>
  expect(
    counts(
      "Rnd 1: 6 sc in magic ring, do not join in this or following rnds.\nRnd 2: 2 sc in each sc.\nRnd 3: Sc in each sc.\nRnd 4: Repeat rnd. 3, join with sl st to beg sc, ch 1, do not turn.\nRnd 5: Sc in each sc around.",
    ),
  ).toBe("Rnd 1: 6, Rnd 2: 12, Rnd 3: 12, Rnd 4: 12, Rnd 5: 12"));

it("holds a count whose own words say that it is one", () =>
  expect(found(`${sc(20)}Row 2: Ch 1, sc in next 18 sts, sc2tog. 18 sc remain. Do not turn.`)).toEqual([
    "rows/count-differs Row 2",
  ]));

it("counts stitches beside shells apart from those within them", () => {
  const row =
    "Row 2: Ch 3 (counts as dc), *sk 2, (dc, ch 1, dc) in next st (V-st made); rep from * to last 3 sts, sk 2, dc in last st, turn.";
  expect(found(`${sc(13)}${row} (3 V-sts, 2 dc)`)).toEqual([]);
  expect(found(`${sc(13)}${row} (3 V-sts, 3 dc)`)).toEqual(["rows/count-differs Row 2"]);
});

it("finds a count that names another plain stitch than the row is made of", () => {
  expect(found(`${sc(10)}Row 2: Ch 1, sc in each st across, turn. 10 hdc.`)).toEqual([
    "rows/count-differs Row 2",
  ]);
  expect(found(`${sc(10)}Row 2: Ch 1, sc2tog, sc in each st across, turn. 9 sc.`)).toEqual([]);
});

describe("a border over joined pieces, whose edge nobody tells", () => {
  const border = (times: string): string =>
    "SPECIAL STITCHES\nGroup: 3 dc in the same sp.\n\nBORDER\nWith RS facing, join yarn at one corner of the blanket.\n" +
    `Rnd 1: Ch 1, (2 dc, ch 2, 2 dc) in corner sp, (group in next sp, ch 1) ${times}, 2 dc in next corner sp; join with sl st in first dc. 21 dc, 1 ch-2 sp, 5 ch-1 sps.`;

  it("counts the places that are named one by one", () => {
    expect(last(border("5 times"))).toBe("21");
    expect(found(border("5 times"))).toEqual([]);
    expect(found(border("6 times"))).toEqual(["rows/count-differs Rnd 1", "rows/count-differs Rnd 1"]);
  });
});

it("works a tube laid flat through both layers, counted or not", () => {
  const tip = (count: string): string =>
    `Rnd 1: 10 sc in magic ring. [10]\nRnd 2: Sc in each st around. [10]\nRnd 3: Flatten the tip and work 5 sc through both layers${count}\nFasten off.`;
  expect(found(tip(" [5]"))).toEqual([]);
  expect(found(tip(""))).toEqual([]);
});

it("begins at a seam on an edge of its own, and not on the last row", () =>
  expect(
    found(
      "NECKBAND\nWith RS facing, attach yarn at right shoulder seam.\nRnd 1: Ch 1, sc in each of 30 sts of back, 28 sc along front edge; join with sl st in first sc. Fasten off.\n\nCUFFS\nWith RS facing, attach yarn at top of side seam.\nRnd 1: Ch 1, 22 sc up to shoulder seam, 22 sc down to underarm; join with sl st in first sc. (44 sc)\nRnd 2: Ch 1, sc in each sc around; join with sl st in first sc. (44 sc)",
    ),
  ).toEqual([]));

it("misses the first row of an edging whose rows begin at 2", () => {
  const edging = (rows: string): string =>
    `Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. Fasten off. 8 sts.\n\nEDGING\nWith RS facing, join yarn with a sl st in the first row end of the side.\n${rows}Row 2: Ch 1, sc in each st across. 14 sts.`;
  expect(found(edging("Row 1: Ch 1, 14 sc evenly along the edge, turn. 14 sts.\n"))).toEqual([]);
  expect(found(edging(""))).toEqual(["rows/number-skips Row 2"]);
});

describe("the eight ways of printing a count", () => {
  const ways = [
    "10 sts.",
    "(10 sts)",
    "[10]",
    "- 10 sc",
    "– 10 sts",
    "= 10 sts",
    "10 sc in total.",
    "You should have 10 sts.",
  ];
  const row = "Row 2: Ch 1, sc in each st across, turn";

  it.each(ways)("holds %s", (way) => {
    expect(found(`${sc(10)}${row}. ${way}`)).toEqual([]);
    expect(found(`${sc(10)}${row}. ${way.replace("10", "11")}`)).toEqual(["rows/count-differs Row 2"]);
  });
});

describe('rows by name under "Next rows"', () => {
  const rounds = (times: number, end: number): string =>
    "Ch 20, join with a sl st in first ch.\nRnd 1: Ch 1, sc in each ch around; join. 20 sc.\n" +
    "Narrowing rnd: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog; join. 2 sts decreased.\n" +
    `Next rnds: Work the Narrowing rnd ${times} times. ${end} sc.`;

  it("are worked as often as their own words say, also never", () => {
    expect(found(rounds(0, 20))).toEqual([]);
    expect(found(rounds(3, 14))).toEqual([]);
    expect(found(rounds(3, 16))).toEqual(["rows/count-differs Next rnds"]);
  });

  it("stand in turn with a numbered row", () => {
    const rows = (end: number): string =>
      `${sc(10)}Row 2: Ch 1, sc in each st across, turn. 10 sts.\nWide row: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 2 sts increased.\n` +
      `Next rows: Work (Row 2, Wide row) 3 times. ${end} sts.`;
    expect(found(rows(16))).toEqual([]);
    expect(found(rows(13))).toEqual(["rows/count-differs Next rows"]);
  });

  it("take no side from the word itself", () => {
    const text = `${sc(10)}Row 2 (WS): Ch 1, sc in each st across, turn.\nNext rows: Rep Row 2 twice.`;
    expect(found(text)).toEqual([]);
  });
});

it("closes a round by a slip stitch with no place, with its count behind a full stop", () => {
  const rounds = (count: string): string =>
    `3 ch at beg of rounds counts as 1 tr, 1 ch does not count.\n\nUK terms.\n\nMake 5 ch, ss into a ring.\nRound 1: 3 ch, 9 tr into ring, ss. 10 tr.\nRound 2: 3 ch, 1 tr into same place, 2 tr into each tr to end, ss. ${count} tr.`;
  expect(found(rounds("20"))).toEqual([]);
  expect(found(rounds("21"))).toEqual(["rows/count-differs Round 2"]);
});

it("reads counts behind the stop of an abbreviation", () => {
  const rows = (count: number): string =>
    `CH 12.\n1ST ROW: 1 S. C. IN 2D CH FROM HOOK AND IN EACH CH, 11 S. C. CH 1, TURN.\n2D ROW: 2 S. C. IN EACH OF NEXT 2 S. C., 1 S. C. IN EACH REMAINING S. C. ${count} S. C. CH 1, TURN.`;
  expect(found(rows(13))).toEqual([]);
  expect(found(rows(14))).toEqual(["rows/count-differs 2D ROW"]);
});

it("takes a row that is said to differ from another on trust, and not for that row", () => {
  const rounds = (said: string): string =>
    `Note: Rounds are not joined.\n\nRnd 1: 5 sc in magic ring. (5)\nRnd 2: 2 sc in each st. (10)\nRnd 3: (sc in next st, 2 sc in next st) 5 times. (15)\nRnd 4: ${said} (20)\nRnd 5: sc in each st. (20)`;
  expect(found(rounds("As Rnd 3 but working 1 more sc between increases."))).toEqual([]);
  expect(found(rounds("As Rnd 3."))).not.toEqual([]);
});

it("ends the rows that are called at a dash with a count behind it", () => {
  const rows = (count: number): string =>
    `${sc(10)}Row 2: Ch 1, sc in each st to last st, 2 sc in last st, turn.\nRow 3: Rep Row 2\u2014${count} sc.`;
  expect(found(rows(12))).toEqual([]);
  expect(found(rows(13))).toEqual(["rows/count-differs Row 3"]);
});

it("begins a ring of its own under no heading", () =>
  expect(
    counts(
      "Note: Ch 3 counts as dc.\n\nRnd 1: Ch 3, 9 dc in magic ring, join.\nRnd 2: Ch 1, sc in each dc around, join. Fasten off.\nThe back is plain.\nRnd 1: Ch 3, 7 dc in magic ring, join.",
    ),
  ).toBe("Rnd 1: 10, Rnd 2: 10, Rnd 1: 8"));

it("works into a ring told in a sentence of its own", () =>
  expect(
    counts("Note: Ch 3 counts as dc.\n\nBegin with a magic ring.\nRow 1: Ch 3, 8 dc in ring, turn."),
  ).toBe("Row 1: 9"));

it("works a stretch in pattern, and no rows of it", () => {
  const rows = (words: string): string =>
    `${sc(12)}Row 2: Ch 1, work in patt over first 7 sts, turn. Leave remaining sts unworked. (7 sts)\nRow 3: Sl st across first 2 sts, ch 1, ${words}, turn. (5 sts)`;
  expect(found(rows("patt to end"))).toEqual([]);
  expect(found(rows("patt across next 4 sts"))).not.toEqual([]);
});

it("asks no join of rounds behind one that says there is none", () => {
  const ear = (said: string): string =>
    `Rnd 1: 6 sc in magic ring, join.\nRnd 2: Ch 1, 2 sc in each sc, join.\nRnd 3: Ch 1, sc in each sc, join.\nRnd 4: Ch 1, sc in each sc, join.\nRnd 5: Ch 1, sc in each sc, join.\nRnd 6: Ch 1, sc in each sc, join.\nRnd 7: Ch 1, sc in each sc, join. Fasten off.\n\nEAR\nRnd 1: 5 sc in magic ring.${said}\nRnd 2: 2 sc in each sc.\nRnd 3: Sc in each sc.`;
  expect(found(ear(" Do not join."))).toEqual([]);
  expect(found(ear(""))).not.toEqual([]);
});

it("takes rows that go on by a rule of their own as not read", () => {
  const cap =
    "Note: Rounds are not joined.\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each sc. (12)\nRnd 3: (sc in next sc, 2 sc in next sc) 6 times. (18)\nContinue in this manner, working 1 more sc between increases on each rnd, until there are 42 sc.\nRnd 8: (sc in next 5 sc, sc2tog) 6 times. (36)";
  expect(found(cap)).toEqual([]);
});

it("leaves the last row bare behind which a round goes into one before it", () =>
  expect(
    found(
      "Rnd 1: 8 sc in magic ring, join.\nRnd 2: Ch 1, 3 dc in each sc around, join. (24 dc)\nRnd 3: *Ch 4, sc in next sc of Rnd 1; rep from * 7 more times, join. (8 ch-4 sps)",
    ),
  ).toEqual([]));

it("reads what is shaped at each end before what is worked across, and a count told with its place", () => {
  const rows = (end: number): string =>
    `${sc(26)}Row 2: Ch 1, dec 1 st at each end, sc across. (24 sc)\nRow 3: Sl st in first 3 sts, sc to within last 3 sts - ${end} sc for back of neck. Break off.`;
  expect(found(rows(18))).toEqual([]);
  expect(found(rows(17))).toEqual(["rows/count-differs Row 3"]);
});

it("works the last stitch of a row in the top of the skipped chain", () =>
  expect(
    found(
      "Ch 20.\nRow 1: Dc in 4th ch from hook (3 skipped ch count as dc), dc in each ch across, turn. (18 dc)\nRow 2: Ch 1, sc in each dc across, working the last sc in the top of the skipped ch-3, turn. (18 sc)",
    ),
  ).toEqual([]));

it("goes on with rows of its own after a piece made as another", () => {
  const spots = (count: number): string =>
    `SPOTS\nSmall: 7 sc in magic ring, sl st in first sc. (7)\nLarge: work as small, then 2 sc in each st around, sl st in first sc. (${count})`;
  expect(found(spots(14))).toEqual([]);
  expect(found(spots(7))).toEqual(["rows/count-differs"]);
});

it('works "Last 2 rnds" like any other', () => {
  const cuff = (count: number): string =>
    `Ch 22, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join. (22 sc)\nLast 3 rnds: Ch 1, hdc in each st around, join. (${count} hdc)`;
  expect(found(cuff(22))).toEqual([]);
  expect(found(cuff(23))).toEqual(["rows/count-differs Last 3 rnds"]);
});
