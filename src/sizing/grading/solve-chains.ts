import { ChainCosts } from "./chain-costs.ts";
import { type Chain, isOpen } from "./model.ts";
import type { GradingProblem } from "./problem.ts";

/** The cheapest k of a chain, with its cost in millionths. */
export interface ChainAnswer {
  /** One k per size. */
  readonly k: readonly number[];
  readonly cost: number;
}

/** k of one size between two bounds, with what each costs. */
interface Layer {
  readonly low: number;
  readonly high: number;
  readonly cost: Float64Array;
}

/** How far from a first answer a better one is looked for, before anything is proved. */
const NEAR = 3;

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
  if (!isOpen(chain)) return null;
  const costs = new ChainCosts(problem, chain);
  if (chain.up && chain.down) return solveConstant(costs);
  const best = chain.low.map((low, size) => costs.best(size, low, chain.high[size]!));
  const first = inOrder(
    best.map(({ k }) => k),
    chain,
  );
  const ceiling = solveLayers(
    first.map((k, size) =>
      layerOf(costs, size, Math.max(chain.low[size]!, k - NEAR), Math.min(chain.high[size]!, k + NEAR)),
    ),
    chain,
  )!;
  const floor = best.reduce((sum, { cost }) => sum + cost, 0);
  const spare = ceiling.cost - floor + costs.hair * costs.sizes;
  let proved = true;
  const ranges = best.map(({ k, cost }, size) => {
    const range = costs.within(size, k, chain.low[size]!, chain.high[size]!, cost + spare);
    if (range[0] < first[size]! - NEAR || range[1] > first[size]! + NEAR) proved = false;
    return range;
  });
  if (proved) return ceiling;
  const layers = cutLayers(
    ranges.map(([low, high], size) => layerOf(costs, size, low, high)),
    chain,
    ceiling.cost + costs.hair * costs.sizes,
  );
  return solveLayers(layers, chain);
}

