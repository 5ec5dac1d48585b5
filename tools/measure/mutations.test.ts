import { expect, it } from "vitest";
import { readPattern } from "../../src/notation/index.ts";
import { type Kind, mutate } from "./mutation.ts";
import { drawEvenly, mutationsOf } from "./mutations.ts";

const PATTERN = `TRIAL PIECE

Sizes: S (M, L)
Hook: 5 mm.

NOTES
The turning ch 1 does not count as a stitch.

STRIP
With 5 mm hook, ch 11 (13, 15).
Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 10 (12, 14) sts.
Row 2 (WS): Ch 1, sc BLO in each st across, turn. 10 (12, 14) sts.
Row 3 (RS): Ch 1, *sc in next st, skip next st; rep from * to last 2 sts, 2 sc in next st, sc2tog, turn.
Row 4 (WS): Ch 1, sc in each st across. Fasten off.
`;

const tree = readPattern(PATTERN);
const changes = mutationsOf(tree);
const lines = (kind: Kind, harmless = false) =>
  changes
    .filter((change) => change.kind === kind && (change.harmless !== undefined) === harmless)
    .map(
      (change) =>
        mutate(PATTERN, change).split("\n")[PATTERN.slice(0, change.span.from).split("\n").length - 1],
    );

it("changes numbers by one, of a list one size at a time", () => {
  const chained = lines("number in a row").filter((line) => line?.includes("hook, ch"));
  expect(chained.length).toBe(4);
  for (const line of chained) expect(line).toMatch(/^With 5 mm hook, ch \d+ \(\d+, \d+\)\.$/);
  expect(lines("number in a row")).toContain(
    "Row 1 (RS): Sc in 3rd ch from hook and in each ch across, turn. 10 (12, 14) sts.",
  );
  expect(lines("repeat's stop").map((line) => /to last \d/.exec(line ?? "")?.[0])).toEqual([
    "to last 1",
    "to last 3",
  ]);
  expect(lines("number in a label").filter((line) => line?.startsWith("Row 5 (WS)")).length).toBe(1);
});

it("exchanges neighbouring sizes", () =>
  expect(lines("sizes swapped")).toContain("With 5 mm hook, ch 13 (11, 15)."));

it("leaves out skips, turns and rows", () => {
  expect(lines("skip dropped")).toEqual([
    "Row 3 (RS): Ch 1, *sc in next st; rep from * to last 2 sts, 2 sc in next st, sc2tog, turn.",
  ]);
  expect(lines("turn dropped")).toContain("Row 2 (WS): Ch 1, sc BLO in each st across. 10 (12, 14) sts.");
  expect(changes.filter(({ kind }) => kind === "row deleted").length).toBe(5);
});

it("replaces stitches, and increases by decreases", () => {
  const third = lines("stitch replaced").filter((line) => line?.startsWith("Row 3"));
  expect(third.map((line) => line?.slice(19))).toEqual([
    "sc2tog in next st, skip next st; rep from * to last 2 sts, 2 sc in next st, sc2tog, turn.",
    "sc in next st, skip next st; rep from * to last 2 sts, 2 sc2tog in next st, sc2tog, turn.",
    "sc in next st, skip next st; rep from * to last 2 sts, sc in next st, sc2tog, turn.",
    "sc in next st, skip next st; rep from * to last 2 sts, 2 sc in next st, sc, turn.",
  ]);
  expect(lines("increase for decrease").map((line) => line?.slice(-25))).toEqual([
    "o last 2 sts, sc2tog, sc2tog, turn.".slice(-25),
    "st, 2 sc in next st, turn.".slice(-25),
  ]);
});

it("exchanges sides, and hooks for one that is not listed", () => {
  expect(lines("side tag").map((line) => line?.slice(0, 10))).toEqual([
    "Row 1 (WS)",
    "Row 2 (RS)",
    "Row 3 (WS)",
    "Row 4 (RS)",
  ]);
  expect(lines("hook size")).toEqual(["With 6 mm hook, ch 11 (13, 15)."]);
});

it("keeps out what harms nobody, by hand-written reasons", () => {
  expect(lines("loop exchanged", true)).toEqual([
    "Row 2 (WS): Ch 1, sc FLO in each st across, turn. 10 (12, 14) sts.",
  ]);
  expect(lines("number in a row", true).filter((line) => line?.includes("Ch 2")).length).toBe(3);
});

it("counts a loop as a fault where a later row uses the loop left free", () => {
  const later = `${PATTERN}\nEDGE\nWith RS facing, join yarn in the free front loop of Row 1.\nRow 1: Ch 1, sc in each free loop across.\n`;
  const loops = mutationsOf(readPattern(later)).filter(
    ({ kind, words }) => kind === "loop exchanged" && words.startsWith("BLO"),
  );
  expect(loops.map(({ harmless }) => harmless)).toEqual([undefined]);
});

it("draws the same ones for the same seed, some of every kind", () => {
  const faults = changes.filter(({ harmless }) => !harmless);
  const drawn = drawEvenly(faults, 30, 7);
  expect(drawEvenly(faults, 30, 7)).toEqual(drawn);
  expect(drawEvenly(faults, 30, 8)).not.toEqual(drawn);
  expect(new Set(drawn.map(({ kind }) => kind))).toEqual(new Set(faults.map(({ kind }) => kind)));
  expect(new Set(drawn).size).toBe(drawn.length);
});

it("keeps a turn that begins a row among the faults, and one behind the last row out", () => {
  const rows = (last: string) =>
    `STRIP\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n${last}\nFasten off.\n`;
  const turns = (last: string) =>
    mutationsOf(readPattern(rows(last)))
      .filter(({ kind }) => kind === "turn dropped")
      .map(({ harmless }) => harmless !== undefined);
  expect(turns("Row 2: Turn, ch 1, sc in each st across.")).toEqual([false]);
  expect(turns("Row 2: Ch 1, sc in each st across, turn.")).toEqual([true]);
});

it("keeps out a number that only says where in its row something lies", () => {
  const numbers = (row: string) =>
    mutationsOf(
      readPattern(
        `STRIP\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${row}\nFasten off.\n`,
      ),
    )
      .filter(({ kind, words }) => kind === "number in a row" && words.startsWith("4"))
      .map(({ harmless }) => harmless !== undefined);
  expect(numbers("Row 2: Ch 1, sc in next 4 sts, 2 sc in next st, sc in each st across.")).toEqual([
    true,
    true,
  ]);
  expect(numbers("Row 2: Ch 1, sc in next 4 sts, 2 sc in next st, sc in next 5 sts.")).toEqual([
    false,
    false,
  ]);
});
