import type { Span } from "../../base/index.ts";
import type { Cm } from "../units.ts";

/** Something in the words that could not be read: its place in them, and what is wrong in a sentence. */
export interface Slip {
  readonly span: Span;
  readonly say: string;
  /** A name nobody knows, and the nearest there is; or how many values there are for the sizes. */
  readonly about?:
    | { readonly is: "name"; readonly words: string; readonly near: string | null }
    | { readonly is: "sizes"; readonly has: number };
}

/** A number as written, with its place. */
export interface NumberFound {
  readonly span: Span;
  readonly value: number;
}

const FRACTIONS: Readonly<Record<string, number>> = {
  "¼": 1 / 4,
  "½": 1 / 2,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};
const SIGNS = Object.keys(FRACTIONS).join("");
const NUMBER = new RegExp(
  String.raw`(\d{1,6})[ -](\d{1,2})\/(\d{1,2})(?![\d/])|(\d{1,6})\/(\d{1,3})(?![\d/])|(\d{0,6}) ?([${SIGNS}])|(\d{1,6}(?:\.\d{1,6})?)`,
  "y",
);
/** "35,5": a decimal comma or two numbers without a space? */
const COMMA = /\d{1,6},\d{1,6}/y;
const UNIT =
  /(?:(cm|centimet(?:re|er)s?)|(mm|millimet(?:re|er)s?)|(inch(?:es)?|in\.?(?=$|[^a-z])(?!\s*[a-z])|["″”]))(?![a-z])/iy;
/** "in" before another word says where; it is inches only where no fabric can stand behind it. */
const IN_BEFORE_WORDS =
  /in\.?(?=\s+(?:plus|minus|less|and|but|at|or|wide|long|deep|high|each|all|over|x|by)\b)/iy;
const CM: readonly (readonly [group: number, cm: number])[] = [
  [1, 1],
  [2, 0.1],
  [3, 2.54],
];

/** Goes through the words of a measure from left to right. Nothing in it throws. */
export class WordCursor {
  at = 0;

  constructor(readonly words: string) {}

  get done(): boolean {
    this.space();
    return this.at >= this.words.length;
  }

  space(): void {
    while (this.at < this.words.length && /\s/.test(this.words[this.at] as string)) this.at++;
  }

  /** The match of a sticky pattern here, passed over. */
  take(pattern: RegExp): RegExpExecArray | null {
    this.space();
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.words);
    if (found) this.at += found[0].length;
    return found;
  }

  /** A whole word or several, passed over; case does not matter. */
  word(...words: readonly string[]): boolean {
    this.space();
    for (const word of words) {
      const end = this.at + word.length;
      if (this.words.slice(this.at, end).toLowerCase() !== word) continue;
      if (/\w$/.test(word) && /[\p{L}\d]/u.test(this.words[end] ?? "")) continue;
      this.at = end;
      return true;
    }
    return false;
  }

  /** A number: 14, 14.5, 5½, 5 1/2, ¾. */
  number(): NumberFound | null {
    this.space();
    const from = this.at;
    NUMBER.lastIndex = from;
    const found = NUMBER.exec(this.words);
    if (!found) return null;
    const [all, whole, top, bottom, over, under, before, sign, plain] = found;
    const value =
      plain !== undefined
        ? Number(plain)
        : sign !== undefined
          ? Number(before || 0) + (FRACTIONS[sign] as number)
          : over !== undefined
            ? Number(over) / Number(under)
            : Number(whole) + Number(top) / Number(bottom);
    if (!Number.isFinite(value)) return null;
    this.at = from + all.length;
    return { span: { from, to: this.at }, value };
  }

  /** Whether a comma between digits stands here, which could mean either of two things. */
  commaBetweenDigits(): Span | null {
    this.space();
    COMMA.lastIndex = this.at;
    const found = COMMA.exec(this.words);
    return found && { from: this.at, to: this.at + found[0].length };
  }

  /** Several numbers with nothing but spaces, commas and brackets between them: "18 (19.5, 21)". */
  numbers(): NumberFound[] {
    const found: NumberFound[] = [];
    for (;;) {
      const before = this.at;
      if (found.length > 0) this.take(/[\s,;]*[()[\]]?[\s,;]*[()[\]]?\s*(?=[\d(¼½¾⅓⅔⅛⅜⅝⅞])/y);
      const one = this.number();
      if (one === null) {
        this.at = before;
        break;
      }
      found.push(one);
    }
    if (found.length > 1) this.take(/[)\]]/y);
    return found;
  }

  /** A unit of length as centimetres. */
  unit(): Cm | null {
    this.space();
    const bare = this.take(IN_BEFORE_WORDS);
    if (bare) return 2.54;
    const found = this.take(UNIT);
    if (!found) return null;
    return CM.find(([group]) => found[group] !== undefined)?.[1] ?? null;
  }
}

/** The known name nearest to a misspelt one; null where nothing is near. */
export function nearestName(typed: string, names: Iterable<string>): string | null {
  const wanted = plainName(typed);
  let best: { readonly name: string; readonly away: number } | null = null;
  for (const name of names) {
    const known = plainName(name);
    if (Math.abs(known.length - wanted.length) > 4) continue;
    const away = editsBetween(wanted, known);
    if (away <= Math.max(1, Math.floor(known.length / 3)) && (best === null || away < best.away))
      best = { name, away };
  }
  return best?.name ?? null;
}

/** A name without regard to capitals, underlines, hyphens and double spaces. */
export const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();

/** Letters put in, left out or changed to come from one word to the other. */
function editsBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const change = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
