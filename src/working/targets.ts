import type { Clause, Limit, PlaceWord, Target } from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import { Cursor, Edge } from "./edge.ts";
import type { Hands } from "./hands.ts";
import { type Place, UNKNOWN_PLACE } from "./place.ts";
import { goToNext, leftAtLast, type Seeker, seek, seekAny, seekEither } from "./seeking.ts";
import { makesStitches } from "./segments.ts";
import { Stuck, Unknowable } from "./trouble.ts";
import { canWork, standsOnTop } from "./units.ts";

/** An edge of which nothing is known, not even how long it is. */
export const UNKNOWN_EDGE = new Edge([{ unit: [UNKNOWN_PLACE], times: 0 }], false);

/** Whether nothing is known of an edge, from whichever side it is seen. */
export function isUnknown(edge: Edge): boolean {
  const run = edge.runs[0];
  return edge.runs.length === 1 && run?.times === 0 && run.unit[0] === UNKNOWN_PLACE;
}

/** Whether an edge has places whose kind was taken on trust. */
export const isTrusted = (edge: Edge): boolean => edge.some((place) => place.role === "unknown");

/** What a target looks for on the edge at hand. @throws {Stuck} when nothing on the edge is of that kind */
export function seekerFor(hands: Hands, target: Target, what: PlaceWord = target.what): Seeker {
  const edge = hands.needCursor(target.span).edge;
  if (isUnknown(edge)) throw new Unknowable("the edge is not known");
  const seeker = seek(what, edge, hands.table.manner);
  if (!seeker) return seekAny(edge, hands.table.manner);
  if (target.and && target.and.length > 0) {
    const others = target.and
      .map((other) => seek(other, edge, hands.table.manner))
      .filter((other) => other !== null);
    return seekEither([seeker, ...others]);
  }
  return seeker;
}

/** The same, where something of the kind must be there. */
export function needSeeker(hands: Hands, target: Target): Seeker {
  const cursor = hands.needCursor(target.span);
  const seeker = seekerFor(hands, target);
  if (!cursor.edge.some((place) => seeker.takes(place) > 0)) nothingThere(hands, target);
  return seeker;
}

/** "3 sc in corner" where the hook stands at the end of a row: the corner of the piece is there. */
export function isBareCorner(hands: Hands, target: Target): boolean {
  const { cursor } = hands;
  if (target.what.is !== "corner" || !cursor || isUnknown(cursor.edge) || cursor.edge.closed) return false;
  if (hands.countStitchesLeft() > 0 && cursor.left < cursor.edge.length) return false;
  const corner = seek({ is: "corner" }, cursor.edge, hands.table.manner);
  return !corner || !cursor.edge.some((place) => corner.takes(place) > 0);
}

/** @throws {Stuck} or, where the edge was taken on trust, {Unknowable} */
export function nothingThere(hands: Hands, target: Target): never {
  const { edge } = hands.needCursor(target.span);
  if (isTrusted(edge)) throw new Unknowable("the edge was taken on trust");
  // Markers are put in by words that say no row and no stitch as often as not.
  if (target.what.is === "corner") throw new Unknowable("the corner is not known");
  if (target.what.is === "marked") throw new Unknowable("the marked stitch is not known");
  throw new Stuck({ is: "nothing-there", span: target.span, place: sayPlace(target.what) });
}

/** A place in the trade's words. */
export function sayPlace(what: PlaceWord): string {
  switch (what.is) {
    case "any":
      return "stitch";
    case "stitch":
      return what.code;
    case "space":
      return what.chains === undefined
        ? what.corner
          ? "corner space"
          : "chain space"
        : `ch-${what.chains} space`;
    case "chain":
      return "chain";
    case "turning-chain":
      return "turning chain";
    case "row-end":
      return "row end";
    case "free-loop":
      return "free loop";
    case "marked":
      return "marked stitch";
    case "foundation":
      return "foundation chain";
    default:
      return what.is;
  }
}

