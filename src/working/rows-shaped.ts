import type { EvenClause, Instruction, ScheduleClause } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import { Edge } from "./edge.ts";
import { lengthTold, rowsToMeasure } from "./lengths.ts";
import type { WorkedRow } from "./piece.ts";
import type { PieceWork } from "./piece-work.ts";
import { stitchPlace, UNKNOWN_PLACE } from "./place.ts";
import type { PatternRows } from "./plan.ts";
import { workRowList } from "./rows-again.ts";
import { startsFromHook } from "./samples.ts";
import { unrollSchedule } from "./schedules.ts";
import { isUnknown, UNKNOWN_EDGE } from "./targets.ts";
import { stopsMaker, type Trouble } from "./trouble.ts";

/** How rows told as a whole came out: their number, null where only a measure says it. */
export interface ShapedRows {
  readonly rows: number | null;
  readonly unknown: string | null;
}

/** "Work even for 6 rows", "work straight until ...": the count stays. */
export function workEven(
  work: PieceWork,
  instruction: Instruction,
  clause: EvenClause,
  count: number | null,
  pattern: PatternRows,
  troubles: Trouble[],
): ShapedRows {
  const { state } = work;
  let rows = count ?? (clause.rows ? work.number(clause.rows) : null);
  if (rows === null && clause.until?.rows && state.number !== null)
    rows = Math.max(0, (work.number(clause.until.rows) ?? 0) - state.number);
  if (clause.until?.measure) rowsToMeasure(work, clause.until, troubles);
  if (rows === 0) return { rows: 0, unknown: null };
  if (!state.edge || isUnknown(state.edge)) {
    addRows(work, instruction, UNKNOWN_EDGE, rows, { untilCm: lengthTold(work, clause.until) });
    return { rows, unknown: "the edge is not known" };
  }
  const patterned = workPatternRows(work, instruction, clause, rows, pattern);
  if (patterned) return patterned;
  const stitches = work.countOf(state.edge);
  const place = clause.inPattern ? UNKNOWN_PLACE : stitchPlace(clause.stitch ?? state.mainStitch);
  addRows(work, instruction, new Edge([{ unit: [place], times: stitches }], state.edge.closed), rows, {
    untilCm: rows === null ? lengthTold(work, clause.until) : null,
  });
  return { rows, unknown: null };
}

/**
 * "Work 3 rows in Fan pattern": the rows of that pattern, one after the other. Where they do not fit the edge as they are written, as
 * between shaping, the words say no more than that the count is kept.
 */
function workPatternRows(
  work: PieceWork,
  instruction: Instruction,
  clause: EvenClause,
  rows: number | null,
  pattern: PatternRows,
): ShapedRows | null {
  if (clause.pattern === undefined) return null;
  const all = pattern.stitchPattern(clause.pattern);
  // What begins on a chain is worked once only.
  const cycle = all.filter((row) => !startsFromHook(row.clauses));
  const first = clause.startRow ? work.number(clause.startRow) : null;
  const at = first === null ? 0 : cycle.findIndex((row) => row.number === first);
  if (cycle.length === 0 || at < 0) return null;
  const { state } = work;
  const back = state.keep();
  const list = Array.from(
    { length: Math.min(rows ?? cycle.length, MOST_ROWS) },
    (_, row) => cycle[(at + row) % cycle.length] as WorkedRow,
  );
  const troubles: Trouble[] = [];
  const number = state.number === null ? null : state.number + 1;
  const done = workRowList(work, instruction, list, number, troubles);
  if (troubles.some(stopsMaker) || done.unknown !== null || done.rows < list.length) {
    back();
    return null;
  }
  if (rows === null) {
    state.number = null;
    state.rowsWorked = null;
    state.strand++;
  }
  return { rows, unknown: null };
}

/** More rows than any piece has. */
const MOST_ROWS = 5000;

/** Rows of the pattern that keep the count; which stitches they make is not told. */
export function keepCount(work: PieceWork, instruction: Instruction, rows: number): void {
  const { state } = work;
  const known = state.edge && !isUnknown(state.edge);
  const edge = known
    ? new Edge(
        [{ unit: [UNKNOWN_PLACE], times: work.countOf(state.edge as Edge) }],
        state.edge?.closed ?? false,
      )
    : UNKNOWN_EDGE;
  addRows(work, instruction, edge, rows);
}

/** Shaping told as a schedule, unrolled into rows; several schedules at the same time run over the same rows. */
export function workSchedules(
  work: PieceWork,
  instruction: Instruction,
  clauses: readonly ScheduleClause[],
  count: number | null,
  troubles: Trouble[],
): ShapedRows {
  const { state } = work;
  const before = state.edge && !isUnknown(state.edge) ? countStitches(state.edge).stitches : null;
  if (before === null) {
    addRows(work, instruction, UNKNOWN_EDGE, null);
    return { rows: null, unknown: "the edge is not known" };
  }
  let change = 0;
  let length = 0;
  for (const clause of clauses) {
    const unrolled = unrollSchedule(clause, (amount) => work.number(amount) ?? 0, before + change);
    if (!unrolled) {
      addRows(work, instruction, UNKNOWN_EDGE, null);
      return { rows: null, unknown: "the schedule does not say how often" };
    }
    change += unrolled.change * unrolled.rows.length;
    length = clause.together ? Math.max(length, unrolled.length) : length + unrolled.length;
    const wanted = clause.until?.stitches ? work.number(clause.until.stitches) : null;
    if (wanted !== null && before + change !== wanted)
      troubles.push({ is: "misses-count", span: clause.span, from: before, to: before + change, wanted });
  }
  const [first] = clauses;
  const after = before + change;
  if (first && count !== null && length > count)
    troubles.push({ is: "more-rows", span: first.span, needs: length, has: count });
  if (first && after <= 0)
    troubles.push({ is: "not-enough", span: first.span, have: before, need: 1 - change });
  const rows = count ?? length;
  const edge =
    after > 0
      ? new Edge([{ unit: [stitchPlace(state.mainStitch)], times: after }], state.edge?.closed ?? false)
      : UNKNOWN_EDGE;
  addRows(work, instruction, edge, rows, { stitchesBefore: before });
  for (const clause of clauses) if (clause.until?.measure) rowsToMeasure(work, clause.until, troubles);
  return { rows, unknown: null };
}

/** Puts so many rows onto the piece as one, since only the last of them has a place to be worked into. */
function addRows(
  work: PieceWork,
  instruction: Instruction,
  edge: Edge,
  rows: number | null,
  more: Partial<WorkedRow> = {},
): void {
  const { state } = work;
  const closed = edge.closed || (state.edge?.closed ?? false);
  if (rows === null) {
    state.strand++;
    state.flips = 0;
    state.rowsWorked = null;
  } else if (!closed) state.flips += rows;
  const number = rows === null || state.number === null ? null : state.number + rows;
  work.addRow(
    instruction,
    [{ kind: "even", span: instruction.span, inPattern: true }],
    edge,
    number,
    closed,
    { ...more, rows },
  );
  state.turnPending = !closed;
  state.fastened = false;
}
