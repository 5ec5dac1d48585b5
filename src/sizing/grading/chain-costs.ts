import type { Chain } from "./model.ts";
import { type GradingProblem, MICRO, weightOf } from "./problem.ts";

/** What a chain costs at each k of each size, in whole millionths of a weighted cm. */
export class ChainCosts {
  readonly sizes: number;
  private readonly members: number;
  private readonly unit: Float64Array;
  private readonly factor: Float64Array;
  private readonly offset: Float64Array;
  /** By size, then member. */
  private readonly target: Float64Array;
  private readonly weight: Float64Array;
  /**
   * What each k of a size costs besides its misses; 0 unless a search for sums sets it. Costs remain convex in k, so all
   * that is said of misses below holds for tilted ones.
   */
  readonly tilt: Float64Array;

  constructor(
    problem: GradingProblem,
    readonly chain: Chain,
  ) {
    const { members } = chain;
    this.sizes = problem.sizes.length;
    this.tilt = new Float64Array(this.sizes);
    this.members = members.length;
    this.unit = new Float64Array(members.length);
    this.factor = new Float64Array(members.length);
    this.offset = new Float64Array(members.length);
    this.target = new Float64Array(members.length * this.sizes);
    this.weight = new Float64Array(members.length * this.sizes);
    for (const [v, { quantity, factor, offset }] of members.entries()) {
      const one = problem.quantities[quantity]!;
      this.unit[v] = one.unit;
      this.factor[v] = factor;
      this.offset[v] = offset;
      for (let size = 0; size < this.sizes; size++) {
        this.target[size * members.length + v] = one.targets[size]!;
        this.weight[size * members.length + v] = MICRO * weightOf(one, size);
      }
    }
  }

  /** Weighted misses of all members, tilted. */
  miss(size: number, k: number): number {
    let cost = this.tilt[size]! * k;
    for (let v = 0; v < this.members; v++) cost += this.missOf(v, size, k);
    return cost;
  }

  /** The largest weighted miss of a member. */
  worst(size: number, k: number): number {
    let worst = 0;
    for (let v = 0; v < this.members; v++) worst = Math.max(worst, this.missOf(v, size, k));
    return worst;
  }

  /** What changes of step cost along the whole chain. */
  steps(k: readonly number[]): number {
    let cost = 0;
    for (let s = 2; s < k.length; s++)
      cost += this.chain.steady * Math.abs(k[s]! - 2 * k[s - 1]! + k[s - 2]!);
    return cost;
  }

  /** All of it. */
  total(k: readonly number[]): number {
    return k.reduce((sum, one, size) => sum + this.miss(size, one), this.steps(k));
  }

  /**
   * The cheapest k of a size between two bounds. The sum of misses is convex but for the rounding to millionths, so one of
   * the members' own wishes, or a bound, is cheapest within `hair`.
   */
  best(size: number, low: number, high: number): { readonly k: number; readonly cost: number } {
    let k = Number.NaN;
    let cost = Number.POSITIVE_INFINITY;
    // A steep tilt may make a bound cheapest even where all wishes lie elsewhere.
    if (this.tilt[size] !== 0) {
      k = this.tilt[size]! > 0 ? low : high;
      cost = this.miss(size, k);
    }
    for (let v = 0; v < this.members; v++) {
      const floor = Math.floor(this.wishOf(v, size));
      for (let side = 0; side < 2; side++) {
        const here = Math.min(high, Math.max(low, floor + side));
        const costs = this.miss(size, here);
        if (costs < cost || (costs === cost && here > k)) {
          k = here;
          cost = costs;
        }
      }
    }
    return { k, cost };
  }

  /** The cheapest k that neighbouring sizes, from one to another, can have in common; between the bounds of all of them. */
  bestInCommon(from: number, to: number): { readonly k: number; readonly cost: number } {
    const { low, high } = this.chain;
    const [least, most] = [Math.max(low[from]!, low[to]!), Math.min(high[from]!, high[to]!)];
    let best = { k: Number.NaN, cost: Number.POSITIVE_INFINITY };
    const weigh = (k: number) => {
      let cost = 0;
      for (let size = from; size <= to; size++) cost += this.miss(size, k);
      if (cost < best.cost || (cost === best.cost && k > best.k)) best = { k, cost };
    };
    weigh(least);
    weigh(most);
    for (let size = from; size <= to; size++) {
      for (let v = 0; v < this.members; v++) {
        const wish = Math.floor(this.wishOf(v, size));
        weigh(Math.min(most, Math.max(least, wish)));
        weigh(Math.min(most, Math.max(least, wish + 1)));
      }
    }
    return best;
  }

  /** The k of a size between two bounds whose largest weighted miss is smallest, and that miss. */
  leastWorst(size: number, low: number, high: number): { readonly k: number; readonly cost: number } {
    let [a, b] = [low, high];
    // Convex, but for plateaus from rounding, which are flat at the bottom alone: each miss is a straight line upwards.
    while (b - a > 2) {
      const left = a + Math.floor((b - a) / 3);
      const right = b - Math.floor((b - a) / 3);
      if (this.worst(size, left) <= this.worst(size, right)) b = right;
      else a = left;
    }
    let k = a;
    for (let here = a + 1; here <= b; here++) if (this.worst(size, here) < this.worst(size, k)) k = here;
    return { k, cost: this.worst(size, k) };
  }

  /** By how much rounding to millionths can make a cheapest k look dear, in one size. */
  get hair(): number {
    return 2 * this.members;
  }

  /** The k around a cheapest one, within bounds, that cost no more than `most`. */
  within(
    size: number,
    from: number,
    low: number,
    high: number,
    most: number,
  ): readonly [low: number, high: number] {
    let a = from;
    let b = from;
    while (a > low && this.miss(size, a - 1) <= most) a--;
    while (b < high && this.miss(size, b + 1) <= most) b++;
    return [a, b];
  }

  /** The k, seldom whole, at which a member measures what is wanted. */
  private wishOf(v: number, size: number): number {
    return (this.target[size * this.members + v]! / this.unit[v]! - this.offset[v]!) / this.factor[v]!;
  }

  private missOf(v: number, size: number, k: number): number {
    const at = size * this.members + v;
    return Math.round(
      this.weight[at]! * Math.abs(this.unit[v]! * (this.factor[v]! * k + this.offset[v]!) - this.target[at]!),
    );
  }
}
