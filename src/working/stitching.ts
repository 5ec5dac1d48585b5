import type { Clause, Target, WorkClause } from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import { enter, namedOrAny } from "./entering.ts";
import { nameFirstGroup } from "./first-group.ts";
import type { Hands } from "./hands.ts";
import { closeRound } from "./joining.ts";
import { closesRound, closesWithStitch, isCountBehind } from "./last-words.ts";
import { isMarked, marked, putAlongMarks } from "./marks.ts";
import { closesPicot } from "./picots.ts";
import { inGroup, type Place, placeOf } from "./place.ts";
import { closedChain, isRing, RING } from "./ring.ts";
import { goToNext } from "./seeking.ts";
import { makesStitches } from "./segments.ts";
import { standAsStitches } from "./slip-stitches.ts";
import { leftAtLimit, nothingThere, ofEach, seekerFor, takesOf } from "./targets.ts";
import { canWork, placesMade, rowStitch, standsOnTop, staysInPlace } from "./units.ts";

/** Works one stitch clause: so many stitches of a kind, into the places that its target names. */
export function workStitches(
  hands: Hands,
  clause: WorkClause,
  after: () => readonly Clause[],
  before: Clause | undefined,
): void {
  const said = clause.count ? hands.number(clause.count) : null;
  // "In ch-1 sp of each V-st" is in each V-st, once.
  const target = ofEach(clause.target);
  if (target !== clause.target) {
    workStitches(hands, { ...clause, target }, after, before);
    return;
  }
  const places = target.count ? hands.number(target.count) : null;
  if (said === 0 || places === 0) return;
  if (closesPicot(hands, clause, before)) return;
  if (clause.stitch === "sl st" && closesRound(hands, clause)) {
    hands.joined = true;
    return;
  }
  if (clause.target.ref === "first" && closesWithStitch(hands, clause, !after().some(makesStitches))) {
    closeRound(hands, { kind: "join", span: clause.span, stitch: clause.stitch, target, ring: false });
    return;
  }
  if (said !== null && isCountBehind(hands, clause, said, after)) {
    const worked = hands.out.sum((place) => (place.counted ? 1 : 0));
    if (worked !== said)
      hands.troubles.push({ is: "count-differs", span: clause.span, of: null, printed: said, worked });
    return;
  }
  const special = hands.table.specials.get(clause.stitch);
  if (standsOnTop(clause.stitch, special)) {
    // A picot stands on the stitch before it: it takes no place and makes none that counts.
    hands.out.add(placeOf(clause.stitch, "join", false, 0, clause.stitch), said ?? 1);
    return;
  }
  if (special && canWork(special) && !staysInPlace(special)) {
    workWandering(hands, clause, special.clauses, said, places, after);
    return;
  }
  const stitch = clause.stitch === "?" ? "?" : clause.stitch;
  const rest = after();
  const made = standAsStitches(hands, clause, rest)
    ? [placeOf("sl st", "stitch", true)]
    : placesMade(hands, stitch, rest);
  const note = (): void => {
    hands.started = true;
    if (stitch !== "sl st") hands.madeStitch = true;
    if (stitch !== "inc" && stitch !== "dec") hands.lastStitch = stitch;
    else hands.lastStitch ??= rowStitch(hands, rest);
  };
  const record = hasStitch(stitch) ? stitchOf(stitch) : null;
  if (record && record.takes === 0 && record.hold === "none") {
    put(hands, made, said ?? places ?? untilCount(hands, target), 1);
    note();
    return;
  }
  beginInLoop(hands, target);
  enterChainsOfRing(hands, target);
  // Inside a group everything goes into the one place; a ring takes any number.
  const inRing = target.what.is === "ring" || (isRing(hands.below) && target.ref !== "each");
  if (hands.holding || inRing) {
    put(hands, made, said ?? places ?? 1, 1);
    if (target.what.is === "ring") hands.cursor?.toEnd();
    hands.entered = inRing ? "ring" : "place";
    note();
    return;
  }
  const takes = Math.max(1, takesOf(hands, stitch));
  const from = hands.cursor?.position();
  const { times, perPlace } = enter(
    hands,
    clause,
    said,
    places,
    takes,
    record?.hold === "front-post" || record?.hold === "back-post",
    after,
    before,
  );
  const only = made[0];
  if (clause.named && made.length * perPlace > 1) {
    const all = Array.from({ length: perPlace }, () => made).flat();
    hands.out.addUnit(
      all.map((place, at) => inGroup(place, clause.named as string, at, all.length)),
      times,
    );
  } else if (
    only &&
    made.length === 1 &&
    perPlace === 1 &&
    takes === 1 &&
    from &&
    hands.cursor?.edge.some(isMarked)
  )
    putAlongMarks(hands, only, from, seekerFor(hands, target), times);
  else put(hands, made, times, perPlace, target.what.is === "marked");
  if (target.ref === "same") nameFirstGroup(hands, rest);
  const loops = clause.loops ?? target.loops ?? hands.loops;
  if (loops === "front" || loops === "back") hands.singly[loops] += times * takes;
  hands.entered = "place";
  hands.enteredSpace =
    target.what.is === "space" ||
    target.what.is === "corner" ||
    (target.ref === "same" && hands.enteredSpace);
  note();
}

