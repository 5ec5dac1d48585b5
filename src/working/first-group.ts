import type { Clause } from "../notation/index.ts";
import { type Edge, flatten, type Run } from "./edge.ts";
import type { Hands } from "./hands.ts";
import { inGroup, type Place, placeOf } from "./place.ts";
import { placesMade } from "./units.ts";

/**
 * "Ch 4, dc in same sp, *V-st in next V-st": a row's own chain with what stands in its place is the first V-st where it is made just
 * as those that follow.
 */
export function nameFirstGroup(hands: Hands, rest: readonly Clause[]): void {
  if (hands.holding || hands.inRepeat > 0 || !hands.chainStands) return;
  const places = flatten(hands.out.snapshot());
  const from = places.findIndex((place) => place.role === "turning");
  const own = places.slice(from);
  if (from < 0 || own.length < 2 || !own[0]?.counted || own.some((place) => place.group)) return;
  for (const name of groupsNamed(rest)) {
    const made = placesMade(hands, name, rest);
    const alike =
      made.length === own.length &&
      made.every(({ code, role, chains, group }, at) => {
        const place = own[at] as Place;
        return group !== null && place.code === code && (role !== "chain" || place.chains === chains);
      });
    if (!alike) continue;
    hands.out.restore([]);
    for (const place of places.slice(0, from)) hands.out.addMade([place], 1);
    hands.out.addMade(
      own.map((place, at) => inGroup(place, made[at]?.group ?? "", at, own.length)),
      1,
    );
    return;
  }
}

/** The stitches that clauses name, each once. */
function groupsNamed(clauses: readonly Clause[]): ReadonlySet<string> {
  return new Set(
    clauses.flatMap((clause) => {
      if (clause.kind === "work") return [clause.stitch];
      return clause.kind === "repeat" ? [...groupsNamed(clause.body)] : [];
    }),
  );
}

/** Where a round begins in the middle of a group, what lies before the hook is no group of its own when the round comes there. */
export function withoutGroupCut(passed: Edge, next: Place | undefined): readonly Run[] {
  if (!next || next.group === null || next.groupAt === 0 || passed.length > LONGEST_CUT) return passed.runs;
  const places = flatten(passed.runs);
  for (let at = places.length - 1; at >= 0; at--) {
    const { code, role, counted, chains, group, groupAt, colour } = places[at] as Place;
    if (group !== next.group || groupAt >= next.groupAt) break;
    places[at] = placeOf(code, role, counted, chains, null, 0, 1, colour);
    if (groupAt === 0) break;
  }
  return places.map((place) => ({ unit: [place], times: 1 }));
}

/** No round is begun further on by slip stitches than this. */
const LONGEST_CUT = 40;
