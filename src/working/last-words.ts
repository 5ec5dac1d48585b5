import type { Clause, WorkClause } from "../notation/index.ts";
import type { Hands } from "./hands.ts";
import { isRing } from "./ring.ts";
import { isUnknown } from "./targets.ts";

/* Stitches said when the row is used up are no stitches: they are its count, or its join. */

/** More stitches than anybody puts into one place without saying so. */
export const MOST_ALONE = 5;

/**
 * "... to end. 10 htr. Fasten off.": when the row is used up, stitches with no place are its count. So they are where they are exactly
 * what the row has, and fit into nothing that is left: "Sc in next 24 sts. 24 sc. Leave the rest."
 */
export function isCountBehind(
  hands: Hands,
  { target, stitch }: WorkClause,
  said: number,
  after: () => readonly Clause[],
): boolean {
  const { cursor } = hands;
  if (target.ref !== "here" || hands.holding || hands.inRepeat > 0 || !hands.madeStitch || !cursor)
    return false;
  if (isUnknown(cursor.edge) || isRing(cursor.edge)) return false;
  const left = hands.countStitchesLeft();
  if (left === 0) return true;
  if (said <= MOST_ALONE || left >= said || stitch !== hands.lastStitch) return false;
  const made = hands.out.sum((place) => (place.counted ? 1 : 0));
  return made === said && !after().some((clause) => MAKES.has(clause.kind));
}

const MAKES: ReadonlySet<Clause["kind"]> = new Set([
  "work",
  "group",
  "repeat",
  "choice",
  "understood",
  "evenly",
]);

/** A slip stitch when the round is used up is the join, whatever it is called: "24 sc, 1 ss, 1 ch". */
export function closesRound(hands: Hands, { target }: WorkClause): boolean {
  if (hands.holding || !hands.started) return false;
  const { cursor } = hands;
  if (!cursor) return hands.entered === "ring";
  if (isRing(cursor.edge)) return true;
  if (target.ref === "first" || target.what.is === "turning-chain" || target.of?.what.is === "turning-chain")
    return cursor.edge.closed && hands.started && !hands.nothingButSlips();
  return hands.countStitchesLeft() === 0 && !hands.nothingButSlips();
}

/**
 * "ch 2, dc in first sc" when the round is used up: the round is closed by a stitch, which with the chain before it makes the last space
 * and is none of the round's own.
 */
export function closesWithStitch(
  hands: Hands,
  { target, stitch, count }: WorkClause,
  last: boolean,
): boolean {
  if (!last || hands.holding || hands.inRepeat > 0 || !hands.madeStitch || count !== undefined) return false;
  if (stitch === "sl st" || hands.out.last?.role !== "chain" || target.ref !== "first" || target.count)
    return false;
  const { cursor } = hands;
  if (hands.entered === "ring") return true;
  if (!cursor || isUnknown(cursor.edge) || target.what.is === "space") return false;
  if (isRing(cursor.edge)) return true;
  // What the last space goes over is left under it.
  const bridged = hands.skipped > 0 || hands.lace ? hands.out.last.chains + 1 : 0;
  return cursor.edge.closed && hands.countStitchesLeft() <= hands.slippedOver + bridged;
}
