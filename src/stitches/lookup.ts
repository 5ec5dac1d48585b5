import { DICTIONARY } from "./dictionary.ts";
import type { Stitch } from "./stitch.ts";
import type { Terms } from "./terms.ts";

const BY_CODE: ReadonlyMap<string, Stitch> = new Map(DICTIONARY.map((stitch) => [stitch.code, stitch]));
/** Filled for a set of terms when it is first asked for, then kept. */
const INDEXES = new Map<Terms, ReadonlyMap<string, Stitch>>();

/** Plural-looking words that mean something else: "2 pcs" are pieces, not popcorns. */
const NOT_PLURALS: ReadonlySet<string> = new Set(["pcs"]);

/** A spelling without what writers put in or leave out: letter case, dots, hyphens, slashes, apostrophes and spaces. */
export function normaliseSpelling(spelling: string): string {
  return spelling.toLowerCase().replace(/[\s.\-‐‑‒–—/'’`_]+/gu, "");
}

/**
 * The stitch that a spelling names in the given terms, or undefined where it names none.
 * Letter case, dots, hyphens, spaces and a plural s do not matter: "s.c.", "DCs", "fp-dc", "dc 2 tog", "2dctog".
 */
export function lookupStitch(spelling: string, terms: Terms): Stitch | undefined {
  const index = indexOf(terms);
  const plain = normaliseSpelling(spelling);
  const found = index.get(plain);
  if (found !== undefined || NOT_PLURALS.has(plain)) return found;
  if (plain.endsWith("es")) {
    const singular = index.get(plain.slice(0, -2));
    if (singular !== undefined) return singular;
  }
  return plain.endsWith("s") && plain.length > 2 ? index.get(plain.slice(0, -1)) : undefined;
}

/**
 * The stitch with this code.
 * @throws {RangeError} on a code that is not in the dictionary: the program's mistake, not the designer's
 */
export function stitchOf(code: string): Stitch {
  const stitch = BY_CODE.get(code);
  if (stitch === undefined) throw new RangeError(`no stitch has the code "${code}"`);
  return stitch;
}

/** Whether the dictionary has this code; a pattern's own special stitches have none. */
export function hasStitch(code: string): boolean {
  return BY_CODE.has(code);
}

/** @throws {RangeError} on an unknown code */
export function nameIn(code: string, terms: Terms): string {
  return namesOf(stitchOf(code), terms).name;
}

/** @throws {RangeError} on an unknown code */
export function abbreviationIn(code: string, terms: Terms): string {
  return namesOf(stitchOf(code), terms).abbreviation;
}

export function allStitches(): readonly Stitch[] {
  return DICTIONARY;
}

/** Every spelling that is accepted in these terms, normalised, in alphabetical order. */
export function spellings(terms: Terms): readonly string[] {
  return [...indexOf(terms).keys()].sort();
}

function namesOf(stitch: Stitch, terms: Terms): Stitch["us"] {
  return terms === "US" ? stitch.us : stitch.uk;
}

function indexOf(terms: Terms): ReadonlyMap<string, Stitch> {
  const kept = INDEXES.get(terms);
  if (kept !== undefined) return kept;
  const index = indexSpellings(terms);
  INDEXES.set(terms, index);
  return index;
}

function indexSpellings(terms: Terms): ReadonlyMap<string, Stitch> {
  const index = new Map<string, Stitch>();
  for (const stitch of DICTIONARY) {
    const { abbreviation, name } = namesOf(stitch, terms);
    const also = (terms === "US" ? stitch.alsoUs : stitch.alsoUk) ?? [];
    for (const spelling of [abbreviation, name, ...also]) {
      const plain = normaliseSpelling(spelling);
      if (!index.has(plain)) index.set(plain, stitch);
    }
  }
  return index;
}
