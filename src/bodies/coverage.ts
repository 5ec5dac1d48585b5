import { armRelation, bodyAnswer, bodyMeasures } from "./body-measures.ts";
import type { EaseRange } from "./ease.ts";
import type { Cm, Measurement } from "./measurement.ts";
import { peopleIn, type Surveyed } from "./survey.ts";

/** A size of a garment with its finished measurements, cm. */
export interface GarmentSize {
  readonly size: string;
  readonly finished: Partial<Record<Measurement, Cm>>;
}

export interface CoverageQuestion {
  readonly population: Surveyed;
  /** At most 30, smallest first. */
  readonly sizes: readonly GarmentSize[];
  /**
   * The ease within which the design counts as fitting, finished less body, for each measurement that is to count: one for
   * all sizes, or one for each.
   */
  readonly easeRanges: Partial<Record<Measurement, EaseRange | readonly EaseRange[]>>;
}

/** Whom a garment's sizes fit. Every share is of the judged people, from 0 to 1. */
export interface Coverage {
  readonly population: Surveyed;
  /** People of the survey who were held against the garment: all of them. */
  readonly judged: number;
  /** What the survey cannot speak of. */
  readonly notJudged: NotJudged;
  /** The measurements that counted, in the order they were given; the first of them, or the bust, chooses the size. */
  readonly asked: readonly Measurement[];
  /** Measurements given that could not count, and why. */
  readonly leftOut: readonly {
    readonly measurement: Measurement;
    readonly why: "not in the survey" | "no limit stated" | "not in every size";
  }[];
  /** Share for whom some size keeps every measurement within its ease; null where no measurement counts. */
  readonly share: number | null;
  readonly bySize: readonly SizeTaken[];
  /** What stands in the way of the rest, largest share first. Shares may overlap; see `several`. */
  readonly shutOut: readonly ShutOut[];
  /** Share without a size whom no single measurement explains: they would need two or more to give way. */
  readonly several: number;
  /** What one centimetre would change, largest gain first. */
  readonly widening: readonly Widening[];
}

/** Bodies that nobody in the survey has. */
export interface NotJudged {
  /** Measurement by which sizes are chosen, and its ends in the survey, cm. */
  readonly measurement: Measurement;
  readonly least: Cm;
  readonly most: Cm;
  /** Sizes made for bodies outside those ends, and sizes that only reach past them; the middle of a size decides. */
  readonly sizes: readonly string[];
  readonly partly: readonly string[];
  /** Share of the people in a broader survey whose hip is larger than any in this one: how much is missing. */
  readonly hipsBeyond: number;
}

export interface SizeTaken {
  readonly size: string;
  /** Bodies the size is for by its first measurement, cm; null at an open end. */
  readonly least: Cm | null;
  readonly most: Cm | null;
  /** People who take it: of the sizes that fit them, the one nearest the middle of the first measurement's ease. */
  readonly people: number;
  readonly share: number;
  /** Share it fits, whichever size they take. */
  readonly fits: number;
}

export interface ShutOut {
  readonly measurement: Measurement;
  /** Share without a size who would have one if this measurement alone did not count. */
  readonly share: number;
  /** Of that share, those the garment is too tight on and those it is too loose on, in the size they would take. */
  readonly tooTight: number;
  readonly tooLoose: number;
}

export interface Widening {
  readonly measurement: Measurement;
  /** Change of the share if the garment were 1 cm larger there in every size; below zero where that loses people. */
  readonly gain: number;
  /** Change of the share if 1 cm less ease, or 1 cm more, still counted as fitting. */
  readonly gainTighter: number;
  readonly gainLooser: number;
}

/** Sizes are bits of a 32-bit number. */
const MOST_SIZES = 30;

/** Binary fractions of centimetres must not put a body just outside a limit it lies on. */
const GRAIN = 1e-9;

/**
 * What share of measured women or men would find a size that fits them, which size each takes, which measurement shuts
 * out the rest, and what a centimetre would gain. Which survey measure stands for which measurement: `BODY_ANSWERS`.
 *
 * @throws {RangeError} for no size, more than 30, or a measurement that is no number: the caller's mistake
 */
