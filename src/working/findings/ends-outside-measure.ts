import { declare, inSizes, sayCm, sayNumbers } from "../../base/index.ts";

/** Rows that come to another length than the one written for them. */
export interface Facts {
  readonly row: string;
  /** Lengths through the pattern's row gauge, cm. */
  readonly cases: readonly { readonly size: string; readonly workedCm: number; readonly statedCm: number }[];
}

export const endsOutsideMeasure = declare<Facts>({
  code: "shaping/ends-outside-measure",
  severity: "warning",
  what: (d) => `The shaping at ${d.row} does not end at the written length${inSizes(d.cases)}.`,
  why: (d) =>
    `At the gauge it ends at ${sayCm(d.cases.map((c) => c.workedCm))}; ` +
    `${sayNumbers(d.cases.map((c) => c.statedCm))} cm ${d.cases.length === 1 ? "is" : "are"} written.`,
  todo: (d) => [
    `Change the rows between the shaping rows so that it ends at ${sayCm(d.cases.map((c) => c.statedCm))}${inSizes(d.cases)}.`,
    `Write ${sayCm(d.cases.map((c) => c.workedCm))}${inSizes(d.cases)}.`,
  ],
});
