import { counted, declare } from "../../base/index.ts";

/** A round is joined to a chain by its length, and begins with a chain of another length. */
export interface Facts {
  readonly row: string;
  /** Chains by which the join calls it. */
  readonly named: number;
  readonly begins: number;
}

export const joinsOtherChain = declare<Facts>({
  code: "rows/joins-other-chain",
  severity: "warning",
  what: (d) => `${d.row} is joined to a chain of ${d.named}, and begins with one of ${d.begins}.`,
  why: () => "Either the chain at the beginning or the one at the join has a wrong number.",
  todo: (d) => [`Join to the chain of ${d.begins}.`, `Begin ${d.row} with ${counted(d.named, "chain")}.`],
});
