import type { Span } from "../base/index.ts";
import { lookupStitch } from "../stitches/index.ts";
import { lex } from "./lex.ts";
import type { Amount, GaugeStatement } from "./tree.ts";

/*
 * Gauge statements: "14 sts and 14 rows = 10 cm [4"] in bump pattern", "6 dc = 1 inch", "4 shells = 5 in",
 * "4" x 4" in half double crochet ~ 14 stitches x 12 rows", "42 sts x 36 rows in 30.0 x 32.4 cm".
 */

const INCH = 2.54;
const STITCH_WORD =
  /\s?(?:(sts?|stitches|pattern repeats?|repeats?|shells?|mesh(?:es)?|blocks?|clusters?|v-?sts?|[a-z]{2,5}(?:\d?tog)?|(?:half |single |double |treble )?(?:double |treble )?crochets?)\b)/iy;
const ROW_WORD = /\s?(?:(?!and|sts?\b|x\b|by\b|to\b)[a-z]{2,8}\s)?(rows?|rnds?|rounds?|ridges?)\b/iy;
const NUMBER =
  /(?<![\d.,/])(?:\d{1,3}(?:[.,]\d{1,2})?(?:[½¼¾]|\s\d\/\d)?|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?=\s))/giy;

interface Piece {
  readonly at: number;
  readonly to: number;
  readonly value: number;
  readonly unit: "st" | "row" | "cm";
  readonly word: string;
}

/** The statements in the stretch of plain text, one a sentence or line. */
export function readGauges(
  text: string,
  plain: string,
  from: number,
  to: number,
  terms: "US" | "UK",
): GaugeStatement[] {
  const gauges: GaugeStatement[] = [];
  for (const sentence of parts(plain, from, to)) {
    const gauge = readOne(text, plain, sentence.from, sentence.to, terms);
    if (gauge) gauges.push(gauge);
  }
  return gauges;
}

/** Sentences and clauses, each of which may hold one statement. */
function parts(plain: string, from: number, to: number): Span[] {
  const spans: Span[] = [];
  let start = from;
  for (let at = from; at < to; at++) {
    const glyph = plain[at] as string;
    const ends =
      glyph === "\n" ||
      glyph === ";" ||
      (glyph === "," && /^,\sso\b/.test(plain.slice(at, at + 5))) ||
      (glyph === "." &&
        /^\s+[A-Z\d]/.test(plain.slice(at + 1, at + 4)) &&
        !/\b(?:in|ins|sts?)$/i.test(plain.slice(Math.max(from, at - 4), at)));
    if (!ends) continue;
    spans.push({ from: start, to: at });
    start = at + 1;
  }
  spans.push({ from: start, to });
  // "4 mesh = 1 inch; 4 rows = 1 inch": the second part has rows only and belongs to the first.
  const merged: Span[] = [];
  for (const span of spans) {
    const words = plain.slice(span.from, span.to);
    const last = merged.at(-1);
    const rowsOnly = /^\s*(?:and\s)?\d[\d.½¼¾ /-]*\s?(?:rows?|rnds?|rounds?)\b/i.test(words);
    if (last && rowsOnly && !/\brows?\b|\brnds?\b|\brounds?\b/i.test(plain.slice(last.from, last.to)))
      merged[merged.length - 1] = { from: last.from, to: span.to };
    else merged.push(span);
  }
  return merged;
}

function readOne(
  text: string,
  plain: string,
  from: number,
  to: number,
  terms: "US" | "UK",
): GaugeStatement | null {
  const pieces = piecesIn(plain, from, Math.min(to, from + 400));
  // "4 pattern repeats (24 sts)": the stitches are what can be counted.
  const stitch =
    pieces.find((piece) => piece.unit === "st" && /^(?:sts?|stitch)/.test(piece.word)) ??
    pieces.find((piece) => piece.unit === "st");
  const row = pieces.find((piece) => piece.unit === "row");
  const lengths = pieces.filter((piece) => piece.unit === "cm");
  if ((!stitch && !row) || lengths.length === 0) return null;
  const [width, height] = widthAndHeight(plain, pieces, lengths, stitch, row);
  const amount = (piece: Piece | undefined): Amount | null =>
    piece ? { span: { from: piece.at, to: piece.to }, values: [piece.value] } : null;
  let end = to;
  while (end > from && /\s/.test(plain[end - 1] as string)) end--;
  let start = from;
  while (start < end && /\s/.test(plain[start] as string)) start++;
  return {
    span: { from: start, to: end },
    stitches: amount(stitch),
    rows: amount(row),
    widthCm: width,
    heightCm: height,
    over: over(text, plain, start, end, stitch, terms),
  };
}

