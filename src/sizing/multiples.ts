import type { Count } from "./units.ts";
import { mustBePositive, mustBeWhole } from "./units.ts";

/** Numbers that fit a repeat: `remainder`, `remainder + multiple`, and so on in both directions; "a multiple of 8 plus 2". */
export interface Multiple {
  /** At least 1. */
  readonly multiple: Count;
  /** As it is said; it may be more than the multiple ("a multiple of 2 plus 5") or below zero. */
  readonly remainder: Count;
}

export const ANY_NUMBER: Multiple = { multiple: 1, remainder: 0 };
export const EVEN: Multiple = { multiple: 2, remainder: 0 };
export const ODD: Multiple = { multiple: 2, remainder: 1 };

/** Steps by which a quotient may miss a whole number and still be it: binary division misses an exact half by less. */
const HAIR = 1e-9;

/** Whether a count fits the repeat. */
export function fits(count: Count, { multiple, remainder }: Multiple): boolean {
  return modulo(count - remainder, multiple) === 0;
}

/** Remainder of at least 0, also of numbers below zero. */
export function modulo(a: number, m: number): number {
  return ((a % m) + m) % m;
}

/** Whole times `step` goes into x plus `lift` of a step; a value a hair below a whole number counts as the number. */
export function floorTolerant(x: number, step: number, lift: number): number {
  return Math.floor(x / step + lift + HAIR);
}

/**
 * The count nearest a wanted number that fits the repeat; halfway it is the larger one, since a roomy garment can be worn.
 *
 * @param wanted  e.g. a width over a stitch width; need not be whole
 */
export function nearestFitting(wanted: number, { multiple, remainder }: Multiple): Count {
  mustBeWhole(multiple, "a multiple", 1);
  return floorTolerant(wanted - remainder, multiple, 0.5) * multiple + remainder;
}

/** The largest fitting count not above the number, and the smallest not below it. */
export function fittingAround(
  wanted: number,
  rule: Multiple,
): { readonly below: Count; readonly above: Count } {
  const { multiple, remainder } = rule;
  mustBeWhole(multiple, "a multiple", 1);
  const below = floorTolerant(wanted - remainder, multiple, 0) * multiple + remainder;
  return { below, above: Math.abs(wanted - below) < HAIR * multiple ? below : below + multiple };
}

/**
 * The counts that fit both repeats, by the Chinese remainder theorem.
 *
 * @returns null when no number fits both, as "a multiple of 4 plus 1" and "a multiple of 6 plus 2"
 */
export function mergeMultiples(a: Multiple, b: Multiple): Multiple | null {
  mustBeWhole(a.multiple, "a multiple", 1);
  mustBeWhole(b.multiple, "a multiple", 1);
  const { divisor, x } = bezout(a.multiple, b.multiple);
  const apart = b.remainder - a.remainder;
  if (apart % divisor !== 0) return null;
  const multiple = (a.multiple / divisor) * b.multiple;
  const turns = modulo((apart / divisor) * x, b.multiple / divisor);
  return { multiple, remainder: modulo(a.remainder + a.multiple * turns, multiple) };
}

/** Greatest common divisor, and x, y with a·x + b·y = divisor. The divisor is never below zero. */
export function bezout(
  a: number,
  b: number,
): { readonly divisor: number; readonly x: number; readonly y: number } {
  let [r0, r1, x0, x1, y0, y1] = [a, b, 1, 0, 0, 1];
  while (r1 !== 0) {
    const q = Math.trunc(r0 / r1);
    [r0, r1] = [r1, r0 - q * r1];
    [x0, x1] = [x1, x0 - q * x1];
    [y0, y1] = [y1, y0 - q * y1];
  }
  return r0 < 0 ? { divisor: -r0, x: -x0, y: -y0 } : { divisor: r0, x: x0, y: y0 };
}

/** How far a width may miss what is wanted when only whole repeats can be had: half of one. */
export function roundingFloor(multiple: Count, stitchWidth: number): number {
  mustBePositive(stitchWidth, "a stitch width");
  return (multiple * stitchWidth) / 2;
}

/** Chains to begin with, from the stitches of the first row and the chains that turn it (trade handbook, 3.1). */
export function chainsFor(repeats: Count, multiple: Count, edge: Count, turning: Count): Count {
  return repeats * multiple + edge + turning;
}
