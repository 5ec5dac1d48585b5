import type { Clause, Instruction } from "../notation/index.ts";
import type { Edge } from "./edge.ts";
import type { PieceState } from "./piece.ts";
import { makesStitches, turnsBeforeWork } from "./segments.ts";
import type { Trouble } from "./trouble.ts";

/** The edge as it lies before the maker at the start of a row. */
export interface RowStart {
  readonly edge: Edge | null;
  readonly flips: number;
  readonly strand: number;
  /** The edge is the last row's, seen after a turn. */
  readonly turned: boolean;
  /** The yarn was joined anew, or a new chain was begun: turns before do not matter. */
  readonly rejoined: boolean;
}

/** What the document's habits say about turns. */
export interface TurningHabit {
  /** "turn" is written at most rows, so that a row without one is an oversight. */
  readonly written: boolean;
  /** A note says when to turn. */
  readonly noted: boolean;
}

/**
 * Finds the edge that a row starts on: turned or not, joined anew, or a part of an earlier row that was left for later.
 *
 * @param troubles  takes what is wrong with the turns
 */
export function startOfRow(
  state: PieceState,
  instruction: Instruction,
  clauses: readonly Clause[],
  round: boolean,
  habit: TurningHabit,
  troubles: Trouble[],
): RowStart {
  const { strand } = state;
  const anew = strand + (state.rows.length > 0 ? 1 : 0);
  if (state.begin) return { edge: state.begin, flips: 0, strand: anew, turned: false, rejoined: true };
  const newChain = startsNewChain(clauses, state.fastened);
  if (state.edge === null || newChain)
    return { edge: null, flips: 0, strand: anew, turned: false, rejoined: newChain };
  const joins = clauses.some((clause) => clause.kind === "join-yarn");
  if (joins && (state.fastened || state.held.length > 0)) {
    const held = state.held.pop();
    if (held) return { edge: held.edge, flips: 0, strand: anew, turned: false, rejoined: true };
    const flat = !state.edge.closed;
    return {
      edge: flat ? state.edge.reversed() : state.edge,
      flips: 0,
      strand: anew,
      turned: flat,
      rejoined: true,
    };
  }
  const place = instruction.label?.span ?? instruction.span;
  const onFoundation = state.rows.length === 0 && state.edge === state.foundation;
  if (state.ring) return { edge: state.edge, flips: 0, strand, turned: false, rejoined: false };
  if (onFoundation)
    return {
      edge: state.edge.closed ? state.edge : state.edge.reversed(),
      flips: 0,
      strand,
      turned: true,
      rejoined: false,
    };
  const turnsFirst = turnsBeforeWork(clauses);
  if (turnsFirst && state.turnPending && habit.written) troubles.push({ is: "turn-doubled", span: place });
  if (turnsFirst || state.turnPending)
    return { edge: state.edge.reversed(), flips: state.flips + 1, strand, turned: true, rejoined: false };
  if (state.edge.closed)
    return { edge: state.edge, flips: state.flips, strand, turned: false, rejoined: false };
  if (round && state.wasRound)
    return { edge: state.edge, flips: state.flips, strand, turned: false, rejoined: false };
  // A flat row that nobody turned for: the work is turned all the same, since there is no other way on.
  if (habit.written && !habit.noted && !state.fastened && !state.lastUnread)
    troubles.push({ is: "turn-missing", span: place });
  return { edge: state.edge.reversed(), flips: state.flips + 1, strand, turned: true, rejoined: false };
}

/** A chain at the start that is not a turning chain: a new part begins, as after fastening off. */
function startsNewChain(clauses: readonly Clause[], fastened: boolean): boolean {
  if (!fastened) return false;
  const first = clauses.find(makesStitches);
  return first?.kind === "chain" && !clauses.some((clause) => clause.kind === "join-yarn");
}
