import type { LoopWord } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import { Edge } from "./edge.ts";
import type { PieceState } from "./piece.ts";
import { placeOf, UNKNOWN_PLACE } from "./place.ts";
import { isUnknown } from "./targets.ts";

/* Edges of a piece beside its last row: along the side, under the foundation, loops that a row left free. */

/** An edge of so many stitches, of which nothing more is known. */
export function trustedEdge(count: number, closed: boolean): Edge {
  return new Edge([{ unit: [UNKNOWN_PLACE], times: Math.max(0, count) }], closed);
}

/** The side of a piece: one place a row. */
export function rowEndsOf(rows: number): Edge {
  return new Edge([{ unit: [placeOf("row-end", "row-end", true)], times: rows }], false);
}

/**
 * Loops that a row left free, as places. A loop is told by its face: what was the front loop to the maker of that row is the
 * back loop to somebody who looks at its other side.
 *
 * @param number  the row that was left, or the row worked into it; null for the last row that left any
 * @param loops   which loop is named, as seen now; undefined for either
 * @param flips   turns up to now, to know which side faces; null where that is not known, as from another piece
 */
export function freeLoopsOf(
  state: PieceState,
  number: number | null,
  loops: LoopWord | undefined,
  flips: number | null,
): Edge | null {
  const rows = state.rows
    .filter((row) => number === null || row.number === number || row.number === number + 1)
    .reverse();
  // The loops of Row n are left by the row worked into it, which is n + 1; it is looked at first.
  for (const row of rows) {
    const turned = flips !== null && row.strand === state.strand && (row.flips + flips) % 2 === 1;
    const free = { front: row.singly.back, back: row.singly.front };
    const front = turned ? free.back : free.front;
    const back = turned ? free.front : free.back;
    const count = loops === "front" ? front : loops === "back" ? back : Math.max(front, back);
    if (count > 0)
      return new Edge([{ unit: [placeOf("loop", "free-loop", true)], times: count }], row.edge.closed);
  }
  return null;
}

/** The foundation chain seen from below: as many places as the first row worked into. */
export function foundationFromBelow(state: PieceState): Edge | null {
  const { foundation } = state;
  if (!foundation) return null;
  const first = state.rows[0];
  const worked =
    first && !isUnknown(first.edge)
      ? Math.min(foundation.length, countStitches(first.edge).stitches)
      : foundation.length;
  return new Edge([{ unit: [placeOf("ch", "foundation", true, worked)], times: 1 }], false);
}
