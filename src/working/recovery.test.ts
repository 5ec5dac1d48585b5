import { expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./index.ts";
import type { WorkedLine, WorkedPattern } from "./worked.ts";

const NOTE = "Note: Ch 1 does not count as a st throughout.\n\n";
const work = (...rows: string[]): WorkedPattern => workPattern(readPattern(NOTE + rows.join("\n")));
const lines = (worked: WorkedPattern): readonly WorkedLine[] => worked.pieces.flatMap((piece) => piece.lines);
/** Counts, with "t" behind those on trust and "?" for those not known. */
const counts = (worked: WorkedPattern): string =>
  lines(worked)
    .map((line) => `${line.stitches[0] ?? "?"}${line.trust ? "t" : ""}`)
    .join(" ");
const errors = (worked: WorkedPattern): readonly string[] =>
  worked.findings.filter(({ severity }) => severity === "error").map(({ code, row }) => `${code} ${row}`);

const UNREAD = "Row 2: Ch 1, flip the loop over the bar, sc in each st across, turn.";
const START = ["Ch 13.", "Row 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts."];

it("tells the edge below from the row's own count, where only one fits", () => {
  // By hand: 2 sc and a decrease of every 4 make 3, so 9 were 12.
  const worked = work(
    ...START,
    UNREAD,
    "Row 3: Ch 1, *sc in next 2 sts, sc2tog; rep from * across, turn. 9 sts.",
    "Row 4: Ch 1, 2 sc in each st across. 18 sts.",
  );
  expect(counts(worked)).toBe("13 12 ? 9t 18");
  expect(errors(worked)).toEqual([]);
});

it("takes the printed count where the words fit no number of stitches", () => {
  const worked = work(
    ...START,
    UNREAD,
    "Row 3: Ch 1, *sc in next 2 sts, sc2tog; rep from * across, turn. 10 sts.",
  );
  expect(counts(worked)).toBe("13 12 ? 10t");
  expect(errors(worked)).toEqual([]);
});

it("holds a row to its printed count again once the edge is told", () => {
  const worked = work(
    ...START,
    UNREAD,
    "Row 3: Ch 1, sc in each st across, turn. 9 sts.",
    "Row 4: Ch 1, sc in each st across. 10 sts.",
  );
  expect(errors(worked)).toEqual(["rows/count-differs Row 4"]);
});

it("goes on from what can be worked of a row that is at fault, holding nothing against the rows after it", () => {
  // By hand: 12 sts hold two repeats of 5; they make 8, and 2 stay unworked.
  const worked = work(
    ...START,
    "Row 2: Ch 1, *sc in next 3 sts, sc2tog; rep from * across, turn.",
    "Row 3: Ch 1, sc in each st across, turn.",
    "Row 4: Ch 1, sc in next 11 sts, turn.",
  );
  expect(counts(worked).split(" ").slice(0, 4).join(" ")).toBe("13 12 8 8t");
  expect(errors(worked)).toEqual(["rows/repeat-leaves-stitches Row 2"]);
  expect(lines(worked).map((line) => line.proved)).toEqual([true, true, false, false, false]);
});

it("believes a printed count again after a row at fault", () => {
  const worked = work(
    ...START,
    "Row 2: Ch 1, *sc in next 3 sts, sc2tog; rep from * across, turn.",
    "Row 3: Ch 1, sc in each st across, turn. 10 sts.",
    "Row 4: Ch 1, sc in each st across. 11 sts.",
  );
  expect(errors(worked)).toEqual(["rows/repeat-leaves-stitches Row 2", "rows/count-differs Row 4"]);
});
