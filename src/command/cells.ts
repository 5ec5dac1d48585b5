import { eastAsianWidth } from "get-east-asian-width";

/** One character as a reader sees it, with the columns it fills and where it stands in its text (UTF-16 units). */
export interface Cell {
  readonly text: string;
  readonly width: number;
  readonly from: number;
  readonly to: number;
}

const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });
const TAB_STOP = 4;
const PLAIN = /^[ -~]*$/;
/** Controls, and marks that turn the direction of writing: they could rewrite what stands on the screen. */
const CONTROL = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u2028\u2029]/u;
const CONTROLS = new RegExp(CONTROL, "gu");
const EMOJI = /\p{Emoji_Presentation}|\ufe0f/u;
const ZERO_WIDTH = /^[\p{M}\p{Cf}]+$/u;

/** The characters of one line. Tabs are shown as spaces up to the next stop, controls as a sign. */
export function cellsOf(line: string): Cell[] {
  const cells: Cell[] = [];
  let column = 0;
  for (const { segment, index } of graphemes.segment(line)) {
    const text = segment === "\t" ? " ".repeat(TAB_STOP - (column % TAB_STOP)) : clean(segment);
    const width = segment === "\t" ? text.length : graphemeWidth(text);
    cells.push({ text, width, from: index, to: index + segment.length });
    column += width;
  }
  return cells;
}

/** Columns that words fill on a terminal. */
export function widthOf(words: string): number {
  if (PLAIN.test(words)) return words.length;
  let width = 0;
  for (const { segment } of graphemes.segment(words)) width += graphemeWidth(segment);
  return width;
}

function graphemeWidth(grapheme: string): number {
  if (ZERO_WIDTH.test(grapheme)) return 0;
  if (EMOJI.test(grapheme)) return 2;
  return eastAsianWidth(grapheme.codePointAt(0) as number);
}

/** Words from a text, safe to print: a control becomes a sign. */
export const clean = (words: string): string =>
  PLAIN.test(words) ? words : words.replace(CONTROLS, "\ufffd");

/** Words from a text on one line, white space drawn together. */
export const oneLine = (words: string): string => clean(words.replace(/\s+/gu, " ").trim());

/** Spaces behind the words up to a width. */
export const padEnd = (words: string, width: number): string =>
  words + " ".repeat(Math.max(0, width - widthOf(words)));

/** Spaces before the words up to a width. */
export const padStart = (words: string, width: number): string =>
  " ".repeat(Math.max(0, width - widthOf(words))) + words;

/** The words cut to a width, with an ellipsis where something was cut. */
export function clip(words: string, width: number): string {
  if (widthOf(words) <= width) return words;
  let cut = "";
  let used = 0;
  for (const cell of cellsOf(words)) {
    if (used + cell.width > width - 1) break;
    cut += cell.text;
    used += cell.width;
  }
  return `${cut.trimEnd()}…`;
}
