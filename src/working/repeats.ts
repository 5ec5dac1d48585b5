import type { Clause, RepeatClause } from "../notation/index.ts";
import { type Cursor, flatten, type Position, type Run } from "./edge.ts";
import type { Hands } from "./hands.ts";
import type { Place } from "./place.ts";
import { isRing } from "./ring.ts";
import { isTrusted, leftAtLimit } from "./targets.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/** More repeats than any row has stitches: a repeat that takes nothing is stopped by its own rule before this. */
const MOST = 100_000;

/** Works a repeat: so many times, or to where it stops. */
export function workRepeat(hands: Hands, clause: RepeatClause, rest: readonly Clause[]): void {
  const { stop } = clause;
  if (stop.by === "times") {
    const said = hands.number(stop.times);
    const key = `times:${clause.style}`;
    let total = said;
    if (stop.counting === "extra") total = said + 1;
    else if (stop.counting === "either-total") total = said + hands.table.choices.take(key, 2, stop.span);
    else if (stop.counting === "either-extra") total = said + 1 - hands.table.choices.take(key, 2, stop.span);
    workTimes(hands, clause, total, rest);
    return;
  }
  if (stop.by === "limit" && stop.limit.at === "count") {
    workUntilCount(hands, clause, hands.number(stop.limit.count), stop.limit.remain, rest);
    return;
  }
  if (hands.holding || isRing(hands.below)) throw new Unknowable("a repeat to the end of a ring");
  workAcross(
    hands,
    clause,
    stop.by === "limit" ? leftAtLimit(hands, stop.limit, rest) : leftAtLimit(hands, undefined, rest),
    rest,
  );
}

function workTimes(hands: Hands, clause: RepeatClause, total: number, rest: readonly Clause[]): void {
  const { endBefore } = clause;
  const whole = endBefore === undefined ? total : total - 1;
  for (let time = 0; time < whole; ) {
    const turns = once(hands, clause.body, rest, whole - time, 0);
    time += turns;
  }
  if (endBefore !== undefined && total > 0) hands.run(clause.body.slice(0, endBefore), rest);
}

function workAcross(hands: Hands, clause: RepeatClause, limitLeft: number, rest: readonly Clause[]): void {
  const cursor = hands.needCursor(clause.span);
  const { body, endBefore } = clause;
  const have = hands.countLeft(limitLeft);
  // Where the last turn is shortened, the turns before the end are worked one by one, to be able to take the last one back.
  let takeBack: (() => void) | null = null;
  const endShort = (): boolean =>
    endBefore !== undefined && works(hands, body.slice(0, endBefore), limitLeft, rest);
  for (let time = 0; time < MOST; ) {
    if (cursor.left <= limitLeft || (hands.countLeft(limitLeft) === 0 && time > 0 && !takesSpaces(body))) {
      if (endBefore === undefined || takeBack === null) return;
      takeBack();
      if (endShort()) return;
      throw leaves(hands, clause, have, limitLeft);
    }
    const back = hands.keep();
    const before = cursor.left;
    try {
      time += once(hands, body, rest, MOST, limitLeft, endBefore === undefined ? 0 : 2);
    } catch (reason) {
      back();
      if (!(reason instanceof Stuck)) throw reason;
      if (endShort()) return;
      if (time === 0) throw reason;
      // No further place of the kind that the repeat begins with: it ends here, and what is left is looked at later.
      if (hands.countLeft(limitLeft) === 0) return;
      const { is } = reason.trouble;
      if (
        is === "nothing-there" ||
        (is === "not-enough" && beginsByNaming(body) && stuckAtFirst(body, reason))
      ) {
        hands.lace = true;
        return;
      }
      throw leaves(hands, clause, have, limitLeft);
    }
    // A body that takes nothing would go on for ever.
    if (cursor.left === before) return;
    if (cursor.left < limitLeft) {
      back();
      if (endShort()) return;
      throw leaves(hands, clause, have, limitLeft);
    }
    takeBack = back;
  }
}

function leaves(hands: Hands, clause: RepeatClause, have: number, limitLeft: number): Stuck | Unknowable {
  const edge = hands.needCursor(clause.span).edge;
  const left = hands.countLeft(limitLeft);
  const takes = takenOnce(hands, clause);
  if (isTrusted(edge) && takes === 0) return new Unknowable("the edge was taken on trust");
  const fixed = hands.countAll() - have;
  return new Stuck({
    is: "repeat-leaves",
    span: clause.span,
    have: fixed + have,
    takes: takes || have - left,
    fixed,
  });
}

/** Places that one turn of a repeat takes, as far as it can be worked from the beginning of what is left. */
function takenOnce(hands: Hands, clause: RepeatClause): number {
  const cursor = hands.needCursor(clause.span);
  const back = hands.keep();
  let takes = 0;
  try {
    cursor.go({ run: 0, round: 0, at: 0, used: 0 });
    const before = hands.countLeft();
    hands.run(clause.body, []);
    takes = before - hands.countLeft();
  } catch {
    takes = 0;
  }
  back();
  return takes;
}

