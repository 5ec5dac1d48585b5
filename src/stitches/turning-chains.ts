import { stitchOf } from "./lookup.ts";

/** How often a turning chain is meant to count as a stitch, in the experience of an editor. */
export type Counting = "almost never" | "about half" | "usually";

export interface TurningChain {
  /** Code of the plain stitch whose row it starts. */
  readonly stitch: string;
  /** Chains, by the usual table. */
  readonly chains: number;
  /** Another number that some designers use for the same stitch. */
  readonly alsoMet?: number;
  readonly source: string;
}

const TABLE = "trade handbook, section 3.3";
const HABIT = "trade handbook, section 3.3 (a designer's habit 1, 1, 2, 3)";
const RECALLED = "continued from the table, from memory";

export const TURNING_CHAINS: readonly TurningChain[] = [
  { stitch: "sl st", chains: 0, alsoMet: 1, source: `${TABLE}; one chain from memory` },
  { stitch: "sc", chains: 1, source: TABLE },
  { stitch: "hdc", chains: 2, alsoMet: 1, source: HABIT },
  { stitch: "dc", chains: 3, alsoMet: 2, source: HABIT },
  { stitch: "tr", chains: 4, alsoMet: 3, source: HABIT },
  { stitch: "dtr", chains: 5, source: TABLE },
  { stitch: "trtr", chains: 6, source: RECALLED },
];

/** How a turning chain of so many chains is usually counted: ch 1 almost never, ch 2 about half the time, ch 3 usually. */
export const COUNTING_BY_CHAINS: readonly {
  readonly chains: number;
  readonly counting: Counting;
  readonly source: string;
}[] = [
  { chains: 1, counting: "almost never", source: TABLE },
  { chains: 2, counting: "about half", source: TABLE },
  { chains: 3, counting: "usually", source: TABLE },
  { chains: 4, counting: "usually", source: RECALLED },
  { chains: 5, counting: "usually", source: RECALLED },
  { chains: 6, counting: "usually", source: RECALLED },
];

/**
 * The usual turning chain of a row of this stitch. Stitches that are not plain uprights have that of their family;
 * clusters, shells and the like that of the plain stitch nearest in height, the taller of two.
 *
 * @throws {RangeError} on an unknown code
 */
export function turningChainFor(code: string): TurningChain {
  const { family, height } = stitchOf(code);
  const own = TURNING_CHAINS.find((chain) => chain.stitch === family);
  if (own !== undefined) return own;
  return TURNING_CHAINS.reduce((best, chain) =>
    Math.abs(stitchOf(chain.stitch).height - height) <= Math.abs(stitchOf(best.stitch).height - height)
      ? chain
      : best,
  );
}

/** How a turning chain of `chains` chains is usually counted; more than the table has is counted like its tallest. */
export function countingOf(chains: number): Counting {
  const tallest = COUNTING_BY_CHAINS[COUNTING_BY_CHAINS.length - 1]!;
  if (chains < 1) return "almost never";
  return (COUNTING_BY_CHAINS.find((one) => one.chains === chains) ?? tallest).counting;
}