function piecesIn(plain: string, from: number, to: number): Piece[] {
  const pieces: Piece[] = [];
  for (let at = from; at < to; at++) {
    if (!/[\d½¼¾a-z]/i.test(plain[at] as string) || (at > from && /[\w.]/.test(plain[at - 1] as string)))
      continue;
    NUMBER.lastIndex = at;
    const number = NUMBER.exec(plain);
    if (!number) continue;
    const token = lex(plain, at, at + number[0].length, { sizes: 1 })[0];
    const value = token?.is === "number" ? token.values[0] : undefined;
    if (typeof value !== "number") continue;
    const behind = at + number[0].length;
    const found = unitAt(plain, behind, value, at);
    if (!found) continue;
    pieces.push(found);
    at = found.to - 1;
  }
  return pieces;
}

function unitAt(plain: string, behind: number, value: number, at: number): Piece | null {
  ROW_WORD.lastIndex = behind;
  const row = ROW_WORD.exec(plain);
  if (row) return { at, to: behind + row[0].length, value, unit: "row", word: row[1] as string };
  const length = /^\s?-?(cm|"|''|in\b\.?|ins\b\.?|inch(?:es)?\b)/i.exec(plain.slice(behind, behind + 8));
  if (length) {
    const unit = (length[1] as string).toLowerCase();
    const cm = unit === "cm" ? value : value * INCH;
    return { at, to: behind + length[0].length, value: cm, unit: "cm", word: unit };
  }
  // "30.0 x 32.4 cm": the unit stands with the second number.
  const by = /^\s?(?:x|by)\s?\d[\d.,½¼¾]*\s?(cm|"|in\b|ins\b|inch)/i.exec(plain.slice(behind, behind + 24));
  if (by)
    return {
      at,
      to: behind,
      value: /cm/i.test(by[1] as string) ? value : value * INCH,
      unit: "cm",
      word: "by",
    };
  STITCH_WORD.lastIndex = behind;
  const stitch = STITCH_WORD.exec(plain);
  const word = stitch?.[1]?.toLowerCase() ?? "";
  if (
    !stitch ||
    /^(?:mm|cm|in|ins|x|by|and|or|of|to|with|the|hook|class|balls?|ball|m|yd|yds|oz|g|gr|ply|inch)$/.test(
      word,
    )
  )
    return null;
  return { at, to: behind + stitch[0].length, value, unit: "st", word };
}

/** One length is both width and height; "x" or "by" between two makes them width and height; one behind each count is its own. */
function widthAndHeight(
  plain: string,
  pieces: readonly Piece[],
  lengths: readonly Piece[],
  stitch: Piece | undefined,
  row: Piece | undefined,
): [number | null, number | null] {
  const first = lengths[0] as Piece;
  const second = lengths[1];
  const between = second ? plain.slice(first.to, second.at) : "";
  if (second && /^\s?(?:square\s)?(?:x|by)\s?$/i.test(between))
    return [stitch ? first.value : null, row ? second.value : null];
  if (stitch && row && second && row.at > first.at && pieces.indexOf(row) < pieces.indexOf(second))
    return [first.value, second.value];
  if (stitch && row && second && stitch.at > first.at && row.at < first.at)
    return [second.value, first.value];
  return [stitch ? first.value : null, row ? first.value : null];
}

/** The stitch it was measured over: named instead of "sts", or behind "in", "over", "of". */
function over(
  text: string,
  plain: string,
  from: number,
  to: number,
  stitch: Piece | undefined,
  terms: "US" | "UK",
): string | null {
  const named =
    /\b(?:in|over|of)\s(?!total|\d|diameter|height|width|length|the\s(?:round|first))((?:the\s)?(?:pattern of\s)?[a-z][a-z0-9 '-]{1,40}?)(?=\s(?:with|on|using|worked|after|before|of|measures?|makes?|equals?|is|are|the|laid|has|have|take|at|\d[\w.]*)\b|[,;.()[=~]|\s-|$)/i.exec(
      plain.slice(from, to),
    );
  if (named) {
    const at = from + named.index + named[0].indexOf(named[1] as string);
    const words = text
      .slice(at, at + (named[1] as string).length)
      .replace(/^the\s/i, "")
      .trim();
    return lookupStitch(words, terms)?.code ?? words;
  }
  if (!stitch || /^(?:st|stitch)/.test(stitch.word)) return null;
  return lookupStitch(stitch.word, terms)?.code ?? stitch.word;
}
