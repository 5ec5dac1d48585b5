import { counted, declare, ordinal } from "../../base/index.ts";
import { verb } from "./label.ts";

/** "In 4th ch from hook" over a chain that is shorter than that. */
export interface Facts {
  readonly row: string;
  /** 4 for "4th ch from hook". */
  readonly nth: number;
  /** Chains there are, fewer than `nth`. */
  readonly chains: number;
}

export const chainFromHook = declare<Facts>({
  code: "rows/chain-from-hook",
  severity: "error",
  what: (d) => `${d.row} ${verb(d.row, "begins", "begin")} beyond the end of the chain.`,
  why: (d) =>
    `The chain has ${counted(d.chains, "ch")}, and the row begins in the ${ordinal(d.nth)} ch from hook.`,
  todo: (d) => [`Make a chain of at least ${counted(d.nth, "ch")}.`, "Begin in a chain nearer to the hook."],
});
