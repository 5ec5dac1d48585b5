import type { PlaceWord } from "../notation/index.ts";
import { coversPlace, hasStitch, stitchOf } from "../stitches/index.ts";
import { Cursor, type Edge } from "./edge.ts";
import type { Place } from "./place.ts";

/** What is looked for on an edge: words for a place, made ready for many questions. */
export interface Seeker {
  /**
   * How many works a place takes of what is sought: 1 for a stitch top, n for a run of n chains taken one by one, 0 for
   * a place that is passed over.
   */
  readonly takes: (place: Place) => number;
  /** Whether a run of chains is entered chain by chain (true) or as one space. */
  readonly chainwise: boolean;
  /** Whether stitches that count are passed over by naming something else. */
  readonly passes: boolean;
  /** Name of a special stitch that is taken as a whole, all the places it made. */
  readonly group?: string;
}

/** How the document counts what is not plainly a stitch. */
export interface Manner {
  /** Chains inside rows are places for "next st" and "each st". */
  readonly chainsArePlaces: boolean;
}

const isChainRun = (place: Place): boolean => place.role === "chain" || place.role === "foundation";

/** Any stitch: what counts as one, and chains where the document takes them for places. */
export function seekAny(edge: Edge, manner: Manner): Seeker {
  const onlySlips = !edge.some(
    (place) => place.role === "unknown" || (place.role === "stitch" && place.code !== "sl st"),
  );
  return {
    chainwise: true,
    passes: false,
    takes: (place) => {
      if (place.role === "foundation") return place.chains;
      if (place.role === "chain") return manner.chainsArePlaces ? place.chains : 0;
      if (place.role === "stitch") return place.counted || onlySlips ? 1 : 0;
      if (place.role === "turning" || place.role === "join") return place.counted ? 1 : 0;
      return 1;
    },
  };
}

/** The longest space of an edge: where nothing else tells them, corners are the longest. */
function longestSpace(edge: Edge): number {
  let longest = 0;
  for (const run of edge.runs)
    for (const place of run.unit)
      if (place.role === "chain" && place.chains > longest) longest = place.chains;
  return longest;
}

/** Whether a row not worked in the round ends at the chain, so many long, that began the row below. */
function endsWithChain(edge: Edge, chains: number): boolean {
  const last = edge.runs.at(-1)?.unit.at(-1);
  return !edge.closed && last?.role === "turning" && last.counted && last.chains === chains;
}

/** Whether a code of the dictionary is several stitches fanned from one place. */
export function isShell(code: string): boolean {
  if (!hasStitch(code)) return false;
  const { special, parts } = stitchOf(code);
  return special && parts !== undefined && parts.length >= 3;
}

/** What a word for a place looks for on an edge. Null where no place of an edge is meant (ring, marker and the like are asked for elsewhere). */
export function seek(what: PlaceWord, edge: Edge, manner: Manner): Seeker | null {
  switch (what.is) {
    case "any":
      return seekAny(edge, manner);
    case "stitch": {
      const { code } = what;
      if (isShell(code) && !edge.some((place) => place.group === code)) {
        // A shell that was never given its name is known by its stitches standing in one place.
        return {
          chainwise: false,
          passes: true,
          group: "",
          takes: (place) =>
            place.group === "" && place.groupAt === 0 && place.groupSize >= 3
              ? 1
              : place.role === "unknown"
                ? 1
                : 0,
        };
      }
      if (edge.some((place) => place.group === code))
        return {
          chainwise: false,
          passes: true,
          group: code,
          takes: (place) => (place.group === code && place.groupAt === 0 ? 1 : 0),
        };
      return {
        chainwise: false,
        passes: true,
        takes: (place) =>
          place.role === "unknown" ||
          ((place.role === "stitch" || place.role === "turning") &&
            place.counted &&
            coversPlace(code, place.code))
            ? 1
            : place.role === "stitch" && code === "sl st" && place.code === "sl st"
              ? 1
              : 0,
      };
    }
    case "chain":
      return {
        chainwise: true,
        passes: true,
        takes: (place) => (isChainRun(place) ? place.chains : place.role === "unknown" ? 1 : 0),
      };
    case "space": {
      const longest = what.corner ? longestSpace(edge) : 0;
      // "Dc in ch 3" at the end of a row: where no space is so long, the chain that began the row below.
      const none = !edge.some((place) => place.role === "chain" && place.chains === what.chains);
      if (what.chains !== undefined && none && endsWithChain(edge, what.chains))
        return seek({ is: "turning-chain" }, edge, manner);
      return {
        chainwise: false,
        passes: true,
        takes: (place) => {
          if (place.role !== "chain") return 0;
          if (what.chains !== undefined) return place.chains === what.chains ? 1 : 0;
          return !what.corner || place.chains === longest ? 1 : 0;
        },
      };
    }
    case "corner":
      return {
        chainwise: false,
        passes: true,
        takes: (place) => {
          if (place.role === "chain") return place.chains === longestSpace(edge) && place.chains > 1 ? 1 : 0;
          return place.group === "" && place.groupSize >= 3 && place.groupAt * 2 + 1 === place.groupSize
            ? 1
            : 0;
        },
      };
    case "turning-chain":
      return { chainwise: false, passes: true, takes: (place) => (place.role === "turning" ? 1 : 0) };
    case "join":
      return { chainwise: false, passes: true, takes: (place) => (place.role === "join" ? 1 : 0) };
    case "marked":
      return { chainwise: false, passes: true, takes: (place) => (place.group?.startsWith("@mark") ? 1 : 0) };
    case "foundation":
      return {
        chainwise: true,
        passes: false,
        takes: (place) => (place.role === "foundation" ? place.chains : 1),
      };
    case "row-end":
      return {
        chainwise: true,
        passes: false,
        takes: (place) => (place.role === "row-end" || place.role === "unknown" ? 1 : 0),
      };
    case "free-loop":
      return {
        chainwise: true,
        passes: false,
        takes: (place) => (place.role === "free-loop" || place.role === "unknown" ? 1 : 0),
      };
    case "between":
    case "base":
    case "skipped":
    case "ring":
      return null;
  }
}

