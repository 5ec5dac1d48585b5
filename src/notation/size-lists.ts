import { type NumberFound, readFigures, readFraction, readNumberWord } from "./numbers.ts";

/*
 * Size lists: one number for each size, in any of the shapes that patterns use.
 *
 *   41 (45, 51, 57)   1 (2, 3, 4) (5, 6)   71 [75, 79]   28 (32-36-40)   8-10-12   60, 66, 72   30:32:34   30 (32: 34)
 *   85 (93) 101 (109) 117   9/11   105; 113; 121   14, (15, 16)   - (-, 3, 6)   zero (one, two)   40(44   (62, 66, 70)
 *
 * Whether numbers side by side are a list is told by how many there are: a hyphen is a range unless it joins exactly as many
 * values as there are sizes, a lone number in a bracket is a count unless there are two sizes.
 * All functions read plain text (see glyphs.ts).
 */

/** A list at an offset; a single number is a list of one. */
export interface ListFound {
  readonly to: number;
  readonly values: readonly (number | null)[];
  readonly ordinal: boolean;
  readonly word: boolean;
  /** The whole list stands in brackets with no value before them: "(62, 66, 70)". */
  readonly bracketed: boolean;
  /** A unit written inside the list: 9" (10", 11"). A unit that follows the list is not part of it. */
  readonly unit: "cm" | "in" | "mm" | null;
  /** Where a bracket should close and with what, if it does not: the text from `from` to `to` is replaced. */
  readonly mend?: { readonly from: number; readonly to: number; readonly text: string };
}

/** What stands before the list. */
export interface ListPlace {
  readonly sizes: number;
  /** After "row", "rows", "rnds": commas and hyphens there list rows. */
  readonly afterRows: boolean;
}

interface Item {
  readonly to: number;
  readonly value: number | null;
  readonly ordinal: boolean;
  readonly word: boolean;
  readonly unit: "cm" | "in" | "mm" | null;
}

interface Bracket {
  readonly to: number;
  readonly items: readonly Item[];
  readonly separators: readonly string[];
  readonly closed: boolean;
  readonly mend?: NonNullable<ListFound["mend"]>;
}

/** No pattern has more sizes than this; a longer run of numbers is something else. */
const MOST = 30;
const UNIT = /\s?("|''|in\b\.?|ins\b\.?|inch(?:es)?\b|cms?\b\.?|mm\b\.?)/iy;
const OPEN = /[\s]{0,4}[,;]?[\s]{0,12}([([{])\s*/y;
const CLOSERS: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}" };
const CLOSE = /\s*[)\]}]/y;
const SEPARATOR = /\s*([,;:/.]|-(?!\s*[,)\]]))\s*|\s+/y;
const NONE = /(?:-{1,3}|\*)(?=\s*[,;:/()[\]{}])|(?:n\/a|x)(?=\s*[,;:/)\]}])/iy;
const REPEAT_FOLLOWS =
  /\s*(?:\d+\s*(?:more\s+)?(?:times|x\b)|x\s*\d|twice|thrice|once|(?:all\s+)?(?:the\s+way\s+)?a(?:cross|round)|(?:in|into)\s+(?:next|same|each|first|last))/iy;

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** The number or size list that begins at `at`, or null where none does. */
export function readSizeList(text: string, at: number, place: ListPlace): ListFound | null {
  const { sizes } = place;
  if (isOpener(text[at])) return bracketAlone(text, at, sizes);
  if (text[at] === "-") return noneFirst(text, at, sizes);
  const first = readItem(text, at, false);
  if (!first) return null;
  return afterFirst(text, at, first, place) ?? single(readNumber(text, at) as NumberFound);
}

function afterFirst(text: string, at: number, first: Item, place: ListPlace): ListFound | null {
  return bracketAfter(text, first, place.sizes) ?? bareList(text, at, first, place);
}

function single(found: NumberFound): ListFound {
  return {
    to: found.to,
    values: [found.value],
    ordinal: found.ordinal,
    word: found.word,
    bracketed: false,
    unit: null,
  };
}