/** Where the places begin that a limit leaves: the length of edge left there. */
export function leftAtLimit(hands: Hands, limit: Limit | undefined, rest: readonly Clause[]): number {
  const { edge } = hands.needCursor(limit?.span ?? hands.start.span);
  if (isUnknown(edge)) throw new Unknowable("the edge is not known");
  if (!limit || limit.at === "end") return leftForRest(hands, rest);
  if (limit.at === "last") {
    const count = hands.number(limit.count);
    const seeker = seek(limit.what, edge, hands.table.manner) ?? seekAny(edge, hands.table.manner);
    const left = leftAtLast(edge, seeker, count);
    if (left === null) {
      if (isTrusted(edge) && limit.what.is !== "any") throw new Unknowable("the edge was taken on trust");
      throw new Stuck({ is: "not-enough", span: limit.span, have: hands.countAll(), need: count });
    }
    return left;
  }
  if (limit.at === "place") {
    const cursor = hands.needCursor(limit.span);
    const scout = new Cursor(edge);
    scout.go(cursor.position());
    if (limit.place.ref === "center") {
      if (!goToCenter(hands, scout, limit.place)) nothingThere(hands, limit.place.of ?? limit.place);
      return scout.left + (limit.before ? hands.number(limit.before) : 0);
    }
    const seeker = needSeeker(hands, limit.place);
    if (limit.place.ref === "last") {
      const left = leftAtLast(edge, seeker, limit.place.count ? hands.number(limit.place.count) : 1);
      if (left !== null) return left;
    }
    if (!goToNext(scout, seeker)) nothingThere(hands, limit.place);
    return scout.left + (limit.before ? hands.number(limit.before) : 0);
  }
  return 0;
}

/** Goes to the middle of a group: of the shell that is named, or of the stitches in one place that make a corner. */
export function goToCenter(hands: Hands, cursor: Cursor, target: Target): boolean {
  const container = target.of ?? target;
  const { edge } = cursor;
  const name = container.what.is === "stitch" ? container.what.code : null;
  const isGroup = name !== null && edge.some((place) => place.group === name);
  const corner = seek({ is: "corner" }, edge, hands.table.manner) as Seeker;
  if (!goToNext(cursor, isGroup ? seekerFor(hands, container) : corner)) return false;
  if (isGroup) {
    const middle = Math.floor((cursor.place as Place).groupSize / 2);
    for (let step = 0; step < middle; step++) cursor.step();
  }
  return true;
}

/**
 * How much of the edge the rest of a row needs, where what comes before it goes "across": the length left at the place
 * where the rest begins.
 */
export function leftForRest(hands: Hands, rest: readonly Clause[]): number {
  const { edge } = hands.needCursor(hands.start.span);
  const { manner } = hands.table;
  let stitches = 0;
  for (const [at, clause] of rest.entries()) {
    const { kind } = clause;
    // "2 dc in each dc around, ss": the slip stitch closes the round, and takes none of its places.
    if (edge.closed && isBareSlip(clause) && !rest.slice(at + 1).some(makesStitches)) break;
    if (kind === "turn" || kind === "fasten-off" || kind === "do-not-turn" || kind === "along") break;
    const need = needOf(hands, clause, edge);
    if (need === null) continue;
    if (need.kind === "named") {
      const seeker = seek(need.what, edge, manner);
      const left = seeker ? leftAtLast(edge, seeker, need.count) : null;
      if (left !== null) return Math.max(left, leftAtLast(edge, seekAny(edge, manner), stitches) ?? 0);
    } else stitches += need.count;
  }
  return leftAtLast(edge, seekAny(edge, manner), stitches) ?? edge.length;
}

const isBareSlip = (clause: Clause): boolean =>
  clause.kind === "work" && clause.stitch === "sl st" && clause.target.ref === "here" && !clause.count;

type Need =
  | { readonly kind: "stitches"; readonly count: number }
  | { readonly kind: "named"; readonly what: PlaceWord; readonly count: number };

