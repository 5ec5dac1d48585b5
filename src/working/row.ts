import type { Span } from "../base/index.ts";
import type { Clause } from "../notation/index.ts";
import { takeUpChainBefore } from "./chains.ts";
import type { Edge } from "./edge.ts";
import { putChangeAtEnds } from "./end-changes.ts";
import { type ChainBefore, Hands, type Table } from "./hands.ts";
import { inOrderOfHook } from "./order.ts";
import { type Place, placeOf } from "./place.ts";
import { isRing } from "./ring.ts";
import { isUnknown } from "./targets.ts";
import { Stuck, type Trouble, Unknowable } from "./trouble.ts";

/** What a maker knows before a row. */
export interface RowBefore {
  /** The edge as it is seen now, turned if the work was turned; null before a foundation. */
  readonly edge: Edge | null;
  readonly chainBefore: ChainBefore | null;
  readonly round: boolean;
  readonly labelled: boolean;
}

/** A row that doubles its stitches, repeated without end, is stopped here. */
const MOST_STITCHES = 20_000;

/** How a row came out. */
export interface RowAfter {
  /** The edge in the order it was made; null where it cannot be known. */
  readonly edge: Edge | null;
  /** Where the row could not be worked to its end: what a maker who goes on all the same comes to; null where that is not known. */
  readonly asFar: Edge | null;
  /** What was left of the edge below, from the hook on; null where nothing was. */
  readonly held: Edge | null;
  /** The edge from the hook on, where the row only moved along it without a stitch. */
  readonly rest: Edge | null;
  readonly troubles: readonly Trouble[];
  /** Why the outcome is not known, where it is not. */
  readonly unknown: string | null;
  /** The foundation chain made in this row. */
  readonly foundation: Edge | null;
  /** Whether stitches were made, not the foundation or a ring alone. */
  readonly made: boolean;
  readonly ring: boolean;
  readonly joined: boolean;
  readonly saidNoJoin: boolean;
  readonly saidNoTurn: boolean;
  readonly turnsAfter: number;
  readonly fastened: boolean;
  readonly chainAfter: ChainBefore | null;
  readonly singly: { readonly front: number; readonly back: number };
  readonly lace: boolean;
  readonly misnamed: Hands["misnamed"];
  readonly mainStitch: string | null;
  /** Colour that the row begins in, and that in hand at its end, where the row says so. */
  readonly colour: string | null;
  readonly colourAfter: string | null;
}

/** Works the clauses of one row. Never throws on the designer's text. */
export function workRow(table: Table, before: RowBefore, clauses: readonly Clause[], span: Span): RowAfter {
  const hands = new Hands(table, { ...before, span });
  let unknown: string | null = null;
  let stuck = false;
  try {
    takeUpChainBefore(hands, clauses);
    hands.run(inOrderOfHook(clauses));
    putChangeAtEnds(hands);
    checkLeftOver(hands, clauses, span);
    if (hands.out.finish(false).length > MOST_STITCHES)
      throw new Unknowable("more stitches than any row has");
  } catch (reason) {
    if (reason instanceof Stuck) {
      hands.troubles.push(reason.trouble);
      stuck = true;
    } else if (reason instanceof Unknowable) unknown = reason.message;
    else throw reason;
  }
  if (stuck || unknown !== null) goOnAfter(hands, clauses);
  // What is worked round and is not turned goes on round, whatever its label calls it.
  const goesRound = before.edge?.closed === true && hands.turned.after === 0;
  const closed = before.round || hands.joined || goesRound;
  const made = hands.started || (hands.chainStands && !hands.madeFoundation);
  return {
    edge: stuck || unknown !== null ? null : outcome(hands, made, closed),
    asFar: stuck ? workAsFar(table, before, clauses, span, closed) : null,
    held: stuck || unknown !== null ? null : heldBack(hands),
    rest: made ? null : restOfEdge(hands),
    troubles: hands.troubles,
    unknown,
    foundation: hands.madeFoundation,
    made,
    ring: hands.ring,
    joined: hands.joined,
    saidNoJoin: hands.saidNoJoin,
    saidNoTurn: hands.saidNoTurn,
    turnsAfter: hands.turned.after,
    fastened: hands.fastened,
    chainAfter: hands.chainAfter,
    singly: hands.singly,
    lace: hands.lace,
    misnamed: hands.misnamed,
    mainStitch: hands.lastStitch,
    colour: hands.colour,
    colourAfter: stuck || unknown !== null ? lastColour(clauses) : (hands.out.colour ?? hands.colour),
  };
}

/** Works what can be worked of a row, and leaves out the clauses that nothing is there for. */
function workAsFar(
  table: Table,
  before: RowBefore,
  clauses: readonly Clause[],
  span: Span,
  closed: boolean,
): Edge | null {
  const hands = new Hands(table, { ...before, span });
  const attempt = (step: () => void): boolean => {
    try {
      step();
      return true;
    } catch (reason) {
      if (reason instanceof Stuck) return true;
      if (reason instanceof Unknowable) return false;
      throw reason;
    }
  };
  if (!attempt(() => takeUpChainBefore(hands, clauses))) return null;
  const ordered = inOrderOfHook(clauses);
  for (const [at, clause] of ordered.entries())
    if (!attempt(() => hands.run([clause], ordered.slice(at + 1)))) return null;
  return hands.madeStitch ? hands.out.finish(closed) : null;
}

