import type { Choices } from "./choices.ts";

/** A gauge that nobody has measured yet, as a start: width of a stitch and height of a row, cm. */
export interface StartGauge {
  readonly stitchCm: number;
  readonly rowCm: number;
}

export const mainGauge = ({ gauge }: Choices): StartGauge => ({
  stitchCm: 10 / gauge.stitches,
  rowCm: 10 / gauge.rows,
});

/** Post stitches in turn, with the smaller hook: a little narrower than the main fabric. Common practice, no source. */
export const postRibGauge = (choices: Choices): StartGauge => {
  const stitchCm = mainGauge(choices).stitchCm * 0.94;
  return { stitchCm, rowCm: stitchCm * 1.4 };
};

/** Single crochet in back loops with the smaller hook. Common practice, no source. */
export const ridgeGauge = (choices: Choices): StartGauge => {
  const stitchCm = mainGauge(choices).stitchCm * 0.94;
  return { stitchCm, rowCm: stitchCm * 1.05 };
};

/** "28 sts x 22 rows in 20 x 19.6 cm": a swatch that gives a gauge, as one would measure it. */
export function swatchWords({ stitchCm, rowCm }: StartGauge): string {
  const sts = Math.max(8, Math.round(20 / stitchCm));
  const rows = Math.max(6, Math.round(20 / rowCm));
  return `${sts} sts x ${rows} rows in ${cm(sts * stitchCm)} x ${cm(rows * rowCm)} cm`;
}

/** The same pulled out sideways by a share. */
export function stretchedWords({ stitchCm }: StartGauge, share: number): string {
  const sts = Math.max(8, Math.round(20 / stitchCm));
  return `${sts} sts in ${cm(sts * stitchCm * share)} cm`;
}

const cm = (value: number): string => String(Math.round(value * 10) / 10);

/** The even whole number nearest to a value, at least 2. */
export const nearestEven = (value: number): number => Math.max(2, 2 * Math.round(value / 2));

/** The odd whole number nearest to a value, at least 1. */
export const nearestOdd = (value: number): number => Math.max(1, 2 * Math.round((value - 1) / 2) + 1);
