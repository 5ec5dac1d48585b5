import type { Span } from "../base/index.ts";

/*
 * Sentences of a block. A full stop ends one unless it belongs to an abbreviation or a number, or stands inside brackets.
 */

const ABBREVIATION =
  /(?:^|[^A-Za-z])(?:sl|ch|chs|sk|rep|rpt|beg|inc|dec|nxt?|ea|hk|lps?|yo|tog|patt?|rem|cont|foll|alt|approx|incl|no|col|ins|in|oz|yds|mos|yrs|[sdh]|h\.d|s|w|r|e\.g|i\.e|etc|sq|st|sts|sp|sps|dc|sc|tr|rnds?|bet|bk|fr|vs|dia|fig|mrs?|dr|[a-z])\.$/i;
/** Of those, the ones that a figure may follow without a new sentence beginning. */
const TAKES_FIGURE = /(?:^|[^A-Za-z])(?:ch|sk|rep|no|approx|col|fig|nxt?|ea|hk)\.$/i;

/** Cuts a stretch of flat text into sentences; together they cover it but for spaces. */
export function splitSentences(flat: string, from: number, to: number): Span[] {
  const sentences: Span[] = [];
  let start = from;
  let depth = 0;
  let opened = from;
  for (let at = from; at < to; at++) {
    const glyph = flat[at] as string;
    if (glyph === "(" || glyph === "[") {
      if (depth === 0) opened = at;
      depth++;
    } else if ((glyph === ")" || glyph === "]") && depth > 0) depth--;
    if (glyph !== "." && glyph !== "!" && glyph !== "?") continue;
    // A bracket that never closes does not swallow the page.
    if (depth > 0 && at - opened > 600) depth = 0;
    if (depth > 0 || !endsSentence(flat, at, to) || isListNumber(flat, start, at)) continue;
    let end = at + 1;
    while (end < to && /[)\]"'.!?]/.test(flat[end] as string)) end++;
    add(sentences, flat, start, end);
    start = end;
    at = end - 1;
  }
  add(sentences, flat, start, to);
  return sentences;
}

function add(sentences: Span[], flat: string, from: number, to: number): void {
  let start = from;
  let end = to;
  while (start < end && (flat[start] === " " || flat[start] === "\n")) start++;
  while (end > start && (flat[end - 1] === " " || flat[end - 1] === "\n")) end--;
  if (end > start) sentences.push({ from: start, to: end });
}

/** "1." before an entry of a list is not a sentence. */
function isListNumber(flat: string, start: number, at: number): boolean {
  return at - start < 6 && /^\s*(?:step\s)?\d{1,2}$/i.test(flat.slice(start, at));
}

function endsSentence(flat: string, at: number, to: number): boolean {
  if (flat[at] !== ".") return true;
  const next = flat[at + 1];
  if (at + 1 >= to || next === undefined) return true;
  if (next === ".") return false;
  if (next !== " " && next !== "\n")
    return /[A-Z(*[]/.test(next) && /[a-z)\]]/.test(flat[at - 1] ?? "") && /[a-z]/.test(flat[at + 2] ?? "");
  let behind = at + 1;
  while (behind < to && behind < at + 6 && (flat[behind] === " " || flat[behind] === "\n")) behind++;
  const glyph = flat[behind] ?? "";
  const before = flat.slice(Math.max(0, at - 8), at + 1);
  if (/[a-z,;:)\]]/.test(glyph))
    return !ABBREVIATION.test(before) && /[a-z]/.test(glyph) && !/\d\.$/.test(before);
  if (/\d/.test(glyph)) return !TAKES_FIGURE.test(before);
  return true;
}
