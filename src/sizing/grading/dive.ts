import { copyChains, narrowByLinks } from "./blocks.ts";
import type { ChainCosts } from "./chain-costs.ts";
import type { Chain, Link } from "./model.ts";
import type { Excess } from "./solve-chains.ts";
import { findTuples } from "./tuples.ts";

/** Tuples of one size that are weighed; the first room for them, in millionths, and how often it is doubled. */
const LIMIT = { tuples: 400, steps: 20_000 };
const FIRST_SPARE = 250_000;
const DOUBLINGS = 16;

/**
 * Counts that keep all rules, found one size after the other without looking back: of the tuples that keep the links within
 * what the sizes before leave, the cheapest. Quick, not the best, and it may run into a corner.
 *
 * @param chains  of a block, narrowed by their links
 * @param costs   tilted by prices, so that a cheap tuple is one that suits the sums
 * @param order   the sizes in the order in which they are settled
 * @returns       k by size, then chain; null when a size has nothing left
 */
export function dive(
  chains: readonly Chain[],
  costs: readonly ChainCosts[],
  links: readonly Link[],
  order: readonly number[],
): readonly (readonly number[])[] | null {
  const open = copyChains(chains);
  const path: (readonly number[])[] = [];
  for (const size of order) {
    const tuple = cheapestIn(open, costs, links, size);
    if (tuple === null) return null;
    path[size] = tuple;
    for (const [i, chain] of open.entries()) [chain.low[size], chain.high[size]] = [tuple[i]!, tuple[i]!];
    if (!narrowByLinks(open, links)) return null;
  }
  return path;
}

function cheapestIn(
  chains: readonly Chain[],
  costs: readonly ChainCosts[],
  links: readonly Link[],
  size: number,
): readonly number[] | null {
  const bests = costs.map((one, i) => one.best(size, chains[i]!.low[size]!, chains[i]!.high[size]!));
  for (let spare = FIRST_SPARE, n = 0; n < DOUBLINGS; spare *= 2, n++) {
    const excess = costs.map((one, i): Excess => {
      const { k, cost } = bests[i]!;
      const [low, high] = one.within(size, k, chains[i]!.low[size]!, chains[i]!.high[size]!, cost + spare);
      return {
        low,
        more: Float64Array.from({ length: high - low + 1 }, (_, j) => one.miss(size, low + j) - cost),
      };
    });
    const { tuples, complete } = findTuples(excess, links, spare, LIMIT);
    if (tuples.length > 0) {
      const cost = (tuple: readonly number[]) =>
        costs.reduce((sum, one, i) => sum + one.miss(size, tuple[i]!), 0);
      return tuples.reduce((a, b) => (cost(b) < cost(a) ? b : a));
    }
    if (!complete) return null;
  }
  return null;
}
