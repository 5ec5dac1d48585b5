import type { Finding } from "../base/index.ts";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./work-pattern.ts";
import type { WorkedLine } from "./worked.ts";

/* Helpers of this room's tests: rows in, numbers out. */

const linesOf = (pattern: string): readonly WorkedLine[] =>
  workPattern(readPattern(pattern)).pieces.flatMap((piece) => piece.lines);

const say = (values: readonly (number | null)[]): string => values.map((value) => value ?? "?").join("/");

/** Stitches after every row: "Row 1: 20, Row 2: 22/24". Lines that make no stitches are left out. */
export function counts(pattern: string): string {
  return linesOf(pattern)
    .filter((line) => line.kind !== "other" && line.kind !== "foundation")
    .map((line) => `${line.label}: ${say(line.stitches)}`)
    .join(", ");
}

/** The kinds of the last row: "15 sc, 7 ch-1 sp". */
export function lastKinds(pattern: string): string {
  const line = linesOf(pattern)
    .filter((each) => each.kind !== "other")
    .at(-1);
  return Object.entries(line?.kinds ?? {})
    .map(([kind, values]) => `${say(values)} ${kind}`)
    .join(", ");
}

/** Sides of the rows: "Row 1 RS, Row 2 WS". */
export function sides(pattern: string): string {
  return linesOf(pattern)
    .filter((line) => line.kind === "row" || line.kind === "round")
    .map((line) => `${line.label} ${line.side[0] ?? "?"}`)
    .join(", ");
}

/** Codes of what is found, with the row each stands at: "rows/count-differs Row 2". Notes are left out. */
export function found(pattern: string): string[] {
  return findings(pattern)
    .filter((finding) => finding.severity !== "note")
    .map((finding) => `${finding.code} ${finding.row ?? ""}`.trim());
}

export function findings(pattern: string): readonly Finding[] {
  return workPattern(readPattern(pattern)).findings;
}
