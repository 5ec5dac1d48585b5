import type { Clause, Target, WorkClause } from "../notation/index.ts";
import { startFromHook, startOnFoundation } from "./chains.ts";
import { enterGaps } from "./gaps.ts";
import type { Hands } from "./hands.ts";
import { MOST_ALONE } from "./last-words.ts";
import type { Place } from "./place.ts";
import { countPlaces, goToNext, leftAtLast, type Seeker, seek, seekAny, takePlaces } from "./seeking.ts";
import { makesStitches } from "./segments.ts";
import {
  goToCenter,
  isBareCorner,
  isTrusted,
  isUnknown,
  leftAtLimit,
  namesTurningChain,
  needSeeker,
  nothingThere,
  seekerFor,
  UNKNOWN_EDGE,
} from "./targets.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/** Where a stitch goes in: moves the cursor and says how many times and how many in each place. */
export function enter(
  hands: Hands,
  clause: WorkClause,
  said: number | null,
  places: number | null,
  takes: number,
  post: boolean,
  after: () => readonly Clause[],
  before: Clause | undefined,
): { readonly times: number; readonly perPlace: number } {
  const { target } = clause;
  const once = { times: 1, perPlace: said ?? 1 };
  if (target.ref !== "same") hands.leftOfGroup = 0;
  if (target.what.is === "row-end") goToRowEnds(hands, places !== null);
  if (target.what.is === "free-loop") goToFreeLoops(hands, target);
  if (target.what.is === "foundation") goToFoundation(hands);
  if (hands.cursor && isUnknown(hands.cursor.edge)) return enterUnknown(clause, said, places, takes);
  const cursor = hands.needCursor(target.span);
  if (target.rowsBelow !== undefined || target.ofRow !== undefined || target.what.is === "skipped")
    return enterEarlierRow(hands, clause, said, places, takes, after, before);
  if (target.what.is === "base") {
    enterSame(hands, target);
    return once;
  }
  if (target.what.is === "between") {
    const gaps = enterGaps(hands, { ...target, what: target.what }, places ?? 1, before, after);
    return { times: gaps, perPlace: said ?? 1 };
  }
  if (isBareCorner(hands, target)) {
    if (hands.countStitchesLeft() > 0) takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), 1);
    return once;
  }
  switch (target.ref) {
    case "same":
      enterSame(hands, target);
      return takes > 1 && hands.entered !== "nowhere"
        ? enterNext(hands, target, post, takes - 1, once)
        : once;
    case "here":
      startOnFoundation(hands, clause);
      if (said !== null && said > 1 && said <= MOST_ALONE && takes === 1) {
        // "3 sc" with no place said: one into each of three stitches, or all three into the next.
        const reading = hands.table.choices.take("count-alone", 2, clause.span);
        if (reading === 1) return enterNext(hands, target, post, 1, { times: 1, perPlace: said });
      }
      return enterNext(hands, target, post, (said ?? 1) * takes, { times: said ?? 1, perPlace: 1 });
    case "first":
      if (!hands.started && hands.chainStands) {
        // The row's own chain stands in the first place already: a stitch told to go there is one more.
        if ((places ?? 1) <= 1) return once;
        return enterNext(
          hands,
          target,
          post,
          (places as number) - 1,
          spread(hands, clause, said, places as number, takes),
        );
      }
      return enterNext(
        hands,
        target,
        post,
        (places ?? 1) * (places === null ? takes : 1),
        spread(hands, clause, said, places, takes),
      );
    case "next":
    case "any":
      if (places === null && said !== null && takes > 1)
        return enterNext(hands, target, post, said * takes, { times: said, perPlace: 1 });
      return enterNext(hands, target, post, places ?? takes, spread(hands, clause, said, places, takes));
    case "last":
      // "Ch 3, dc in last st of row before, *sk 1, dc in next st": at the beginning of a round the last stitch lies behind the hook.
      if (cursor.edge.closed && !hands.madeStitch && (places ?? 1) === 1 && after().some(makesStitches))
        return once;
      enterLast(hands, target, places ?? takes, clause);
      return spread(hands, clause, said, places, takes);
    case "nth":
      if (clause.skippedCountsAs && !hands.stood) hands.passedCountsAs = clause.skippedCountsAs.parts;
      if (followsOn(hands, target, before)) return enterNext(hands, target, post, takes, once);
      enterNth(hands, target, after());
      return once;
    case "center":
      enterCenter(hands, target);
      return once;
    case "every-other":
      return { times: enterEveryOther(hands, target, after()), perPlace: said ?? 1 };
    case "each": {
      startOnFoundation(hands, clause);
      if (places !== null)
        return enterNext(hands, target, post, places, { times: places / takes, perPlace: said ?? 1 });
      const limitLeft = leftAtLimit(hands, target.until, after());
      const seeker = post ? postSeeker(hands, target) : namedOrAny(hands, target);
      const have = countPlaces(cursor, seeker, limitLeft);
      // Nothing left to work "across" is no fault once the row has begun.
      if (have === 0 && target.until?.at !== "last" && !hands.started)
        notEnough(hands, target, seeker, 0, takes);
      if (have % takes !== 0)
        throw new Stuck({ is: "repeat-leaves", span: clause.span, have, takes, fixed: 0 });
      if (takePlaces(cursor, seeker, have, limitLeft).passed > 0) hands.lace = true;
      passToLimit(hands, target, limitLeft);
      // "Sl st to center dc of petal" ends in that dc, which the next stitch goes into.
      const { until } = target;
      if (clause.stitch === "sl st" && until?.at === "place" && until.place.ref === "center" && !until.before)
        takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), 1);
      // "24 sc in each st around" says the whole count, not 24 into every stitch.
      return {
        times: have / takes,
        perPlace: said !== null && (said > MOST_IN_ONE || said === have) ? 1 : (said ?? 1),
      };
    }
  }
}