function listOf(to: number, items: readonly Item[], bracketed = false, mend?: ListFound["mend"]): ListFound {
  return {
    ...(mend ? { mend } : {}),
    to,
    values: items.map((item) => item.value),
    ordinal: items.some((item) => item.ordinal),
    word: items.every((item) => item.word),
    bracketed,
    unit: items.find((item) => item.unit)?.unit ?? null,
  };
}

function isOpener(glyph: string | undefined): boolean {
  return glyph === "(" || glyph === "[" || glyph === "{";
}

function readNumber(text: string, at: number): NumberFound | null {
  return readFraction(text, at) ?? readFigures(text, at) ?? readNumberWord(text, at);
}

function readItem(text: string, at: number, none: boolean): Item | null {
  if (none) {
    const dash = match(NONE, text, at);
    if (dash) return { to: at + dash[0].length, value: null, ordinal: false, word: false, unit: null };
  }
  // In a list a slash parts sizes, so that only a whole number with a fraction, or a lone fraction before a unit, is one value.
  const found = readFigures(text, at) ?? readNumberWord(text, at);
  if (!found) return null;
  const unit = match(UNIT, text, found.to);
  return {
    ...found,
    to: found.to,
    unit: unit ? unitOf(unit[1] as string) : null,
    ...(unit ? { to: found.to + unit[0].length } : {}),
  };
}

function unitOf(words: string): "cm" | "in" | "mm" {
  const norm = words.toLowerCase();
  return norm.startsWith("cm") ? "cm" : norm.startsWith("mm") ? "mm" : "in";
}

/** The bracket that opens at `at`, if it holds nothing but numbers and none-marks. */
function readBracket(text: string, at: number, most: number): Bracket | null {
  const open = match(OPEN, text, at);
  if (!open) return null;
  const items: Item[] = [];
  const separators: string[] = [];
  let to = at + open[0].length;
  for (;;) {
    const item = readItem(text, to, true);
    if (!item) return null;
    items.push(item);
    to = item.to;
    const close = match(CLOSE, text, to);
    if (close) {
      const end = to + close[0].length;
      const wanted = CLOSERS[open[1] as string] as string;
      const mend = text[end - 1] === wanted ? undefined : { from: end - 1, to: end, text: wanted };
      return { to: end, items, separators, closed: true, ...(mend ? { mend } : {}) };
    }
    if (items.length > MOST) return null;
    const unclosed = {
      items,
      separators,
      closed: false,
      mend: { from: to, to, text: CLOSERS[open[1] as string] as string },
    };
    const separator = match(SEPARATOR, text, to);
    if (!separator)
      return items.length === most && neverCloses(text, to, separators) ? { to, ...unclosed } : null;
    const next = to + separator[0].length;
    if (items.length === most && !readItem(text, next, true))
      return neverCloses(text, to, separators) ? { to, ...unclosed } : null;
    separators.push(separator[1] ?? " ");
    to = next;
  }
}

/** A bracket left open: its values are parted as sizes are, and no closing bracket stands a few words on. */
function neverCloses(text: string, to: number, separators: readonly string[]): boolean {
  return !separators.includes("-") && !/^[^()[\]{}\n]{0,40}[)\]}]/.test(text.slice(to, to + 42));
}

function sameUnits(first: Item, items: readonly Item[]): boolean {
  const units = new Set(items.map((item) => item.unit).filter((unit) => unit !== null));
  if (first.unit !== null) return units.size === 0 || (units.size === 1 && units.has(first.unit));
  return units.size === 0 || (units.size === 1 && items.at(-1)?.unit !== null);
}

