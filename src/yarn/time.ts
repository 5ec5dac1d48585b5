/** Stitches a minute where nobody has timed a swatch: 3 seconds for each. Trade handbook, section 9; computation notes, 10. */
export const USUAL_PER_MINUTE = 20;

/** What turning and counting add to stitches timed alone (trade handbook, section 9). A timed swatch has them in it. */
export const TURNING_AND_COUNTING = 1.25;

/** Minutes that hiding one end takes. Trade handbook, section 9. */
export const MINUTES_AN_END = 2;

/**
 * Hours of making by a rate of stitches alone.
 *
 * @param finishing  minutes of sewing, ends and washing
 */
export function hoursByRate(stitches: number, perMinute = USUAL_PER_MINUTE, finishing = 0): number {
  if (!(perMinute > 0)) throw new RangeError(`stitches a minute are above 0, got ${perMinute}`);
  return (stitches / (perMinute * 60)) * TURNING_AND_COUNTING + finishing / 60;
}

/** Hours that a length of yarn takes at so many metres an hour, as makers also reckon. */
export const hoursByLength = (metres: number, metresPerHour: number): number => metres / metresPerHour;
