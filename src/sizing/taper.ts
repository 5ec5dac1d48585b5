import type { Count } from "./units.ts";
import { mustBeWhole } from "./units.ts";

/** Where shaping may be worked: on any row, or on rows of the right side only. */
export type ShapingSide = "any row" | "right side";

/** "Every 4th row, 6 times": `every` − 1 plain rows, then a shaping row. */
export interface Rate {
  readonly every: Count;
  readonly times: Count;
}

/** Shaping spread over rows at one or two rates that lie as near each other as can be. */
export interface Taper {
  readonly kind: "taper";
  /** The slower rate first; one rate when it comes out even. */
  readonly rates: readonly Rate[];
  /** Rows after the last shaping row: one, where only every second row may shape and the number of rows is odd. */
  readonly left: Count;
}

/** Why shaping does not fit, and what would. */
export interface TaperRefused {
  readonly kind: "refused";
  readonly why: "too few rows" | "odd difference";
  /** Shapings that the rows have room for. */
  readonly most: Count;
  /** Rows that the shapings need. */
  readonly needs: Count;
  /** Where the ends are the matter: pairs of ends next to those asked for that work, both above 0. */
  readonly ends: readonly { readonly from: Count; readonly to: Count }[];
}

/** The order of two rates; the faster one belongs nearest the narrower end (trade handbook, 3.6; common practice). */
export type RateOrder = "slower first" | "faster first";

/**
 * Spreads shaping rows over the rows there are (trade handbook, 3.6). For the right side only, rows are reckoned in pairs,
 * counting begins after a right-side row, and every shaping row is one again.
 *
 * @param rows      rows to be worked, the shaping rows among them
 * @param shapings  shaping rows, from 0
 */
export function taper(
  rows: Count,
  shapings: Count,
  side: ShapingSide = "any row",
  order: RateOrder = "slower first",
): Taper | TaperRefused {
  mustBeWhole(rows, "rows");
  mustBeWhole(shapings, "shapings");
  const step = side === "any row" ? 1 : 2;
  const turns = Math.floor(rows / step);
  if (shapings > turns) return refuse("too few rows", turns, shapings * step);
  if (shapings === 0) return { kind: "taper", rates: [], left: rows };
  const fast = Math.floor(turns / shapings);
  const slowTimes = turns % shapings;
  const rates = [
    { every: (fast + 1) * step, times: slowTimes },
    { every: fast * step, times: shapings - slowTimes },
  ].filter(({ times }) => times > 0);
  if (order === "faster first") rates.reverse();
  return { kind: "taper", rates, left: rows - turns * step };
}

/**
 * A taper between two stitch counts, each shaping row changing the same number of stitches.
 *
 * @param each  stitches a shaping row adds or takes away: 2 for one at each end
 */
export function taperBetween(
  from: Count,
  to: Count,
  each: Count,
  rows: Count,
  side: ShapingSide = "any row",
  order: RateOrder = "slower first",
): Taper | TaperRefused {
  mustBeWhole(from, "stitches to begin with", 1);
  mustBeWhole(to, "stitches to end with", 1);
  mustBeWhole(each, "stitches a shaping row changes", 1);
  const apart = Math.abs(from - to);
  if (apart % each === 0) return taper(rows, apart / each, side, order);
  const turns = Math.floor(rows / (side === "any row" ? 1 : 2));
  const over = apart % each;
  const away = to < from ? 1 : -1;
  const ends = [
    { from, to: to + away * over },
    { from, to: to - away * (each - over) },
    { from: from - away * over, to },
    { from: from + away * (each - over), to },
  ].filter((pair) => pair.from > 0 && pair.to > 0);
  const needs = Math.ceil(apart / each) * (side === "any row" ? 1 : 2);
  return { kind: "refused", why: "odd difference", most: turns, needs, ends };
}

/**
 * Shaping at two rates of the designer's choice: `slow` and `fast` rows apart.
 *
 * @returns null when no whole numbers of times fill the rows
 */
export function taperAtRates(rows: Count, shapings: Count, slow: Count, fast: Count): Taper | null {
  mustBeWhole(rows, "rows");
  mustBeWhole(shapings, "shapings");
  mustBeWhole(fast, "a rate", 1);
  mustBeWhole(slow, "a rate", 1);
  if (slow === fast) {
    return slow * shapings === rows
      ? { kind: "taper", rates: [{ every: slow, times: shapings }], left: 0 }
      : null;
  }
  const slowTimes = (rows - fast * shapings) / (slow - fast);
  if (!Number.isInteger(slowTimes) || slowTimes < 0 || slowTimes > shapings) return null;
  const rates = [
    { every: slow, times: slowTimes },
    { every: fast, times: shapings - slowTimes },
  ].filter(({ times }) => times > 0);
  return { kind: "taper", rates, left: 0 };
}

/**
 * The numbers of the shaping rows.
 *
 * @param after  number of the row before the first one counted; 0 when counting begins with row 1
 */
export function shapingRows({ rates }: Taper, after: Count = 0): readonly Count[] {
  const rows: Count[] = [];
  let row = after;
  for (const { every, times } of rates) {
    for (let i = 0; i < times; i++) {
      row += every;
      rows.push(row);
    }
  }
  return rows;
}

function refuse(why: TaperRefused["why"], most: Count, needs: Count): TaperRefused {
  return { kind: "refused", why, most, needs, ends: [] };
}