/** "3 sc in each ch-2 sp around": the stitches between the spaces are passed over, and so are those behind the last. */
export function passToLimit({ cursor }: Hands, { what }: Target, limitLeft: number): void {
  if (!cursor || (what.is !== "space" && what.is !== "corner")) return;
  while (!cursor.atEnd && cursor.left > limitLeft) cursor.step();
}

/** More stitches than anybody works into each of a row of places. */
const MOST_IN_ONE = 9;

/** Along the side of the piece; where so many row ends are said, they may be of any part of it. */
function goToRowEnds(hands: Hands, counted: boolean): void {
  if (hands.cursor?.edge.some((place) => place.role === "row-end")) return;
  hands.moveTo(counted ? UNKNOWN_EDGE : hands.table.rowEnds());
}

/** Along the underside of the foundation, or of a chain that is not known here. */
function goToFoundation(hands: Hands): void {
  if (hands.cursor?.edge.some((place) => place.role === "foundation")) return;
  hands.moveTo(hands.table.foundation() ?? UNKNOWN_EDGE);
}

/** Into loops that an earlier row left free. */
export function goToFreeLoops(hands: Hands, target: Target): void {
  if (hands.cursor?.edge.some((place) => place.role === "free-loop")) return;
  if (target.of?.what.is === "foundation" || target.of?.what.is === "chain") {
    hands.moveTo((target.of.what.is === "foundation" ? hands.table.foundation() : null) ?? UNKNOWN_EDGE);
    return;
  }
  const row = target.ofRow ?? target.of?.ofRow;
  const edge = hands.table.freeLoops(row ? hands.number(row) : null, target.loops);
  if (!edge) throw new Stuck({ is: "nothing-there", span: target.span, place: "free loop" });
  hands.moveTo(edge);
}

/**
 * On an edge of which nothing is known the words' own numbers count, and nothing is held against them: "group in next sp" is one
 * place, whatever the edge is.
 */
function enterUnknown(
  clause: WorkClause,
  said: number | null,
  places: number | null,
  takes: number,
): { readonly times: number; readonly perPlace: number } {
  const { target } = clause;
  const open = target.ref === "each" || target.ref === "every-other" || target.ref === "nth";
  if (places === null && (open || (target.what.is !== "any" && said === null && !isOnePlace(clause))))
    throw new Unknowable("the edge is not known");
  if (target.ref === "here") return { times: said ?? 1, perPlace: 1 };
  if (places === null) return { times: 1, perPlace: said ?? 1 };
  const one = said === null || said === 1 || (said === places && !target.each);
  return { times: places / takes, perPlace: one ? 1 : said };
}

/** Words that name one place, whatever the edge is; a slip stitch alone only goes along. */
function isOnePlace({ stitch, target }: WorkClause): boolean {
  if (target.ref === "same" || target.ref === "first") return true;
  return target.ref === "next" && stitch !== "sl st" && ["space", "corner"].includes(target.what.is);
}

/** "2 sc in next 3 sts": one in each where the numbers agree, else so many in each place. */
function spread(
  hands: Hands,
  clause: WorkClause,
  said: number | null,
  places: number | null,
  takes: number,
): { times: number; perPlace: number } {
  const count = places ?? takes;
  if (takes > 1) {
    if (count % takes !== 0)
      throw new Stuck({ is: "repeat-leaves", span: clause.span, have: count, takes, fixed: 0 });
    return { times: count / takes, perPlace: 1 };
  }
  if (said === null || said === 1) return { times: count, perPlace: 1 };
  if (count === 1 || clause.target.each) return { times: count, perPlace: said };
  if (said === count) {
    const reading = hands.table.choices.take("as-many-in-as-many", 2, clause.span);
    return reading === 0 ? { times: count, perPlace: 1 } : { times: count, perPlace: said };
  }
  return { times: count, perPlace: said };
}

