import { lookupStitch } from "../stitches/index.ts";
import type { Cursor } from "./clauses/cursor.ts";
import type { LoopWord } from "./tree.ts";

/** A stitch named in the text. */
export interface StitchFound {
  /** Dictionary code in US meaning, or the first name of one of the pattern's own stitches. */
  readonly code: string;
  /** Loop words written into the name: "hdcblo", "flsc". */
  readonly loops?: LoopWord;
  /** How many tokens the name takes. */
  readonly length: number;
  /** One of the pattern's own names. */
  readonly special: boolean;
}

interface Words {
  readonly terms: "US" | "UK";
  readonly specials: ReadonlyMap<string, string>;
}

/** Names may run to this many tokens: "front post double treble crochet 2 together". */
const LONGEST = 8;

const LOOPS: Readonly<Record<string, LoopWord>> = {
  blo: "back",
  flo: "front",
  bl: "back",
  fl: "front",
  bls: "back",
  fls: "front",
  blp: "back",
  flp: "front",
  tbl: "back",
  tfl: "front",
  tlo: "third",
  "3lo": "third",
  blonly: "back",
  flonly: "front",
  bol: "back",
};

/** Bare words of shaping and the ways they are written. They stay codes of their own: the row says which stitch is meant. */
const SHAPERS: Readonly<Record<string, string>> = {
  inc: "inc",
  increase: "inc",
  incr: "inc",
  increases: "inc",
  incs: "inc",
  inces: "inc",
  fpst: "fpdc",
  bpst: "bpdc", // Without a height said, a post stitch is a double crochet. Common practice, no source.
  dec: "dec",
  decrease: "dec",
  decr: "dec",
  decreases: "dec",
  decs: "dec",
};

const POSTABLE = new Set(["sc", "hdc", "dc", "tr", "dtr", "trtr"]);

/** Words before a stitch that change how it begins or how tight it is, not what it is. */
const MANNERS = new Set([
  "standing",
  "loose",
  "another",
  "more",
  "plain",
  "regular",
  "additional",
  "extra",
  "single-loop",
]);

/** Stitches that take "st" after their name: "puff st", "V st". */
const STITCH_NOUN = new Set(["st", "sts", "stitch", "stitches"]);

const memo: Record<"US" | "UK", Map<string, string | null>> = { US: new Map(), UK: new Map() };

function dictionaryCode(spelling: string, terms: "US" | "UK"): string | null {
  const known = memo[terms].get(spelling);
  if (known !== undefined) return known;
  const code =
    SHAPERS[spelling] ??
    (spelling === "tc" && terms === "US" ? "tr" : undefined) ??
    lookupStitch(spelling, terms)?.code ??
    null;
  if (memo[terms].size < 20_000) memo[terms].set(spelling, code);
  return code;
}

/** Code of one spelling without blanks, or null. */
export function codeOf(
  spelling: string,
  words: Words,
): { code: string; loops?: LoopWord; special: boolean } | null {
  const special = specialOf(spelling, words);
  if (special !== null) return { code: special, special: true };
  const code = dictionaryCode(spelling, words.terms);
  if (code !== null) return { code, special: false };
  for (const size of [3, 2]) {
    const front = LOOPS[spelling.slice(0, size)];
    const frontCode =
      front && spelling.length > size + 1 ? dictionaryCode(spelling.slice(size), words.terms) : null;
    if (front && frontCode) return { code: frontCode, loops: front, special: false };
    const back = LOOPS[spelling.slice(-size)];
    const backCode =
      back && spelling.length > size + 1 ? dictionaryCode(spelling.slice(0, -size), words.terms) : null;
    if (back && backCode) return { code: backCode, loops: back, special: false };
  }
  return null;
}

const specialIndexes = new WeakMap<ReadonlyMap<string, string>, ReadonlyMap<string, string>>();

/** The pattern's own names, keyed without blanks and hyphens. */
function specialOf(spelling: string, words: Words): string | null {
  if (words.specials.size === 0) return null;
  let index = specialIndexes.get(words.specials);
  if (!index) {
    index = new Map([...words.specials].map(([name, first]) => [squeeze(name), first]));
    specialIndexes.set(words.specials, index);
  }
  const known =
    index.get(spelling) ?? (spelling.endsWith("s") ? index.get(spelling.slice(0, -1)) : undefined);
  return known ?? (spelling.endsWith("es") ? index.get(spelling.slice(0, -2)) : undefined) ?? null;
}

