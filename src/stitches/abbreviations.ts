import { allStitches, lookupStitch, normaliseSpelling } from "./lookup.ts";
import { meaningOf } from "./meanings.ts";
import { type AbbreviationKind, WORDS, type WordRecord } from "./records/words.ts";
import type { Stitch } from "./stitch.ts";
import type { Terms } from "./terms.ts";

export type { AbbreviationKind };

/** One entry as a pattern's list of abbreviations would have it. */
export interface Abbreviation {
  /** As usually printed: "FPdc", "ch-sp". */
  readonly abbreviation: string;
  /** All ways it is printed, the usual one first. */
  readonly written: readonly string[];
  readonly kind: AbbreviationKind;
  /** The words it stands for, in the terms asked for. */
  readonly term: string;
  /** How it is done or what it is, in our own words. */
  readonly meaning: string;
  /** Dictionary code, where it is a stitch. */
  readonly code?: string;
  /** Whether a pattern that uses it has to explain it. */
  readonly needsDefinition: boolean;
  /** Whether it was seen in published lists or is from memory. */
  readonly status: "seen" | "memory";
}

const KEPT = new Map<Terms, ReadonlyMap<string, readonly Abbreviation[]>>();

/** Every abbreviation in use in these terms, words before stitches, each in the order of its table. */
export function allAbbreviations(terms: Terms): readonly Abbreviation[] {
  return [
    ...WORDS.filter((word) => word.terms === "both" || word.terms === terms).map((word) =>
      fromWord(word, terms),
    ),
    ...allStitches()
      .filter((stitch) => isShort(stitch, terms))
      .map((stitch) => fromStitch(stitch, terms)),
  ];
}

/**
 * What an abbreviation may stand for in these terms: several where books use it for several things ("MC" is the main
 * colour or the magic circle, "m" a marker or metres), none where it is not known. Letter case, dots, hyphens and a
 * plural s do not matter.
 */
export function lookupAbbreviations(abbreviation: string, terms: Terms): readonly Abbreviation[] {
  const index = indexOf(terms);
  const plain = normaliseSpelling(abbreviation);
  const singular = plain.endsWith("s") && plain.length > 2 ? plain.slice(0, -1) : plain;
  const listed = index.get(plain) ?? index.get(singular);
  if (listed !== undefined) return listed;
  const stitch = lookupStitch(abbreviation, terms);
  return stitch !== undefined && !isSpelledOut(plain, stitch, terms) ? [fromStitch(stitch, terms)] : [];
}

function fromWord(word: WordRecord, terms: Terms): Abbreviation {
  return {
    abbreviation: word.written[0]!,
    written: word.written,
    kind: word.kind,
    term: terms === "UK" ? (word.ukTerm ?? word.term) : word.term,
    meaning: word.meaning,
    needsDefinition: word.needsDefinition,
    status: word.status,
  };
}

function fromStitch(stitch: Stitch, terms: Terms): Abbreviation {
  const names = terms === "US" ? stitch.us : stitch.uk;
  return {
    abbreviation: names.abbreviation,
    written: [names.abbreviation],
    kind: "stitch",
    term: names.name,
    meaning: meaningOf(stitch.code, terms),
    code: stitch.code,
    needsDefinition: true,
    status: stitch.source.startsWith("published") ? "seen" : "memory",
  };
}

/** Some stitches are never shortened: "fan", "picot". */
function isShort(stitch: Stitch, terms: Terms): boolean {
  const names = terms === "US" ? stitch.us : stitch.uk;
  return normaliseSpelling(names.abbreviation) !== normaliseSpelling(names.name);
}

/** Whether a long word of the stitch's name stands in it in full, so that nothing is shortened that needs explaining. */
function isSpelledOut(plain: string, stitch: Stitch, terms: Terms): boolean {
  const { name } = terms === "US" ? stitch.us : stitch.uk;
  const words = name
    .toLowerCase()
    .split(/[^a-z]+/u)
    .filter((word) => word.length > 3);
  return plain === normaliseSpelling(name) || words.some((word) => plain.includes(word));
}

function indexOf(terms: Terms): ReadonlyMap<string, readonly Abbreviation[]> {
  const kept = KEPT.get(terms);
  if (kept !== undefined) return kept;
  const index = new Map<string, Abbreviation[]>();
  for (const entry of allAbbreviations(terms)) {
    for (const key of new Set(entry.written.map(normaliseSpelling))) {
      const list = index.get(key);
      if (list === undefined) index.set(key, [entry]);
      else list.push(entry);
    }
  }
  KEPT.set(terms, index);
  return index;
}