function enterNext<T>(hands: Hands, target: Target, post: boolean, want: number, result: T): T {
  const cursor = hands.needCursor(target.span);
  const seeker = post ? postSeeker(hands, target) : namedOrAny(hands, target);
  const here = cursor.position();
  const { taken, passed } = takePlaces(cursor, seeker, want);
  if (taken < want) {
    cursor.go(here);
    notEnough(hands, target, seeker, taken, want);
  }
  if (passed > 0) hands.lace = true;
  hands.passedMost = Math.max(hands.passedMost, passed / Math.max(1, taken));
  return result;
}

/**
 * What a target names; a kind of stitch that stands nowhere on the edge is taken for any stitch, since writers say "dc" of
 * what was made as something else, and the counts tell.
 */
export function namedOrAny(hands: Hands, target: Target): Seeker {
  const { edge } = hands.needCursor(target.span);
  const seeker = seekerFor(hands, target);
  if (edge.some((place) => seeker.takes(place) > 0)) {
    if (target.what.is !== "stitch" || seeker.group !== undefined || target.and) return seeker;
    // "2 sc in each sc" of a row that has a bobble among its sc: some writers mean the sc alone, some every stitch.
    const mixed = edge.some((place) => place.counted && place.role === "stitch" && seeker.takes(place) === 0);
    if (!mixed) return seeker;
    const reading = hands.table.choices.take("named-stitch-means-any", 2, target.span);
    return reading === 0 ? seeker : seekAny(edge, hands.table.manner);
  }
  if (target.what.is === "stitch" && !hands.table.specials.has(target.what.code) && !isTrusted(edge)) {
    hands.misnamed.push({ span: target.span, code: target.what.code });
    return seekAny(edge, hands.table.manner);
  }
  if (target.what.is === "chain") return seekAny(edge, hands.table.manner);
  return needSeeker(hands, target);
}

function postSeeker(hands: Hands, target: Target): Seeker {
  const { edge } = hands.needCursor(target.span);
  const named =
    target.what.is === "any" || target.what.is === "stitch"
      ? namedOrAny(hands, target)
      : seekAny(edge, hands.table.manner);
  const hasPost = (place: Place): boolean =>
    place.role === "stitch" || place.role === "turning" || place.role === "unknown";
  if (!edge.some(hasPost)) throw new Stuck({ is: "nothing-there", span: target.span, place: "post" });
  return { ...named, takes: (place) => (hasPost(place) ? named.takes(place) : 0) };
}

function notEnough(hands: Hands, target: Target, seeker: Seeker, have: number, need: number): never {
  const { edge } = hands.needCursor(target.span);
  if (isTrusted(edge) && seeker.passes) throw new Unknowable("the edge was taken on trust");
  if (have === 0 && seeker.passes) nothingThere(hands, target);
  const all = hands.countAll();
  const taken = all - hands.countLeft();
  throw new Stuck({
    is: "not-enough",
    span: target.span.to > target.span.from ? target.span : hands.at,
    have: all,
    need: Math.max(all + need - have, taken + need),
  });
}

/** The place of the last stitch; at the beginning of a row the first one. */
export function enterSame(hands: Hands, target: Target): void {
  if (target.what.is === "space" && !hands.enteredSpace && hands.cursor && !hands.cursor.atEnd) {
    // "Hdc in each st to corner sp, ch 2, hdc in same corner sp": the space that was reached and not worked into yet.
    const seeker = seek(target.what, hands.cursor.edge, hands.table.manner);
    if (seeker && seeker.takes(hands.cursor.place as Place) > 0) {
      takePlaces(hands.cursor, seeker, 1);
      hands.enteredSpace = true;
      hands.entered = "place";
      return;
    }
  }
  if (hands.entered !== "nowhere" || hands.chainStands) return;
  const cursor = hands.needCursor(target.span);
  takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), 1);
  hands.entered = "place";
}

function enterLast(hands: Hands, target: Target, count: number, clause: WorkClause): void {
  const cursor = hands.needCursor(target.span);
  const seeker = namedOrAny(hands, target);
  const left = leftAtLast(cursor.edge, seeker, count);
  if (left === null || left > cursor.left) {
    notEnough(hands, target, seeker, countPlaces(cursor, seeker), count);
  }
  const between = countPlaces(cursor, seekAny(cursor.edge, hands.table.manner), left);
  if (between > 0 && !seeker.passes)
    hands.troubles.push({
      is: "left-over",
      span: clause.span,
      left: between,
      have: between + count,
      announced: false,
    });
  if (between > 0 && seeker.passes) hands.lace = true;
  while (cursor.left > left) cursor.step();
  takePlaces(cursor, seeker, count);
}

