import { declare } from "../../base/index.ts";

/** A name that nothing in the design has. */
export interface Facts {
  readonly name: string;
  /** What should bear the name. */
  readonly what: "measure" | "count" | "fabric" | "size" | "chart" | "measurement" | "yarn";
  /** Where it is looked for, as in "the chart Women, corrected"; null where that goes without saying. */
  readonly where: string | null;
  readonly near: string | null;
}

export const nameUnknown = declare<Facts>({
  code: "design/name-unknown",
  severity: "error",
  what: (d) => `There is no ${d.what} "${d.name}"${d.where === null ? "" : ` in ${d.where}`}.`,
  why: (d) => (d.near === null ? "Nothing has a name like it." : `The nearest name is "${d.near}".`),
  todo: (d) => [
    ...(d.near === null ? [] : [`Write "${d.near}", if that is meant.`]),
    `Give the ${d.what} an entry of its own, if it is missing.`,
  ],
});
