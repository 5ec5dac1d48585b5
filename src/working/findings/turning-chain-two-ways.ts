import { declare } from "../../base/index.ts";

/** A turning chain that counts in one row and not in the others, or the other way round. */
export interface Facts {
  readonly row: string;
  /** "ch 3". */
  readonly chain: string;
  readonly here: "counts" | "does not count";
  readonly elsewhere: "counts" | "does not count";
  /** The stitch it counts as: "dc". */
  readonly stitch: string;
}

const say = (way: Facts["here"], stitch: string) =>
  way === "counts" ? `counts as ${stitch}` : `does not count as ${stitch}`;

export const turningChainTwoWays = declare<Facts>({
  code: "rows/turning-chain-two-ways",
  severity: "warning",
  what: (d) =>
    `The ${d.chain} of ${d.row} ${say(d.here, d.stitch)}; elsewhere it ${say(d.elsewhere, d.stitch)}.`,
  why: (d) => `The words of ${d.row} say so, and the words of the other rows say otherwise.`,
  todo: (d) => [
    `Change ${d.row} so that its ${d.chain} ${say(d.elsewhere, d.stitch)}.`,
    "Answer that it is meant, with the reason.",
  ],
});
