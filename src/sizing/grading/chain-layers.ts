import type { ChainCosts } from "./chain-costs.ts";
import type { Chain } from "./model.ts";

/** The cheapest k of a chain, with its cost in millionths. */
export interface ChainAnswer {
  /** One k per size. */
  readonly k: readonly number[];
  readonly cost: number;
}

/** k of one size between two bounds, with what each costs. */
export interface Layer {
  readonly low: number;
  readonly high: number;
  readonly cost: Float64Array;
}

/** What a chain's order and smoothness ask of neighbouring sizes. */
type Steps = Pick<Chain, "up" | "down" | "steady">;

export function layerOf(costs: ChainCosts, size: number, low: number, high: number): Layer {
  const cost = new Float64Array(high - low + 1);
  for (let i = 0; i < cost.length; i++) cost[i] = costs.miss(size, low + i);
  return { low, high, cost };
}

/** Leaves out k at both ends of each size that cost more than the ceiling with the best of all others in order. */
export function cutLayers(layers: readonly Layer[], steps: Steps, ceiling: number): readonly Layer[] {
  if (!steps.up && !steps.down) return layers;
  const through = costsThroughUnsteady(layers, steps);
  return layers.map(({ low, cost }, s) => {
    let a = 0;
    let b = cost.length - 1;
    while (a < b && through[s]![a]! > ceiling) a++;
    while (b > a && through[s]![b]! > ceiling) b--;
    return { low: low + a, high: low + b, cost: cost.subarray(a, b + 1) };
  });
}

/** As `costsThrough` with changes of step left out: never more, and in time that grows with the layers, not their squares. */
export function costsThroughUnsteady(layers: readonly Layer[], { up, down }: Steps): readonly Float64Array[] {
  if (!up && !down) {
    const least = layers.map(({ cost }) => cost.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY));
    const sum = least.reduce((a, b) => a + b, 0);
    return layers.map(({ cost }, s) => cost.map((one) => one + sum - least[s]!));
  }
  const before = layers.map(({ cost }) => new Float64Array(cost.length));
  const after = layers.map(({ cost }) => new Float64Array(cost.length));
  for (let s = 1; s < layers.length; s++) {
    cheapestBeside(layers[s - 1]!, before[s - 1]!, layers[s]!, before[s]!, up);
  }
  for (let s = layers.length - 2; s >= 0; s--) {
    cheapestBeside(layers[s + 1]!, after[s + 1]!, layers[s]!, after[s]!, !up);
  }
  return layers.map(({ cost }, s) => cost.map((one, i) => one + before[s]![i]! + after[s]![i]!));
}

/** How many pairs of neighbouring k the layers hold: what an exact answer takes time and room for. */
export function pairsOf(layers: readonly { readonly low: number; readonly high: number }[]): number {
  let pairs = 0;
  for (let s = 1; s < layers.length; s++) {
    pairs += (layers[s]!.high - layers[s]!.low + 1) * (layers[s - 1]!.high - layers[s - 1]!.low + 1);
  }
  return pairs;
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
 * The best of all ways through the layers; of equal ones the one with more counts in the first size, then the next.
 *
 * @returns null when no way keeps the order
 */
export function solveLayers(layers: readonly Layer[], steps: Steps): ChainAnswer | null {
  const last = layers.length - 1;
  const [zero, one] = layers;
  if (one === undefined) {
    const i = cheapestLast(zero!.cost);
    return { k: [zero!.low + i], cost: zero!.cost[i]! };
  }
  const rest = costsBeyond(layers, steps);
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
      const adds = cost[c]! + rest[s]![j * cost.length + c]! + steps.steady * Math.abs(low + c - wish);
      if (adds < least) [least, best] = [adds, c];
    }
    k.push(low + best);
    j = best;
  }
  return { k, cost: cheapest };
}

/**
 * For every k of every size, the cost of the cheapest way through the layers that passes there; infinite where none does.
 */
export function costsThrough(layers: readonly Layer[], steps: Steps): readonly Float64Array[] {
  const last = layers.length - 1;
  if (last === 0) return [layers[0]!.cost];
  const rest = costsBeyond(layers, steps);
  // Seen from the last size a change of step costs the same, and up is down.
  const back = costsBeyond([...layers].reverse(), { ...steps, up: steps.down, down: steps.up });
  const through = layers.map(({ cost }) => new Float64Array(cost.length).fill(Number.POSITIVE_INFINITY));
  for (let s = 1; s <= last; s++) {
    const [left, right] = [layers[s - 1]!.cost, layers[s]!.cost];
    for (let a = 0; a < left.length; a++) {
      for (let b = 0; b < right.length; b++) {
        const beyond = rest[s]![a * right.length + b]! + back[last - s + 1]![b * left.length + a]!;
        const cost = left[a]! + right[b]! + beyond;
        if (cost < through[s]![b]!) through[s]![b] = cost;
        if (s === 1 && cost < through[0]![a]!) through[0]![a] = cost;
      }
    }
  }
  return through;
}

/**
 * The cheapest that the sizes after s add, by k of size s − 1 (row) and k of size s (column), for s from 1 on. What the next
 * size adds depends on the two only through the k that would keep the step, so all next k are weighed at once, by a distance
 * transform along the layer: time is the number of sizes times the square of a layer.
 */
function costsBeyond(layers: readonly Layer[], { up, down, steady }: Steps): readonly Float64Array[] {
  const kept = (a: number, b: number) => !(up && b < a) && !(down && b > a);
  const rest = new Array<Float64Array>(layers.length);
  for (let s = layers.length - 1; s >= 1; s--) {
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
  return rest;
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
