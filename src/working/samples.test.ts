import { expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./index.ts";
import type { WorkedLine, WorkedPattern } from "./worked.ts";

const work = (...rows: string[]): WorkedPattern => workPattern(readPattern(rows.join("\n")));
const lines = (worked: WorkedPattern): readonly WorkedLine[] => worked.pieces.flatMap((piece) => piece.lines);
/** Counts of the rows with how they grow: "25+4" is 25 sts and 4 more with each repeat more. */
const counts = (worked: WorkedPattern): string =>
  lines(worked)
    .map((line) => `${line.stitches[0]}${line.sample ? `+${line.sample.perRepeat[0] ?? "?"}` : ""}`)
    .join(" ");
const faults = (worked: WorkedPattern): readonly string[] =>
  worked.findings.filter((finding) => finding.severity !== "note").map((finding) => finding.code);

it("works a chain that is told as a multiple on a sample of some repeats", () => {
  const worked = work(
    "Ch a multiple of 6 sts plus 2.",
    "Row 1: Sc in 2nd ch from hook and in each ch across, turn.",
    "Row 2: Ch 1, sc in first sc, *ch 5, skip next 5 sc, sc in next sc; rep from * across, turn.",
  );
  // By hand: 5 repeats are 32 chains and 31 sc; 1 + 5 sc stand between the arches.
  expect(counts(worked)).toBe("32+6 31+6 6+1");
  expect(faults(worked)).toEqual([]);
});

it("adds the base chain that the words add, wherever the rule stands", () => {
  const worked = work(
    "Multiple of 5 + 1 (add 2 for base chain)",
    "Row 1: Skip 3 ch (count as 1 dc), *dc in each of next 5 ch; rep from * to end, turn.",
  );
  // By hand: 5 repeats and 3 more are 28 chains; the first three stand for one dc.
  expect(counts(worked)).toBe("26+5");
  expect(faults(worked)).toEqual([]);
});

it("finds a repeat that does not close on the multiple", () => {
  const worked = work(
    "Trellis (worked over a multiple of 6 sts + 1)",
    "Row 1: Ch 1, sc in first st, *ch 4, skip next 4 sts, sc in next st; rep from * across, turn.",
  );
  expect(faults(worked)).toEqual(["rows/repeat-leaves-stitches"]);
});

it("looks for a width on which the rows close where none is told", () => {
  const worked = work(
    "Stitch pattern:",
    "Row 1: Ch 1, sc in first sc, *dc in next sc, sc in next sc; rep from * across, turn.",
    "Row 2: Ch 1, sc in each st across, turn.",
    "",
    "BACK: Ch 12.",
    "Row 1: Sc in 2nd ch from hook and in each ch across, turn. 11 sts.",
  );
  expect(lines(worked)[0]?.stitches[0]).toBe(25);
  expect(lines(worked)[0]?.sample?.repeats).toBe(null);
  expect(lines(worked)[2]?.sample).toBe(undefined);
  expect(faults(worked)).toEqual([]);
});

it("keeps two stitch patterns apart, each on its own multiple", () => {
  const worked = work(
    "Rib - multiple of 4 chains + 1",
    "Row 1: Dc in 4th ch from hook and in each ch across, turn.",
    "Fan - multiple of 6 chains + 2",
    "Row 1: Sc in 2nd ch from hook, *skip next 2 ch, 5 dc in next ch, skip next 2 ch, sc in next ch; rep from * across, turn.",
  );
  expect(counts(worked)).toBe("23+4 31+6");
  expect(faults(worked)).toEqual([]);
});

it("works the rows of a stitch pattern where a piece calls them by name", () => {
  const worked = work(
    "Step pattern (over an odd number of sts)",
    "Row 1: Ch 1, sc in each st across, turn.",
    "Row 2: Ch 1, sc in first sc, *ch 1, skip next sc, sc in next sc; rep from * across, turn.",
    "",
    "Sleeve",
    "Ch 32.",
    "Row 1: Sc in 2nd ch from hook and in each ch across, turn. 31 sts.",
    "Beginning with Row 2, work 1 row in Step pattern.",
  );
  // By hand: of 31 sc every second one is left under a chain.
  expect(lines(worked).at(-1)?.stitches[0]).toBe(16);
  expect(faults(worked)).toEqual([]);
});

it("makes fewer stitches of the last kind in the last repeat where they are left out", () => {
  const worked = work(
    "Ch 26.",
    "Row 1: Sc in 2nd ch from hook and in each ch across, turn. 25 sts.",
    "Row 2: Ch 1, sc in each of first 4 sts, *ch 2, skip next 2 sts, sc in each of next 5 sts; rep from * to end, omitting 0 sc at end of last rep, turn.",
  );
  expect(faults(worked)).toEqual([]);
});
