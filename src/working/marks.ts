import type { MarkerClause } from "../notation/index.ts";
import { Cursor, type Position } from "./edge.ts";
import type { Hands } from "./hands.ts";
import { type Place, placeOf } from "./place.ts";
import { type Seeker, takePlaces } from "./seeking.ts";

const MARK = "@mark";

export const isMarked = (place: Place): boolean => place.group?.startsWith(MARK) === true;

/** The same place with a marker in it. */
export const marked = (place: Place): Place =>
  placeOf(place.code, place.role, place.counted, place.chains, MARK, 0, 1, place.colour);

/** Puts a marker into the stitch just made. Where the words say another place, the marker is found again only by luck; it is left out. */
export function placeMarker(hands: Hands, clause: MarkerClause): void {
  if (clause.action === "remove" || hands.holding) return;
  const { target } = clause;
  const here =
    target === null ||
    target.ref === "same" ||
    target.ref === "last" ||
    target.ref === "here" ||
    target.what.is === "base";
  const last = hands.out.last;
  if (here && last && last.group === null) hands.out.replaceLast(marked(last));
}

/**
 * Adds stitches made one by one into places some of which hold a marker: the marker goes up with the work.
 * Common practice, no source.
 */
export function putAlongMarks(
  hands: Hands,
  place: Place,
  from: Position,
  seeker: Seeker,
  count: number,
): void {
  const { cursor, out } = hands;
  if (!cursor) return;
  const scout = new Cursor(cursor.edge);
  scout.go(from);
  let put = 0;
  while (put < count && !scout.atEnd) {
    const run = scout.edge.runs[scout.run];
    const inRun =
      run && !run.unit.some(isMarked) && scout.at === 0 && scout.used === 0 ? run.times - scout.round : 0;
    if (run && inRun > 0) {
      let takes = 0;
      for (const each of run.unit) takes += seeker.takes(each);
      const whole = takes === 0 ? inRun : Math.min(inRun, Math.floor((count - put) / takes));
      if (whole > 0) {
        out.add(place, whole * takes);
        put += whole * takes;
        scout.stepUnits(whole);
        continue;
      }
    }
    const here = scout.place as Place;
    const before = scout.left;
    const { taken } = takePlaces(scout, seeker, 1);
    if (taken === 0 && scout.left === before) break;
    if (taken > 0) {
      out.add(isMarked(here) ? marked(place) : place);
      put++;
    }
  }
  out.add(place, count - put);
}
