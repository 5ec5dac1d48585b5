import type { Clause, Definition } from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import { flatten } from "./edge.ts";
import type { Hands } from "./hands.ts";
import { chainPlace, inGroup, type Place, stitchPlace, UNKNOWN_PLACE } from "./place.ts";

/** The stitch that "inc", "dec" or a bare number means here: the last one made, else the first that the row names. */
export function rowStitch(hands: Hands, rest: readonly Clause[]): string {
  return baseOf(hands.lastStitch ?? firstStitch(rest) ?? hands.table.mainStitch());
}

/** sc for sc2tog, dc for fpdc. */
export function baseOf(stitch: string): string {
  return hasStitch(stitch) ? stitchOf(stitch).family : stitch;
}

/** The first stitch that clauses name, or null. Slip stitches, increases and decreases do not tell. */
export function firstStitch(
  clauses: readonly Clause[],
  isDefined?: (name: string) => boolean,
): string | null {
  for (const clause of clauses) {
    if (clause.kind === "work" && !["sl st", "inc", "dec", "?"].includes(clause.stitch)) return clause.stitch;
    if (clause.kind === "group" || clause.kind === "repeat" || clause.kind === "size-only") {
      const inner = firstStitch(clause.body, isDefined);
      if (inner) return inner;
    }
    if (clause.kind === "choice") {
      const inner = firstStitch(clause.options[0] ?? [], isDefined);
      if (inner) return inner;
    }
  }
  return null;
}

/** Words for what the hook does within one stitch. */
const HOOK_MOVES =
  /\b(?:yo|yoh|yrh|yarn (?:over|round)|insert(?:ing)?|draw(?:ing)? (?:up|through)|pull(?:ing)? (?:up|through)|loops? on (?:the )?hook)\b/i;

/** Whether a definition was read well enough to be worked; "yo, pull up a loop ..." is told in movements of the hook and makes one stitch. */
export function canWork(definition: Definition): boolean {
  const holds = (clauses: readonly Clause[]): boolean =>
    clauses.every((clause) => {
      if (clause.kind === "remark") return false;
      if (clause.kind === "group" || clause.kind === "repeat") return holds(clause.body);
      if (clause.kind === "choice") return clause.options.every(holds);
      return true;
    });
  const makes = (clauses: readonly Clause[]): boolean =>
    clauses.some(
      (clause) =>
        clause.kind === "work" ||
        (clause.kind === "choice" && clause.options.every(makes)) ||
        ((clause.kind === "group" || clause.kind === "repeat") && makes(clause.body)),
    );
  // "Insert hook in each of next 2 sts, yo, draw through" tells how one stitch is made, not what is worked.
  if (HOOK_MOVES.test(definition.words)) return false;
  return definition.clauses.length > 0 && holds(definition.clauses) && makes(definition.clauses);
}

/** Whether a stitch stands on the one before it, as a picot does: chains closed by a stitch into the stitch just made. */
export function standsOnTop(stitch: string, definition: Definition | undefined): boolean {
  if (!definition || !canWork(definition))
    return hasStitch(stitch) && stitchOf(stitch).takes === 0 && stitchOf(stitch).makes === 0;
  let chains = 0;
  for (const clause of definition.clauses) {
    if (clause.kind === "chain") chains++;
    else if (clause.kind === "work") {
      const { target } = clause;
      const closes = clause.stitch === "sl st" || clause.stitch === "sc";
      if (!closes || chains === 0 || target.ref === "next" || target.ref === "each") return false;
    } else if (clause.kind !== "aside" && clause.kind !== "join") return false;
  }
  return chains > 0;
}

/** Whether a definition stays in one place, so that it can be put wherever a row says. */
export function staysInPlace(definition: Definition): boolean {
  let places = 0;
  const walk = (clauses: readonly Clause[]): void => {
    for (const clause of clauses) {
      if (clause.kind === "skip") places += 2;
      if (clause.kind === "work" || clause.kind === "group") {
        const { target } = clause;
        if (target.ref !== "same" && target.ref !== "here") places += target.count ? 2 : 1;
        if (target.what.is === "skipped") places += 2;
      }
      if (clause.kind === "repeat") walk(clause.body);
      if (clause.kind === "choice") walk(clause.options[0] ?? []);
    }
  };
  walk(definition.clauses);
  return places <= 1;
}

/** The places that a stitch makes, once, in the order they are made. */
export function placesMade(hands: Hands, stitch: string, rest: readonly Clause[]): readonly Place[] {
  if (stitch === "?") return [UNKNOWN_PLACE];
  const special = hands.table.specials.get(stitch);
  if (special) {
    if (canWork(special)) return specialPlaces(hands, special);
    if (!hasStitch(stitch) && stitch !== "inc" && stitch !== "dec")
      return [inGroup(stitchPlace(stitch), stitch, 0, 1)];
  }
  if (stitch === "inc") {
    const base = stitchPlace(rowStitch(hands, rest));
    return [base, base];
  }
  if (stitch === "dec") return [stitchPlace(decreaseOf(rowStitch(hands, rest)))];
  if (!hasStitch(stitch)) return [stitchPlace(stitch)];
  const record = stitchOf(stitch);
  if (record.parts) {
    const parts = record.parts.map(partPlace);
    const named = record.special && parts.length > 1;
    return named ? parts.map((part, at) => inGroup(part, stitch, at, parts.length)) : parts;
  }
  if (record.makes === 0) return [];
  const place = record.special ? inGroup(stitchPlace(stitch), stitch, 0, 1) : stitchPlace(stitch);
  return record.makes === 1 ? [place] : Array.from({ length: record.makes }, () => place);
}

/** The place of a part as data has it: "dc", "ch 2". */
export function partPlace(part: string): Place {
  const chains = /^ch (\d+)$/.exec(part);
  return chains ? chainPlace(Number(chains[1])) : stitchPlace(part);
}

const decreaseOf = (base: string): string => (hasStitch(`${base}2tog`) ? `${base}2tog` : "sc2tog");

const beingMade = new Set<string>();

function specialPlaces(hands: Hands, definition: Definition): readonly Place[] {
  const name = definition.names[0] ?? "";
  // A definition that uses its own name would never end; the name then stands for one stitch.
  if (beingMade.has(name)) return [stitchPlace(name)];
  beingMade.add(name);
  try {
    const made = hands.makeApart(definition.clauses);
    const places = flatten(made.runs);
    return places.map((place, at) => inGroup(place, name, at, places.length));
  } finally {
    beingMade.delete(name);
  }
}
