/*
 * Single numbers as patterns write them: figures, fractions, decimals, number words and ordinals.
 * All functions read plain text (see glyphs.ts) at an offset and say where the number ends.
 */

/** One number found at an offset. */
export interface NumberFound {
  readonly to: number;
  readonly value: number;
  readonly ordinal: boolean;
  readonly word: boolean;
}

const FRACTION_GLYPHS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅕": 1 / 5,
  "⅙": 1 / 6,
};

const CARDINALS: Readonly<Record<string, number>> = {
  zero: 0,
  none: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  hundred: 100,
  once: 1,
  twice: 2,
  thrice: 3,
};

const ORDINALS: Readonly<Record<string, number>> = {
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
};

const FIGURES = /\d{1,9}/y;
const DECIMAL = /\.\d{1,3}(?![\d.]*\d)/y;
const DECIMAL_COMMA = /,\d{1,2}(?=\s{0,2}(?:cm|mm|m|in|inch|inches|")(?![a-z]))/iy;
const MIXED = / {0,2}(?<![\d/])(\d)\/(2|3|4|5|8|16)(?![\d/])/y;
const MIXED_DASH = /-(\d)\/(2|3|4|8|16)(?![\d/])/y;
const SUFFIX = / ?(?:st|nd|rd|th)(?![a-z])|d(?![a-z])/iy;
const WORD = /[a-z]{3,11}(?![a-z'])/iy;
const TENS_UNIT = /[- ](one|two|three|four|five|six|seven|eight|nine)(?![a-z])/iy;

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** A number in figures at `at`, or null. "1st" is the first only where the suffix is no stitch word: "1 st" is one stitch. */
export function readFigures(text: string, at: number): NumberFound | null {
  const glyph = FRACTION_GLYPHS[text[at] ?? ""];
  if (glyph !== undefined) return { to: at + 1, value: glyph, ordinal: false, word: false };
  const figures = match(FIGURES, text, at);
  if (!figures) return null;
  let to = at + figures[0].length;
  let value = Number(figures[0]);
  if (/\d/.test(text[to] ?? "")) return null;
  const suffix = match(SUFFIX, text, to);
  if (suffix && isSuffixOf(value, suffix[0]))
    return { to: to + suffix[0].length, value, ordinal: true, word: false };
  const fraction = fractionAt(text, to, value);
  if (fraction) return { to: fraction.to, value: fraction.value, ordinal: false, word: false };
  const decimal = match(DECIMAL, text, to) ?? match(DECIMAL_COMMA, text, to);
  if (decimal) {
    to += decimal[0].length;
    value = Number(figures[0] + decimal[0].replace(",", "."));
  }
  return { to, value, ordinal: false, word: false };
}

/** "th" after any number from 4, "st" glued after 1 but not 2: "1 st" with a space is one stitch, "2d" an old second. */
function isSuffixOf(value: number, suffix: string): boolean {
  const spaced = suffix.startsWith(" ");
  const letters = suffix.trim().toLowerCase();
  const teen = value % 100 >= 11 && value % 100 <= 13;
  const last = teen ? 0 : value % 10;
  if (letters === "st") return !spaced && last === 1;
  if (letters === "nd") return last === 2;
  if (letters === "rd") return last === 3;
  if (letters === "d") return last === 2 || last === 3;
  return value > 0;
}

function fractionAt(text: string, to: number, whole: number): { to: number; value: number } | null {
  const near = text[to] === " " ? to + 1 : to;
  const glyph = FRACTION_GLYPHS[text[near] ?? ""];
  if (glyph !== undefined) return { to: near + 1, value: whole + glyph };
  if (text[to] === " ") {
    const mixed = match(MIXED, text, to);
    if (mixed && Number(mixed[1]) < Number(mixed[2]))
      return { to: to + mixed[0].length, value: whole + Number(mixed[1]) / Number(mixed[2]) };
  }
  const dashed = match(MIXED_DASH, text, to);
  if (dashed && Number(dashed[1]) < Number(dashed[2]))
    return { to: to + dashed[0].length, value: whole + Number(dashed[1]) / Number(dashed[2]) };
  return null;
}

/** A number word at `at`: "two", "twenty-four", "twice", "second". "first" and "a" stay words. */
export function readNumberWord(text: string, at: number): NumberFound | null {
  const word = match(WORD, text, at);
  if (!word) return null;
  const norm = word[0].toLowerCase();
  let to = at + word[0].length;
  const ordinal = ORDINALS[norm];
  if (ordinal !== undefined) return { to, value: ordinal, ordinal: true, word: true };
  let value = CARDINALS[norm];
  if (value === undefined) return null;
  if (value >= 20 && value < 100) {
    const unit = match(TENS_UNIT, text, to);
    if (unit) {
      value += CARDINALS[(unit[1] as string).toLowerCase()] as number;
      to += unit[0].length;
    }
  }
  return { to, value, ordinal: false, word: true };
}

/** A plain fraction standing alone: "1/2", "3/4". */
export function readFraction(text: string, at: number): NumberFound | null {
  const found = match(/(\d)\/(2|3|4|5|8|16)(?![\d/])/y, text, at);
  if (!found || Number(found[1]) >= Number(found[2])) return null;
  return {
    to: at + found[0].length,
    value: Number(found[1]) / Number(found[2]),
    ordinal: false,
    word: false,
  };
}
