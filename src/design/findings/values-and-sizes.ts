import { declare } from "../../base/index.ts";

/** A list of the table that has another length than the size run. */
export interface Facts {
  readonly entry: string;
  readonly has: number;
  readonly sizes: number;
}

export const valuesAndSizes = declare<Facts>({
  code: "design/values-and-sizes",
  severity: "error",
  what: (d) =>
    `"${d.entry}" has ${d.has} ${d.has === 1 ? "value" : "values"}, and there are ${d.sizes} sizes.`,
  why: () => "A list has one value for each size, in the order of the sizes, or one value for all.",
  todo: (d) => [
    d.has < d.sizes ? "Add the values that are missing." : "Take out the values that are too many.",
  ],
});
