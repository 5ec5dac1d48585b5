import type { Cm, Count } from "./units.ts";
import { mustBePositive, mustBeWhole } from "./units.ts";

/** A stretch of rows over which the count changes at one rate. */
export interface Run {
  readonly rows: Count;
  /** Stitches at its end less stitches at its beginning. */
  readonly stitches: Count;
}

/** A curve worked in whole stitches. */
export interface Staircase {
  readonly runs: readonly Run[];
  /** Stitches after each row, entry 0 before the first: rows + 1 numbers. */
  readonly counts: readonly Count[];
  /** Sum over all rows of the stitches by which the count misses the curve. */
  readonly error: number;
}

/** The best staircases with one run, two runs and so on. */
export interface Staircases {
  /** Entry i has at most i + 1 runs; errors never rise. */
  readonly byRuns: readonly Staircase[];
  /** Where more runs stop being worth their words: an index into `byRuns`. */
  readonly knee: number;
  /** Sum of errors no whole numbers can go below. */
  readonly floor: number;
}

/** How far from the curve, in stitches, runs may meet unless more is asked for: further away gains a hair and costs time. */
const USUAL_REACH = 2;

/**
 * Whole stitches along a curve in few straight runs, by dynamic programming over (row, count). Between the ends of a run the
 * count is the nearest whole number to its straight line, halves up. Both ends of the curve are met exactly.
 *
 * @param curve    wanted stitches after each row, entry 0 before the first; at least 2 numbers. The ends are rounded.
 * @param maxRuns  at least 1
 * @param reach    runs meet at most so many whole stitches above or below the curve; time grows with its square
 * @returns        exact among all staircases whose runs meet within reach; of equal ones that whose first run is longest,
 *                 then that with fewer stitches at its end
 */
export function fitStaircases(
  curve: readonly number[],
  maxRuns: Count,
  reach: Count = USUAL_REACH,
): Staircases {
  mustBeWhole(maxRuns, "the number of runs", 1);
  mustBeWhole(reach, "the reach", 1);
  if (curve.length < 2) throw new RangeError("a curve needs at least one row");
  const rows = curve.length - 1;
  const low = curve.map((wanted, row) =>
    isEnd(row, rows) ? Math.round(wanted) : Math.floor(wanted) - reach + 1,
  );
  const width = curve.map((_, row) => (isEnd(row, rows) ? 1 : 2 * reach));
  const runs = Math.min(maxRuns, rows);

  // rest[m][row][i]: least error of the rows after `row` up to the end, from count low[row] + i, in at most m + 1 runs.
  const at = (row: number, i: number) => row * 2 * reach + i;
  const cells = (rows + 1) * 2 * reach;
  const rest = Array.from({ length: runs }, () => new Float64Array(cells).fill(Number.POSITIVE_INFINITY));
  const next = Array.from({ length: runs }, () => new Int32Array(cells).fill(-1));
  for (let m = 0; m < runs; m++) rest[m]![at(rows, 0)] = 0;
  for (let from = rows - 1; from >= 0; from--) {
    for (let i = 0; i < width[from]!; i++) {
      const start = low[from]! + i;
      for (let to = rows; to > from; to--) {
        for (let j = 0; j < width[to]!; j++) {
          const error = errorOfRun(curve, from, start, to, low[to]! + j);
          for (let m = 0; m < runs; m++) {
            const after = to === rows ? 0 : m === 0 ? Number.POSITIVE_INFINITY : rest[m - 1]![at(to, j)]!;
            if (error + after < rest[m]![at(from, i)]! - 1e-9) {
              rest[m]![at(from, i)] = error + after;
              next[m]![at(from, i)] = at(to, j);
            }
          }
        }
      }
    }
  }

  const first = Math.abs(low[0]! - curve[0]!);
  const byRuns = Array.from({ length: runs }, (_, m) => {
    const corners: [number, number][] = [[0, low[0]!]];
    let cell = at(0, 0);
    for (let left = m; cell < at(rows, 0); left--) {
      cell = next[left]![cell]!;
      const row = Math.floor(cell / (2 * reach));
      corners.push([row, low[row]! + (cell % (2 * reach))]);
    }
    return staircase(corners, first + rest[m]![at(0, 0)]!);
  });
  const floor = curve.reduce((sum, wanted) => sum + Math.abs(Math.round(wanted) - wanted), 0);
  return { byRuns, knee: kneeOf(byRuns.map(({ error }) => error)), floor };
}

