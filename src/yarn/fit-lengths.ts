import { nonNegativeLeastSquares } from "./least-squares.ts";

/** A swatch as it was weighed: what it is made of, and the yarn in it. */
export interface WeighedSwatch {
  /** Stitches by key: a kind, or a kind in one fabric. */
  readonly stitches: ReadonlyMap<string, number>;
  /** Yarn in it, cm, its ends taken off. */
  readonly cm: number;
  /** How far that may be off: one standard deviation as a share. */
  readonly share: number;
}

/** How far the geometry may be off for one kind of stitch: one standard deviation as a share. Own choice; measured, it was within 0.08. */
export const PRIOR_SHARE = 0.15;

/** Yarn lies otherwise in the swatch than in the garment by so much, whatever the scale says. Own choice. */
const SWATCH_SHARE = 0.02;

/** A scale that shows whole grams is off by 0.29 g, one standard deviation of a rounding. Computation notes, section 7. */
export const weighingShare = (grams: number, resolution = 1): number =>
  Math.hypot(resolution / Math.sqrt(12) / grams, SWATCH_SHARE);

/**
 * Length of yarn in each kind of stitch, cm, that the weighed swatches speak for: non-negative least squares, each swatch
 * as sure as its weighing. A prior draws what the swatches leave open towards the geometry; without one they alone decide.
 *
 * @param prior  cm by key; a key without one is left to the swatches
 */
export function fitLengths(
  swatches: readonly WeighedSwatch[],
  prior: ReadonlyMap<string, number> = new Map(),
  priorShare = PRIOR_SHARE,
): ReadonlyMap<string, number> {
  const keys = [...new Set([...prior.keys(), ...swatches.flatMap(({ stitches }) => [...stitches.keys()])])];
  const rows: number[][] = [];
  const wanted: number[] = [];
  for (const { stitches, cm, share } of swatches) {
    const weight = 1 / (share * cm);
    rows.push(keys.map((key) => (stitches.get(key) ?? 0) * weight));
    wanted.push(cm * weight);
  }
  keys.forEach((key, at) => {
    const length = prior.get(key);
    if (length === undefined) return;
    const weight = 1 / (priorShare * length);
    rows.push(keys.map((_, other) => (other === at ? weight : 0)));
    wanted.push(length * weight);
  });
  const fitted = nonNegativeLeastSquares(rows, wanted);
  return new Map(keys.map((key, at) => [key, fitted[at] ?? 0]));
}
