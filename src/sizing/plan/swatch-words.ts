import type { SwatchReading, SwatchState } from "../swatch.ts";
import { type Slip, WordCursor } from "./word-cursor.ts";

/** What was counted and measured, without the state of the piece; null where it was not said. */
export interface SwatchMeasures {
  readonly stitches: number | null;
  readonly rows: number | null;
  readonly width: number | null;
  readonly height: number | null;
}

export type SwatchMeasuresRead =
  | { readonly measures: SwatchMeasures; readonly slip: null }
  | { readonly measures: null; readonly slip: Slip };

const JOINS = /(?:x|×|and|by|,|&)(?![a-z])/iy;
const STITCHES = /(?:stitch(?:es)?|sts?)\b\.?/iy;
const ROWS = /(?:rows?|rounds?|rnds?)\b\.?/iy;
const OVER = /(?:in|over|to|on|=|measure)(?![a-z])/iy;
const STATE =
  /^(?:(?<worked>(?:as\s+)?worked|unwashed|before\s+washing)|washed(?:\s+(?:(?<times>\d{1,2})(?:\s*(?:x|times))?|(?<once>once)|(?<twice>twice)))?|hung(?:\s+(?:with\s+|under\s+)?(?<load>\d{1,5}(?:\.\d+)?)\s*g(?:rams?)?)|(?<stretched>stretched|pulled\s+out))$/i;

/** What had been done to a swatch, as said: "worked", "washed", "washed twice", "hung 80 g", "stretched"; null for other words. */
export function readSwatchState(words: string): SwatchState | null {
  const found = STATE.exec(words.trim());
  if (!found?.groups) return null;
  const { worked, times, twice, load, stretched } = found.groups;
  if (worked !== undefined) return { kind: "worked" };
  if (stretched !== undefined) return { kind: "stretched" };
  if (load !== undefined) return { kind: "hung", load: Number(load) };
  return { kind: "washed", times: twice === undefined ? Number(times ?? 1) : 2 };
}

/** Reads "42 sts x 36 rows in 30.0 x 32.4 cm", "14 sts and 14 rows over 10 cm", "24 sts in 25 cm". */
export function readSwatchMeasures(words: string): SwatchMeasuresRead {
  const cursor = new WordCursor(words);
  const slip = (from: number, say: string): SwatchMeasuresRead => ({
    measures: null,
    slip: { span: { from, to: words.length }, say },
  });
  let stitches: number | null = null;
  let rows: number | null = null;
  for (;;) {
    cursor.space();
    const from = cursor.at;
    const number = cursor.number();
    if (number === null) return slip(from, "A number of stitches or rows stands here.");
    if (cursor.take(STITCHES)) stitches = number.value;
    else if (cursor.take(ROWS)) rows = number.value;
    else return slip(cursor.at, 'Say what was counted: "sts" or "rows" stands behind the number.');
    if (number.value <= 0) return slip(from, "A swatch has at least one stitch and one row.");
    if (!cursor.take(JOINS)) break;
  }
  if (!cursor.take(OVER)) return slip(cursor.at, 'What they measure follows, as in "in 30 x 32.4 cm".');
  const lengths: number[] = [];
  cursor.space();
  const from = cursor.at;
  for (;;) {
    cursor.space();
    const start = cursor.at;
    const number = cursor.number();
    if (number === null) return slip(start, "A length stands here, as in 30 x 32.4 cm.");
    if (number.value <= 0) return slip(start, "A length is above 0.");
    const unit = cursor.unit();
    lengths.push(unit === null ? -number.value : number.value * unit);
    if (!cursor.take(JOINS)) break;
  }
  if (!cursor.done) return slip(cursor.at, "These words are not understood here.");
  // "30.0 x 32.4 cm": the unit behind the last length is that of all.
  const last = lengths[lengths.length - 1] as number;
  if (last < 0) return slip(from, "The unit is missing: cm, in or mm.");
  const unitOf = /\b(?:mm|millimet)/i.test(words.slice(from))
    ? 0.1
    : /\b(?:cm|centimet)/i.test(words.slice(from))
      ? 1
      : 2.54;
  const cm = lengths.map((one) => (one < 0 ? -one * unitOf : one));
  if (cm.length > 2) return slip(from, "A swatch has one width and one height.");
  const [first = 0, second = first] = cm;
  if (cm.length === 1 && stitches === null)
    return { measures: { stitches, rows, width: null, height: first }, slip: null };
  return {
    measures: { stitches, rows, width: first, height: rows === null ? null : second },
    slip: null,
  };
}

/**
 * A whole reading of a swatch. What was not measured this time is taken as it was before: a rib pulled out across keeps its
 * rows.
 *
 * @returns null where neither this reading nor the one before says how many stitches and rows measure what
 */
export function completeReading(
  state: SwatchState,
  { stitches, rows, width, height }: SwatchMeasures,
  before: SwatchReading | undefined,
): SwatchReading | null {
  const across =
    stitches === null || width === null ? before && [before.stitches, before.width] : [stitches, width];
  const along = rows === null || height === null ? before && [before.rows, before.height] : [rows, height];
  if (!across || !along) return null;
  return {
    state,
    stitches: across[0] as number,
    width: across[1] as number,
    rows: along[0] as number,
    height: along[1] as number,
  };
}
