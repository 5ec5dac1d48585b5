import type { ChainCosts } from "./chain-costs.ts";
import type { ChainAnswer } from "./chain-layers.ts";
import type { Link } from "./model.ts";
import { solveTilted, solveUnsteady } from "./solve-chains.ts";

// A link lets no chain be solved alone. Put a price on each unit by which a sum misses, and the chains come apart again: each
// is solved with its costs tilted by its share of the prices. Whatever the prices are, the chains' cheapest costs less what
// the prices would pay for sums that come out is a cost no answer that keeps the links can go below (Lagrange). Prices are
// moved, a fixed number of times, to make that floor as high as can be found.

/** Links with their prices, and what follows from them. Costs are in millionths. */
export interface Priced {
  /** No answer that keeps the links costs less. */
  readonly floor: number;
  /** Each chain's cheapest answer at these prices. */
  readonly answers: readonly ChainAnswer[];
  /** By link, then size. */
  readonly prices: readonly Float64Array[];
  /** What the prices pay in one size, when all sums come out. */
  readonly paid: Float64Array;
  /** Whether the answers keep all links and pay nothing for nothing: then they are the best there are. */
  readonly exact: boolean;
}

/** How often prices are moved. */
const ROUNDS = 120;
/** Rounds without a higher floor after which steps are halved. */
const PATIENCE = 6;

/**
 * Finds good prices, and leaves the costs tilted by them.
 *
 * @param costs   of the chains of a block, by position; their tilts are set
 * @param rounds  how often prices are moved at most
 */
export function priceLinks(
  costs: readonly ChainCosts[],
  links: readonly Link[],
  rounds: number = ROUNDS,
): Priced {
  const sizes = costs[0]!.sizes;
  let prices = links.map(() => new Float64Array(sizes));
  let best = solveAt(costs, links, prices, solveUnsteady);
  let reach = Math.max(1e6, best.floor * 0.1);
  let stale = 0;
  for (let round = 0; round < rounds && !best.exact; round++) {
    const now = round === 0 ? best : solveAt(costs, links, prices, solveUnsteady);
    if (now.floor > best.floor + 1 || now.exact) {
      best = now;
      stale = 0;
    } else if (++stale > PATIENCE) {
      reach /= 2;
      stale = 0;
      prices = best.prices.map((one) => one.slice());
      if (reach < 1000) break;
      continue;
    }
    const misses = links.map((link, l) => missesOf(link, now.answers, prices[l]!));
    const square = misses.reduce((sum, one) => one.reduce((all, miss) => all + miss * miss, sum), 0);
    if (square === 0) break;
    const step = (best.floor + reach - now.floor) / square;
    for (const [l, one] of misses.entries()) {
      // A side that is open has no price: it can never be missed.
      const least = Number.isFinite(links[l]!.least) ? Number.NEGATIVE_INFINITY : 0;
      const most = Number.isFinite(links[l]!.most) ? Number.POSITIVE_INFINITY : 0;
      for (const [size, miss] of one.entries()) {
        prices[l]![size] = Math.min(most, Math.max(least, prices[l]![size]! + step * miss));
      }
    }
  }
  // Only now, at the last prices, do changes of step count too.
  return solveAt(costs, links, best.prices, solveTilted);
}

function solveAt(
  costs: readonly ChainCosts[],
  links: readonly Link[],
  prices: readonly Float64Array[],
  solve: (costs: ChainCosts) => ChainAnswer,
): Priced {
  tiltBy(costs, links, prices);
  const answers = costs.map(solve);
  const paid = new Float64Array(costs[0]!.sizes);
  for (const [l, { least, most }] of links.entries()) {
    for (const [size, price] of prices[l]!.entries())
      if (price !== 0) paid[size]! += price * (price > 0 ? most : least);
  }
  const floor = answers.reduce((sum, { cost }) => sum + cost, 0) - paid.reduce((sum, one) => sum + one, 0);
  const exact = links.every((link, l) =>
    missesOf(link, answers, prices[l]!).every((miss) => Math.abs(miss) < 1e-9),
  );
  // Prices are no whole numbers, so a floor is known to a hair only.
  return {
    floor: Math.floor(floor - costs.length),
    answers,
    prices: prices.map((one) => one.slice()),
    paid,
    exact,
  };
}

/** How far each size is from where its price draws it: to the bound that is paid for, or into the link. */
function missesOf(
  { terms, least, most }: Link,
  answers: readonly ChainAnswer[],
  prices: Float64Array,
): Float64Array {
  return prices.map((price, size) => {
    const sum = terms.reduce((all, { chain, times }) => all + times * answers[chain]!.k[size]!, 0);
    if (price > 0 || sum > most) return sum - most;
    return price < 0 || sum < least ? sum - least : 0;
  });
}

function tiltBy(costs: readonly ChainCosts[], links: readonly Link[], prices: readonly Float64Array[]): void {
  for (const one of costs) one.tilt.fill(0);
  for (const [l, { terms }] of links.entries()) {
    for (const { chain, times } of terms) {
      for (const [size, price] of prices[l]!.entries()) costs[chain]!.tilt[size]! += times * price;
    }
  }
}