/** "a (b, c)", "a (b, c) (d, e)", "a (b) c (d) e", "a (b)" in two sizes. */
function bracketAfter(text: string, first: Item, sizes: number): ListFound | null {
  const bracket = readBracket(text, first.to, Math.max(1, sizes - 1));
  if (!bracket || !sameUnits(first, bracket.items)) return null;
  const count = bracket.items.length + 1;
  // In two sizes "ch 3, (2 dc" would be a list that lost its end.
  if (!bracket.closed && (count !== sizes || sizes === 2)) return null;
  if (!separatorsAgree(bracket.separators) && count !== sizes) return null;
  if (count === 2) {
    if (sizes === 2)
      return isCountNotSize(text, first, bracket)
        ? null
        : listOf(bracket.to, [first, ...bracket.items], false, bracket.mend);
    return sizes > 2 ? alternating(text, first, bracket, sizes) : null;
  }
  if (bracket.separators.includes("-") && count !== sizes && sizes > 1) return null;
  if (count !== sizes && match(REPEAT_FOLLOWS, text, bracket.to) !== null) return null;
  return grouped(text, [first, ...bracket.items], bracket.to, sizes, bracket.mend);
}

/** With two sizes "5 (24)" at the end of a sentence is a count of the row where the second is out of all proportion. */
function isCountNotSize(text: string, first: Item, bracket: Bracket): boolean {
  const second = bracket.items[0]?.value;
  if (typeof second !== "number" || first.value === null || first.value === 0) return false;
  return (
    second >= first.value * 3 &&
    second - first.value > 4 &&
    /^\s*\.?\s*(?:$|\n)/.test(text.slice(bracket.to, bracket.to + 6))
  );
}

function separatorsAgree(separators: readonly string[]): boolean {
  return new Set(separators.map((separator) => (separator === "." ? "," : separator))).size <= 1;
}

/** Further brackets that stand directly behind, as long as there are sizes left for them. */
function grouped(
  text: string,
  items: readonly Item[],
  to: number,
  sizes: number,
  mend?: ListFound["mend"],
): ListFound {
  const all = [...items];
  let end = to;
  while (all.length < sizes) {
    const next = readBracket(text, end, sizes - all.length);
    if (!next?.closed || all.length + next.items.length > sizes) break;
    all.push(...next.items);
    end = next.to;
  }
  return listOf(end, all, false, mend);
}

/** "85 (93) 101 (109) 117": plain and bracketed by turns, with exactly as many values as sizes. Or "1 (2) (3, 4)". */
function alternating(text: string, first: Item, bracket: Bracket, sizes: number): ListFound | null {
  const all = [first, ...bracket.items];
  let to = bracket.to;
  while (all.length < sizes) {
    const plain = readItem(text, skipSpace(text, to), false);
    if (plain) {
      all.push(plain);
      to = plain.to;
      if (all.length === sizes) break;
    }
    const next = readBracket(text, to, sizes - all.length);
    if (!next || all.length + next.items.length > sizes) break;
    all.push(...next.items);
    to = next.to;
  }
  return all.length === sizes ? listOf(to, all) : null;
}

function skipSpace(text: string, at: number): number {
  const space = match(/\s{0,12}/y, text, at);
  return at + (space?.[0].length ?? 0);
}

/** "(62, 66, 70)" with no value before the bracket. */
function bracketAlone(text: string, at: number, sizes: number): ListFound | null {
  // In a pattern of one size such a bracket is something else, such as the counts of several rows.
  const bracket = sizes < 2 ? null : readBracket(text, at, sizes);
  if (!bracket?.closed || !separatorsAgree(bracket.separators)) return null;
  const count = bracket.items.length;
  const hyphens = bracket.separators.includes("-");
  const spaces = bracket.separators.includes(" ");
  if (count < 2 || (count !== sizes && (count < 3 || hyphens || spaces))) return null;
  if (count === 2 && hyphens) return null;
  if (match(REPEAT_FOLLOWS, text, bracket.to) !== null) return null;
  return listOf(bracket.to, bracket.items, true, bracket.mend);
}

