import { type Multiple, nearestFitting } from "./multiples.ts";
import type { Cm, Count, Share } from "./units.ts";
import { mustBePositive } from "./units.ts";

/** A ribbing measured three times over the same stitches: at rest, pulled out, let go. */
export interface RibReading {
  readonly stitches: Count;
  readonly relaxed: Cm;
  readonly stretched: Cm;
  readonly afterwards: Cm;
}

/** What a ribbing does. */
export interface Rib {
  /** cm a stitch at rest and pulled out. */
  readonly stitchRelaxed: Cm;
  readonly stitchStretched: Cm;
  /** Width pulled out over width at rest. */
  readonly stretch: number;
  /** Width let go over width at rest: 1 springs back wholly. */
  readonly recovery: number;
}

/** Rib stitches for an edge, and how they lie on it. */
export interface RibFit {
  readonly stitches: Count;
  /** At rest, and pulled out. */
  readonly relaxed: Cm;
  readonly stretched: Cm;
  /** Width at rest over the edge it borders. */
  readonly share: Share;
}

/** Ribbing at rest as a share of the edge it borders (trade handbook, 1.5: common practice, no source). */
export const HEM_RIB = { least: 0.8, most: 0.9 } as const;
export const NECK_RIB = { least: 0.85, most: 0.95 } as const;

/** @throws {RangeError} on a width or number of zero or less */
export function ribOf(reading: RibReading): Rib {
  mustBePositive(reading.stitches, "the stitches of a rib");
  mustBePositive(reading.relaxed, "the rib at rest");
  mustBePositive(reading.stretched, "the rib pulled out");
  mustBePositive(reading.afterwards, "the rib let go");
  return {
    stitchRelaxed: reading.relaxed / reading.stitches,
    stitchStretched: reading.stretched / reading.stitches,
    stretch: reading.stretched / reading.relaxed,
    recovery: reading.afterwards / reading.relaxed,
  };
}

/**
 * The stitches of a ribbing round an edge.
 *
 * @param edge   cm of the edge
 * @param share  wanted width at rest over the edge, e.g. 0.85
 * @param rule   the rib's own multiple
 */
export function fitRib(rib: Rib, edge: Cm, share: Share, rule: Multiple): RibFit {
  mustBePositive(edge, "the edge");
  const stitches = nearestFitting((edge * share) / rib.stitchRelaxed, rule);
  const relaxed = stitches * rib.stitchRelaxed;
  return { stitches, relaxed, stretched: stitches * rib.stitchStretched, share: relaxed / edge };
}

/** Whether a ribbing goes over what must pass through it: a head through a neck, a hand through a cuff. */
export function goesOver(stretched: Cm, body: Cm): boolean {
  return stretched >= body;
}
