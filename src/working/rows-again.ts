import type { Claim, Instruction, Label, RepeatRowsClause } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import { lengthTold, rowsToMeasure } from "./lengths.ts";
import type { WorkedRow } from "./piece.ts";
import type { PieceWork } from "./piece-work.ts";
import type { PatternRows } from "./plan.ts";
import { keepCount } from "./rows-shaped.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";

/** How rows worked by reference came out. */
export interface RowsDone {
  readonly rows: number;
  readonly unknown: string | null;
  readonly trust: boolean;
  /** Number of the next row; null where a measure made it unknown. */
  readonly next: number | null;
  readonly startFlips: number | null;
}

/** More rows than any piece has. */
const MOST_ROWS = 5000;

/**
 * Works rows again: "rep Rows 3 and 4 6 times more", "rep last 2 rows until ...".
 *
 * @param first  number of the first row it makes
 * @param count  how many rows the label asks for; null where it does not
 * @param claims  printed counts; those of single rows are held row by row
 */
export function workRowsAgain(
  work: PieceWork,
  instruction: Instruction,
  clause: RepeatRowsClause,
  first: number | null,
  count: number | null,
  claims: readonly Claim[],
  pattern: PatternRows,
  troubles: Trouble[],
): RowsDone {
  const { state } = work;
  const cycle = rowsMeant(work, clause, pattern, troubles);
  if (cycle === null) {
    state.number = null;
    return {
      rows: 0,
      unknown: "the rows to repeat are not known",
      trust: false,
      next: null,
      startFlips: null,
    };
  }
  const times = clause.times ? work.number(clause.times) : null;
  const untilRows = clause.until?.rows ? work.number(clause.until.rows) : null;
  const untilStitches = clause.until?.stitches ? work.number(clause.until.stitches) : null;
  if (clause.every && times !== null)
    return workOnEvery(work, instruction, cycle, work.number(clause.every) ?? 1, times, first, troubles);
  let rows = cycle.length;
  let open = false;
  if (count !== null) rows = count;
  else if (times !== null) rows = times * cycle.length;
  else if (untilRows !== null && clause.until?.more) rows = untilRows;
  else if (untilRows !== null && state.number !== null) rows = Math.max(0, untilRows - state.number);
  else if (untilStitches !== null) rows = MOST_ROWS;
  else if (clause.until?.measure) {
    open = true;
    rowsToMeasure(work, clause.until, troubles);
  }
  const cut = Math.min(rows, MOST_ROWS);
  const list = Array.from({ length: cut }, (_, at) => cycle[at % cycle.length] as WorkedRow);
  const done = workRowList(
    work,
    instruction,
    list,
    first ?? (state.number === null ? null : state.number + 1),
    troubles,
    {
      cycle: cycle.length,
      stitches: untilStitches,
      claims,
    },
  );
  if (open) {
    const last = state.rows.pop();
    if (last) state.rows.push({ ...last, rows: null, untilCm: lengthTold(work, clause.until) });
    state.number = null;
    state.rowsWorked = null;
    state.strand++;
  }
  if (untilStitches !== null) {
    // Which row comes to the count first differs by size, and writers end with either row of the pair.
    state.strand++;
    state.number = null;
  }
  checkEnding(work, clause, done.rows, open, troubles);
  return open || untilStitches !== null ? { ...done, next: null } : done;
}

/**
 * Works rows of the pattern again in the order given.
 *
 * @param stop  how many rows make one turn of the reference, and the count at which to stop
 */
export function workRowList(
  work: PieceWork,
  instruction: Instruction,
  list: readonly WorkedRow[],
  first: number | null,
  troubles: Trouble[],
  stop: { readonly cycle: number; readonly stitches: number | null; readonly claims?: readonly Claim[] } = {
    cycle: list.length,
    stitches: null,
  },
): RowsDone {
  const { state } = work;
  let number = first;
  let unknown: string | null = null;
  let trust = false;
  let startFlips: number | null = null;
  let done = 0;
  let before: string | undefined;
  // Stripes worked again keep their colours; rows of one colour are worked in the one in hand.
  const striped = new Set(list.map(({ colour }) => colour)).size > 1;
  for (const row of list) {
    if (stop.stitches !== null && done % Math.max(1, stop.cycle) === 0) {
      // A turn of rows that changes nothing never comes to the count.
      if (before !== undefined && before === state.edge?.key) break;
      before = state.edge?.key;
    }
    if (
      stop.stitches !== null &&
      state.edge &&
      !isUnknown(state.edge) &&
      countStitches(state.edge).stitches === stop.stitches
    )
      break;
    const again = {
      repeated: row.label || (row.number === null ? "the row" : `Row ${row.number}`),
      time: Math.floor(done / Math.max(1, stop.cycle)) + 1,
      ...(striped ? { colour: row.colour } : {}),
    };
    const result = work.workOneRow(
      { ...instruction, label: labelAgain(instruction, row) },
      row.clauses,
      number,
      [...(stop.claims ?? []).filter((claim) => claim.index === done), ...(row.told ?? [])],
      troubles,
      again,
    );
    startFlips ??= result.startFlips;
    unknown ??= result.unknown;
    trust ||= result.trust;
    if (number !== null) number++;
    done++;
    if (result.stop) break;
  }
  return { rows: done, unknown, trust, next: number, startFlips };
}

