import { spread } from "./distribute.ts";
import type { Cm, Count, Share } from "./units.ts";
import { mustBePositive, mustBeWhole } from "./units.ts";

/** "4 stitches for every 3 rows". */
export interface PickUpRatio {
  readonly stitches: Count;
  readonly rows: Count;
  /** Ratio over the exact one, less 1: above 0 the edging ripples, below it cups. */
  readonly off: Share;
}

/** Rows at the side of a piece that take the same number of stitches. */
export interface PickUpGroup {
  /** Stitches worked into each of the rows; 0 skips them. */
  readonly stitches: Count;
  readonly rows: Count;
}

/** How far a ratio may be off and still lie flat: our own choice, no source. */
export const FLAT_ENOUGH: Share = 0.03;

/**
 * The simplest ratio of stitches to rows at which an edging lies flat along row ends, found in the Stern–Brocot tree: no
 * fraction with a smaller number of rows lies as near.
 *
 * @param rowHeight    cm a row of the piece
 * @param stitchWidth  cm a stitch of the edging
 * @param tolerance    share that the ratio may be off
 */
export function pickUpRatio(rowHeight: Cm, stitchWidth: Cm, tolerance: Share = FLAT_ENOUGH): PickUpRatio {
  mustBePositive(tolerance, "a tolerance");
  const exact = exactRatio(rowHeight, stitchWidth);
  for (const [stitches, rows] of walk(exact)) {
    const off = stitches / rows / exact - 1;
    if (Math.abs(off) <= tolerance) return { stitches, rows, off };
  }
  throw new RangeError(`no ratio comes within ${tolerance}`);
}

/**
 * Every ratio worth saying: each is nearer to the exact one than all with fewer rows.
 *
 * @param mostRows  the largest number of rows a maker is to count in
 */
export function pickUpRatios(rowHeight: Cm, stitchWidth: Cm, mostRows: Count): readonly PickUpRatio[] {
  mustBeWhole(mostRows, "the number of rows", 1);
  const exact = exactRatio(rowHeight, stitchWidth);
  const ratios: PickUpRatio[] = [];
  let nearest = Number.POSITIVE_INFINITY;
  for (let rows = 1; rows <= mostRows && nearest > 1e-9; rows++) {
    const stitches = Math.round(exact * rows);
    const off = stitches / rows / exact - 1;
    if (stitches === 0 || Math.abs(off) > nearest - 1e-9) continue;
    nearest = Math.abs(off);
    ratios.push({ stitches, rows, off });
  }
  return ratios;
}

/**
 * Stitches for each row end, so that all of them come to a total that fits the edging's multiple (trade handbook, 3.7).
 *
 * @returns one number a row; their sum is `stitches`, no two differ by more than one
 */
export function pickUpAlong(rows: Count, stitches: Count): readonly Count[] {
  mustBeWhole(rows, "rows", 1);
  mustBeWhole(stitches, "stitches");
  const each = Math.floor(stitches / rows);
  const taken = Array.from({ length: rows }, () => each);
  for (const at of spread(rows, stitches % rows)) taken[at]! += 1;
  return taken;
}

/** Joins neighbouring rows that take the same number. */
export function groupPickUp(taken: readonly Count[]): readonly PickUpGroup[] {
  const groups: { stitches: Count; rows: Count }[] = [];
  for (const stitches of taken) {
    const last = groups.at(-1);
    if (last?.stitches === stitches) last.rows += 1;
    else groups.push({ stitches, rows: 1 });
  }
  return groups;
}

function exactRatio(rowHeight: Cm, stitchWidth: Cm): number {
  mustBePositive(rowHeight, "a row height");
  mustBePositive(stitchWidth, "a stitch width");
  return rowHeight / stitchWidth;
}

/** Down the Stern–Brocot tree towards x: ever better fractions, the simplest first. 10,000 steps are more than any gauge needs. */
function* walk(x: number): Generator<readonly [stitches: number, rows: number]> {
  let [lowTop, lowBottom, highTop, highBottom] = [0, 1, 1, 0];
  for (let step = 0; step < 10_000; step++) {
    const [top, bottom] = [lowTop + highTop, lowBottom + highBottom];
    yield [top, bottom];
    if (top / bottom < x) [lowTop, lowBottom] = [top, bottom];
    else [highTop, highBottom] = [top, bottom];
  }
}
