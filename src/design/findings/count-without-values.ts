import { declare } from "../../base/index.ts";

/** A count that has not been chosen yet. */
export interface Facts {
  readonly count: string;
}

export const countWithoutValues = declare<Facts>({
  code: "design/count-without-values",
  severity: "warning",
  what: (d) => `"${d.count}" has no values yet.`,
  why: () => "Rows that use it cannot be worked until it has.",
  todo: () => ["Have all counts chosen: loopwright grade.", "Or write the values yourself, behind is."],
});