/** One k for all sizes. */
function solveConstant(costs: ChainCosts): ChainAnswer {
  const { low, high } = costs.chain;
  const all = (k: number) => low.reduce((sum, _, size) => sum + costs.miss(size, k), 0);
  let cheapest = { k: Number.NaN, cost: Number.POSITIVE_INFINITY };
  const bests = low.map((a, size) => costs.best(size, a, high[size]!).k);
  // The sum over sizes is convex between the sizes' own bests, but for the rounding; so every k between is looked at.
  for (let k = Math.max(...bests); k >= Math.min(...bests); k--) {
    const cost = all(k);
    if (cost < cheapest.cost) cheapest = { k, cost };
  }
  return { k: low.map(() => cheapest.k), cost: cheapest.cost };
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

function layerOf(costs: ChainCosts, size: number, low: number, high: number): Layer {
  const cost = new Float64Array(high - low + 1);
  for (let i = 0; i < cost.length; i++) cost[i] = costs.miss(size, low + i);
  return { low, high, cost };
}

/** Leaves out k at both ends of each size that cost more than the ceiling with the best of all others in order. */
function cutLayers(layers: readonly Layer[], { up, down }: Chain, ceiling: number): readonly Layer[] {
  if (!up && !down) return layers;
  const before = layers.map(({ cost }) => new Float64Array(cost.length));
  const after = layers.map(({ cost }) => new Float64Array(cost.length));
  for (let s = 1; s < layers.length; s++)
    cheapestBeside(layers[s - 1]!, before[s - 1]!, layers[s]!, before[s]!, up);
  for (let s = layers.length - 2; s >= 0; s--) {
    cheapestBeside(layers[s + 1]!, after[s + 1]!, layers[s]!, after[s]!, !up);
  }
  return layers.map(({ low, cost }, s) => {
    const least = (i: number) => cost[i]! + before[s]![i]! + after[s]![i]!;
    let a = 0;
    let b = cost.length - 1;
    while (a < b && least(a) > ceiling) a++;
    while (b > a && least(b) > ceiling) b--;
    return { low: low + a, high: low + b, cost: cost.subarray(a, b + 1) };
  });
}

/** For each k of one size, the cheapest way through the sizes on one side, beginning with k not above (or not below) it. */
function cheapestBeside(
  from: Layer,
  fromRest: Float64Array,
  to: Layer,
  rest: Float64Array,
  notAbove: boolean,
): void {
  let cheapest = Number.POSITIVE_INFINITY;
  if (notAbove) {
    let i = 0;
    for (let k = to.low; k <= to.high; k++) {
      for (; i < from.cost.length && from.low + i <= k; i++)
        cheapest = Math.min(cheapest, from.cost[i]! + fromRest[i]!);
      rest[k - to.low] = cheapest;
    }
    return;
  }
  let i = from.cost.length - 1;
  for (let k = to.high; k >= to.low; k--) {
    for (; i >= 0 && from.low + i >= k; i--) cheapest = Math.min(cheapest, from.cost[i]! + fromRest[i]!);
    rest[k - to.low] = cheapest;
  }
}

/**
 * The best of all ways through the layers. State: k of two neighbouring sizes. What the next size adds depends on the state
 * only through the k that would keep the step, so all next k are weighed at once, by a distance transform along the layer:
 * time is the number of sizes times the square of a layer.
 *
 * @returns null when no way keeps the order
 */
export function solveLayers(layers: readonly Layer[], { up, down, steady }: Chain): ChainAnswer | null {
  const kept = (a: number, b: number) => !(up && b < a) && !(down && b > a);
  const last = layers.length - 1;
  const [zero, one] = layers;
  if (one === undefined) {
    const i = cheapestLast(zero!.cost);
    return { k: [zero!.low + i], cost: zero!.cost[i]! };
  }
  // rest[s]: the cheapest that sizes after s add, by k of size s − 1 (row) and k of size s (column).
  const rest = new Array<Float64Array>(layers.length);
  for (let s = last; s >= 1; s--) {
    const [before, here, next] = [layers[s - 1]!, layers[s]!, layers[s + 1]];
    const width = here.cost.length;
    const table = new Float64Array(before.cost.length * width);
    const reach = next === undefined ? null : new Float64Array(next.cost.length);
    for (let j = 0; j < width; j++) {
      const b = here.low + j;
      if (next !== undefined) weighNext(reach!, next, rest[s + 1]!, j, b, kept, steady);
      for (let i = 0; i < before.cost.length; i++) {
        const a = before.low + i;
        table[i * width + j] = !kept(a, b)
          ? Number.POSITIVE_INFINITY
          : next === undefined
            ? 0
            : costAt(reach!, 2 * b - a - next.low, steady);
      }
    }
    rest[s] = table;
  }
  let cheapest = Number.POSITIVE_INFINITY;
  let [i, j] = [-1, -1];
  for (let a = zero!.cost.length - 1; a >= 0; a--) {
    for (let b = one.cost.length - 1; b >= 0; b--) {
      const cost = zero!.cost[a]! + one.cost[b]! + rest[1]![a * one.cost.length + b]!;
      if (cost < cheapest) [cheapest, i, j] = [cost, a, b];
    }
  }
  if (i < 0) return null;
  const k = [zero!.low + i, one.low + j];
  for (let s = 2; s <= last; s++) {
    const { low, cost } = layers[s]!;
    const wish = 2 * k[s - 1]! - k[s - 2]!;
    let least = Number.POSITIVE_INFINITY;
    let best = -1;
    for (let c = cost.length - 1; c >= 0; c--) {
      const adds = cost[c]! + rest[s]![j * cost.length + c]! + steady * Math.abs(low + c - wish);
      if (adds < least) [least, best] = [adds, c];
    }
    k.push(low + best);
    j = best;
  }
  return { k, cost: cheapest };
}

/** For every k that would keep the step, the cheapest next k with its change of step. */
function weighNext(
  reach: Float64Array,
  next: Layer,
  rest: Float64Array,
  row: number,
  b: number,
  kept: (a: number, b: number) => boolean,
  steady: number,
): void {
  const width = reach.length;
  for (let c = 0; c < width; c++) {
    reach[c] = kept(b, next.low + c) ? next.cost[c]! + rest[row * width + c]! : Number.POSITIVE_INFINITY;
  }
  for (let c = 1; c < width; c++) reach[c] = Math.min(reach[c]!, reach[c - 1]! + steady);
  for (let c = width - 2; c >= 0; c--) reach[c] = Math.min(reach[c]!, reach[c + 1]! + steady);
}

/** Beyond the ends of a layer the change of step grows by one for each k. */
function costAt(reach: Float64Array, at: number, steady: number): number {
  const last = reach.length - 1;
  if (at < 0) return reach[0]! - steady * at;
  return at > last ? reach[last]! + steady * (at - last) : reach[at]!;
}

function cheapestLast(cost: Float64Array): number {
  let best = cost.length - 1;
  for (let i = best - 1; i >= 0; i--) if (cost[i]! < cost[best]!) best = i;
  return best;
}
