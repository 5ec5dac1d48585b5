import { type Growth, growthOf } from "../growth.ts";
import { gaugeOf, readingIn, type Swatch, type SwatchReading } from "../swatch.ts";
import { type Estimate, pool, type ReadingLimits, USUAL_LIMITS, uOfReading } from "../uncertainty.ts";

/** How wide a stitch and how high a row of a fabric is as it will be worn, from all its swatches, and how far it stretches. */
export interface FabricGauge {
  /** cm a stitch, and cm a row, each with its standard uncertainty. */
  readonly stitchWidth: Estimate;
  readonly rowHeight: Estimate;
  /** Length pulled out over length at rest, across the stitches and along the rows; null where it was not measured. */
  readonly stretch: { readonly stitches: number | null; readonly rows: number | null };
  /** Growth under each load it was hung with, lightest first; empty where it never was. */
  readonly growth: readonly Growth[];
  /** Weight of a square centimetre; null where no swatch was weighed. */
  readonly gramsPerCm2: number | null;
  /** Whether it was measured after a wash. */
  readonly washed: boolean;
}

/**
 * The gauge of a fabric, its swatches pooled by inverse variance.
 *
 * @param swatches  readings with numbers and lengths above 0
 * @returns         null where no swatch was measured lying
 */
export function gaugeOfFabric(
  swatches: readonly Swatch[],
  limits: ReadingLimits = USUAL_LIMITS,
): FabricGauge | null {
  const lying = swatches.flatMap((swatch) => {
    const gauge = gaugeOf(swatch);
    const reading = gauge && readingIn(swatch, gauge.state);
    return gauge && reading ? [{ swatch, gauge, reading }] : [];
  });
  // A swatch that was never washed says little beside one that was.
  const washed = lying.filter(({ gauge }) => gauge.state.kind === "washed");
  const used = washed.length > 0 ? washed : lying;
  if (used.length === 0) return null;
  const estimate = (of: "stitches" | "rows"): Estimate => {
    const estimates = used.map(({ gauge, reading }) => {
      const each = of === "stitches" ? gauge.stitchWidth : gauge.rowHeight;
      return { value: each, u: each * uOfReading(reading, limits)[of] };
    });
    // One swatch is taken as it is: pooling would leave the last binary digits to chance.
    const [first, ...more] = estimates;
    const { value, u } = first && more.length === 0 ? first : pool(estimates);
    return { value, u };
  };
  const stretch = (of: "stitches" | "rows"): number | null => {
    const found = used.flatMap(({ swatch, reading }) => stretchOf(swatch, reading, of) ?? []);
    return mean(found);
  };
  return {
    stitchWidth: estimate("stitches"),
    rowHeight: estimate("rows"),
    stretch: { stitches: stretch("stitches"), rows: stretch("rows") },
    growth: used
      .flatMap(({ swatch }) => growthOf(swatch))
      .sort((a, b) => a.gramsPerCm - b.gramsPerCm)
      .reduce<Growth[]>(joinAlike, []),
    gramsPerCm2: mean(used.flatMap(({ gauge }) => gauge.gramsPerCm2 ?? [])),
    washed: washed.length > 0,
  };
}

const mean = (numbers: readonly number[]): number | null =>
  numbers.length === 0 ? null : numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

/** Swatches hung with the same load count as one, half way between. */
function joinAlike(joined: Growth[], one: Growth): Growth[] {
  const last = joined.at(-1);
  if (last === undefined || one.gramsPerCm - last.gramsPerCm > 1e-9) joined.push(one);
  else joined[joined.length - 1] = { ...last, growth: (last.growth + one.growth) / 2 };
  return joined;
}

/** A length that is the same pulled out as at rest was not pulled: a rib is pulled one way. */
function stretchOf(swatch: Swatch, rest: SwatchReading, of: "stitches" | "rows"): number | null {
  const pulled = readingIn(swatch, { kind: "stretched" });
  if (pulled === undefined) return null;
  const each = (reading: SwatchReading): number =>
    of === "stitches" ? reading.width / reading.stitches : reading.height / reading.rows;
  const times = each(pulled) / each(rest);
  return times === 1 ? null : times;
}