function squeeze(name: string): string {
  return name.toLowerCase().replace(/[\s.\-'’]+/gu, "");
}

/**
 * The stitch named at `ahead`, longest name first; null where none is named.
 * A name that begins with a number ("2 dc tog", "3-dc cluster") is only taken with `counted`.
 */
export function stitchAt(cursor: Cursor, words: Words, ahead = 0, counted = true): StitchFound | null {
  const first = cursor.token(ahead);
  if (first?.is === "word") {
    // A raised stitch is worked round the post, from the front unless the text says otherwise. Common practice, no source.
    if (first.norm === "raised") {
      const after = plainStitchAt(cursor, words, ahead + 1);
      if (after && POSTABLE.has(after.code))
        return { ...after, code: `fp${after.code}`, length: after.length + 1 };
    }
    if (MANNERS.has(first.norm)) {
      const after = stitchAt(cursor, words, ahead + 1, false);
      return after ? { ...after, length: after.length + 1 } : null;
    }
    const separate = LOOPS[first.norm];
    if (separate && first.norm.length >= 3) {
      const after = plainStitchAt(cursor, words, ahead + 1);
      return after ? { ...after, loops: separate, length: after.length + 1 } : null;
    }
    return plainStitchAt(cursor, words, ahead);
  }
  if (counted && first?.is === "number" && first.values.length === 1 && !first.ordinal)
    return countedStitchAt(cursor, words, ahead);
  return null;
}

function plainStitchAt(cursor: Cursor, words: Words, ahead: number): StitchFound | null {
  let spelling = "";
  let best: StitchFound | null = null;
  for (let length = 1; length <= LONGEST; length += 1) {
    const token = cursor.token(ahead + length - 1);
    if (!token || (length === 1 && token.is !== "word")) break;
    if (token.is === "mark") {
      const next = cursor.token(ahead + length);
      if (token.text !== "-" || !(token.glued || next?.is === "word")) break;
      // "1 hdc - V-st made": a dash with room on either side parts two names.
      if (!token.glued && next?.is === "word" && !next.glued) break;
      continue;
    }
    if (
      token.is === "break" ||
      (token.is === "number" && (token.values.length !== 1 || token.ordinal || token.word))
    )
      break;
    spelling += token.is === "word" ? squeeze(token.norm) : token.text;
    if (spelling.length > 60) break;
    if (token.is === "number" && best && best.length === length - 1 && !joinsTogether(cursor, ahead + length))
      continue;
    const found = codeOf(spelling, words);
    if (found) best = { ...found, length };
  }
  if (best && STITCH_NOUN.has(cursor.key(ahead + best.length)) && !cursor.isNumber(ahead + best.length - 1)) {
    best = { ...best, length: best.length + 1 };
  }
  return best;
}

/** After "dc 2": only "tog" and its kin make the number a part of the name. */
function joinsTogether(cursor: Cursor, ahead: number): boolean {
  return ["tog", "together", "tg", "-"].includes(cursor.key(ahead));
}

const MADE_OF = new Set([
  "tog",
  "together",
  "tg",
  "cl",
  "cls",
  "cluster",
  "clusters",
  "shell",
  "shells",
  "bobble",
  "bobbles",
  "puff",
  "puffs",
  "popcorn",
  "popcorns",
  "pc",
  "group",
  "groups",
  "fan",
  "fans",
  "dec",
  "picot",
  "picots",
]);

function countedStitchAt(cursor: Cursor, words: Words, ahead: number): StitchFound | null {
  const number = cursor.token(ahead);
  if (number?.is !== "number") return null;
  let spelling = number.text;
  let best: StitchFound | null = null;
  for (let length = 2; length <= LONGEST; length += 1) {
    const token = cursor.token(ahead + length - 1);
    if (!token) break;
    if (token.is === "mark" && token.text === "-") continue;
    if (token.is !== "word") break;
    spelling += squeeze(token.norm);
    if (!MADE_OF.has(token.norm)) continue;
    const code = specialOf(spelling, words) ?? dictionaryCode(spelling, words.terms);
    if (code) best = { code, length, special: false };
    else if (token.norm.startsWith("group")) best = { code: "group", length, special: false };
  }
  return best;
}

/** A loop word that stands alone: "blo", "flo". */
export function loopWordOf(norm: string): LoopWord | null {
  return LOOPS[norm] ?? null;
}
