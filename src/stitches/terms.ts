/** Whose words a pattern uses: the same word names different stitches in the two. */
export type Terms = "US" | "UK";

/** A word or phrase that tells in whose terms a pattern is written. */
export interface TermSign {
  /** As it stands in a pattern, lower case. Several words stand with single spaces between. */
  readonly words: string;
  readonly terms: Terms;
  /**
   * How much one sight of it tells: 10 decides by itself, 3 is usual in one and rare in the other, 1 leans. The steps
   * are the house's own; which words tell is from the sources named.
   */
  readonly weight: 10 | 3 | 1;
  readonly source: string;
}

const HANDBOOK = "trade handbook, section 5.2";
const SURVEY = "notation survey, section 10";
const PAIRS = "published lists of American and British terms";
const RECALLED = "from memory; common practice, no source";

const sign = (
  terms: Terms,
  weight: TermSign["weight"],
  source: string,
  ...words: readonly string[]
): TermSign[] => words.map((one) => ({ words: one, terms, weight, source }));

/**
 * The tell-tales. "tr", "dc", "dtr" and "trtr" are in both and tell nothing; "miss" also stands in some American
 * texts, so it only leans (notation survey, section 10).
 */
export const TERM_SIGNS: readonly TermSign[] = [
  // A single crochet exists by that name in American terms only. Old British books call the slip stitch so.
  ...sign("US", 10, HANDBOOK, "sc", "single crochet", "sc2tog", "sc3tog", "fsc", "esc", "fpsc", "bpsc"),
  ...sign(
    "US",
    10,
    PAIRS,
    "hdc",
    "half double crochet",
    "half double",
    "hdc2tog",
    "hdc3tog",
    "fhdc",
    "fphdc",
    "bphdc",
  ),
  ...sign("UK", 10, SURVEY, "htr", "half treble"),
  ...sign("UK", 10, PAIRS, "htr2tog", "htr3tog", "quadruple treble", "qtr"),
  ...sign("UK", 3, PAIRS, "raised treble", "raised double crochet", "rtrf", "rtrb"),
  ...sign("UK", 3, SURVEY, "tension", "tc", "yrh", "yarn round hook"),
  ...sign("US", 3, PAIRS, "gauge"),
  ...sign("UK", 1, SURVEY, "miss", "yoh", "ss"),
  ...sign("US", 1, PAIRS, "skip", "sk", "yo"),
  ...sign("US", 1, RECALLED, "fpdc", "bpdc", "color", "gray", "center"),
  ...sign(
    "UK",
    1,
    RECALLED,
    "colour",
    "grey",
    "centre",
    "cast off",
    "4 ply",
    "8 ply",
    "aran",
    "double knitting",
  ),
];

const SIGNS: ReadonlyMap<string, TermSign> = new Map(TERM_SIGNS.map((one) => [one.words, one]));

/** The most words any sign has, so that a reader knows how far to look ahead. */
export const LONGEST_SIGN = 3;

/** What a word or phrase tells about the terms; letter case, dots and a plural s do not matter. */
export function termSign(words: string): TermSign | undefined {
  const plain = words.toLowerCase().replace(/\./gu, "").replace(/\s+/gu, " ").trim();
  return SIGNS.get(plain) ?? (plain.endsWith("s") ? SIGNS.get(plain.slice(0, -1)) : undefined);
}

/** A word that is said otherwise in the other terms and is not a stitch. */
export interface TermPair {
  readonly us: string;
  readonly uk: string;
  readonly source: string;
}

/** Words and abbreviations, not stitches, that change between the terms. */
export const TERM_PAIRS: readonly TermPair[] = [
  { us: "gauge", uk: "tension", source: `${PAIRS}, from memory` },
  { us: "skip", uk: "miss", source: `${PAIRS}, from memory` },
  { us: "skipped", uk: "missed", source: RECALLED },
  { us: "skipping", uk: "missing", source: RECALLED },
  { us: "sk", uk: "miss", source: `${PAIRS}, from memory` },
  { us: "yarn over", uk: "yarn round hook", source: PAIRS },
  { us: "yo", uk: "yrh", source: PAIRS },
  { us: "fasten off", uk: "fasten off", source: `${PAIRS}, from memory; some British books say cast off` },
  { us: "turning chain", uk: "turning chain", source: PAIRS },
  { us: "tch", uk: "t-ch", source: PAIRS },
  { us: "color", uk: "colour", source: `${PAIRS}, from memory` },
  { us: "colors", uk: "colours", source: RECALLED },
  { us: "center", uk: "centre", source: RECALLED },
  { us: "gray", uk: "grey", source: RECALLED },
];

/** The same word in other terms: wordIn("gauge", "UK") is "tension". Undefined where the word does not change or is not known. */
export function wordIn(word: string, terms: Terms): string | undefined {
  const plain = word.toLowerCase();
  const found = TERM_PAIRS.find((pair) => (terms === "US" ? pair.uk : pair.us) === plain);
  if (found === undefined || found.us === found.uk) return undefined;
  return terms === "US" ? found.us : found.uk;
}
