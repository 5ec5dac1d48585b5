import { declare } from "../../base/index.ts";

/** A gauge that is not usual for the yarn's class. */
export interface Facts {
  readonly fabric: string;
  /** Stitches to 10 cm. */
  readonly stitches: number;
  readonly yarnClass: number;
  readonly from: number | null;
  readonly to: number | null;
}

export const gaugeOutsideClass = declare<Facts>({
  code: "design/gauge-outside-class",
  severity: "note",
  what: (d) => `The gauge of ${d.fabric} is unusual for yarn of class ${d.yarnClass}.`,
  why: (d) => {
    const range =
      d.from === null ? `up to ${d.to}` : d.to === null ? `${d.from} and more` : `${d.from} to ${d.to}`;
    return `It has ${Math.round(d.stitches * 10) / 10} sts to 10 cm. The trade's table has ${range} for the class, as a guideline, over single crochet.`;
  },
  todo: () => ["Check the swatch and the class of the yarn.", "Leave it, if the fabric is meant to be so."],
});
