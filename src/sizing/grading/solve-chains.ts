import { ChainCosts } from "./chain-costs.ts";
import {
  type ChainAnswer,
  costsThrough,
  costsThroughUnsteady,
  cutLayers,
  layerOf,
  pairsOf,
  solveLayers,
} from "./chain-layers.ts";
import { type Chain, isOpen } from "./model.ts";
import type { GradingProblem } from "./problem.ts";

/** How far from a first answer a better one is looked for, before anything is proved. */
const NEAR = 3;

/** Pairs of neighbouring k beyond which a bound is taken instead of an exact answer, where a bound will do. */
const MOST_PAIRS = 60_000;

/**
 * The cheapest k of one chain, exactly. Of several that cost the same, the one with more counts in the smallest size, then
 * in the next, and so on: a roomy garment can be worn.
 *
 * A first answer gives a ceiling; whatever would cost more than that even if all other sizes were at their best is left out;
 * a dynamic programme over the pairs (k of one size, k of the next) picks the best of what remains. So the answer is the
 * optimum over all whole numbers, not over a window.
 *
 * @param chain  with its order settled, see `settleOrder`
 * @returns      null when no k keeps the rules
 */
export function solveChain(problem: GradingProblem, chain: Chain): ChainAnswer | null {
  return isOpen(chain) ? solveCosts(new ChainCosts(problem, chain)) : null;
}

/** The same from costs that may be tilted; some k must be left in every size. */
export function solveCosts(costs: ChainCosts): ChainAnswer {
  const { chain } = costs;
  if (chain.up && chain.down) return solveConstant(costs);
  const best = chain.low.map((low, size) => costs.best(size, low, chain.high[size]!));
  const first = inOrder(
    best.map(({ k }) => k),
    chain,
  );
  const near = first.map((k, size): readonly [number, number] => [
    Math.max(chain.low[size]!, k - NEAR),
    Math.min(chain.high[size]!, k + NEAR),
  ]);
  const ceiling = solveLayers(
    near.map(([low, high], size) => layerOf(costs, size, low, high)),
    chain,
  )!;
  const ranges = rangesUnder(costs, ceiling.cost, best);
  if (ranges.every(([low, high], size) => low >= near[size]![0] && high <= near[size]![1])) return ceiling;
  const layers = cutLayers(
    ranges.map(([low, high], size) => layerOf(costs, size, low, high)),
    chain,
    ceiling.cost + costs.hair * costs.sizes,
  );
  return solveLayers(layers, chain)!;
}

/** What it costs more than the cheapest answer to pass a k, for all k of a size that cost up to some more. */
export interface Excess {
  readonly low: number;
  /** By k − low; infinite where no way keeps the order. */
  readonly more: Float64Array;
}

/**
 * What every k of a chain would cost more than its cheapest answer.
 *
 * @param cheapest  cost of the cheapest answer
 * @param spare     k that cost more than this may be left out
 */
export function excessOf(costs: ChainCosts, cheapest: number, spare: number): readonly Excess[] {
  const ceiling = cheapest + spare;
  const { chain } = costs;
  const best = chain.low.map((low, size) => costs.best(size, low, chain.high[size]!));
  const layers = cutLayers(
    rangesUnder(costs, ceiling, best).map(([low, high], size) => layerOf(costs, size, low, high)),
    chain,
    ceiling + costs.hair * costs.sizes,
  );
  const through = pairsOf(layers) > MOST_PAIRS ? costsThroughUnsteady : costsThrough;
  return through(layers, chain).map((costs, size) => ({
    low: layers[size]!.low,
    more: costs.map((cost) => Math.max(0, cost - cheapest)),
  }));
}

/**
 * The cheapest k, or where a tilt makes hundreds of k nearly as cheap, a lower bound: the cheapest with changes of step
 * left out.
 */
export function solveTilted(costs: ChainCosts): ChainAnswer {
  const rough = solveUnsteady(costs);
  const { low, high } = costs.chain;
  const best = low.map((least, size) => costs.best(size, least, high[size]!));
  const ranges = rangesUnder(costs, rough.cost + costs.steps(rough.k), best);
  const pairs = pairsOf(ranges.map(([a, b]) => ({ low: a, high: b })));
  return pairs > MOST_PAIRS ? rough : solveCosts(costs);
}

/** For each size the k that cost no more than the ceiling with all other sizes at their best. */
function rangesUnder(
  costs: ChainCosts,
  ceiling: number,
  best: readonly { readonly k: number; readonly cost: number }[],
): readonly (readonly [low: number, high: number])[] {
  const floor = best.reduce((sum, { cost }) => sum + cost, 0);
  const spare = ceiling - floor + costs.hair * costs.sizes;
  const { low, high } = costs.chain;
  return best.map(({ k, cost }, size) => costs.within(size, k, low[size]!, high[size]!, cost + spare));
}

/**
 * The cheapest k that keep the order, changes of step left out: neighbours that would cross are pooled until none do.
 * A lower bound of the chain's cost, and quick whatever the tilt.
 */
export function solveUnsteady(costs: ChainCosts): ChainAnswer {
  const { up, down } = costs.chain;
  if (up && down) return solveConstant(costs);
  const pools: { from: number; to: number; k: number; cost: number }[] = [];
  for (let size = 0; size < costs.sizes; size++) {
    let pool = { from: size, to: size, ...costs.bestInCommon(size, size) };
    for (let last = pools.at(-1); last !== undefined; last = pools.at(-1)) {
      if (!(up && pool.k < last.k) && !(down && pool.k > last.k)) break;
      pools.pop();
      pool = { from: last.from, to: size, ...costs.bestInCommon(last.from, size) };
    }
    pools.push(pool);
  }
  return {
    k: pools.flatMap(({ from, to, k }) => new Array<number>(to - from + 1).fill(k)),
    cost: pools.reduce((sum, { cost }) => sum + cost, 0),
  };
}

/** One k for all sizes. */
function solveConstant(costs: ChainCosts): ChainAnswer {
  const { k, cost } = costs.bestInCommon(0, costs.sizes - 1);
  return { k: new Array<number>(costs.sizes).fill(k), cost };
}

/** The nearest order-keeping k that are as good a start as any: running maximum upwards, running minimum downwards. */
function inOrder(k: readonly number[], { up, down }: Chain): readonly number[] {
  if (!up && !down) return k;
  let last = k[0]!;
  return k.map((one) => {
    last = up ? Math.max(last, one) : Math.min(last, one);
    return last;
  });
}
