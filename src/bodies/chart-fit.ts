import { bodyMeasures } from "./body-measures.ts";
import type { Chart } from "./chart.ts";
import type { Cm, Measurement } from "./measurement.ts";
import type { Surveyed } from "./survey.ts";

/** A measurement in which people are held against a chart. */
export interface ChartAsk {
  readonly measurement: Measurement;
  /** cm by which a body may lie outside the size's range and still count as within. */
  readonly grace: Cm;
  /** What to hold against it instead of the survey's own answer: one number a person, cm, in the survey's order. */
  readonly bodies?: ArrayLike<Cm>;
}

/** How a chart sits on measured people. Shares are of all people in the survey. */
export interface ChartFit {
  readonly people: number;
  /** People whose bust is in no size's range. */
  readonly inHoles: { readonly people: number; readonly share: number };
  /** People inside each size's bust range, and with every hole shared between its neighbours. */
  readonly bySize: readonly { readonly size: string; readonly inside: number; readonly nearest: number }[];
  /** Share of people within the range of the size nearest to their bust, one measurement at a time. */
  readonly within: readonly { readonly measurement: Measurement; readonly share: number }[];
  /** Share within all of them at once. */
  readonly together: number;
}

/**
 * Holds measured people against a chart: which size their bust puts them in, and whether the rest of them fits it.
 *
 * @throws {RangeError} for a chart without a bust range in every size, or a measurement with no number in some size
 */
export function chartFit(chart: Chart, population: Surveyed, asks: readonly ChartAsk[]): ChartFit {
  const ranges = rangesOf(chart, "bust");
  const busts = bodyMeasures(population, "bust");
  const inside = new Array<number>(ranges.length).fill(0);
  const nearest = new Array<number>(ranges.length).fill(0);
  const within = new Array<number>(asks.length).fill(0);
  let holes = 0;
  let together = 0;
  // From here on a bust is nearer to the next size: the middle of each hole.
  const turns = ranges.slice(1).map((range, index) => ((ranges[index]?.max ?? 0) + range.min) / 2);
  const held = asks.map(({ measurement, grace, bodies }) => ({
    ranges: rangesOf(chart, measurement),
    grace: grace + 1e-9,
    bodies: bodies ?? bodyMeasures(population, measurement),
  }));
  busts.forEach((bust, person) => {
    const own = ranges.findIndex(({ min, max }) => bust >= min && bust <= max);
    if (own < 0) holes++;
    else inside[own] = (inside[own] ?? 0) + 1;
    const size = turns.filter((turn) => bust >= turn).length;
    nearest[size] = (nearest[size] ?? 0) + 1;
    let all = true;
    held.forEach(({ ranges: own, grace, bodies }, index) => {
      const range = own[size];
      const body = bodies[person];
      if (range && body !== undefined && body >= range.min - grace && body <= range.max + grace)
        within[index] = (within[index] ?? 0) + 1;
      else all = false;
    });
    if (all) together++;
  });
  const people = busts.length;
  return {
    people,
    inHoles: { people: holes, share: holes / people },
    bySize: chart.sizes.map((size, index) => ({
      size,
      inside: inside[index] ?? 0,
      nearest: nearest[index] ?? 0,
    })),
    within: asks.map(({ measurement }, index) => ({ measurement, share: (within[index] ?? 0) / people })),
    together: together / people,
  };
}

function rangesOf(chart: Chart, measurement: Measurement): { readonly min: Cm; readonly max: Cm }[] {
  return chart.sizes.map((size, index) => {
    const value = chart.values.get(measurement)?.[index];
    if (!value) throw new RangeError(`${chart.name} has no ${measurement} in ${size}`);
    return value;
  });
}
