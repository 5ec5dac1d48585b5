import type { Chart, ChartValue } from "./chart.ts";
import { bodyLine } from "./corrected.ts";
import { type Cm, lookupMeasurement, MEASUREMENTS, type Measurement } from "./measurement.ts";
import type { Surveyed } from "./survey.ts";

/** Standard deviations off the line beyond which a measurement is worth taking again: about 3 people in 1,000. */
const WORTH_A_SECOND_LOOK = 3;

/**
 * One person's measurements as a chart of a single size.
 *
 * @param measures    cm
 * @param population  whose lines to hold them against; a measurement far off what goes with the bust gets a note
 * @throws {RangeError} on a measurement of zero or less: the caller's mistake
 */
export function personChart(
  name: string,
  measures: Partial<Record<Measurement, Cm>>,
  population: Surveyed | null = null,
): Chart {
  const values = new Map<Measurement, readonly ChartValue[]>();
  for (const { name: measurement } of MEASUREMENTS) {
    const cm = measures[measurement];
    if (cm === undefined) continue;
    if (!(cm > 0) || !Number.isFinite(cm))
      throw new RangeError(`${measurement} must be above 0 cm, got ${cm}`);
    const note = doubtOf(measurement, cm, measures.bust, population);
    values.set(measurement, [{ min: cm, max: cm, status: "own", ...(note === null ? {} : { note }) }]);
  }
  return { name, kind: "person", population, sizes: [name], values, notes: [], restsOn: null };
}

/** Whether a number can be this measurement of anybody, baby or adult; false hints at a slip of key or unit. */
export function isBelievable(measurement: Measurement, cm: Cm): boolean {
  const [least, most] = lookupMeasurement(measurement)?.believable ?? [0, Number.POSITIVE_INFINITY];
  return cm >= least && cm <= most;
}

function doubtOf(
  measurement: Measurement,
  cm: Cm,
  bust: Cm | undefined,
  population: Surveyed | null,
): string | null {
  if (!isBelievable(measurement, cm)) return `${cm} cm is not the ${measurement} of anybody; measure again`;
  const line = population === null || bust === undefined ? undefined : bodyLine(population, measurement);
  if (line === undefined || bust === undefined || measurement === "cross back") return null;
  const usual = line.base + line.slope * bust;
  if (Math.abs(cm - usual) <= WORTH_A_SECOND_LOOK * line.sd) return null;
  return `${population} with a ${population === "men" ? "chest" : "bust"} of ${bust} cm have ${usual.toFixed(1)} cm in the middle; measure again to be sure`;
}
