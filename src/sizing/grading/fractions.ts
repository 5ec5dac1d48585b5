/** Largest number that whole multiples are looked for with: thirds, eighths and twelfths of a count, and some to spare. */
const MOST = 1000;

/**
 * The smallest whole number that makes every one of the numbers whole.
 *
 * @returns null when there is none up to 1,000
 */
export function commonDenominator(numbers: readonly number[]): number | null {
  for (let times = 1; times <= MOST; times++) {
    if (
      numbers.every(
        (n) => Math.abs(n * times - Math.round(n * times)) < 1e-9 * Math.max(1, Math.abs(n * times)),
      )
    )
      return times;
  }
  return null;
}