/** What one clause needs of the edge; null for nothing. */
function needOf(hands: Hands, clause: Clause, edge: Edge): Need | null {
  switch (clause.kind) {
    case "work":
    case "group": {
      const { target } = clause;
      const count = target.count ? hands.number(target.count) : 1;
      const special =
        target.what.is === "space" || target.what.is === "corner" || target.what.is === "marked";
      if (
        target.ref === "same" ||
        target.ref === "each" ||
        target.ref === "every-other" ||
        target.what.is === "ring"
      )
        return null;
      if (target.what.is === "base" || target.what.is === "skipped") return null;
      if (
        target.what.is === "turning-chain" ||
        target.of?.what.is === "turning-chain" ||
        namesTurningChain(target, edge)
      ) {
        const last = lastPlace(edge);
        return last?.role === "turning"
          ? last.counted
            ? { kind: "stitches", count: 1 }
            : { kind: "named", what: { is: "turning-chain" }, count: 1 }
          : { kind: "stitches", count: 1 };
      }
      if (target.ref === "nth" || target.ref === "any" || target.ref === "first") return null;
      if (special) return { kind: "named", what: target.what, count };
      if (clause.kind === "work" && standsOnTop(clause.stitch, hands.table.specials.get(clause.stitch)))
        return null;
      if (target.ref === "here" && clause.kind === "work") {
        const times = clause.count ? hands.number(clause.count) : 1;
        return { kind: "stitches", count: times * takesOf(hands, clause.stitch) };
      }
      if (clause.kind === "work" && target.count === undefined)
        return { kind: "stitches", count: Math.max(1, takesOf(hands, clause.stitch)) };
      return { kind: "stitches", count };
    }
    case "understood":
      return {
        kind: "stitches",
        count:
          clause.target.ref === "here"
            ? hands.number(clause.count)
            : clause.target.count
              ? hands.number(clause.target.count)
              : 1,
      };
    case "skip":
      if (clause.to || clause.target.ref === "each") return null;
      if (clause.target.what.is === "space")
        return {
          kind: "named",
          what: clause.target.what,
          count: clause.target.count ? hands.number(clause.target.count) : 1,
        };
      return { kind: "stitches", count: clause.target.count ? hands.number(clause.target.count) : 1 };
    case "leave":
      return clause.count ? { kind: "stitches", count: hands.number(clause.count) } : null;
    case "size-only":
      return clause.sizes.includes(hands.table.size) ? sumNeeds(hands, clause.body, edge, 1) : null;
    case "choice":
      return sumNeeds(
        hands,
        clause.options[hands.table.choices.take(clause.form, clause.options.length, clause.span)] ?? [],
        edge,
        1,
      );
    case "repeat":
      if (clause.stop.by !== "times") return null;
      return sumNeeds(hands, clause.body, edge, hands.number(clause.stop.times));
    default:
      return null;
  }
}

function sumNeeds(hands: Hands, body: readonly Clause[], edge: Edge, times: number): Need | null {
  let count = 0;
  for (const clause of body) {
    const need = needOf(hands, clause, edge);
    if (need?.kind === "named") return need;
    if (need) count += need.count;
  }
  return { kind: "stitches", count: count * times };
}

/** "End with dc in 3rd ch": of the chain that began the row below, where the edge ends with one. */
export function namesTurningChain(target: Target, edge: Edge): boolean {
  return (
    target.ref === "nth" &&
    target.what.is === "chain" &&
    !target.of &&
    !target.from &&
    lastPlace(edge)?.role === "turning"
  );
}

/** How many places a stitch takes. */
export function takesOf(hands: Hands, stitch: string): number {
  if (stitch === "dec") return 2;
  if (stitch === "inc" || stitch === "?") return 1;
  const special = hands.table.specials.get(stitch);
  if (special && canWork(special)) return 1;
  return hasStitch(stitch) ? stitchOf(stitch).takes : 1;
}

export function lastPlace(edge: Edge): Place | undefined {
  const run = edge.runs[edge.runs.length - 1];
  return run?.unit[run.unit.length - 1];
}

/** "In ch-1 sp of each V-st", "in centre dc of each shell" is in each of them, once. */
export function ofEach(target: Target): Target {
  const { of } = target;
  const single = (target.ref === "next" || target.ref === "center") && !target.count;
  return single && of?.ref === "each" && of.what.is === "stitch" ? of : target;
}
