import { declare } from "../../base/index.ts";

/** A swatch that weighs far from what its stitches would. */
export interface Facts {
  readonly fabric: string;
  readonly grams: number;
  /** Grams by the geometry of its stitches. */
  readonly expected: number;
}

const rounded = (grams: number): string => String(Math.round(grams));

export const swatchWeightOff = declare<Facts>({
  code: "design/swatch-weight-off",
  severity: "warning",
  what: (d) => `The swatch of ${d.fabric} is said to weigh ${rounded(d.grams)} g, which is hard to believe.`,
  why: (d) =>
    `Stitches of this size in this yarn would weigh about ${rounded(d.expected)} g. Measured swatches come within a tenth or two of that, and this one is ${Math.round(Math.abs(d.grams / d.expected - 1) * 100)} in 100 ${d.grams > d.expected ? "above" : "below"} it.`,
  todo: () => [
    "Weigh the swatch again, and see that the stitches and rows are those of the whole piece weighed.",
    "Check the metres and grams of the ball.",
  ],
});