export function coverage({ population, sizes, easeRanges }: CoverageQuestion): Coverage {
  if (sizes.length === 0 || sizes.length > MOST_SIZES)
    throw new RangeError(`coverage takes 1 to ${MOST_SIZES} sizes, got ${sizes.length}`);
  const { checks, leftOut } = sortOut(population, sizes, easeRanges);
  const judged = peopleIn(population);
  const chooser = checks.find(({ measurement }) => measurement === "bust") ?? checks[0];
  const masks = checks.map((check) => fitting(check, check.finished, check.least, check.most));
  const all = combined(masks, judged, -1, sizes.length);
  const without = masks.map((_, index) => combined(masks, judged, index, sizes.length));
  const fitted = countFitted(all);
  const changed = (index: number, mask: Uint32Array) => {
    const others = without[index] as Uint32Array;
    return (countFitted(mask.map((bits, person) => bits & (others[person] ?? 0))) - fitted) / judged;
  };
  const shutOut = checks.map((check, index) =>
    explain(check, all, without[index] as Uint32Array, chooser ?? check),
  );
  let several = 0;
  for (let person = 0; person < judged; person++)
    if (all[person] === 0 && without.every((mask) => mask[person] === 0)) several++;
  return {
    population,
    judged,
    notJudged: endsOf(population, sizes, chooser),
    asked: checks.map(({ measurement }) => measurement),
    leftOut,
    share: checks.length === 0 ? null : fitted / judged,
    bySize: takenSizes(sizes, all, chooser),
    shutOut: shutOut.sort((a, b) => b.share - a.share),
    several: several / judged,
    widening: checks
      .map((check, index) => {
        const { measurement, finished, least, most } = check;
        return {
          measurement,
          gain: changed(
            index,
            fitting(
              check,
              finished.map((cm) => cm + 1),
              least,
              most,
            ),
          ),
          gainTighter: changed(
            index,
            fitting(
              check,
              finished,
              least.map((cm) => cm - 1),
              most,
            ),
          ),
          gainLooser: changed(
            index,
            fitting(
              check,
              finished,
              least,
              most.map((cm) => cm + 1),
            ),
          ),
        };
      })
      .sort((a, b) => b.gain - a.gain),
  };
}

/** One measurement that counts: bodies, the garment and its ease in each size, with infinity at an open end. */
interface Check {
  readonly measurement: Measurement;
  readonly bodies: Float64Array;
  readonly finished: readonly Cm[];
  readonly least: readonly Cm[];
  readonly most: readonly Cm[];
}

function sortOut(
  population: Surveyed,
  sizes: readonly GarmentSize[],
  easeRanges: CoverageQuestion["easeRanges"],
): { checks: Check[]; leftOut: Coverage["leftOut"] } {
  const checks: Check[] = [];
  const leftOut: Coverage["leftOut"][number][] = [];
  for (const [measurement, said] of Object.entries(easeRanges) as [
    Measurement,
    EaseRange | readonly EaseRange[],
  ][]) {
    const ranges = isPerSize(said) ? said : sizes.map(() => said);
    if (ranges.length !== sizes.length)
      throw new RangeError(`${ranges.length} ranges of ease at the ${measurement} for ${sizes.length} sizes`);
    const finished = sizes.flatMap((size) => size.finished[measurement] ?? []);
    if (finished.some((cm) => !Number.isFinite(cm)))
      throw new RangeError(`a finished ${measurement} is not a number`);
    if (bodyAnswer(measurement) === undefined) leftOut.push({ measurement, why: "not in the survey" });
    else if (ranges.every(({ least, most }) => least === null && most === null))
      leftOut.push({ measurement, why: "no limit stated" });
    else if (finished.length < sizes.length) leftOut.push({ measurement, why: "not in every size" });
    else
      checks.push({
        measurement,
        bodies: bodyMeasures(population, measurement),
        finished,
        least: ranges.map(({ least }) => least ?? Number.NEGATIVE_INFINITY),
        most: ranges.map(({ most }) => most ?? Number.POSITIVE_INFINITY),
      });
  }
  return { checks, leftOut };
}

const isPerSize = (ranges: EaseRange | readonly EaseRange[]): ranges is readonly EaseRange[] =>
  Array.isArray(ranges);

/** For every person the sizes that fit in one measurement, size 0 as the lowest bit. */
function fitting(
  { bodies }: Check,
  finished: readonly Cm[],
  least: readonly Cm[],
  most: readonly Cm[],
): Uint32Array {
  const masks = new Uint32Array(bodies.length);
  for (let person = 0; person < masks.length; person++) {
    const body = bodies[person] ?? Number.NaN;
    let bits = 0;
    for (let size = 0; size < finished.length; size++) {
      const ease = (finished[size] ?? Number.NaN) - body;
      if (ease >= (least[size] ?? 0) - GRAIN && ease <= (most[size] ?? 0) + GRAIN) bits |= 1 << size;
    }
    masks[person] = bits;
  }
  return masks;
}

/** The sizes that fit in every measurement but one; in every one where `but` is below zero. */
function combined(masks: readonly Uint32Array[], people: number, but: number, sizes: number): Uint32Array {
  const joined = new Uint32Array(people).fill(2 ** sizes - 1);
  masks.forEach((mask, index) => {
    if (index !== but)
      for (let person = 0; person < people; person++)
        joined[person] = (joined[person] ?? 0) & (mask[person] ?? 0);
  });
  return joined;
}

