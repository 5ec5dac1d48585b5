import { declare, inSizes, sayCm } from "../../base/index.ts";

/** A girth with ease below zero whose fabric was never measured pulled out. */
export interface Facts {
  readonly measure: string;
  readonly body: string;
  /** The fabric that has to stretch; null where several make the measure. */
  readonly fabric: string | null;
  readonly cases: readonly { readonly size: string; readonly made: number; readonly body: number }[];
}

export const stretchNotMeasured = declare<Facts>({
  code: "design/stretch-not-measured",
  severity: "note",
  what: (d) => `"${d.measure}" has to stretch${inSizes(d.cases)}, and nobody measured whether it does.`,
  why: (d) =>
    d.cases
      .map(
        ({ size, made, body }) =>
          `${size}: ${sayCm(made)} made for a ${d.body} of ${sayCm(body)}, ${(body / made).toFixed(2)} times as much.`,
      )
      .join(" "),
  todo: (d) => [
    `Pull a swatch${d.fabric === null ? "" : ` of ${d.fabric}`} out across as far as is comfortable, and write its width behind stretched.`,
  ],
});
