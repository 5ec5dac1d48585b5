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
  const points = [{ gramsPerCm: 0, growth: 0 }, ...curve.filter(({ gramsPerCm }) => gramsPerCm > 0)];
  return sizes.map(({ gramsBelow, round }) => {
    mustBePositive(round, "the width round the garment");
    const load = gramsBelow / round;
    const above = points.findIndex(({ gramsPerCm }) => gramsPerCm >= load);
    const beyond = above < 0;
    const right = beyond ? points.length - 1 : Math.max(1, above);
    const [a, b] = [points[right - 1], points[right]] as [Growth, Growth];
    const slope = (b.growth - a.growth) / (b.gramsPerCm - a.gramsPerCm);
    return { clip: load * swatchWidth, growth: a.growth + slope * (load - a.gramsPerCm), beyond };
  });
}

/** How long to work a piece so that it is `worn` cm once it hangs. */
export function lengthBeforeHanging(worn: Cm, growth: Share): Cm {
  return worn / (1 + growth);
}
