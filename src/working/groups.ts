import type { Clause, GroupClause } from "../notation/index.ts";
import { flatten } from "./edge.ts";
import { enterSame, passToLimit } from "./entering.ts";
import type { Hands } from "./hands.ts";
import { inGroup, type Place } from "./place.ts";
import { isRing } from "./ring.ts";
import { countPlaces, takePlaces } from "./seeking.ts";
import { workStitches } from "./stitching.ts";
import { leftAtLimit } from "./targets.ts";

/** Several clauses worked into one place, or the same into each of several places. */
export function workGroup(hands: Hands, clause: GroupClause, after: () => readonly Clause[]): void {
  const { target } = clause;
  if (hands.holding || target.what.is === "ring") {
    hands.out.addUnit(groupPlaces(hands, clause), 1);
    hands.started = true;
    hands.madeStitch = true;
    hands.entered = target.what.is === "ring" ? "ring" : "place";
    return;
  }
  const ring = isRing(hands.below);
  if (ring || target.ref === "same" || target.what.is === "base") {
    if (!ring) {
      enterSame(hands, target);
      hands.beginRoundHere(true);
    }
    hands.out.addUnit(groupPlaces(hands, clause), 1);
    hands.started = true;
    hands.madeStitch = true;
    hands.entered = ring ? "ring" : "place";
    return;
  }
  // The places are found as a single stitch would find them; what is made in each is the group.
  const { madeStitch } = hands;
  const times = enterPlaces(hands, clause, after);
  hands.madeStitch = madeStitch;
  const unit = groupPlaces(hands, clause);
  hands.out.addUnit(unit, times);
  hands.started = true;
  hands.madeStitch = true;
  hands.entered = "place";
}

/** Moves over the places of a group's target with a stitch that makes nothing; gives how many there were. */
function enterPlaces(hands: Hands, clause: GroupClause, after: () => readonly Clause[]): number {
  const { target } = clause;
  if (target.ref === "each" && !target.count && target.what.is !== "between") {
    const cursor = hands.needCursor(target.span);
    const limitLeft = leftAtLimit(hands, target.until, after());
    const seeker = hands.seekerOrAny(target);
    const have = countPlaces(cursor, seeker, limitLeft);
    takePlaces(cursor, seeker, have, limitLeft);
    if (seeker.passes) hands.lace = true;
    passToLimit(hands, target, limitLeft);
    return have;
  }
  const before = hands.out;
  const stitchBefore = hands.lastStitch;
  const scratch = hands.freshOut();
  workStitches(
    hands,
    {
      kind: "work",
      span: clause.span,
      stitch: "sc",
      stitchSpan: clause.span,
      target: target.ref === "here" ? { ...target, ref: "next" } : target,
    },
    after,
    undefined,
  );
  const times = scratch.sum(() => 1);
  hands.out = before;
  hands.lastStitch = stitchBefore;
  return Math.max(1, times);
}

/** The places that a group makes in one place. */
export function groupPlaces(hands: Hands, clause: GroupClause): readonly Place[] {
  return named(makeIn(hands, clause), clause);
}

function makeIn(hands: Hands, clause: GroupClause): readonly Place[] {
  hands.groupBegins = hands.nothingButSlips() && !hands.holding && hands.inRepeat === 0;
  const { entered, chainStands } = hands;
  hands.entered = "place";
  const made = hands.makeApart(clause.body);
  hands.groupBegins = false;
  Object.assign(hands, { entered, chainStands });
  if (made.lastStitch) hands.lastStitch = made.lastStitch;
  return flatten(made.runs);
}

function named(places: readonly Place[], clause: GroupClause): readonly Place[] {
  const group = clause.named ?? "";
  if (places.length < 2) return places;
  // What the group's own special stitches are called is kept.
  return places.map((place, at) =>
    place.group === null || place.group === "" ? inGroup(place, group, at, places.length) : place,
  );
}
