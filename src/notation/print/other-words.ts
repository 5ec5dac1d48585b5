import { abbreviationIn, lookupStitch, nameIn, normaliseSpelling, type Terms } from "../../stitches/index.ts";
import { statedWords } from "../find-terms.ts";
import { plainText } from "../glyphs.ts";

/** Letters and figures of one word, with hyphens, dots and slashes between: "FPdc", "sc2tog", "tr/rf". */
const WORD = /[\p{L}\d]+(?:[-./][\p{L}\d]+)*/gu;
/** Names of stitches run to this many words: "front post half double crochet". */
const LONGEST = 6;
/** "US double crochet": the name is said in whose terms it is. */
const SAID_WHOSE = /\b(?:US|U\.S\.|American|UK|U\.K\.|British)\s+$/iu;

/**
 * Words outside the rows in the other terms: every stitch name that means something else there is changed, and so is the
 * statement of the terms. What both terms know by the same word stays as the designer wrote it.
 */
export function inTerms(text: string, from: Terms, to: Terms): string {
  if (from === to) return text;
  let out = "";
  let done = 0;
  for (const word of statedWords(plainText(text))) {
    out += stitchesInTerms(text.slice(done, word.from), from, to) + to;
    done = word.to;
  }
  return out + stitchesInTerms(text.slice(done), from, to);
}

/** A sentence that says whose terms a pattern uses, for one that does not say; it reads as one. */
export function sayTerms(terms: Terms): string {
  return `${terms} terms are used throughout.`;
}

function stitchesInTerms(text: string, from: Terms, to: Terms): string {
  const words = [...text.matchAll(WORD)];
  let out = "";
  let done = 0;
  for (let first = 0; first < words.length; ) {
    const found = longestName(text, words, first, from);
    if (!found || isSaidWhose(text, words[first]?.index ?? 0)) {
      first += 1;
      continue;
    }
    const start = words[first]?.index ?? 0;
    const word = text.slice(start, found.to);
    out += text.slice(done, start) + other(word, found.code, from, to);
    done = found.to;
    first += found.length;
  }
  return out + text.slice(done);
}

function isSaidWhose(text: string, at: number): boolean {
  return SAID_WHOSE.test(text.slice(Math.max(0, at - 12), at));
}

function longestName(
  text: string,
  words: readonly RegExpMatchArray[],
  first: number,
  terms: Terms,
): { code: string; to: number; length: number } | null {
  const start = words[first]?.index ?? 0;
  let best: { code: string; to: number; length: number } | null = null;
  for (let length = 1; length <= LONGEST; length += 1) {
    const last = words[first + length - 1];
    const before = length > 1 ? words[first + length - 2] : undefined;
    if (!last) break;
    if (before && !/^[ \t\u00a0]+$/u.test(text.slice((before.index ?? 0) + before[0].length, last.index)))
      break;
    const to = (last.index ?? 0) + last[0].length;
    const stitch = lookupStitch(text.slice(start, to), terms);
    if (stitch) best = { code: stitch.code, to, length };
  }
  return best;
}

/** The word of the other terms in the shape of this one: short for short, whole for whole, plural and capital kept. */
function other(word: string, code: string, from: Terms, to: Terms): string {
  if (lookupStitch(word, to)?.code === code) return word;
  const plain = normaliseSpelling(word);
  const name = normaliseSpelling(nameIn(code, from));
  const whole = plain.startsWith(name.slice(0, 5)) && plain.length >= 5;
  const plural = plain.endsWith("s") && lookupStitch(plain.slice(0, -1), from)?.code === code;
  const said = `${whole ? nameIn(code, to) : abbreviationIn(code, to)}${plural ? "s" : ""}`;
  if (word.length > 1 && whole && word === word.toUpperCase()) return said.toUpperCase();
  return /^\p{Lu}/u.test(word) && /^\p{Ll}/u.test(said) ? said.charAt(0).toUpperCase() + said.slice(1) : said;
}
