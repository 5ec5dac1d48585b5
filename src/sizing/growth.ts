import type { PerSize } from "../base/index.ts";
import { readingIn, type Swatch } from "./swatch.ts";
import type { Cm, Grams, Share } from "./units.ts";
import { mustBePositive } from "./units.ts";

/** Growth of a fabric under a load, as a share of its height without one. */
export interface Growth {
  /** The load that one cm of width bears: garments and swatches of any width compare by it. */
  readonly gramsPerCm: number;
  readonly growth: Share;
}

/** What hangs on the fabric in one size. */
export interface Hanging {
  /** Weight of all that hangs below the line that is looked at, such as the underarm. */
  readonly gramsBelow: Grams;
  /** cm round the garment at that line. */
  readonly round: Cm;
}

/** What one size does when it hangs. */
export interface GrowthOfSize {
  /** The weight to clip below the swatch so that it hangs as the garment does. */
  readonly clip: Grams;
  readonly growth: Share;
  /** True when the swatch was never hung under so much: the last slope was carried on. */
  readonly beyond: boolean;
}

/**
 * How a swatch grew under each load it was hung with, from no load up.
 *
 * @returns empty when it was never hung
 */
export function growthOf(swatch: Swatch): readonly Growth[] {
  const washed = swatch.readings.findLast(({ state }) => state.kind === "washed");
  const rest = washed ?? readingIn(swatch, { kind: "worked" });
  if (rest === undefined) return [];
  const heightARow = rest.height / rest.rows;
  return swatch.readings
    .flatMap(({ state, width, height, rows }) =>
      state.kind === "hung"
        ? [{ gramsPerCm: state.load / width, growth: height / rows / heightARow - 1 }]
        : [],
    )
    .sort((a, b) => a.gramsPerCm - b.gramsPerCm);
}

/**
 * Growth of each size under its own weight. A larger size hangs more on every cm of its width, so the same fabric grows
 * more in it (trade handbook, 1.7). Between loads that were tried, growth is read off a straight line.
 *
 * @param curve        see `growthOf`; at least one load
 * @param swatchWidth  cm of the piece that is hung
 * @throws {RangeError} on no load at all, or a garment of no width
 */
export function growthPerSize(
  curve: readonly Growth[],
  swatchWidth: Cm,
  sizes: PerSize<Hanging>,
): PerSize<GrowthOfSize> {
  if (curve.length === 0) throw new RangeError("the swatch was never hung");
  mustBePositive(swatchWidth, "the width of the swatch");
  return sizes.map(({ gramsBelow, round }) => {
    mustBePositive(round, "the width round the garment");
    const load = gramsBelow / round;
    return { clip: load * swatchWidth, ...growthUnder(curve, load) };
  });
}

/**
 * The growth of a fabric under one load, read off a straight line between the loads that were tried.
 *
 * @returns `beyond` where it was never hung under so much: the last slope is carried on
 */
export function growthUnder(
  curve: readonly Growth[],
  gramsPerCm: number,
): { readonly growth: Share; readonly beyond: boolean } {
  if (curve.length === 0) throw new RangeError("the swatch was never hung");
  const points = [{ gramsPerCm: 0, growth: 0 }, ...curve.filter((one) => one.gramsPerCm > 0)];
  const above = points.findIndex((one) => one.gramsPerCm >= gramsPerCm);
  const beyond = above < 0;
  const right = beyond ? points.length - 1 : Math.max(1, above);
  const [a, b] = [points[right - 1], points[right]] as [Growth, Growth];
  const slope = (b.growth - a.growth) / (b.gramsPerCm - a.gramsPerCm);
  return { growth: a.growth + slope * (gramsPerCm - a.gramsPerCm), beyond };
}

/** Parts that a hanging length is cut into: straight lines between loads need few. */
const SLICES = 64;

/**
 * Growth of a length that hangs by its top: its lowest row bears `from`, its top row `to`, so it grows by the mean of all loads
 * between.
 *
 * @param from  load on each cm of width at its lower end
 * @param to    the same at its top, its own weight with it
 */
export function growthAlong(curve: readonly Growth[], from: number, to: number): Share {
  let sum = 0;
  for (let slice = 0; slice < SLICES; slice++)
    sum += growthUnder(curve, from + ((to - from) * (slice + 0.5)) / SLICES).growth;
  return sum / SLICES;
}

/** How long to work a piece so that it is `worn` cm once it hangs. */
export function lengthBeforeHanging(worn: Cm, growth: Share): Cm {
  return worn / (1 + growth);
}
