/** Centimetres. */
export type Cm = number;
/** A whole number of stitches, rows or repeats. */
export type Count = number;
/** Grams. */
export type Grams = number;
/** A standard uncertainty as a share of the value: 0.02 is two in a hundred. */
export type Share = number;

/** @throws {RangeError} when the value is not a finite number above zero: the caller's mistake, not the designer's. */
export function mustBePositive(value: number, what: string): void {
  if (!(value > 0) || !Number.isFinite(value)) throw new RangeError(`${what} must be above 0, got ${value}`);
}

/** @throws {RangeError} when the value is not a whole number of at least `least`: the caller's mistake. */
export function mustBeWhole(value: number, what: string, least = 0): void {
  if (!Number.isInteger(value) || value < least) {
    const bound = Number.isFinite(least) ? ` of at least ${least}` : "";
    throw new RangeError(`${what} must be a whole number${bound}, got ${value}`);
  }
}
