import type { Clause, GroupClause, WorkClause } from "../notation/index.ts";
import { groupPlaces } from "./groups.ts";
import type { Hands } from "./hands.ts";
import type { Place } from "./place.ts";
import { countPlaces, type Seeker, takePlaces } from "./seeking.ts";
import { isUnknown, leftAtLimit } from "./targets.ts";
import { placesMade } from "./units.ts";

/** "Sc in each sc and 2 sc in each ch-2 sp across": clauses that go over the same stretch together. */
type Each = WorkClause | GroupClause;

/** The clauses from an index on that are worked over one stretch together; fewer than two where none are. */
export function togetherFrom(clauses: readonly Clause[], at: number): readonly Each[] {
  const together: Each[] = [];
  for (let i = at; i < clauses.length; i++) {
    const clause = clauses[i] as Clause;
    if (
      (clause.kind !== "work" && clause.kind !== "group") ||
      clause.target.ref !== "each" ||
      clause.target.count
    )
      break;
    const { what, until } = clause.target;
    if (what.is !== "stitch" && what.is !== "space" && what.is !== "chain" && what.is !== "any") break;
    if (together.some((other) => sameKind(other, clause))) break;
    // "Sc in each dc around, 2 sc in each ch-1 sp": over all of it too, though the way was said before.
    if (together.length > 0 && what.is !== "space" && together.some(({ target }) => target.until)) break;
    together.push(clause);
    if (until && until.at !== "end") break;
  }
  return together;
}

const sameKind = (a: Each, b: Each): boolean =>
  JSON.stringify(a.target.what) === JSON.stringify(b.target.what);

/** Works clauses over one stretch together: each place takes what is told for its kind. */
export function workTogether(hands: Hands, clauses: readonly Each[], rest: readonly Clause[]): void {
  const last = clauses[clauses.length - 1] as Each;
  const cursor = hands.needCursor(last.span);
  if (isUnknown(cursor.edge)) hands.unknowable();
  const until = last.target.until ?? clauses.find(({ target }) => target.until)?.target.until;
  const limitLeft = leftAtLimit(hands, until, rest);
  const parts = clauses.map((clause) => ({
    seeker: hands.seekerOrAny(clause.target),
    made: madeBy(hands, clause, rest),
  }));
  const either: Seeker = {
    chainwise: parts.some(({ seeker }) => seeker.chainwise),
    passes: true,
    takes: (place) => Math.max(...parts.map(({ seeker }) => seeker.takes(place))),
  };
  for (const run of stretch(hands, limitLeft)) {
    const unit = run.unit.flatMap((place) => {
      const part = parts.find(({ seeker }) => seeker.takes(place) > 0);
      return part ? Array.from({ length: part.seeker.takes(place) }, () => part.made).flat() : [];
    });
    hands.out.addUnit(unit, run.times);
  }
  takePlaces(cursor, either, countPlaces(cursor, either, limitLeft), limitLeft);
  while (!cursor.atEnd && cursor.left > limitLeft) cursor.step();
  hands.lace = true;
  hands.started = true;
  hands.madeStitch = true;
  hands.entered = "place";
  const stitch = clauses.find((clause): clause is WorkClause => clause.kind === "work")?.stitch;
  if (stitch) hands.lastStitch = stitch;
}

function madeBy(hands: Hands, clause: Each, rest: readonly Clause[]): readonly Place[] {
  if (clause.kind === "group") return groupPlaces(hands, clause);
  const made = placesMade(hands, clause.stitch, rest);
  const count = clause.count ? hands.number(clause.count) : 1;
  return Array.from({ length: count }, () => made).flat();
}

/** The runs from the cursor to a limit. */
function stretch(hands: Hands, limitLeft: number) {
  const cursor = hands.needCursor(hands.at);
  const ahead = cursor.edge.from(cursor.position(), (place) => place);
  if (limitLeft === 0) return ahead.runs;
  const end = cursor.position();
  const here = { ...end };
  while (!cursor.atEnd && cursor.left > limitLeft) {
    const run = cursor.edge.runs[cursor.run];
    const units =
      run && cursor.at === 0 && cursor.used === 0
        ? Math.min(
            run.times - cursor.round,
            Math.floor((cursor.left - limitLeft) / cursor.edge.unitLength(cursor.run)),
          )
        : 0;
    if (units > 0) cursor.stepUnits(units);
    else cursor.step();
  }
  const until = cursor.position();
  cursor.go(here);
  return cursor.edge.between(here, until).runs;
}