/** A special stitch whose own words move along the edge: they are worked as they stand, as often as it is asked for. */
function workWandering(
  hands: Hands,
  clause: WorkClause,
  body: readonly Clause[],
  said: number | null,
  places: number | null,
  after: () => readonly Clause[],
): void {
  const cursor = hands.needCursor(clause.span);
  const times = said ?? places ?? 1;
  const { target } = clause;
  const across = target.ref === "each";
  const limitLeft = across ? leftAtLimit(hands, target.until, after()) : 0;
  const name = clause.stitch;
  for (
    let time = 0;
    across ? cursor.left > limitLeft && hands.countLeft(limitLeft) > 0 : time < times;
    time++
  ) {
    if (target.what.is !== "any" && target.ref !== "same") {
      const seeker = namedOrAny(hands, target);
      if (!goToNext(cursor, seeker)) nothingThere(hands, target);
    }
    const places = hands.makeHere(body);
    hands.out.addUnit(
      places.map((place, at) => inGroup(place, name, at, places.length)),
      1,
    );
  }
  hands.started = true;
  hands.madeStitch = true;
  hands.lastStitch = name;
}

/** "fsc until you have 64 sts". */
function untilCount(hands: Hands, target: Target): number {
  if (target.until?.at === "count") return hands.number(target.until.count);
  return 1;
}

/** Adds what was made to the row: several stitches in one place stay together as a group without a name. */
function put(hands: Hands, made: readonly Place[], times: number, perPlace: number, mark = false): void {
  if (mark && times === 1) {
    // A marker stays in the middle of what is worked into its place.
    const all = Array.from({ length: perPlace }, () => made).flat();
    const middle = Math.floor(all.length / 2);
    hands.out.addUnit(
      all.map((place, at) => (at === middle && place.group === null ? marked(place) : place)),
      1,
    );
    return;
  }
  if (perPlace === 1) {
    hands.out.addUnit(made, times);
    return;
  }
  const together: Place[] = [];
  for (let i = 0; i < perPlace; i++) together.push(...made);
  const plain =
    together.length >= 3 && together.every((place) => place.group === null && place.role === "stitch");
  hands.out.addUnit(
    plain ? together.map((place, at) => inGroup(place, "", at, together.length)) : together,
    times,
  );
}

/** "Rnd 1: 12 dc into loop" with no ring said before it can only be worked into one. */
function beginInLoop(hands: Hands, target: Target): void {
  if (hands.below || hands.madeFoundation || hands.started || hands.holding) return;
  if (!hands.start.round || !hands.start.labelled || target.ref !== "next" || target.what.is !== "space")
    return;
  hands.moveTo(RING);
  hands.along = false;
}

/** "Sc in each ch around" takes the chains of a small ring one by one, and not the ring as a whole. */
function enterChainsOfRing(hands: Hands, target: Target): void {
  const ring = hands.below?.runs[0]?.unit[0];
  if (ring?.role !== "ring" || ring.chains === 0 || hands.holding) return;
  if (hands.madeStitch || target.ref !== "each" || target.what.is !== "chain") return;
  const { along } = hands;
  hands.moveTo(closedChain(ring.chains));
  hands.along = along;
}