/** An armhole: straight up where it begins and flat where it ends, a quarter of an ellipse. Rows + 1 numbers. */
export function quarterEllipse(rows: Count, stitches: Count): readonly number[] {
  mustBeWhole(rows, "rows", 1);
  return Array.from({ length: rows + 1 }, (_, row) => stitches * (1 - Math.sqrt(1 - (row / rows) ** 2)));
}

/** Half a sleeve cap: flat, steep, flat, half a wave of a cosine. Rows + 1 numbers, stitches taken away so far. */
export function capCurve(rows: Count, stitches: Count): readonly number[] {
  mustBeWhole(rows, "rows", 1);
  return Array.from(
    { length: rows + 1 },
    (_, row) => (stitches * (1 - Math.cos((Math.PI * row) / rows))) / 2,
  );
}

/** cm along the edge of a curve or a staircase, from row to row. */
export function edgeLength(counts: readonly number[], stitchWidth: Cm, rowHeight: Cm): Cm {
  mustBePositive(stitchWidth, "a stitch width");
  mustBePositive(rowHeight, "a row height");
  let length = 0;
  for (let row = 1; row < counts.length; row++) {
    length += Math.hypot((counts[row]! - counts[row - 1]!) * stitchWidth, rowHeight);
  }
  return length;
}

/**
 * Rows of a sleeve cap whose edge is as long as the armhole it is sewn into.
 *
 * @param stitches  stitches that half the cap takes away, the flat top left out
 * @param edge      cm of half the armhole, less half the flat top
 * @returns         the rows, and cap − armhole in cm; null when the cap is too wide for the armhole at any height
 */
export function capRows(
  stitches: Count,
  edge: Cm,
  stitchWidth: Cm,
  rowHeight: Cm,
): { readonly rows: Count; readonly off: Cm } | null {
  const off = (rows: Count) => edgeLength(capCurve(rows, stitches), stitchWidth, rowHeight) - edge;
  if (off(1) > 0) return null;
  // The edge grows with every row by less than the row is high, and by more the steeper it is: search by halves.
  let low = 1;
  let high = Math.ceil(edge / rowHeight) + 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (off(middle) <= 0) low = middle;
    else high = middle;
  }
  return Math.abs(off(low)) <= Math.abs(off(high))
    ? { rows: low, off: off(low) }
    : { rows: high, off: off(high) };
}

const isEnd = (row: number, rows: number): boolean => row === 0 || row === rows;

/** Error of the rows after `from` up to and including `to`. */
function errorOfRun(curve: readonly number[], from: number, start: number, to: number, end: number): number {
  const rows = to - from;
  let error = 0;
  for (let i = 1; i <= rows; i++) {
    error += Math.abs(start + Math.floor((2 * (end - start) * i + rows) / (2 * rows)) - curve[from + i]!);
  }
  return error;
}

function staircase(corners: readonly (readonly [number, number])[], error: number): Staircase {
  const counts = [corners[0]![1]];
  const runs: Run[] = [];
  for (let corner = 1; corner < corners.length; corner++) {
    const [[from, start], [to, end]] = [corners[corner - 1]!, corners[corner]!];
    const rows = to - from;
    runs.push({ rows, stitches: end - start });
    for (let i = 1; i <= rows; i++)
      counts.push(start + Math.floor((2 * (end - start) * i + rows) / (2 * rows)));
  }
  return { runs, counts, error };
}

/** The point farthest below the straight line from the first to the last, both axes scaled to 1. */
function kneeOf(errors: readonly number[]): number {
  const last = errors.length - 1;
  const fall = errors[0]! - errors[last]!;
  if (last < 2 || fall <= 0) return fall <= 0 ? 0 : last;
  let knee = 0;
  let deepest = 0;
  for (let i = 0; i <= last; i++) {
    const depth = 1 - i / last - (errors[i]! - errors[last]!) / fall;
    if (depth > deepest + 1e-12) {
      deepest = depth;
      knee = i;
    }
  }
  return knee;
}
