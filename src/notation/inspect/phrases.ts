import { Kept } from "../../base/index.ts";
import { normaliseSpelling } from "../../stitches/index.ts";
import { latinWord, plainText } from "../glyphs.ts";
import { normOf } from "../words.ts";

/*
 * The words of a stretch of text and the phrases of up to four words, without what writers put in or leave out: "sl-st",
 * "sl st" and "Sl. St." are all "slst". A text is gone through once, and looking up a phrase costs nothing after that.
 */

const LONGEST = 4;
const WORD = /[\p{L}\d][\p{L}\p{M}\d']*/gu;
/** What may stand between the words of one name. */
const JOIN = /^[\s.\-‐‑/]{1,3}$/u;

export class Phrases {
  private readonly kept = new Set<string>();
  private readonly words = new Set<string>();

  constructor(...texts: readonly string[]) {
    for (const text of texts) this.add(plainText(text));
  }

  private add(text: string): void {
    for (const part of partsOf(text)) {
      let found = known.get(part);
      if (!found) {
        found = phrasesOf(part);
        known.set(part, found);
      }
      for (const phrase of found.phrases) this.kept.add(phrase);
      for (const word of found.words) this.words.add(word);
    }
  }

  /** Whether the words stand in the text, one or many. */
  has(spelling: string): boolean {
    const plain = normaliseSpelling(spelling);
    if (plain === "") return false;
    if (this.kept.has(plain) || this.kept.has(`${plain}s`)) return true;
    return plain.length > 3 && this.kept.has(plain.replace(/e?s$/u, ""));
  }

  /** Whether a word of the text answers to the test. */
  some(test: (word: string) => boolean): boolean {
    for (const word of this.words) if (test(word)) return true;
    return false;
  }
}

interface Found {
  readonly phrases: readonly string[];
  readonly words: readonly string[];
}

/** Phrases of stretches met before. */
const known = new Kept<string, Found>(6000);

/** A mark that no phrase goes across, on a new line. */
const PARTS = /\n[\p{L}\p{M}\d'\s.\-‐‑/]{0,400}[^\p{L}\p{M}\d'\s.\-‐‑/]/gu;

/** The text in stretches of about a line each, cut where no phrase goes across. */
function partsOf(text: string): string[] {
  const parts: string[] = [];
  let from = 0;
  for (const match of text.matchAll(PARTS)) {
    const to = match.index + match[0].length;
    parts.push(text.slice(from, to));
    from = to;
  }
  parts.push(text.slice(from));
  return parts;
}

function phrasesOf(text: string): Found {
  const phrases = new Set<string>();
  const words = new Set<string>();
  const open: string[] = [];
  let end = 0;
  for (const match of text.matchAll(WORD)) {
    if (!JOIN.test(text.slice(end, match.index))) open.length = 0;
    end = match.index + match[0].length;
    const word = normOf(latinWord(match[0]));
    words.add(word);
    open.push(word);
    if (open.length > LONGEST) open.shift();
    let phrase = "";
    for (let i = open.length - 1; i >= 0; i -= 1) {
      phrase = open[i] + phrase;
      phrases.add(phrase);
    }
    // "ch3", "3tr", "hdcblo": the letters alone are a word too.
    for (const letters of word.match(/[a-z]+/gu) ?? []) {
      phrases.add(letters);
      words.add(letters);
    }
  }
  return { phrases: [...phrases], words: [...words] };
}
