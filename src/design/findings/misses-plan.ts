import { declare, inSizes, sayCm } from "../../base/index.ts";

/** A finished measurement that is nearer to another size's than to its own. */
export interface Facts {
  readonly measure: string;
  /** Sizes that miss by more than half of the step to the next size. */
  readonly cases: readonly { readonly size: string; readonly wanted: number; readonly made: number }[];
}

export const missesPlan = declare<Facts>({
  code: "design/misses-plan",
  severity: "warning",
  what: (d) => `"${d.measure}" misses the plan by more than half a size${inSizes(d.cases)}.`,
  why: (d) =>
    d.cases
      .map(({ size, wanted, made }) => `${size}: ${sayCm(made)} made, ${sayCm(wanted)} wanted.`)
      .join(" "),
  todo: () => ["Choose all counts anew: loopwright grade.", "Or use a smaller repeat, or another ease."],
});
