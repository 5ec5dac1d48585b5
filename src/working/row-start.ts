import type { Clause, Instruction } from "../notation/index.ts";
import type { Edge } from "./edge.ts";
import type { HeldEdge, PieceState } from "./piece.ts";
import { isRing } from "./ring.ts";
import { facingOf, makesStitches, turnsBeforeWork } from "./segments.ts";
import { UNKNOWN_EDGE } from "./targets.ts";
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
  /** Rows do not begin with the turn as a habit, so that a turn at the end and at the start is one too many. */
  readonly once: boolean;
  /** A note says that rows are turned. */
  readonly noted: boolean;
  /** Rounds end with a join, so that one without is an oversight; notes may say it once for all. */
  readonly joined: boolean;
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
  const newChain = startsNewChain(clauses, state.fastened) || startsInRing(state, instruction, clauses);
  if (state.edge === null && !newChain && (state.everUnread || startsOnGarment(clauses)))
    return { edge: UNKNOWN_EDGE, flips: 0, strand: anew, turned: false, rejoined: true };
  if (state.edge === null || newChain)
    return { edge: null, flips: 0, strand: anew, turned: false, rejoined: newChain };
  const joins = clauses.some((clause) => clause.kind === "join-yarn");
  if (joins && (state.fastened || state.held.length > 0)) {
    // "Attach yarn at the top of the side seam": on the sewn garment, and not on the last row.
    if (state.held.length === 0 && clauses.some(isAtSeam))
      return { edge: UNKNOWN_EDGE, flips: 0, strand: anew, turned: false, rejoined: true };
    const side = instruction.label?.side ?? facingOf(clauses);
    // What was left for later by a row that was not read is not known.
    if (state.everUnread)
      return { edge: UNKNOWN_EDGE, flips: 0, strand: anew, turned: false, rejoined: true };
    const nowhere = clauses.find(
      (clause) => clause.kind === "join-yarn" && clause.target === null && !clause.where,
    );
    if (nowhere && state.held.length > 0 && !clauses.some((clause) => clause.kind === "skip"))
      troubles.push({ is: "rejoin-nowhere", span: nowhere.span });
    const held = takeHeld(state, clauses);
    if (held) {
      const turned = side !== null && held.side !== null && side !== held.side;
      return {
        edge: turned ? held.edge.reversed() : held.edge,
        flips: 0,
        strand: anew,
        turned: false,
        rejoined: true,
      };
    }
    const same = side !== null && state.lastSide === side;
    const turned = !state.edge.closed && !same;
    return {
      edge: turned ? state.edge.reversed() : state.edge,
      flips: 0,
      strand: anew,
      turned,
      rejoined: true,
    };
  }
  const place = instruction.label?.span ?? instruction.span;
  const onFoundation = state.rows.length === 0 && state.edge === state.foundation;
  // A sample is begun on a row that lies ready.
  if (state.ring || (state.sample && state.rows.length === 0 && !onFoundation))
    return { edge: state.edge, flips: 0, strand, turned: false, rejoined: false };
  if (onFoundation)
    return {
      edge: state.edge.closed ? state.edge : state.edge.reversed(),
      flips: 0,
      strand,
      turned: true,
      rejoined: false,
    };
  const turnsFirst = turnsBeforeWork(clauses);
  if (turnsFirst && state.turnPending && habit.once) troubles.push({ is: "turn-doubled", span: place });
  if (turnsFirst || state.turnPending)
    return { edge: state.edge.reversed(), flips: state.flips + 1, strand, turned: true, rejoined: false };
  if (state.edge.closed) {
    if (habit.joined && round && state.wasRound && !state.lastJoined && !state.unjoined && !state.lastUnread)
      troubles.push({ is: "join-missing", span: place });
    return { edge: state.edge, flips: state.flips, strand, turned: false, rejoined: false };
  }
  if (round && state.wasRound)
    return { edge: state.edge, flips: state.flips, strand, turned: false, rejoined: false };
  // A flat row that nobody turned for: the work is turned all the same, since there is no other way on.
  const said = instruction.label !== null && habit.written && !habit.noted;
  if (said && !state.fastened && !state.lastUnread && !state.doubtful)
    troubles.push({ is: "turn-missing", span: place });
  return { edge: state.edge.reversed(), flips: state.flips + 1, strand, turned: true, rejoined: false };
}

/** The part that was left for later and is taken up now: of the row that is named, else the longest. */
function takeHeld(state: PieceState, clauses: readonly Clause[]): HeldEdge | null {
  let best: HeldEdge | null = null;
  for (const clause of clauses) {
    const target = clause.kind === "join-yarn" || clause.kind === "skip" ? clause.target : null;
    const row = target?.ofRow?.values[0];
    if (row !== undefined) best = state.held.find((held) => held.row === row) ?? best;
  }
  if (!best) for (const held of state.held) if (!best || held.edge.length > best.edge.length) best = held;
  if (best) state.held = state.held.slice(0, state.held.indexOf(best));
  return best;
}

const isAtSeam = (clause: Clause): boolean =>
  clause.kind === "join-yarn" && /\bseams?\b/i.test(clause.where ?? "");

/** Bands and borders are worked onto the sewn garment: the yarn is joined somewhere on it. */
function startsOnGarment(clauses: readonly Clause[]): boolean {
  return clauses.some(
    (clause) =>
      clause.kind === "join-yarn" ||
      clause.kind === "along" ||
      (clause.kind === "work" && clause.target.what.is === "row-end"),
  );
}

/** "Rnd 1: Ch 3, 11 dc in magic ring" behind other rows: a ring of its own, under no heading. */
function startsInRing(
  { rows, ring, edge, foundation }: PieceState,
  { label }: Instruction,
  clauses: readonly Clause[],
): boolean {
  if (
    ring ||
    rows.length === 0 ||
    edge === foundation ||
    isRing(edge) ||
    label?.rows[0]?.from.values[0] !== 1
  )
    return false;
  const first = clauses.find((clause) => makesStitches(clause) && clause.kind !== "chain");
  return (first?.kind === "work" || first?.kind === "group") && first.target.what.is === "ring";
}

/** A chain at the start that is not a turning chain: a new part begins, as after fastening off. */
function startsNewChain(clauses: readonly Clause[], fastened: boolean): boolean {
  if (!fastened) return false;
  const first = clauses.find(makesStitches);
  return first?.kind === "chain" && !clauses.some((clause) => clause.kind === "join-yarn");
}