function outcome(hands: Hands, made: boolean, closed: boolean): Edge | null {
  if (made) return hands.out.finish(closed);
  if (hands.ring) return hands.below;
  if (hands.madeFoundation) return hands.madeFoundation;
  return hands.start.edge;
}

/** Stitches that nobody said would stay unworked. Chains are not missed in lace, which passes over them. */
function checkLeftOver(hands: Hands, clauses: readonly Clause[], span: Span): void {
  const { cursor } = hands;
  if (!cursor || !hands.started || hands.left !== null || isUnknown(cursor.edge)) return;
  if (isRing(cursor.edge) || hands.along || hands.amongGaps) return;
  if (goesBelow(clauses)) return;
  const left = hands.countStitchesLeft();
  if (left <= Math.max(hands.slippedOver, hands.leftOfGroup) || left === saidLeft(hands, clauses)) return;
  // Rows worked back and forth on a round take a part of it: a flap, a heel.
  if (hands.start.edge?.closed && !hands.start.round && !hands.joined && hands.turned.after > 0) return;
  // "..., ch 6, join": the chain goes over the last stitches as it went over others before.
  const { last } = hands.out;
  const bridges = hands.skipped > 0 || hands.lace;
  if (hands.joined && last?.role === "chain" && bridges && left <= last.chains + 1) return;
  // A round of corners and spaces that joins passes over its last side as it passed over the others.
  if (hands.joined && left <= hands.passedMost && !hasSpaceLeft(hands)) return;
  hands.troubles.push({ is: "left-over", span, left, have: hands.countAll(), announced: false });
}

/** "*Ch 4, sc in next sc of Rnd 2; rep from * around": behind the last row and into one before it, which leaves the last bare. */
function goesBelow(clauses: readonly Clause[]): boolean {
  const worked = clauses.flatMap((clause) => (clause.kind === "repeat" ? clause.body : [clause]));
  const placed = worked.filter((clause) => clause.kind === "work" || clause.kind === "group");
  return placed.length > 0 && placed.every(({ target }) => target.ofRow !== undefined);
}

/** "Sc to last 4 sts, turn": the stitches that the last words of the row stop before. One alone is more likely forgotten. */
function saidLeft(hands: Hands, clauses: readonly Clause[]): number | null {
  const last = clauses.findLast((clause) => !PASSED_OVER.has(clause.kind));
  if (last?.kind !== "work" && last?.kind !== "in-pattern") return null;
  const { until } = last.target;
  const left = until?.at === "last" ? hands.number(until.count) : null;
  return left !== null && left > 1 ? left : null;
}

/** What may stand behind the last stitches of a row. */
const PASSED_OVER: ReadonlySet<Clause["kind"]> = new Set([
  "turn",
  "do-not-turn",
  "aside",
  "fasten-off",
  "colour",
  "marker",
  "facing",
]);

function hasSpaceLeft(hands: Hands): boolean {
  const rest = restOfEdge(hands);
  return rest?.some((place) => place.role === "chain") ?? false;
}

function heldBack(hands: Hands): Edge | null {
  const { cursor } = hands;
  if (!cursor || cursor.atEnd || hands.along || !hands.started || cursor.edge.closed) return null;
  if (isRing(cursor.edge) || hands.countStitchesLeft() === 0) return null;
  return cursor.edge.from(cursor.position(), restOfChains);
}

/** The edge from the hook on. */
function restOfEdge({ cursor }: Hands): Edge | null {
  if (!cursor) return null;
  return isUnknown(cursor.edge) ? cursor.edge : cursor.edge.from(cursor.position(), restOfChains);
}

function restOfChains(place: Place, used: number): Place {
  return placeOf(place.code, place.role, place.counted, place.chains - used);
}

/** The last colour that clauses name. */
export function lastColour(clauses: readonly Clause[]): string | null {
  const named = clauses.filter((clause) => clause.kind === "colour" || clause.kind === "join-yarn");
  return named.findLast((clause) => clause.colour)?.colour ?? null;
}

/** The colour that clauses name before any stitch: "With B, rep Rows 1 and 2". */
export function firstColour(clauses: readonly Clause[]): string | null {
  for (const clause of clauses) {
    if (clause.kind === "colour" || (clause.kind === "join-yarn" && clause.colour))
      return clause.colour ?? null;
    if (!["aside", "hook", "facing", "turn", "marker", "loops", "join-yarn"].includes(clause.kind))
      return null;
  }
  return null;
}

/** A row that could not be finished is taken to end as its words say. */
function goOnAfter(hands: Hands, clauses: readonly Clause[]): void {
  let worked = false;
  hands.turned.after = 0;
  for (const clause of clauses) {
    if (
      clause.kind === "work" ||
      clause.kind === "group" ||
      clause.kind === "repeat" ||
      clause.kind === "remark"
    )
      worked = true;
    if (clause.kind === "turn" && worked) hands.turned.after++;
    if (clause.kind === "fasten-off") hands.fastened = true;
    if (clause.kind === "join") hands.joined = true;
  }
  hands.started = true;
}
