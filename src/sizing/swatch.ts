import type { Cm, Count, Grams } from "./units.ts";
import { mustBePositive } from "./units.ts";

/** What had been done to the test piece when it was measured. */
export type SwatchState =
  | { readonly kind: "worked" }
  /** Washed and dried this many times, the way the garment will be. */
  | { readonly kind: "washed"; readonly times: number }
  /** Hung with this load below it. */
  | { readonly kind: "hung"; readonly load: Grams }
  /** Pulled out across, as far as is comfortable. */
  | { readonly kind: "stretched" };

/** One measuring of a test piece: whole stitches and rows first, then the length they cover. */
export interface SwatchReading {
  readonly state: SwatchState;
  readonly stitches: Count;
  readonly rows: Count;
  readonly width: Cm;
  readonly height: Cm;
}

/** A test piece of one fabric with its history, in the order in which it was measured. */
export interface Swatch {
  readonly readings: readonly SwatchReading[];
  /** Weight of what the first reading covers, if it was weighed. */
  readonly grams?: Grams;
  /** Minutes that working what the first reading covers took, turning and counting in them. */
  readonly minutes?: number;
  /** How many stitches of each kind the first reading covers, by dictionary code. */
  readonly madeOf?: ReadonlyMap<string, number>;
}

/** How wide a stitch and how high a row of one fabric is. */
export interface Gauge {
  /** The state of the piece it was measured in. */
  readonly state: SwatchState;
  /** cm a stitch. */
  readonly stitchWidth: Cm;
  /** cm a row. */
  readonly rowHeight: Cm;
  readonly stitchesPer10cm: number;
  readonly rowsPer10cm: number;
  /** Row height over stitch width: above 1 where stitches are tall. */
  readonly aspect: number;
  /** Weight of a square centimetre of the fabric in this state; null when the piece was not weighed. */
  readonly gramsPerCm2: number | null;
}

/** How a piece changed from one measuring to the next; 1 is no change, 0.87 lost 13 in a hundred. */
export interface Change {
  readonly width: number;
  readonly height: number;
}

/**
 * The gauge of a fabric as it will be worn: of the piece washed most often, or as worked when it never was.
 * A reading of a piece hung or stretched is never taken unless it is asked for.
 *
 * @param state  asks for another state of the piece
 * @returns      null when the piece was not measured in that state
 * @throws {RangeError} on a reading with a length or number of zero or less
 */
export function gaugeOf(swatch: Swatch, state?: SwatchState): Gauge | null {
  const reading = state === undefined ? readingToWear(swatch) : readingIn(swatch, state);
  return reading === undefined ? null : gaugeOfReading(reading, gramsPerStitch(swatch));
}

/** The reading whose state matches, the last one if the piece was measured twice in it. */
export function readingIn(swatch: Swatch, state: SwatchState): SwatchReading | undefined {
  return swatch.readings.findLast((reading) => sameState(reading.state, state));
}

/** Width and height of the second reading for each stitch and row, over those of the first (trade handbook, 1.2). */
export function changeBetween(before: SwatchReading, after: SwatchReading): Change {
  const from = gaugeOfReading(before, null);
  const to = gaugeOfReading(after, null);
  return { width: to.stitchWidth / from.stitchWidth, height: to.rowHeight / from.rowHeight };
}

/** How long a piece is while it is worked, so that it is `finished` cm after washing (trade handbook, 1.2). */
export function lengthWhileWorking(finished: Cm, change: Change): Cm {
  mustBePositive(change.height, "the change of height");
  return finished / change.height;
}

function readingToWear(swatch: Swatch): SwatchReading | undefined {
  let best: SwatchReading | undefined;
  let bestTimes = -1;
  for (const reading of swatch.readings) {
    const { state } = reading;
    if (state.kind === "hung" || state.kind === "stretched") continue;
    const times = state.kind === "washed" ? state.times : 0;
    if (times >= bestTimes) {
      best = reading;
      bestTimes = times;
    }
  }
  return best;
}

function gaugeOfReading(reading: SwatchReading, gramsAStitch: number | null): Gauge {
  mustBePositive(reading.stitches, "the stitches of a swatch");
  mustBePositive(reading.rows, "the rows of a swatch");
  mustBePositive(reading.width, "the width of a swatch");
  mustBePositive(reading.height, "the height of a swatch");
  const stitchWidth = reading.width / reading.stitches;
  const rowHeight = reading.height / reading.rows;
  return {
    state: reading.state,
    stitchWidth,
    rowHeight,
    stitchesPer10cm: 10 / stitchWidth,
    rowsPer10cm: 10 / rowHeight,
    aspect: rowHeight / stitchWidth,
    gramsPerCm2: gramsAStitch === null ? null : gramsAStitch / (stitchWidth * rowHeight),
  };
}

/** Weight stays with the stitches when the fabric grows or shrinks, so it is kept a stitch and not a square cm. */
function gramsPerStitch(swatch: Swatch): number | null {
  const first = swatch.readings[0];
  if (swatch.grams === undefined || first === undefined) return null;
  return swatch.grams / (first.stitches * first.rows);
}

function sameState(a: SwatchState, b: SwatchState): boolean {
  if (a.kind === "washed" && b.kind === "washed") return a.times === b.times;
  if (a.kind === "hung" && b.kind === "hung") return a.load === b.load;
  return a.kind === b.kind;
}
