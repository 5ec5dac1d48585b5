import { Kept } from "../base/index.ts";
import type { Clause, Instruction, PatternTree } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import { Edge } from "./edge.ts";
import type { PieceState, WorkedRow } from "./piece.ts";

/* Rows that are called by a name of their own: "the increase rnd", "Plain rnd". */

/** A row's name without what differs from one mention to the next: articles, letter case, "row" or "rnd" spelled out. */
export function nameKey(name: string): string {
  let key = keys.get(name);
  if (key === undefined) {
    key = keyOf(name);
    keys.set(name, key);
  }
  return key;
}

const keys = new Kept<string, string>(2000);

function keyOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/\b(?:the|a|an)\b/gu, " ")
    .replace(/\b(?:rounds?|rnds?|rows?)\b/gu, " ")
    .replace(/\bincreas(?:e|es|ing)\b|\binc\b/gu, "inc")
    .replace(/\bdecreas(?:e|es|ing)\b|\bdec\b/gu, "dec")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Every name that some row is called by. */
export function calledNames(tree: PatternTree): ReadonlySet<string> {
  const names = new Set<string>();
  const walk = (clauses: readonly Clause[]): void => {
    for (const clause of clauses) {
      if (clause.kind === "repeat-rows" && clause.rows.are === "numbered" && clause.rows.name)
        names.add(nameKey(clause.rows.name));
      if (clause.kind === "repeat" || clause.kind === "group" || clause.kind === "size-only")
        walk(clause.body);
    }
  };
  for (const piece of tree.pieces) for (const { clauses } of piece.instructions) walk(clauses);
  return names;
}

/**
 * The last row that carries a name, in the first of the pieces that has one: as its label, or in brackets beside it, "Row 4
 * (increase row)". "The increase row" with no such name is the last row that increased.
 */
export function rowCalled(name: string, pieces: readonly PieceState[]): WorkedRow | undefined {
  const key = nameKey(name);
  if (key === "") return undefined;
  const find = (test: (row: WorkedRow, before: WorkedRow | undefined) => boolean): WorkedRow | undefined => {
    for (const piece of pieces)
      for (let at = piece.rows.length - 1; at >= 0; at--) {
        const row = piece.rows[at] as WorkedRow;
        if (test(row, piece.rows[at - 1])) return row;
      }
    return undefined;
  };
  const change = key === "inc" ? 1 : key === "dec" ? -1 : 0;
  return (
    find((row) => nameKey(row.label) === key) ??
    find((row) => row.heading.includes(key)) ??
    (change === 0
      ? undefined
      : find(
          (row, before) => before !== undefined && Math.sign(stitchesOf(row) - stitchesOf(before)) === change,
        ))
  );
}

const stitchesOf = (row: WorkedRow): number => countStitches(row.edge).stitches;

/** A row that is told and not worked yet, as if it had been. */
export function rowTold(instruction: Instruction, clauses: readonly Clause[]): WorkedRow {
  const { label } = instruction;
  return {
    number: null,
    label: label?.words ?? "",
    heading: nameKey(label?.words ?? ""),
    section: "",
    sectionAt: -1,
    clauses,
    round: label?.rounds ?? false,
    edge: new Edge([], false),
    flips: 0,
    strand: 0,
    singly: { front: 0, back: 0 },
    told: instruction.claims,
    at: instruction.span.from,
    rows: 1,
    untilCm: null,
    stitchesBefore: null,
    colour: null,
    begins: false,
    onFoundation: false,
    joined: false,
  };
}
