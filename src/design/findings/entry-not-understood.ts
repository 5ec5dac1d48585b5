import { declare } from "../../base/index.ts";

/** An entry of the table that is known, with a value that is not. */
export interface Facts {
  readonly entry: string;
  /** What stands there. */
  readonly found: string;
  /** What is wrong or what belongs there, as a sentence. */
  readonly wants: string;
}

export const entryNotUnderstood = declare<Facts>({
  code: "design/entry-not-understood",
  severity: "error",
  what: (d) => `The entry "${d.entry}" is not understood.`,
  why: (d) => (d.found === "" ? d.wants : `It says "${d.found}". ${d.wants}`),
  todo: () => ["Write it as the page on the design document shows."],
});
