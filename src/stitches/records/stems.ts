import type { Family } from "../stitch.ts";

/** How one stitch is named in one set of terms. */
export interface StemName {
  readonly abbreviation: string;
  readonly name: string;
  /** Every spelling that compound names are made from: "front post" + each of these, each of these + "2tog". */
  readonly forms: readonly string[];
}

/** One of the plain stitches that every longer name is built upon. */
export interface Stem {
  readonly code: string;
  readonly family: Family;
  readonly us: StemName;
  readonly uk: StemName;
  /** Height in rows of single crochet. */
  readonly height: number;
  /** Where the height comes from. */
  readonly heightSource: string;
}

const MEASURED = "height: computation notes, section 8, rows in five inches by one maker (1 : 1.45 : 1.91)";
const CONTINUED =
  "height: continued from section 8 of the computation notes, one yarn over more adds 0.91; not measured";

/**
 * The plain stitches from low to tall. The names shift by one between the two sets of terms: the British word for
 * each stitch is the American word for the next lower one (trade handbook, section 5.2).
 */
export const SC: Stem = {
  code: "sc",
  family: "sc",
  us: { abbreviation: "sc", name: "single crochet", forms: ["sc", "single crochet"] },
  uk: { abbreviation: "dc", name: "double crochet", forms: ["dc", "double crochet", "dbl crochet"] },
  height: 1,
  heightSource: MEASURED,
};

export const HDC: Stem = {
  code: "hdc",
  family: "hdc",
  us: {
    abbreviation: "hdc",
    name: "half double crochet",
    forms: ["hdc", "half double crochet", "half double", "half dc", "half dbl crochet"],
  },
  uk: {
    abbreviation: "htr",
    name: "half treble",
    forms: ["htr", "half treble", "half treble crochet", "half tr", "htc", "htrc"],
  },
  height: 1.45,
  heightSource: MEASURED,
};

export const DC: Stem = {
  code: "dc",
  family: "dc",
  us: { abbreviation: "dc", name: "double crochet", forms: ["dc", "double crochet", "dbl crochet"] },
  uk: { abbreviation: "tr", name: "treble", forms: ["tr", "treble", "treble crochet", "tc", "trc", "treb"] },
  height: 1.91,
  heightSource: MEASURED,
};

export const TR: Stem = {
  code: "tr",
  family: "tr",
  us: {
    abbreviation: "tr",
    name: "treble crochet",
    forms: ["tr", "treble crochet", "treble", "triple crochet", "trc"],
  },
  uk: {
    abbreviation: "dtr",
    name: "double treble",
    forms: ["dtr", "double treble", "double treble crochet", "dbl tr", "dbl treble", "dtrc"],
  },
  height: 2.82,
  heightSource: CONTINUED,
};

export const DTR: Stem = {
  code: "dtr",
  family: "dtr",
  us: {
    abbreviation: "dtr",
    name: "double treble",
    forms: ["dtr", "double treble", "double treble crochet", "double triple crochet", "dbl tr", "dbl treble"],
  },
  uk: {
    abbreviation: "trtr",
    name: "triple treble",
    forms: ["trtr", "triple treble", "ttr", "triple treble crochet", "trip tr"],
  },
  height: 3.73,
  heightSource: CONTINUED,
};

export const TRTR: Stem = {
  code: "trtr",
  family: "trtr",
  us: {
    abbreviation: "trtr",
    name: "triple treble",
    forms: ["trtr", "triple treble", "ttr", "triple treble crochet", "trip tr"],
  },
  uk: {
    abbreviation: "qtr",
    name: "quadruple treble",
    forms: ["qtr", "quadruple treble", "quad tr", "quad treble", "quadruple treble crochet"],
  },
  height: 4.64,
  heightSource: CONTINUED,
};

/** Lowest first. */
export const STEMS: readonly Stem[] = [SC, HDC, DC, TR, DTR, TRTR];

/** Spellings of a compound made from every form of the stem, in both sets of terms. */
export function spellWith(
  stem: Stem,
  compound: (form: string) => readonly string[],
): { readonly alsoUs: readonly string[]; readonly alsoUk: readonly string[] } {
  return { alsoUs: stem.us.forms.flatMap(compound), alsoUk: stem.uk.forms.flatMap(compound) };
}

/** "two" for 2, up to nine: names are spoken, so their numbers are words there. */
export function wordFor(count: number): string {
  const word = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"][count];
  if (word === undefined) throw new RangeError(`no word kept for ${count}`);
  return word;
}

export const SEEN = "published abbreviation lists";
export const SEEN_UK = "published abbreviation lists, American and British";
export const RECALLED = "from memory; common practice, no source";
