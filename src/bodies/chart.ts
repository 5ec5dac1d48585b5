import type { PerSize, SizeRun } from "../base/index.ts";
import type { Cm, Measurement } from "./measurement.ts";
import type { Population, Status } from "./rows.ts";

/** One number or range of a chart. Where a single number is printed, `min` and `max` are alike. */
export interface ChartValue {
  readonly min: Cm;
  readonly max: Cm;
  /** Inches as printed beside the centimetres; the publisher rounded each for itself. */
  readonly inches?: { readonly min: number; readonly max: number };
  readonly status: Status | "own";
  /** A slip or disagreement known about this very number, or what it rests on. */
  readonly note?: string;
}

/** A set of body measurements for a run of sizes: a published chart, a corrected one, the designer's own, one person. */
export interface Chart {
  readonly name: string;
  readonly kind: "published" | "corrected" | "own" | "person";
  /** Null where the chart does not say. */
  readonly population: Population | null;
  readonly sizes: SizeRun;
  /** One value a size, in size-run order; null where the chart has none. A measurement it does not have is left out. */
  readonly values: ReadonlyMap<Measurement, PerSize<ChartValue | null>>;
  /** What holds for the chart as a whole: its source, what it does not cover. */
  readonly notes: readonly string[];
  /** For a corrected chart, how many measured people lie in each size; null where nobody was measured. */
  readonly restsOn: PerSize<number> | null;
}

/** What a chart says of one measurement in one size. */
export interface ChartAnswer {
  readonly value: ChartValue;
  /** The middle of the range, cm. */
  readonly cm: Cm;
  /** The measurement the chart really has, where it had to stand in for the one asked for. */
  readonly standsIn?: Measurement;
}

/**
 * Which measurement may stand in for one that a chart lacks. Corrected charts part the printed cross back into two
 * numbers; a shoulder seam wants the shoulders, so that one answers for it, and the other way round.
 */
const STANDS_IN: Partial<Record<Measurement, readonly Measurement[]>> = {
  "cross back": ["shoulder width"],
  "shoulder width": ["cross back"],
  "back at underarm": ["cross back"],
};

/**
 * What a chart says of a measurement in a size.
 *
 * @param size  index in the chart's size run
 * @returns     null where the chart has neither it nor one that stands in for it
 */
export function answerOf(chart: Chart, measurement: Measurement, size: number): ChartAnswer | null {
  for (const name of [measurement, ...(STANDS_IN[measurement] ?? [])]) {
    const value = chart.values.get(name)?.[size];
    if (value) {
      const cm = (value.min + value.max) / 2;
      return name === measurement ? { value, cm } : { value, cm, standsIn: name };
    }
  }
  return null;
}

/** The middle of a measurement's range in every size, cm; null in a size the chart has no number for. */
export function middlesOf(chart: Chart, measurement: Measurement): PerSize<Cm | null> {
  return chart.sizes.map((_, size) => answerOf(chart, measurement, size)?.cm ?? null);
}

/** The sizes whose range takes this bust in, both ends included; empty where it falls in a hole between sizes. */
export function sizesFor(chart: Chart, bust: Cm): number[] {
  const ranges = chart.values.get("bust") ?? [];
  return ranges.flatMap((range, size) => (range && bust >= range.min && bust <= range.max ? [size] : []));
}

/** What lies between one size's bust and the next one's, cm, ascending; none where the sizes touch. */
export function holesOf(chart: Chart): { readonly from: Cm; readonly to: Cm; readonly between: string }[] {
  const ranges = chart.values.get("bust") ?? [];
  return ranges.slice(1).flatMap((next, index) => {
    const before = ranges[index];
    return before && next && next.min > before.max
      ? [
          {
            from: before.max,
            to: next.min,
            between: `${chart.sizes[index]} and ${chart.sizes[index + 1]}`,
          },
        ]
      : [];
  });
}

/** Every number of a chart about which something is known, size by size. */
export function notedValues(
  chart: Chart,
): { readonly measurement: Measurement; readonly size: string; readonly note: string }[] {
  return [...chart.values].flatMap(([measurement, values]) =>
    values.flatMap((value, size) =>
      value?.note === undefined ? [] : [{ measurement, size: chart.sizes[size] ?? "", note: value.note }],
    ),
  );
}
