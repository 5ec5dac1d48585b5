import {
  type Coverage as BodyCoverage,
  coverage,
  type EaseRange,
  type Measurement,
} from "../../bodies/index.ts";
import type { Proof } from "../proof.ts";

/** Whom a design fits, of the people who were measured. */
export interface WhomItFits {
  readonly population: "women" | "men";
  readonly coverage: BodyCoverage;
  /** The measurements that were held against bodies: those with a range of ease that some count makes. */
  readonly by: readonly Measurement[];
}

/**
 * For what share of measured women or men some size keeps every measurement within the range of ease that the design says.
 *
 * @returns null where the design names no chart of women or men, says no range, or makes none of those measurements
 */
export function whomItFits({ table, finished, sizes }: Proof): WhomItFits | null {
  const population = table?.body?.chart?.population;
  if (!table || !finished || (population !== "women" && population !== "men")) return null;
  const ranges: Partial<Record<Measurement, readonly EaseRange[]>> = {};
  const made: Partial<Record<Measurement, readonly number[]>> = {};
  for (const { measurement, range } of table.ease) {
    if (range === null) continue;
    const cm = finished.find((one) => one.measurement === measurement)?.made ?? [];
    if (cm.length !== sizes.length || cm.some((one) => one === null)) continue;
    ranges[measurement] = sizes.map((_, size) => ({
      least: open(range.least[size]),
      most: open(range.most[size]),
    }));
    made[measurement] = cm as readonly number[];
  }
  const by = Object.keys(ranges) as Measurement[];
  if (by.length === 0 || sizes.length > 30) return null;
  return {
    population,
    by,
    coverage: coverage({
      population,
      sizes: sizes.map((size, at) => ({
        size,
        finished: Object.fromEntries(by.map((measurement) => [measurement, made[measurement]?.[at] ?? 0])),
      })),
      easeRanges: ranges,
    }),
  };
}

/** An end of a range as coverage takes it: null where it is open. */
const open = (cm: number | undefined): number | null =>
  cm === undefined || !Number.isFinite(cm) ? null : cm;
