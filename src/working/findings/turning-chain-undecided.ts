import { capital, declare } from "../../base/index.ts";

/** A turning chain of which neither the words nor the counts say whether it is a stitch. */
export interface Facts {
  /** "ch 3". */
  readonly chain: string;
  readonly stitch: string;
  /** What is taken meanwhile. */
  readonly taken: "counts" | "does not count";
}

export const turningChainUndecided = declare<Facts>({
  code: "rows/turning-chain-undecided",
  severity: "note",
  what: (d) => `The pattern does not say whether the ${d.chain} at the start of a row counts as ${d.stitch}.`,
  why: (d) => `The printed counts do not decide it; here it ${d.taken} as ${d.stitch}.`,
  todo: (d) => {
    const counts = `Write in the notes: ${capital(d.chain)} counts as ${d.stitch} throughout.`;
    const not = `Write in the notes: ${capital(d.chain)} does not count as a st throughout.`;
    return d.taken === "counts" ? [counts, not] : [not, counts];
  },
});
