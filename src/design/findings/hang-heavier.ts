import { declare } from "../../base/index.ts";

/** Sizes in which more hangs on a fabric than its swatch was ever hung with. */
export interface Facts {
  readonly measure: string;
  readonly fabric: string;
  /** The heaviest load that was tried, for the swatch's width, grams. */
  readonly hungWith: number;
  /** What the swatch would have to bear to hang as the garment does, grams. */
  readonly cases: readonly { readonly size: string; readonly grams: number }[];
}

export const hangHeavier = declare<Facts>({
  code: "design/hang-heavier",
  severity: "note",
  what: (d) => `More hangs on ${d.measure} than the swatch of ${d.fabric} was hung with.`,
  why: (d) => {
    const loads = d.cases.map(({ size, grams }) => `${Math.round(grams)} g in ${size}`);
    return `To hang as the garment does, the swatch bears ${loads.join(", ")}; it was hung with ${Math.round(d.hungWith)} g. Beyond that, growth is guessed.`;
  },
  todo: (d) => [
    `Hang the swatch with ${Math.ceil(Math.max(...d.cases.map(({ grams }) => grams)))} g for a day and write down what it measures.`,
  ],
});
