import { declare, inSizes } from "../../base/index.ts";

/** A list told in words that is that of a row in all sizes but one. */
export interface Facts {
  /** The list, as written. */
  readonly words: string;
  /** The list of the row, as written. */
  readonly other: string;
  readonly size: string;
  readonly found: number;
  readonly expected: number;
}

export const listDiffersOnce = declare<Facts>({
  code: "sizes/list-differs-once",
  severity: "warning",
  what: (d) => `"${d.words}" is a list of the rows but${inSizes([d.size])}.`,
  why: (d) => `The rows say "${d.other}": ${d.expected} there, ${d.found} here.`,
  todo: (d) => [`Write ${d.expected}${inSizes([d.size])}.`, `Change the row where ${d.found} is right.`],
});
