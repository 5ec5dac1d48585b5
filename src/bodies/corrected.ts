import { armRelation, bodyAnswer, bodyMeasures } from "./body-measures.ts";
import type { Chart, ChartValue } from "./chart.ts";
import { BODY_LINES } from "./data/lines.ts";
import { type Cm, MEASUREMENTS, type Measurement } from "./measurement.ts";
import type { Surveyed } from "./survey.ts";

/** The straight lines of one survey: each measurement on the bust or chest, cm. */
export interface BodyLines {
  readonly people: number;
  /** Smallest and largest bust anybody in the survey had. */
  readonly bust: readonly [least: Cm, most: Cm];
  readonly lines: readonly (readonly [
    measurement: Measurement,
    slope: number,
    base: Cm,
    /** Standard deviation about the line. */
    sd: Cm,
    /** Correlation with the bust. */
    r: number,
  ])[];
}

/** How a measurement goes with the bust: `base + slope × bust`, give or take `sd`. */
export interface BodyLine {
  readonly slope: number;
  readonly base: Cm;
  readonly sd: Cm;
  readonly r: number;
}

/** A size by the busts it is for: from `least` up to `most`. */
export interface SizeStep {
  readonly size: string;
  readonly least: Cm;
  readonly most: Cm;
}

/** Fewer measured people than this in a size, and its values are marked as resting on little. */
export const FEW_PEOPLE = 30;

/** A measurement's line on the bust in a survey; undefined where the survey has none, and for the bust itself. */
export function bodyLine(population: Surveyed, measurement: Measurement): BodyLine | undefined {
  const wanted = bodyAnswer(measurement)?.measurement;
  const found = BODY_LINES[population].lines.find(([name]) => name === wanted);
  if (found === undefined) return undefined;
  const [, slope, base, sd, r] = found;
  return { slope, base, sd, r };
}

/** Smallest and largest bust or chest in a survey, cm: beyond them nobody was measured. */
export function measuredBusts(population: Surveyed): { readonly least: Cm; readonly most: Cm } {
  const [least, most] = BODY_LINES[population].bust;
  return { least, most };
}

/**
 * The sizes of the published chart with their holes closed: each hole is shared between its two neighbours, which makes
 * steps of four inches, and the ends reach as far out as the steps do.
 */
export function closedSteps(population: Surveyed): SizeStep[] {
  const sizes = population === "women" ? "XS S M L XL 2X 3X 4X 5X" : "S M L XL 2X 3X 4X 5X";
  const first = population === "women" ? 27 : 33;
  return sizes.split(" ").map((size, index) => ({
    size,
    least: halfCm(first + 4 * index),
    most: halfCm(first + 4 * index + 4),
  }));
}

/**
 * A chart drawn from measured people: bust ranges that touch, and every other measurement from its straight line on the
 * bust, from the line's value at the range's one end to its value at the other. Beyond the survey's busts the lines are
 * carried on, and the values say so.
 *
 * @param steps  sizes in ascending order; the published ones with their holes closed where none are given
 * @throws {RangeError} where the steps do not ascend: the caller's mistake
 * @see docs/bodies.md
 */
export function correctedChart(
  population: Surveyed,
  steps: readonly SizeStep[] = closedSteps(population),
): Chart {
  steps.forEach(({ size, least, most }, index) => {
    const before = steps[index - 1];
    if (!(least > 0) || !(most > least) || (before !== undefined && least < before.most))
      throw new RangeError(`size ${size} (${least} to ${most} cm) does not follow the one before`);
  });
  const busts = bodyMeasures(population, "bust");
  const ends = measuredBusts(population);
  const restsOn = steps.map(
    ({ least, most }, index) =>
      busts.filter((bust) => bust >= least && (bust < most || (bust === most && index === steps.length - 1)))
        .length,
  );
  const values = new Map<Measurement, readonly ChartValue[]>();
  for (const { name } of MEASUREMENTS) {
    if (name !== "bust" && (name === "cross back" || bodyLine(population, name) === undefined)) continue;
    const { slope, base } = bodyLine(population, name) ?? { slope: 1, base: 0 };
    values.set(
      name,
      steps.map(({ least, most }, index) => {
        const ofEnds = [millimetres(base + slope * least), millimetres(base + slope * most)];
        const note = noteOf(population, name, (least + most) / 2, restsOn[index] ?? 0, ends.most);
        return {
          min: Math.min(...ofEnds),
          max: Math.max(...ofEnds),
          status: name === "bust" || (least + most) / 2 <= ends.most ? "measured" : "carried on",
          ...(note === "" ? {} : { note }),
        };
      }),
    );
  }
  return {
    name: population === "women" ? "Women, corrected" : "Men, corrected",
    kind: "corrected",
    population,
    sizes: steps.map(({ size }) => size),
    values,
    notes: [
      `Drawn from ${BODY_LINES[population].people} measured ${population}: straight lines on the ${population === "women" ? "bust" : "chest"}, by docs/bodies.md.`,
      `Nobody measured had a ${population === "women" ? "bust" : "chest"} above ${ends.most} cm; beyond, the lines are carried on.`,
      "The waist is at the navel and the back length reaches down to it; both are larger than at the natural waist.",
      "Hip, back length and arm length go only loosely with the bust: let the maker choose them where the design allows.",
    ],
    restsOn,
  };
}

function noteOf(population: Surveyed, name: Measurement, bust: Cm, people: number, last: Cm): string {
  if (name === "bust") return people >= FEW_PEOPLE ? "" : `${people} measured people are in this size`;
  const said: string[] = [];
  if (bust > last) said.push(`no measured person has such a bust; the line is carried on past ${last} cm`);
  else if (people < FEW_PEOPLE) said.push(`rests on ${people} measured people`);
  const heavy = armRelation(population).largeArms.find((entry) => Math.abs(entry.bust - bust) < 2.5);
  if (name === "upper arm" && bust > last && heavy !== undefined)
    said.push(
      `${heavy.people} people of another survey with the weight that goes with it have ${heavy.arm} cm in the middle`,
    );
  return said.join("; ");
}

/** Inches as centimetres to the half, as printed charts have them. */
const halfCm = (inches: number): Cm => Math.round(inches * 2.54 * 2) / 2;

const millimetres = (cm: Cm): Cm => Math.round(cm * 10) / 10;
