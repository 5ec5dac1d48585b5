/*
 * What a word looks like once case, dots, possessives and misprints are put aside.
 */

/** Abbreviations that are met with dots or spaces between their letters. */
const SPELLED_OUT = new Set([
  "sc",
  "dc",
  "hdc",
  "tr",
  "dtr",
  "htr",
  "tc",
  "ss",
  "st",
  "sts",
  "ch",
  "sl",
  "sk",
  "sp",
  "lp",
  "rs",
  "ws",
  "mc",
  "cc",
  "mr",
  "yo",
  "yoh",
  "woh",
  "blo",
  "flo",
  "fpdc",
  "bpdc",
]);
/** Letters spaced out by a scanner; only what cannot be English. */
const SPACED_OUT = new Set(["sc", "dc", "hdc", "sts", "htr", "dtr", "tch", "fpdc", "bpdc", "rnd", "rep"]);

const DOTTED = /(?:[a-z]\.\s?){1,4}[a-z](?![a-z'])\.?/iy;
const SPACED = /(?:[a-z] ){1,3}[a-z](?![a-z'])/iy;

function joined(
  pattern: RegExp,
  known: ReadonlySet<string>,
  text: string,
  at: number,
): { to: number; norm: string } | null {
  pattern.lastIndex = at;
  const found = pattern.exec(text);
  if (!found) return null;
  const norm = found[0].replace(/[^a-z]/gi, "").toLowerCase();
  return known.has(norm) ? { to: at + found[0].length, norm } : null;
}

/** "s.c.", "d. c.", "h.d.c." as one word, its last dot included. */
export function dottedWord(text: string, at: number): { to: number; norm: string } | null {
  return text[at + 1] === "." ? joined(DOTTED, SPELLED_OUT, text, at) : null;
}

/** "s c", "s t s" as one word. */
export function spacedWord(text: string, at: number): { to: number; norm: string } | null {
  return text[at + 1] === " " ? joined(SPACED, SPACED_OUT, text, at) : null;
}

/** Misprints of scanners that are no words of their own. */
const MISPRINTS: Readonly<Record<string, string>> = {
  tum: "turn",
  tums: "turns",
  tuming: "turning",
  retum: "return",
  skíp: "skip",
  stiteh: "stitch",
  eac: "each",
};

/** Lower case, hyphens, dots and possessives gone: "DC's" is "dcs" read as "dc", "ch's" is "ch", "sc2-tog" is "sc2tog". */
export function normOf(word: string): string {
  const plain = word
    .toLowerCase()
    .replace(/'s$|s'$|'$/, "")
    .replace(/[.'-]/g, "");
  return MISPRINTS[plain] ?? plain;
}

/** Abbreviations whose full stop is not the end of a sentence where a small letter follows. */
const TAKE_DOT = new Set([
  "sl",
  "st",
  "sts",
  "ch",
  "chs",
  "sk",
  "rep",
  "rpt",
  "rnd",
  "rnds",
  "beg",
  "inc",
  "dec",
  "nx",
  "nxt",
  "ea",
  "hk",
  "lp",
  "lps",
  "yo",
  "tog",
  "patt",
  "pat",
  "sc",
  "dc",
  "hdc",
  "tr",
  "dtr",
  "htr",
  "sp",
  "sps",
  "rem",
  "cont",
  "foll",
  "alt",
  "approx",
  "incl",
  "fin",
  "tch",
  "cl",
  "jn",
  "bk",
  "blk",
  "sq",
  "mos",
  "yrs",
  "no",
  "bl",
  "fl",
]);

/** How much of a full stop belongs to the word that ends at `at`: 1 where it is the stop of an abbreviation, else 0. */
export function glueLength(text: string, at: number, norm: string, startsClause: boolean): 0 | 1 {
  if (text[at] !== "." || text[at + 1] === "." || !TAKE_DOT.has(norm)) return 0;
  const next = /^\s{0,3}(\S)/.exec(text.slice(at + 1, at + 5))?.[1];
  if (next === undefined) return 0;
  // "ch. 3" at the start of a clause; "in next ch. 3 sc" is a sentence that ends.
  if (/\d/.test(next)) return startsClause ? 1 : 0;
  return /[a-z,;:)]/.test(next) ? 1 : 0;
}