/** "Work the increase row on every 4th row 10 times": the pattern's own rows between keep the count. */
function workOnEvery(
  work: PieceWork,
  instruction: Instruction,
  cycle: readonly WorkedRow[],
  every: number,
  times: number,
  first: number | null,
  troubles: Trouble[],
): RowsDone {
  let done: RowsDone = { rows: 0, unknown: null, trust: false, next: first, startFlips: work.state.flips };
  for (let time = 0; time < Math.min(times, MOST_ROWS); time++) {
    if (every > 1) keepCount(work, instruction, every - 1);
    const next = done.next === null ? null : done.next + every - 1;
    const row = workRowList(work, instruction, cycle, next, troubles);
    done = {
      ...row,
      rows: done.rows + every,
      unknown: done.unknown ?? row.unknown,
      trust: done.trust || row.trust,
      startFlips: done.startFlips,
    };
  }
  return done;
}

/** The rows that a reference means, in order; null, with a trouble where it can be told, where there are none. */
function rowsMeant(
  work: PieceWork,
  clause: RepeatRowsClause,
  pattern: PatternRows,
  troubles: Trouble[],
): readonly WorkedRow[] | null {
  const { state } = work;
  const { rows } = clause;
  if (rows.are === "pattern") return null;
  if (rows.are === "last") {
    const count = work.number(rows.count) ?? 1;
    if (count <= state.rows.length) return state.rows.slice(-count);
    if (state.rows.length > 0 && !state.everUnread)
      troubles.push({ is: "row-not-found", span: rows.span, asked: `the last ${count} rows` });
    return null;
  }
  if (rows.name) {
    const row = pattern.called(rows.name);
    return row ? [row] : null;
  }
  const named = rows.piece ? pattern.part(rows.piece) : undefined;
  if (rows.piece && !named) {
    troubles.push({ is: "piece-not-found", span: rows.span, asked: rows.piece ?? "" });
    return null;
  }
  const found: WorkedRow[] = [];
  for (const range of rows.list) {
    const start = work.number(range.from);
    const end = work.number(range.to);
    if (start === null || end === null || Math.abs(end - start) > MOST_ROWS) return null;
    const step = start <= end ? 1 : -1;
    for (let number = start; step > 0 ? number <= end : number >= end; number += step) {
      const row = named
        ? named.rows.find((each) => each.number === number)
        : (state.rowNumbered(number) ?? pattern.elsewhere(number));
      if (!row) {
        if ((named || state.rows.length > 0) && !state.everUnread)
          troubles.push({ is: "row-not-found", span: rows.span, asked: `Row ${number}` });
        return null;
      }
      found.push(row);
    }
  }
  return found.length > 0 ? found : null;
}

/** "Ending with a WS row", "ending with Row 2": held against the rows that were worked, where their number is known. */
function checkEnding(
  work: PieceWork,
  clause: RepeatRowsClause,
  done: number,
  open: boolean,
  troubles: Trouble[],
): void {
  const { until } = clause;
  if (!until || open || done === 0) return;
  if (until.endingRow && clause.rows.are === "numbered") {
    const asked = work.number(until.endingRow);
    const numbers = clause.rows.list.flatMap((range) => {
      const from = work.number(range.from) ?? 0;
      const to = work.number(range.to) ?? 0;
      return Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => from + at);
    });
    const last = numbers[(done - 1) % Math.max(1, numbers.length)];
    if (asked !== null && last !== undefined && numbers.includes(asked) && last !== asked)
      troubles.push({ is: "ends-on-other-side", span: until.span, asked, rows: done });
  }
}

/** A row worked again is a round where it was one. */
function labelAgain(instruction: Instruction, row: WorkedRow): Label | null {
  if (!row.round) return instruction.label;
  const { span } = instruction;
  const label: Label = instruction.label ?? {
    span: { from: span.from, to: span.from },
    is: "named",
    words: "",
    rows: [],
    rounds: true,
  };
  return { ...label, rounds: true };
}
