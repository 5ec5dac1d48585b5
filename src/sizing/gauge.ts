import { floorTolerant } from "./multiples.ts";
import type { Cm, Count, Share } from "./units.ts";
import { mustBePositive } from "./units.ts";

/** What a garment made at another gauge than the pattern's measures (trade handbook, 1.3). */
export interface GaugeError {
  readonly finished: Cm;
  /** finished − wanted. */
  readonly off: Cm;
}

/**
 * The width a piece comes to when its maker works at another gauge than the pattern's.
 *
 * @param wanted   width at the pattern's gauge, any unit of length
 * @param pattern  stitches to a length, in the pattern
 * @param maker    stitches to the same length, of the maker
 */
export function widthAtGauge(wanted: Cm, pattern: number, maker: number): GaugeError {
  mustBePositive(pattern, "the pattern's gauge");
  mustBePositive(maker, "the maker's gauge");
  const finished = (wanted * pattern) / maker;
  return { finished, off: finished - wanted };
}

/**
 * The gauge error a design can bear: a quarter of the step between sizes, so that a maker still gets the size she chose
 * (trade handbook, 1.3; common practice, no source).
 *
 * @param step   cm between neighbouring sizes
 * @param width  finished cm at the size
 */
export function bearableGaugeError(step: Cm, width: Cm): Share {
  mustBePositive(step, "the step between sizes");
  mustBePositive(width, "the width");
  return step / 4 / width;
}

/**
 * The rows that give the pattern's length to a maker whose rows are higher or lower; the same side faces at the end as in
 * the pattern (trade handbook, 1.4).
 *
 * @param rows     rows in the pattern
 * @param pattern  rows to a length, in the pattern
 * @param maker    rows to the same length, of the maker
 */
export function rowsAtGauge(rows: Count, pattern: number, maker: number): Count {
  mustBePositive(pattern, "the pattern's gauge");
  mustBePositive(maker, "the maker's gauge");
  const parity = rows % 2;
  return Math.max(parity, floorTolerant((rows * maker) / pattern - parity, 2, 0.5) * 2 + parity);
}

/**
 * Whether a fabric at rest narrower than the body reaches round it when it is pulled out (trade handbook, 2.1).
 *
 * @returns the stretch it needs and the stretch it has, 1 for none; `reaches` when it has enough
 */
export function stretchNeeded(
  body: Cm,
  finished: Cm,
  rest: Cm,
  stretched: Cm,
): { readonly needs: number; readonly has: number; readonly reaches: boolean } {
  mustBePositive(finished, "the finished measure");
  mustBePositive(rest, "the swatch at rest");
  const needs = body / finished;
  const has = stretched / rest;
  return { needs, has, reaches: has >= needs };
}
