import { counted, declare } from "../../base/index.ts";

/** A list with more or fewer values than the pattern has sizes. */
export interface Facts {
  /** The list, as written. */
  readonly words: string;
  readonly has: number;
  readonly sizes: number;
}

export const listLength = declare<Facts>({
  code: "sizes/list-length",
  severity: "error",
  what: (d) => `"${d.words}" has ${counted(d.has, "value")} for ${counted(d.sizes, "size")}.`,
  why: (d) => {
    const off = Math.abs(d.sizes - d.has);
    const one = off === 1;
    return d.has < d.sizes
      ? `${counted(off, "size")} ${one ? "gets" : "get"} no number.`
      : `${counted(off, "value")} ${one ? "belongs" : "belong"} to no size.`;
  },
  todo: (d) => [
    `Write ${counted(d.sizes, "value")}, one for each size.`,
    d.has < d.sizes
      ? "Write 0 for a size that works none."
      : "Add the size to the list of sizes where one is missing there.",
  ],
});
