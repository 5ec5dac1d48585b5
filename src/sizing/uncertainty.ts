import type { Gauge, SwatchReading } from "./swatch.ts";
import type { Cm, Count, Share } from "./units.ts";
import { mustBePositive } from "./units.ts";

// Standard uncertainties and the first-order law of propagation follow the GUM (JCGM 100:2008, clauses 4.3 and 5.1).

/** How well a reading can be read: limits that the truth surely lies within, each way. */
export interface ReadingLimits {
  /** Stitches (or rows) that the number counted may be off by. */
  readonly count: Count;
  /** cm that the ruler may be off by at one end of the length. */
  readonly ruler: Cm;
}

/** A quarter of a stitch and two millimetres at each end: our own choice, no source. */
export const USUAL_LIMITS: ReadingLimits = { count: 0.25, ruler: 0.2 };

/** A value with its standard uncertainty, both in the same unit. */
export interface Estimate {
  readonly value: number;
  readonly u: number;
}

/** Several estimates of the same thing, made one. */
export interface Pooled extends Estimate {
  readonly chiSquared: number;
  /** √(χ²/(n−1)): above 1 the estimates disagree by more than their own uncertainties say. 0 for a single estimate. */
  readonly birge: number;
  /** u widened for few estimates, by √((n−1)/(n−3)); null below four, where scatter says next to nothing. */
  readonly cautious: number | null;
}

/** How far a measure may be from what its count says: the measure lies within value ± `plusMinus` 19 times of 20. */
export interface PlusMinus {
  readonly value: Cm;
  readonly u: Cm;
  /** 2u. */
  readonly plusMinus: Cm;
}

/** Standard uncertainty when all that is known is that the value lies within ± limit. */
export function uOfLimit(limit: number, shape: "even" | "triangular" = "even"): number {
  return limit / Math.sqrt(shape === "even" ? 3 : 6);
}

/** Standard uncertainty of rounding to whole steps. */
export function uOfRounding(step: number): number {
  return step / Math.sqrt(12);
}

/**
 * Share by which the gauge of a reading may be off: (u/g)² = (uN/N)² + (uL/L)².
 *
 * @param count   stitches (or rows) counted
 * @param length  cm they cover
 */
export function uOfGauge(count: Count, length: Cm, limits: ReadingLimits = USUAL_LIMITS): Share {
  mustBePositive(count, "a count");
  mustBePositive(length, "a length");
  const uCount = uOfLimit(limits.count);
  const uLength = uOfLimit(limits.ruler) * Math.SQRT2;
  return Math.hypot(uCount / count, uLength / length);
}

/** Shares by which stitch width and row height of a swatch reading may be off. */
export function uOfReading(
  reading: SwatchReading,
  limits: ReadingLimits = USUAL_LIMITS,
): { readonly stitches: Share; readonly rows: Share } {
  return {
    stitches: uOfGauge(reading.stitches, reading.width, limits),
    rows: uOfGauge(reading.rows, reading.height, limits),
  };
}

/**
 * The measure a count makes, with its plus or minus.
 *
 * @param count  stitches or rows
 * @param each   cm a stitch or a row
 * @param share  uncertainty of `each` as a share, see `uOfGauge`
 */
export function measureOf(count: Count, each: Cm, share: Share): PlusMinus {
  const value = count * each;
  return { value, u: Math.abs(value) * share, plusMinus: 2 * Math.abs(value) * share };
}

/** The width of a number of stitches and the height of a number of rows at a gauge. */
export function sizeOf(
  gauge: Gauge,
  stitches: Count,
  rows: Count,
): { readonly width: Cm; readonly height: Cm } {
  return { width: stitches * gauge.stitchWidth, height: rows * gauge.rowHeight };
}

/** Least and greatest measure when each way of the gauge is off by its limit; not even each way, since it divides. */
export function measureWithin(
  width: Cm,
  gauge: number,
  limit: number,
): { readonly least: Cm; readonly greatest: Cm } {
  mustBePositive(gauge - limit, "the gauge less its limit");
  return { least: (width * gauge) / (gauge + limit), greatest: (width * gauge) / (gauge - limit) };
}

/**
 * The mean of several estimates of the same thing, weighed by inverse variance. Where they scatter by more than their
 * uncertainties allow, u is widened by the Birge factor.
 *
 * @param estimates  at least one, each with u above 0, all in one unit
 */
export function pool(estimates: readonly Estimate[]): Pooled {
  if (estimates.length === 0) throw new RangeError("there is nothing to pool");
  let weights = 0;
  let sum = 0;
  for (const { value, u } of estimates) {
    mustBePositive(u, "an uncertainty");
    weights += 1 / (u * u);
    sum += value / (u * u);
  }
  const value = sum / weights;
  const n = estimates.length;
  const chiSquared = estimates.reduce((all, one) => all + ((one.value - value) / one.u) ** 2, 0);
  const birge = n > 1 ? Math.sqrt(chiSquared / (n - 1)) : 0;
  const own = 1 / Math.sqrt(weights);
  const u = own * Math.max(1, birge);
  return { value, u, chiSquared, birge, cautious: n > 3 ? u * Math.sqrt((n - 1) / (n - 3)) : null };
}

/**
 * What testers' finished measurements say about the designer's gauge: each report is a gauge of its own, and precisions
 * add. This is the uncertainty of the mean; how far single makers lie apart does not shrink with more reports.
 *
 * @param prior    the designer's gauge, stitches per 10 cm
 * @param count    stitches the measurement was worked over
 * @param reports  finished cm, each with its standard uncertainty
 * @returns        stitches per 10 cm, not widened
 */
export function learnFromTesters(prior: Estimate, count: Count, reports: readonly Estimate[]): Estimate {
  const gauges = reports.map(({ value, u }) => {
    mustBePositive(value, "a reported measurement");
    const gauge = (count * 10) / value;
    return { value: gauge, u: (gauge * u) / value };
  });
  const { value, u, birge } = pool([prior, ...gauges]);
  return { value, u: birge > 1 ? u / birge : u };
}
