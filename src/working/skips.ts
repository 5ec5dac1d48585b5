import type { Clause, LeaveClause, SkipClause } from "../notation/index.ts";
import { CHAINS_HIGH, startFromHook } from "./chains.ts";
import type { Hands } from "./hands.ts";
import { countPlaces, goToNext, seekAny, takePlaces } from "./seeking.ts";
import { isTrusted, isUnknown, leftAtLimit, needSeeker, nothingThere } from "./targets.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/** Passes places on purpose. */
export function skipPlaces(hands: Hands, clause: SkipClause, rest: readonly Clause[]): void {
  const { target } = clause;
  const cursor = hands.needCursor(clause.span);
  const count = target.count ? hands.number(target.count) : 1;
  if (count === 0) return;
  if (isUnknown(cursor.edge)) {
    if (target.count || target.ref === "next" || target.ref === "here") return;
    throw new Unknowable("the edge is not known");
  }
  if (clause.to && target.from === "hook") {
    // "Beginning in 2nd ch from hook": the chains before it are passed as by a stitch that goes there.
    const nth = target.nth ? hands.number(target.nth) : 1;
    startFromHook(hands, target, nth, rest);
    cursor.go({ run: 0, round: 0, at: 0, used: 0 });
    takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), nth - 1);
    hands.entered = "nowhere";
    return;
  }
  if (clause.to) {
    const seeker = needSeeker(hands, target);
    if (!goToNext(cursor, seeker)) nothingThere(hands, target);
    return;
  }
  const first = firstWorked(rest);
  if (
    !hands.started &&
    hands.out.last === undefined &&
    cursor.place?.role === "foundation" &&
    count in Object.values(CHAINS_HIGH) &&
    first?.kind === "work" &&
    first.target.ref !== "nth"
  ) {
    // "Skip 3 ch, dc in next ch" on the foundation says the same as "dc in 4th ch from hook".
    const here = cursor.position();
    if (clause.countsAs) hands.passedCountsAs = clause.countsAs.parts;
    startFromHook(hands, target, count + 1, rest, first.stitch);
    cursor.go(here);
    takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), count);
    hands.entered = "nowhere";
    return;
  }
  if (target.rowsBelow !== undefined || target.ofRow !== undefined) return;
  if (target.ref === "first" && hands.chainStands && !hands.started) {
    // The chain stands over the first stitch: "skip first st" says no more than that.
    if (count > 1) takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), count - 1);
    return;
  }
  if (target.ref === "next" && count === 1 && hands.chainStands && !hands.started && !isChain(target)) {
    // "Ch 3 (counts as dc), skip next st": the stitch that the chain stands over, or one more.
    const standsAlone = hands.out.last?.role === "turning";
    if (standsAlone && hands.table.choices.take("skip-behind-chain", 2, clause.span) === 1) return;
  }
  const seeker =
    target.what.is === "any" ? seekAny(cursor.edge, hands.table.manner) : hands.seekerOrAny(target);
  if (target.ref === "each") {
    const limitLeft = leftAtLimit(hands, target.until, rest);
    hands.skipped += takePlaces(cursor, seeker, countPlaces(cursor, seeker, limitLeft), limitLeft).taken;
    return;
  }
  const here = cursor.position();
  const { taken, passed } = takePlaces(cursor, seeker, count);
  if (taken < count) {
    cursor.go(here);
    if (isTrusted(cursor.edge) && seeker.passes) throw new Unknowable("the edge was taken on trust");
    const all = hands.countAll();
    throw new Stuck({ is: "not-enough", span: clause.span, have: all, need: all + count - taken });
  }
  if (passed > 0) hands.lace = true;
  hands.skipped += count;
}

/** What comes first behind the skip, in a repeat or not. */
function firstWorked(rest: readonly Clause[]): Clause | undefined {
  const [first] = rest;
  return first?.kind === "repeat" ? firstWorked(first.body) : first;
}

const isChain = (target: SkipClause["target"]): boolean =>
  target.what.is === "chain" || target.what.is === "space";

/** "Leave remaining sts unworked": what is left is left on purpose. */
export function leaveStitches(hands: Hands, clause: LeaveClause): void {
  if (!clause.count) {
    hands.left = Number.POSITIVE_INFINITY;
    return;
  }
  hands.left = hands.number(clause.count);
  const have = hands.countLeft();
  if (hands.cursor && have !== hands.left && !isTrusted(hands.cursor.edge))
    hands.troubles.push({
      is: "left-over",
      span: clause.span,
      left: have - hands.left,
      have,
      announced: true,
    });
}