/** Several kinds of place taken alike. */
export function seekEither(seekers: readonly Seeker[]): Seeker {
  return {
    chainwise: seekers.some((seeker) => seeker.chainwise),
    passes: seekers.some((seeker) => seeker.passes),
    takes: (place) => {
      let most = 0;
      for (const seeker of seekers) most = Math.max(most, seeker.takes(place));
      return most;
    },
  };
}

/**
 * Moves the cursor over the next `want` places that are sought, passing over what is not, and stops right behind the last
 * one. Whole units of a run are taken at once.
 *
 * @param limitLeft  the cursor does not go on where no more than this length of the edge is left
 * @returns          how many were found, and how many stitches that count were passed over
 */
export function takePlaces(
  cursor: Cursor,
  seeker: Seeker,
  want: number,
  limitLeft = 0,
): { readonly taken: number; readonly passed: number } {
  let taken = 0;
  let passed = 0;
  while (taken < want && !cursor.atEnd && cursor.left > limitLeft) {
    const run = cursor.edge.runs[cursor.run];
    if (!run) break;
    if (cursor.at === 0 && cursor.used === 0 && (run.times - cursor.round > 1 || run.unit.length > 1)) {
      let unitTakes = 0;
      let unitPasses = 0;
      for (const place of run.unit) {
        const takes = seeker.takes(place);
        unitTakes += takes;
        if (takes === 0 && place.counted) unitPasses++;
      }
      const byLimit = Math.floor((cursor.left - limitLeft) / cursor.edge.unitLength(cursor.run) + 1e-9);
      const byWant = unitTakes === 0 ? Infinity : Math.floor((want - taken) / unitTakes);
      const units = Math.min(run.times - cursor.round, byLimit, byWant);
      // A whole unit is taken at once only when the place sought ends it, so that the cursor stands right behind it.
      const lastOfUnit = run.unit[run.unit.length - 1] as Place;
      const endsInTaken =
        seeker.group === undefined
          ? seeker.takes(lastOfUnit) > 0
          : lastOfUnit.group === seeker.group && lastOfUnit.groupAt === lastOfUnit.groupSize - 1;
      const whole = endsInTaken || taken + units * unitTakes < want ? units : units - 1;
      if (whole > 0) {
        cursor.stepUnits(whole);
        taken += whole * unitTakes;
        passed += whole * unitPasses;
        continue;
      }
    }
    const place = cursor.place as Place;
    const takes = seeker.takes(place);
    if (takes === 0) {
      if (place.counted) passed++;
      cursor.step();
    } else if (takes > 1 || (seeker.chainwise && isChainRun(place))) {
      const chains = Math.min(want - taken, place.chains - cursor.used, cursor.left - limitLeft);
      cursor.stepChains(chains);
      taken += chains;
    } else {
      const members = seeker.group === undefined ? 1 : place.groupSize;
      for (let member = 0; member < members; member++) cursor.step();
      taken++;
    }
  }
  return { taken, passed };
}

/** How many places of a kind are left before the limit. The cursor stays. */
export function countPlaces(cursor: Cursor, seeker: Seeker, limitLeft = 0): number {
  const here = cursor.position();
  const { taken } = takePlaces(cursor, seeker, Infinity, limitLeft);
  cursor.go(here);
  return taken;
}

/** Goes to the next place sought without taking it. False, and stays, where there is none before the limit. */
export function goToNext(cursor: Cursor, seeker: Seeker, limitLeft = 0): boolean {
  const here = cursor.position();
  while (!cursor.atEnd && cursor.left > limitLeft) {
    if (seeker.takes(cursor.place as Place) > 0) return true;
    if (cursor.at === 0 && cursor.used === 0) {
      const run = cursor.edge.runs[cursor.run];
      if (run && !run.unit.some((place) => seeker.takes(place) > 0)) {
        cursor.stepUnits(run.times - cursor.round);
        continue;
      }
    }
    cursor.step();
  }
  cursor.go(here);
  return false;
}

/** Length of the edge left at the `count`th sought place from the end; null where there are not so many on the whole edge. */
export function leftAtLast(edge: Edge, seeker: Seeker, count: number): number | null {
  const cursor = new Cursor(edge);
  const total = countPlaces(cursor, seeker);
  if (total < count) return null;
  if (count === 0) return 0;
  takePlaces(cursor, seeker, total - count);
  return goToNext(cursor, seeker) ? cursor.left : null;
}

/** Stitches that count and have not been reached, with the chains where they are places. */
export function countLeft(cursor: Cursor, manner: Manner, limitLeft = 0): number {
  return countPlaces(cursor, seekAny(cursor.edge, manner), limitLeft);
}
