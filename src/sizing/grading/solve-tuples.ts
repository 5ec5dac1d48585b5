import type { Chain } from "./model.ts";
import type { Tuple } from "./tuples.ts";

/** k by size, then by chain of the block. */
export type TuplePath = readonly (readonly number[])[];

/** The cheapest way through layers of tuples, with its cost in millionths. */
export interface TupleAnswer {
  readonly path: TuplePath;
  readonly cost: number;
}

/** Tuples of one size, those with more counts first, in arrays that a loop runs through quickly. */
export interface TupleLayer {
  readonly count: number;
  /** k by tuple, then chain. */
  readonly k: Int32Array;
  readonly cost: Float64Array;
  /** The cost with all links priced, see `priceLinks`: never above `cost`, and what nothing after it can fall below. */
  readonly floor: Float64Array;
}

/** The cheapest that the sizes before and after can be, for each tuple of each size, changes of step left out. */
interface Bounds {
  readonly before: readonly Float64Array[];
  readonly after: readonly Float64Array[];
}

/**
 * Puts tuples in the order in which ties are settled: more counts in the first chain first, then in the next.
 *
 * @param cost   by tuple
 * @param floor  by tuple
 */
export function layerOfTuples(
  tuples: readonly Tuple[],
  chains: number,
  cost: (tuple: Tuple) => number,
  floor: (tuple: Tuple) => number,
): TupleLayer {
  const sorted = [...tuples].sort((a, b) => {
    for (let i = 0; i < chains; i++) if (a[i] !== b[i]) return b[i]! - a[i]!;
    return 0;
  });
  const k = new Int32Array(sorted.length * chains);
  for (const [t, tuple] of sorted.entries()) k.set(tuple, t * chains);
  return {
    count: sorted.length,
    k,
    cost: Float64Array.from(sorted, cost),
    floor: Float64Array.from(sorted, floor),
  };
}

/** The cheapest way in order, changes of step left out of the choice but not of the cost; null when there is none. */
export function firstPath(layers: readonly TupleLayer[], chains: readonly Chain[]): TupleAnswer | null {
  const { after } = boundsOf(layers, chains);
  const path: number[] = [];
  for (let s = 0; s < layers.length; s++) {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let t = 0; t < layers[s]!.count; t++) {
      if (s > 0 && !inOrder(layers[s - 1]!, path[s - 1]!, layers[s]!, t, chains)) continue;
      const cost = layers[s]!.floor[t]! + after[s]![t]!;
      if (cost < least) [least, best] = [cost, t];
    }
    if (best < 0) return null;
    path.push(best);
  }
  return answerOf(layers, chains, path);
}

/** Leaves out what must cost more than the ceiling. */
export function cutTuples(
  layers: readonly TupleLayer[],
  chains: readonly Chain[],
  ceiling: number,
): readonly TupleLayer[] {
  const { before, after } = boundsOf(layers, chains);
  return layers.map((layer, s) =>
    pick(layer, chains.length, (t) => before[s]![t]! + layer.floor[t]! + after[s]![t]! <= ceiling),
  );
}

/** The most promising tuples of each size: those the cheapest ways go through. */
export function bestTuples(
  layers: readonly TupleLayer[],
  chains: readonly Chain[],
  most: number,
): readonly TupleLayer[] {
  const { before, after } = boundsOf(layers, chains);
  return layers.map((layer, s) => {
    const through = Array.from(layer.floor, (cost, t) => before[s]![t]! + cost + after[s]![t]!);
    const limit = [...through].sort((a, b) => a - b)[most - 1] ?? Number.POSITIVE_INFINITY;
    let room = most;
    return pick(
      layer,
      chains.length,
      (t) => through[t]! <= limit && Number.isFinite(through[t]!) && room-- > 0,
    );
  });
}

/**
 * The cheapest of all ways through the layers, by dynamic programming over pairs of neighbouring tuples.
 *
 * @param ceiling  cost of a way that is known; pairs that must cost more are left out
 * @param most     steps that may be taken
 * @returns        null when there is no way in order below the ceiling; "too many" when it would take more steps
 */
export function solveTupleLayers(
  layers: readonly TupleLayer[],
  chains: readonly Chain[],
  ceiling: number,
  most: number,
): TupleAnswer | null | "too many" {
  const n = chains.length;
  const last = layers.length - 1;
  if (last === 0) {
    let cheapest = 0;
    for (let t = 1; t < layers[0]!.count; t++)
      if (layers[0]!.cost[t]! < layers[0]!.cost[cheapest]!) cheapest = t;
    return layers[0]!.count > 0 && layers[0]!.cost[cheapest]! <= ceiling
      ? answerOf(layers, chains, [cheapest])
      : null;
  }
  const bounds = boundsOf(layers, chains);
  // next[s][a]: tuples of size s + 1 that may follow tuple a of size s.
  const next: number[][][] = [];
  for (let s = 0; s < last; s++) next.push(followers(layers, chains, bounds, s, ceiling));
  let steps = 0;
  for (let s = 1; s < last; s++)
    for (const after of next[s - 1]!) for (const b of after) steps += next[s]![b]!.length;
  if (steps > most) return "too many";

  // rest[s]: the cheapest that sizes after s add, by tuple of size s − 1 (row) and of size s (column).
  const rest: Float64Array[] = [];
  for (let s = last; s >= 1; s--) {
    const [before, here, beyond] = [layers[s - 1]!, layers[s]!, layers[s + 1]];
    const table = new Float64Array(before.count * here.count).fill(Number.POSITIVE_INFINITY);
    for (let a = 0; a < before.count; a++) {
      for (const b of next[s - 1]![a]!) {
        let least = beyond === undefined ? 0 : Number.POSITIVE_INFINITY;
        for (const c of beyond === undefined ? [] : next[s]![b]!) {
          const cost = beyond!.cost[c]! + rest[s + 1]![b * beyond!.count + c]!;
          if (cost < least) least = Math.min(least, cost + bend(before, a, here, b, beyond!, c, chains));
        }
        table[a * here.count + b] = least;
      }
    }
    rest[s] = table;
  }
  let least = Number.POSITIVE_INFINITY;
  let path: number[] = [];
  for (let a = 0; a < layers[0]!.count; a++) {
    for (const b of next[0]![a]!) {
      const cost = layers[0]!.cost[a]! + layers[1]!.cost[b]! + rest[1]![a * layers[1]!.count + b]!;
      if (cost < least) [least, path] = [cost, [a, b]];
    }
  }
  if (path.length === 0) return null;
  for (let s = 2; s <= last; s++) {
    const [a, b] = [path[s - 2]!, path[s - 1]!];
    let best = -1;
    let cheapest = Number.POSITIVE_INFINITY;
    for (const c of next[s - 1]![b]!) {
      const adds =
        layers[s]!.cost[c]! +
        rest[s]![b * layers[s]!.count + c]! +
        bend(layers[s - 2]!, a, layers[s - 1]!, b, layers[s]!, c, chains);
      if (adds < cheapest) [cheapest, best] = [adds, c];
    }
    path.push(best);
  }
  return { path: path.map((t, s) => kOf(layers[s]!, t, n)), cost: least };
}

