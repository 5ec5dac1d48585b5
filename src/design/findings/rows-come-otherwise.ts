import { declare } from "../../base/index.ts";

/** Rows as worked that are not so many as the count they are told by. */
export interface Facts {
  readonly count: string;
  readonly cases: readonly { readonly size: string; readonly written: number; readonly worked: number }[];
}

export const rowsComeOtherwise = declare<Facts>({
  code: "design/rows-come-otherwise",
  severity: "warning",
  what: (d) => `The rows do not come to ${d.count}.`,
  why: (d) =>
    `${d.cases.map(({ size, written, worked }) => `In ${size} the last row worked is Row ${worked}, and ${d.count} is ${written}`).join(". ")}.`,
  todo: (d) => [`Work as many rows as ${d.count} says, or give the count the number of rows.`],
});
