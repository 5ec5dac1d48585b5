import type { Span } from "../../src/base/index.ts";

/** A whole number as it stands in the text, in figures or as a word. */
export interface Numeral {
  readonly span: Span;
  readonly value: number;
  /** "2nd", "second". */
  readonly ordinal: boolean;
  readonly word: boolean;
}

const FIGURES = /\d+/g;
const CARDINAL = [
  "zero",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];
const ORDINAL = [
  "",
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
  "eleventh",
];
const TIMES = ["", "once", "twice", "three times", "four times"];

/** The whole numbers in figures in a stretch of text: no fractions, no decimals, no "2" of "sc2tog". */
export function findFigures(text: string, { from, to }: Span): Numeral[] {
  const numerals: Numeral[] = [];
  for (const match of text.slice(from, to).matchAll(FIGURES)) {
    const start = from + match.index;
    const end = start + match[0].length;
    const before = text.slice(Math.max(0, start - 2), start);
    const after = text.slice(end, end + 8);
    if (
      /\d[.,]$|[½¼¾⅓⅔⅛/]$/.test(before) ||
      /^(?:\.\d|\s?[½¼¾⅓⅔⅛]|\/\d)/.test(after) ||
      /^-?to?g/i.test(after)
    )
      continue;
    const suffix = /^(?:st|nd|rd|th|d)(?![a-z])/i.exec(after);
    const width =
      suffix && (suffix[0].toLowerCase() !== "st" || match[0].endsWith("1")) ? suffix[0].length : 0;
    numerals.push({
      span: { from: start, to: end + width },
      value: Number(match[0]),
      ordinal: width > 0,
      word: false,
    });
  }
  return numerals;
}

/** The number word that a stretch of text is, or null. */
export function readWord(text: string, span: Span): Numeral | null {
  const word = text.slice(span.from, span.to).toLowerCase();
  for (const [list, ordinal] of [
    [CARDINAL, false],
    [ORDINAL, true],
    [TIMES, false],
  ] as const) {
    const value = list.indexOf(word);
    if (value > 0) return { span, value, ordinal, word: true };
  }
  return null;
}

/** Another number in the same dress: "2nd" → "3rd", "twice" → "three times". Null where there is no word for it. */
export function dress(text: string, numeral: Numeral, value: number): string | null {
  if (value < 0) return null;
  const old = text.slice(numeral.span.from, numeral.span.to);
  if (numeral.word) {
    const list = [TIMES, CARDINAL, ORDINAL].find((one) => one.includes(old.toLowerCase()));
    const word = list?.[value];
    if (!word) return null;
    return /^[A-Z]/.test(old) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
  }
  return numeral.ordinal ? `${value}${suffixOf(value)}` : String(value);
}

function suffixOf(value: number): string {
  const teen = value % 100 >= 11 && value % 100 <= 13;
  return (teen ? undefined : { 1: "st", 2: "nd", 3: "rd" }[value % 10]) ?? "th";
}

/** Whether a measure follows: "12 cm", `4"`, "3 [cm]"; through further sizes, "37 (37, 36) cm". */
export function isMeasure(text: string, span: Span): boolean {
  const after = text.slice(span.to, span.to + 80);
  return MEASURE.test(after);
}

/** Further sizes, then a unit; "in" only where no word follows, since "2 in next st" is no length. */
const MEASURE =
  /^[\d\s,()[\]½¼¾⅓⅔⅛.-]{0,60}(?:(?:cm|mm|m|g|inch|inches|yd|yards|hours?|days?)(?![a-z])|in(?!\w|\s+[a-z])|["”])/i;
