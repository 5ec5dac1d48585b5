import type { Instruction } from "../notation/index.ts";
import type { PieceState } from "./piece.ts";
import type { Trouble } from "./trouble.ts";

/** A row told ahead: "Rows 3, 5 and 7" at Row 3, "8th and every alt row" at Row 8. */
export interface StandingRow {
  readonly from: number;
  readonly to: number;
  /** Rows from one to the next; 1 unless said. */
  readonly step?: number;
  readonly instruction: Instruction;
}

/** The instruction told ahead for a row number, or undefined. */
export function standingFor(state: PieceState, number: number): StandingRow | undefined {
  return state.standing.find(
    (entry) => number >= entry.from && number <= entry.to && (number - entry.from) % (entry.step ?? 1) === 0,
  );
}

/**
 * Works the rows told ahead up to a number.
 *
 * @param bounded  only rows that have an end of their own, as after the last row of a piece
 */
export function workStanding(
  state: PieceState,
  before: number,
  bounded: boolean,
  work: (entry: StandingRow, number: number) => void,
): void {
  for (let turns = 0; turns < 5000 && state.number !== null && state.number + 1 < before; turns++) {
    const due: number = state.number + 1;
    const entry = standingFor(state, due);
    if (!entry || (bounded && entry.to === Number.POSITIVE_INFINITY)) return;
    work(entry, due);
    if (state.number !== due) return;
  }
}

/** Says where row numbers are left out or come twice. Numbers that begin again at 1 begin a section. */
export function checkNumber(
  state: PieceState,
  next: number,
  instruction: Instruction,
  newSection: boolean,
  troubles: Trouble[],
): void {
  if (state.number === null || next === 0 || state.everUnread) return;
  const span = instruction.label?.span ?? instruction.span;
  const expected = state.number + 1;
  if (next === expected) return;
  if (next === 1) {
    // A foundation row without a number was counted as the first.
    const numbered = /\d/.test(state.rows[state.rows.length - 1]?.label ?? "");
    if (state.number === 1 && numbered && !newSection && !state.fastened && state.begin === null)
      troubles.push({ is: "number-repeats", span, found: 1 });
    return;
  }
  // The foundation, or rows without a number, may have been counted as the first.
  if (state.numbersLoose) return;
  if (state.number === 0 && next === 2 && state.begin === null) return;
  if (next > expected) {
    troubles.push({ is: "number-skips", span, expected, found: next });
    state.doubtful = true;
  } else troubles.push({ is: "number-repeats", span, found: next });
}