function boundsOf(layers: readonly TupleLayer[], chains: readonly Chain[]): Bounds {
  const before = layers.map(({ count }) => new Float64Array(count));
  const after = layers.map(({ count }) => new Float64Array(count));
  const free = chains.every(({ up, down }) => !up && !down);
  for (let s = 1; s < layers.length; s++) {
    const [left, right] = [layers[s - 1]!, layers[s]!];
    const costs = Float64Array.from(left.floor, (cost, a) => cost + before[s - 1]![a]!);
    cheapestBeside(costs, right.count, before[s]!, free, (a, b) => inOrder(left, a, right, b, chains));
  }
  for (let s = layers.length - 2; s >= 0; s--) {
    const [left, right] = [layers[s]!, layers[s + 1]!];
    const costs = Float64Array.from(right.floor, (cost, b) => cost + after[s + 1]![b]!);
    cheapestBeside(costs, left.count, after[s]!, free, (b, a) => inOrder(left, a, right, b, chains));
  }
  return { before, after };
}

/** For each tuple of one size the cheapest of another that may stand beside it, tried from the cheapest on. */
function cheapestBeside(
  costs: Float64Array,
  count: number,
  into: Float64Array,
  free: boolean,
  fits: (from: number, to: number) => boolean,
): void {
  const order = Array.from(costs.keys()).sort((a, b) => costs[a]! - costs[b]!);
  for (let to = 0; to < count; to++) {
    const from = free ? order[0] : order.find((one) => fits(one, to));
    into[to] = from === undefined ? Number.POSITIVE_INFINITY : costs[from]!;
  }
}

function followers(
  layers: readonly TupleLayer[],
  chains: readonly Chain[],
  { before, after }: Bounds,
  s: number,
  ceiling: number,
): number[][] {
  const [left, right] = [layers[s]!, layers[s + 1]!];
  return Array.from({ length: left.count }, (_, a) => {
    const spare = ceiling - before[s]![a]! - left.floor[a]!;
    const list: number[] = [];
    for (let b = 0; b < right.count; b++) {
      if (right.floor[b]! + after[s + 1]![b]! <= spare && inOrder(left, a, right, b, chains)) list.push(b);
    }
    return list;
  });
}

function inOrder(
  left: TupleLayer,
  a: number,
  right: TupleLayer,
  b: number,
  chains: readonly Chain[],
): boolean {
  const n = chains.length;
  for (let i = 0; i < n; i++) {
    const step = right.k[b * n + i]! - left.k[a * n + i]!;
    if ((step < 0 && chains[i]!.up) || (step > 0 && chains[i]!.down)) return false;
  }
  return true;
}

/** What the change of step over three sizes costs. */
function bend(
  one: TupleLayer,
  a: number,
  two: TupleLayer,
  b: number,
  three: TupleLayer,
  c: number,
  chains: readonly Chain[],
): number {
  const n = chains.length;
  let cost = 0;
  for (let i = 0; i < n; i++) {
    cost += chains[i]!.steady * Math.abs(three.k[c * n + i]! - 2 * two.k[b * n + i]! + one.k[a * n + i]!);
  }
  return cost;
}

function pick(layer: TupleLayer, n: number, keep: (t: number) => boolean): TupleLayer {
  const kept = Array.from(layer.cost.keys()).filter(keep);
  const k = new Int32Array(kept.length * n);
  for (const [i, t] of kept.entries()) k.set(layer.k.subarray(t * n, t * n + n), i * n);
  return {
    count: kept.length,
    k,
    cost: Float64Array.from(kept, (t) => layer.cost[t]!),
    floor: Float64Array.from(kept, (t) => layer.floor[t]!),
  };
}

function answerOf(
  layers: readonly TupleLayer[],
  chains: readonly Chain[],
  path: readonly number[],
): TupleAnswer {
  let cost = 0;
  for (const [s, t] of path.entries()) {
    cost += layers[s]!.cost[t]!;
    if (s > 1)
      cost += bend(layers[s - 2]!, path[s - 2]!, layers[s - 1]!, path[s - 1]!, layers[s]!, t, chains);
  }
  return { path: path.map((t, s) => kOf(layers[s]!, t, chains.length)), cost };
}

function kOf(layer: TupleLayer, t: number, n: number): readonly number[] {
  return Array.from(layer.k.subarray(t * n, t * n + n));
}
