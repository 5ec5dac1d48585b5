import { ChainCosts } from "./chain-costs.ts";
import { type Chain, isOpen, settleOrder } from "./model.ts";
import type { GradingProblem } from "./problem.ts";

/** A copy of the chain in which no miss weighs more than the cap, in millionths; closed when that cannot be. */
export function capChain(problem: GradingProblem, chain: Chain, cap: number): Chain {
  const costs = new ChainCosts(problem, chain);
  const capped: Chain = { ...chain, low: [...chain.low], high: [...chain.high] };
  for (let size = 0; size < costs.sizes; size++) {
    const { low, high } = chain;
    // The worst of several misses is convex in k, so what lies under the cap lies together around the best.
    const best = costs.leastWorst(size, low[size]!, high[size]!);
    if (best.cost > cap) {
      [capped.low[size], capped.high[size]] = [1, 0];
      continue;
    }
    capped.low[size] = firstWhere(best.k, low[size]!, (k) => costs.worst(size, k) > cap);
    capped.high[size] = firstWhere(best.k, high[size]!, (k) => costs.worst(size, k) > cap);
  }
  if (isOpen(capped)) settleOrder(capped);
  return capped;
}

/** The smallest largest miss a chain can be held to, in millionths; null when the chain is closed anyway. */
export function leastWorstOf(problem: GradingProblem, chain: Chain): number | null {
  if (!isOpen(chain)) return null;
  const costs = new ChainCosts(problem, chain);
  let high = 0;
  let low = 0;
  for (let size = 0; size < costs.sizes; size++) {
    const [a, b] = [chain.low[size]!, chain.high[size]!];
    low = Math.max(low, costs.leastWorst(size, a, b).cost);
    high = Math.max(high, costs.worst(size, a), costs.worst(size, b));
  }
  return smallestWhere(low, high, (cap) => isOpen(capChain(problem, chain, cap)));
}

/** The smallest whole number from low to high for which a test that stays true once it is true is true; high if none below. */
export function smallestWhere(low: number, high: number, test: (n: number) => boolean): number {
  let [a, b] = [low, high];
  while (a < b) {
    const middle = a + Math.floor((b - a) / 2);
    if (test(middle)) b = middle;
    else a = middle + 1;
  }
  return b;
}

/** The last k from `from` towards `to` before one that is over, found by halves. */
function firstWhere(from: number, to: number, over: (k: number) => boolean): number {
  const way = to < from ? -1 : 1;
  const steps = smallestWhere(
    0,
    Math.abs(to - from) + 1,
    (n) => n > Math.abs(to - from) || over(from + way * n),
  );
  return from + way * Math.max(0, steps - 1);
}