/**
 * Works the body once. Where it ends on the same place of the same repeated stretch as it began, the other turns that fit
 * the stretch are the same again and are taken at once.
 *
 * @param spare  turns at the end of the stretch that are left to be worked one by one
 * @returns      how many turns were worked
 */
function once(
  hands: Hands,
  body: readonly Clause[],
  rest: readonly Clause[],
  most: number,
  limitLeft: number,
  spare = 0,
): number {
  const { cursor, out: outer } = hands;
  const before = cursor?.position();
  const leftBefore = cursor?.left ?? 0;
  const made = hands.freshOut();
  const troubles = hands.troubles.length;
  const { repeating } = hands;
  hands.inRepeat++;
  hands.repeating = body;
  try {
    hands.run(body, rest.length > 0 ? [...body, ...rest] : []);
  } finally {
    hands.inRepeat--;
    hands.repeating = repeating;
    hands.out = outer;
    outer.colour = made.colour;
  }
  const unit = made.snapshot();
  let turns = 1;
  if (cursor && cursor === hands.cursor && before && hands.troubles.length === troubles)
    turns += moreTurns(cursor, before, leftBefore, most - 1, limitLeft, spare);
  const places = flattenShort(unit);
  if (places) outer.addMade(places, turns);
  else for (let turn = 0; turn < turns; turn++) for (const run of unit) outer.addMade(run.unit, run.times);
  return turns;
}

/** The places of a unit written out, or null where it is long and better kept as runs. */
function flattenShort(unit: readonly Run[]): readonly Place[] | null {
  let length = 0;
  for (const run of unit) length += run.unit.length * run.times;
  return length <= 400 ? flatten(unit) : null;
}

function moreTurns(
  cursor: Cursor,
  before: Position,
  leftBefore: number,
  most: number,
  limitLeft: number,
  spare: number,
): number {
  if (cursor.run !== before.run || cursor.at !== before.at || cursor.used !== before.used) return 0;
  const rounds = cursor.round - before.round;
  const run = cursor.edge.runs[cursor.run];
  if (rounds <= 0 || !run) return 0;
  const inRun = Math.floor((run.times - cursor.round - 1) / rounds) - spare;
  const consumed = leftBefore - cursor.left;
  const byLimit = Math.floor((cursor.left - limitLeft) / consumed + 1e-9) - 1 - spare;
  const more = Math.max(0, Math.min(inRun, byLimit, most));
  if (more > 0) cursor.stepUnits(more * rounds);
  return more;
}

/** Works the shortened last turn where it fits; false, with nothing changed, where it does not. */
function works(hands: Hands, body: readonly Clause[], limitLeft: number, rest: readonly Clause[]): boolean {
  const cursor = hands.needCursor(hands.start.span);
  const back = hands.keep();
  try {
    hands.run(body, rest);
    if (cursor.left >= limitLeft) return true;
  } catch (reason) {
    if (!(reason instanceof Stuck)) throw reason;
  }
  back();
  return false;
}

function workUntilCount(
  hands: Hands,
  clause: RepeatClause,
  count: number,
  remain: boolean,
  rest: readonly Clause[],
): void {
  for (let time = 0; time < MOST; time++) {
    const now = remain ? hands.countLeft() : hands.out.sum((place) => (place.counted ? 1 : 0));
    if (remain ? now <= count : now >= count) return;
    const left = hands.cursor?.left;
    once(hands, clause.body, rest, 1, 0);
    if (hands.cursor?.left === left && remain) return;
  }
}

/** Whether a body goes only where it names: its first place sought is a space or a kind of stitch. */
function beginsByNaming(body: readonly Clause[]): boolean {
  for (const clause of body) {
    if (clause.kind === "work" || clause.kind === "group") return clause.target.what.is !== "any";
    if (clause.kind === "skip") return clause.target.what.is !== "any";
    if (clause.kind === "repeat") return beginsByNaming(clause.body);
  }
  return false;
}

function stuckAtFirst(body: readonly Clause[], reason: Stuck): boolean {
  for (const clause of body) {
    if (clause.kind === "work" || clause.kind === "group" || clause.kind === "skip")
      return clause.target.span === reason.trouble.span || clause.span === reason.trouble.span;
    if (clause.kind === "repeat") return stuckAtFirst(clause.body, reason);
  }
  return false;
}

function takesSpaces(body: readonly Clause[]): boolean {
  return body.some(
    (clause) =>
      ((clause.kind === "work" || clause.kind === "group" || clause.kind === "skip") &&
        clause.target.what.is === "space") ||
      (clause.kind === "repeat" && takesSpaces(clause.body)),
  );
}
