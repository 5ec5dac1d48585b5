import { declare, sayList } from "../../base/index.ts";

/** Measures or counts that are said by one another. */
export interface Facts {
  /** In the order in which each leans on the next, the last on the first. */
  readonly names: readonly string[];
}

export const measuresInCircle = declare<Facts>({
  code: "design/measures-in-circle",
  severity: "error",
  what: (d) =>
    d.names.length === 1
      ? `"${d.names[0]}" is said by itself.`
      : `${sayList(d.names.map((name) => `"${name}"`))} are said by one another.`,
  why: (d) => {
    const chain = [...d.names, d.names[0]].map((name) => `"${name}"`);
    return `${chain.join(" needs ")}, so none of them comes to a number.`;
  },
  todo: () => ["Say one of them by a body measurement, by ease or by a length."],
});
