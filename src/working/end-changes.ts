import type { ScheduleClause } from "../notation/index.ts";
import type { Hands } from "./hands.ts";
import { stitchPlace } from "./place.ts";
import { placesChanged } from "./schedules.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/** "Sc across, inc 1 st at each end": a row of its own stitches that is shaped once, at its ends. */
export function isOneOff(clause: ScheduleClause): boolean {
  const [beat] = clause.beats;
  const one = (values: readonly (number | null)[] | undefined): boolean =>
    values?.length === 1 && values[0] === 1;
  return (
    clause.beats.length === 1 &&
    clause.first === undefined &&
    clause.until === undefined &&
    one(beat?.every.values) &&
    one(beat?.times?.values)
  );
}

/** Keeps what a row is to gain or lose at its ends; it is put when the row is done. */
export function changeAtEnds(hands: Hands, clause: ScheduleClause): void {
  const places = placesChanged(clause.where);
  if (!isOneOff(clause) || places === null) throw new Unknowable("a schedule within a row");
  hands.changeAtEnds += hands.number(clause.by) * places * (clause.change === "inc" ? 1 : -1);
}

/** Adds or takes the stitches told by `changeAtEnds`. @throws {Stuck} where the row has not so many to lose */
export function putChangeAtEnds(hands: Hands): void {
  const change = hands.changeAtEnds;
  hands.changeAtEnds = 0;
  if (change === 0) return;
  if (change > 0) {
    hands.out.add(stitchPlace(hands.lastStitch ?? hands.table.mainStitch()), change);
    return;
  }
  let lose = -change;
  const runs = [...hands.out.snapshot()];
  // Stitches are lost at either end; which end makes no difference to the next row where the ends are alike.
  while (lose > 0) {
    const last = runs.at(-1);
    if (!last) throw new Stuck({ is: "cannot-shape", span: hands.at, have: 0, change });
    runs.pop();
    const counted = last.unit.filter((place) => place.counted).length;
    if (last.unit.length === 1 && counted === 1 && last.times > lose) {
      runs.push({ unit: last.unit, times: last.times - lose });
      lose = 0;
    } else if (last.times > 1) {
      runs.push({ unit: last.unit, times: last.times - 1 });
      for (const place of last.unit.slice(0, Math.max(0, last.unit.length - lose)))
        runs.push({ unit: [place], times: 1 });
      lose -= Math.min(lose, last.unit.length);
    } else {
      const kept = last.unit.slice(0, Math.max(0, last.unit.length - lose));
      if (kept.length > 0) runs.push({ unit: kept, times: 1 });
      lose -= last.unit.length - kept.length;
    }
  }
  hands.out.restore(runs);
}