const countFitted = (masks: Uint32Array): number =>
  masks.reduce((count, bits) => (bits === 0 ? count : count + 1), 0);

/** Of the sizes in the mask, the one whose ease is nearest the middle of the range; the smaller one of a tie. */
function sizeTaken(mask: number, chooser: Check | undefined, person: number): number {
  let best = -1;
  let away = Number.POSITIVE_INFINITY;
  for (let size = 0; 2 ** size <= mask; size++) {
    if ((mask & (1 << size)) === 0) continue;
    const off = chooser === undefined ? size : offMiddle(chooser, size, person);
    if (off < away - GRAIN) [best, away] = [size, off];
  }
  return best;
}

/** How far a size's ease is from the middle of the range, or from its one stated end. */
function offMiddle({ bodies, finished, least, most }: Check, size: number, person: number): Cm {
  const ease = (finished[size] ?? 0) - (bodies[person] ?? 0);
  const [from, to] = [least[size] ?? 0, most[size] ?? 0];
  if (!Number.isFinite(from)) return Number.isFinite(to) ? Math.abs(ease - to) : 0;
  if (!Number.isFinite(to)) return Math.abs(ease - from);
  return Math.abs(ease - (from + to) / 2);
}

function takenSizes(
  sizes: readonly GarmentSize[],
  all: Uint32Array,
  chooser: Check | undefined,
): SizeTaken[] {
  const takes = sizes.map(() => 0);
  const fits = sizes.map(() => 0);
  all.forEach((mask, person) => {
    if (mask === 0) return;
    const taken = sizeTaken(mask, chooser, person);
    takes[taken] = (takes[taken] ?? 0) + 1;
    for (let size = 0; size < sizes.length; size++)
      if (mask & (1 << size)) fits[size] = (fits[size] ?? 0) + 1;
  });
  return sizes.map(({ size }, index) => {
    const people = takes[index] ?? 0;
    const { least, most } = bodiesOf(chooser, index);
    return {
      size,
      least: Number.isFinite(least) ? least : null,
      most: Number.isFinite(most) ? most : null,
      people,
      share: people / all.length,
      fits: (fits[index] ?? 0) / all.length,
    };
  });
}

/** The bodies a size is for by the measurement that chooses. */
function bodiesOf(chooser: Check | undefined, size: number): { least: Cm; most: Cm } {
  if (chooser === undefined) return { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };
  const finished = chooser.finished[size] ?? Number.NaN;
  return { least: finished - (chooser.most[size] ?? 0), most: finished - (chooser.least[size] ?? 0) };
}

function explain(check: Check, all: Uint32Array, without: Uint32Array, chooser: Check): ShutOut {
  let tight = 0;
  let loose = 0;
  for (let person = 0; person < all.length; person++) {
    const mask = without[person] ?? 0;
    if (all[person] !== 0 || mask === 0) continue;
    const size = sizeTaken(mask, chooser, person);
    const ease = (check.finished[size] ?? 0) - (check.bodies[person] ?? 0);
    if (ease < (check.least[size] ?? 0)) tight++;
    else loose++;
  }
  return {
    measurement: check.measurement,
    share: (tight + loose) / all.length,
    tooTight: tight / all.length,
    tooLoose: loose / all.length,
  };
}

function endsOf(population: Surveyed, sizes: readonly GarmentSize[], chooser: Check | undefined): NotJudged {
  const measurement = chooser?.measurement ?? "bust";
  const bodies = bodyMeasures(population, measurement);
  const least = Math.min(...bodies);
  const most = Math.max(...bodies);
  const outside: string[] = [];
  const partly: string[] = [];
  for (const [index, { size }] of chooser === undefined ? [] : sizes.entries()) {
    const own = bodiesOf(chooser, index);
    // A size open at one end is taken to be made for the body at its other end; one open at both, for everybody.
    if (!Number.isFinite(own.least) && !Number.isFinite(own.most)) continue;
    const from = Number.isFinite(own.least) ? own.least : own.most;
    const to = Number.isFinite(own.most) ? own.most : own.least;
    if ((from + to) / 2 > most || (from + to) / 2 < least) outside.push(size);
    else if (from < least || to > most) partly.push(size);
  }
  return {
    measurement,
    least: roundMm(least),
    most: roundMm(most),
    sizes: outside,
    partly,
    hipsBeyond: armRelation(population).hipsBeyond,
  };
}

const roundMm = (cm: Cm): Cm => Math.round(cm * 10) / 10;