/** "- (-, 3, 6)": the first size does none. Only with a value for each size, since a dash has other work to do. */
function noneFirst(text: string, at: number, sizes: number): ListFound | null {
  if (sizes < 2) return null;
  const dash = match(/-{1,3}/y, text, at) as RegExpExecArray;
  const first: Item = { to: at + dash[0].length, value: null, ordinal: false, word: false, unit: null };
  const bracket = readBracket(text, first.to, sizes - 1);
  if (!bracket) return null;
  // A dash and a bracket with one value less than there are sizes; two sizes need a space, "- (24)" being a count.
  if (sizes === 2) return null;
  const list = grouped(text, [first, ...bracket.items], bracket.to, sizes, bracket.mend);
  return list.values.length === sizes ? list : null;
}

const BARE_SEPARATORS: readonly { readonly pattern: RegExp; readonly joins: "hyphen" | "comma" | "other" }[] =
  [
    { pattern: /\s?-\s?(?=[\d½¼¾])/y, joins: "hyphen" },
    { pattern: /\s?,\s{0,8}(?=[\d½¼¾-])/y, joins: "comma" },
    { pattern: /\s?;\s{0,8}(?=[\d½¼¾-])/y, joins: "other" },
    { pattern: /\s?:\s?(?=[\d½¼¾-])/y, joins: "other" },
    { pattern: /\s?\/\s?(?=[\d½¼¾-])/y, joins: "other" },
  ];

/** Values with no bracket at all: exactly as many as sizes, and no further value behind. */
function bareList(text: string, at: number, first: Item, place: ListPlace): ListFound | null {
  const { sizes, afterRows } = place;
  if (sizes < 2 || first.word) return null;
  for (const { pattern, joins } of BARE_SEPARATORS) {
    const items = bareItems(text, first, pattern, sizes);
    if (items.length < 2) continue;
    // "Rnd 1: 2 sc": behind the number of a row a colon ends the label.
    if (items.length !== sizes || (afterRows && joins === "other" && sizes < 4)) return null;
    const numbers = items.map((item) => item.value).filter((value) => value !== null);
    if (joins === "hyphen" && !hyphensJoinSizes(text, at, items, numbers, afterRows)) return null;
    if (joins === "comma" && !commasJoinSizes(numbers, sizes, afterRows)) return null;
    if (joins === "other" && sizes === 2 && !isPlausiblePair(numbers)) return null;
    if (!sameUnits(first, items.slice(1))) return null;
    return listOf((items.at(-1) as Item).to, items);
  }
  return null;
}

function bareItems(text: string, first: Item, separator: RegExp, sizes: number): Item[] {
  const items = [first];
  let to = first.to;
  while (items.length <= sizes) {
    const gap = match(separator, text, to);
    if (!gap) break;
    const item = readItem(text, to + gap[0].length, true);
    if (!item) break;
    items.push(item);
    to = item.to;
  }
  return items;
}

function isMonotone(numbers: readonly number[]): boolean {
  let up = true;
  let down = true;
  for (let i = 1; i < numbers.length; i++) {
    if ((numbers[i] as number) < (numbers[i - 1] as number)) up = false;
    if ((numbers[i] as number) > (numbers[i - 1] as number)) down = false;
  }
  return up || down;
}

function hyphensJoinSizes(
  text: string,
  at: number,
  items: readonly Item[],
  numbers: readonly number[],
  afterRows: boolean,
): boolean {
  if (!isMonotone(numbers)) return false;
  if (items.length > 2) return true;
  // Two numbers and a hyphen are a range wherever a range makes sense.
  const spaced = /\s/.test(text.slice(at, (items[1] as Item).to));
  return !afterRows && !spaced && isPlausiblePair(numbers) && (numbers[0] as number) >= 6;
}

function commasJoinSizes(numbers: readonly number[], sizes: number, afterRows: boolean): boolean {
  if (afterRows || !isMonotone(numbers)) return false;
  return sizes > 2 || (isPlausiblePair(numbers) && (numbers[0] as number) >= 10);
}

/** Two sizes of one thing do not differ by more than double. */
function isPlausiblePair(numbers: readonly number[]): boolean {
  const [a, b] = numbers;
  return a === undefined || b === undefined || (b >= a && b <= 2 * a + 2);
}