/** "Sc in first st, sc in second st, 2 sc in third st": counted on within a repeat, each is the next. */
function followsOn(hands: Hands, target: Target, before: Clause | undefined): boolean {
  if (
    before?.kind !== "work" ||
    target.of ||
    target.from ||
    !target.nth ||
    before.target.of ||
    before.target.from
  )
    return false;
  const nth = hands.number(target.nth);
  if (before.target.ref === "first")
    return nth === (before.target.count ? hands.number(before.target.count) : 1) + 1;
  return (
    before.target.ref === "nth" &&
    before.target.nth !== undefined &&
    hands.number(before.target.nth) === nth - 1
  );
}

function enterNth(hands: Hands, target: Target, rest: readonly Clause[]): void {
  const cursor = hands.needCursor(target.span);
  const nth = target.nth ? hands.number(target.nth) : 1;
  const onFoundation = cursor.place?.role === "foundation";
  if (target.from === "hook" || (!hands.started && hands.entered === "nowhere" && onFoundation)) {
    startFromHook(hands, target, nth, rest);
    return;
  }
  if (
    target.of?.what.is === "turning-chain" ||
    target.what.is === "turning-chain" ||
    namesTurningChain(target, cursor.edge)
  ) {
    const seeker = seek({ is: "turning-chain" }, cursor.edge, hands.table.manner) as Seeker;
    if (goToNext(cursor, seeker)) cursor.step();
    else takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), 1);
    return;
  }
  if (target.of) {
    const container = needSeeker(hands, target.of);
    if (!goToNext(cursor, container)) nothingThere(hands, target.of);
    const group = cursor.place as Place;
    if (group.role === "chain") {
      cursor.step();
      return;
    }
    const inner =
      target.what.is === "any" ? seekAny(cursor.edge, hands.table.manner) : seekerFor(hands, target);
    takePlaces(cursor, inner, nth);
    // What is left of the last shell stays as it does of the others.
    hands.leftOfGroup = group.group === null ? 0 : group.groupSize - nth;
    return;
  }
  const seeker = namedOrAny(hands, target);
  const left = target.from === "end" ? leftAtLast(cursor.edge, seeker, nth) : null;
  if (left !== null) {
    while (cursor.left > left) cursor.step();
    takePlaces(cursor, seeker, 1);
    return;
  }
  const { taken } = takePlaces(cursor, seeker, nth);
  if (taken < nth) notEnough(hands, target, seeker, taken, nth);
  hands.skipped += nth - 1;
}

/** The middle of a group: "center dc of next shell", "center st of corner". */
function enterCenter(hands: Hands, target: Target): void {
  const cursor = hands.needCursor(target.span);
  if (!goToCenter(hands, cursor, target))
    nothingThere(hands, target.of ?? { ...target, what: { is: "corner" } });
  cursor.step();
  hands.lace = true;
}

function enterEveryOther(hands: Hands, target: Target, rest: readonly Clause[]): number {
  const cursor = hands.needCursor(target.span);
  const limitLeft = leftAtLimit(hands, target.until, rest);
  const seeker = namedOrAny(hands, target);
  const have = countPlaces(cursor, seeker, limitLeft);
  takePlaces(cursor, seeker, have, limitLeft);
  return Math.ceil(have / 2);
}

/** Into an earlier row: the place of this edge that stands before it is taken too, unless the words skip it themselves. */
function enterEarlierRow(
  hands: Hands,
  clause: WorkClause,
  said: number | null,
  places: number | null,
  takes: number,
  after: () => readonly Clause[],
  before: Clause | undefined,
): { times: number; perPlace: number } {
  const { target } = clause;
  const times = said ?? Math.max(1, (places ?? 1) / takes);
  const next = after()[0];
  const result = { times: places ?? times, perPlace: 1 };
  if (target.what.is === "skipped") {
    return { times: said ?? places ?? 1, perPlace: 1 };
  }
  if (target.ofRow !== undefined && hands.table.edgeOfRow(hands.number(target.ofRow)) === null)
    throw new Stuck({ is: "nothing-there", span: target.span, place: `row ${hands.number(target.ofRow)}` });
  if (before?.kind === "skip" || next?.kind === "skip" || target.ref === "same") return result;
  const any: Target = { ...target, what: { is: "any" } };
  return enterNext(hands, any, false, result.times * takes, result);
}
