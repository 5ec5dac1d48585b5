import type { ChainCosts } from "./chain-costs.ts";
import { type Chain, HAIR, type Link } from "./model.ts";

/** The k of all chains of a block in one size. */
export interface Tuple {
  readonly k: readonly number[];
  /** Sum of misses, in millionths. */
  readonly cost: number;
}

/** Tuples of one size that keep all links. */
export interface Found {
  readonly tuples: readonly Tuple[];
  /** Whether these are all there are up to the ceiling; false when the search was stopped. */
  readonly complete: boolean;
}

/** Where a search for tuples stops. Steps, not seconds, so that every machine stops at the same place. */
export interface SearchLimit {
  readonly tuples: number;
  readonly steps: number;
}

/** Looks for the tuples of one size of a block, cheapest first in the large. */
export class TupleSearch {
  /** The least a chain can cost in this size. */
  private readonly best: readonly { readonly k: number; readonly cost: number }[];
  /** Sum of the least costs. */
  readonly floor: number;

  constructor(
    private readonly chains: readonly Chain[],
    private readonly costs: readonly ChainCosts[],
    private readonly links: readonly Link[],
    private readonly size: number,
  ) {
    this.best = costs.map((one, i) => one.best(size, chains[i]!.low[size]!, chains[i]!.high[size]!));
    this.floor = this.best.reduce((sum, { cost }, i) => sum + cost - costs[i]!.hair, 0);
  }

  /** All tuples that cost no more than the ceiling. */
  upTo(ceiling: number, limit: SearchLimit): Found {
    const { chains, costs, links, size } = this;
    const spare = ceiling - this.floor;
    if (spare < 0) return { tuples: [], complete: true };
    const windows = costs.map((one, i) =>
      one.within(
        size,
        this.best[i]!.k,
        chains[i]!.low[size]!,
        chains[i]!.high[size]!,
        this.best[i]!.cost + spare,
      ),
    );
    const rest = windows.map((_, i) =>
      this.best.slice(i + 1).reduce((sum, { cost }, j) => sum + cost - costs[i + 1 + j]!.hair, 0),
    );
    const reaches = links.map((link) => reachAfter(link, windows));
    const sums = new Float64Array(links.length);
    const k = new Array<number>(chains.length).fill(0);
    const tuples: Tuple[] = [];
    let steps = 0;
    let complete = true;

    const walk = (depth: number, cost: number): void => {
      if (depth === chains.length) {
        if (tuples.length >= limit.tuples) complete = false;
        else tuples.push({ k: [...k], cost });
        return;
      }
      let [low, high] = windows[depth]!;
      for (let i = 0; i < links.length; i++) {
        const { times, least, most } = reaches[i]![depth]!;
        if (times === 0) continue;
        const from = (links[i]!.least - sums[i]! - most - HAIR) / times;
        const to = (links[i]!.most - sums[i]! - least + HAIR) / times;
        low = Math.max(low, Math.ceil(Math.min(from, to)));
        high = Math.min(high, Math.floor(Math.max(from, to)));
      }
      for (let here = high; here >= low && complete; here--) {
        if (++steps > limit.steps) complete = false;
        const sum = cost + costs[depth]!.miss(size, here);
        if (sum + rest[depth]! > ceiling) continue;
        k[depth] = here;
        for (let i = 0; i < links.length; i++) sums[i]! += reaches[i]![depth]!.times * here;
        walk(depth + 1, sum);
        for (let i = 0; i < links.length; i++) sums[i]! -= reaches[i]![depth]!.times * here;
      }
    };
    walk(0, 0);
    return { tuples, complete };
  }

  /**
   * The cheapest tuples: the ceiling is raised until there are enough.
   *
   * @param enough  how many tuples, if there are so many
   * @returns       `complete` when there are no others at all, or when the search was not stopped and all that cost up to
   *                the dearest of these are among them; `whole` when there are no others at all
   */
  cheapest(enough: number, limit: SearchLimit): Found & { readonly whole: boolean } {
    let spare = 250_000;
    for (;;) {
      const ceiling = this.floor + spare;
      const found = this.upTo(ceiling, limit);
      const whole = found.complete && this.isWhole(ceiling);
      if (!found.complete || whole || found.tuples.length >= enough) return { ...found, whole };
      spare *= 2;
    }
  }

  /** Whether even the dearest k that the bounds allow, all together, lie below the ceiling. */
  private isWhole(ceiling: number): boolean {
    const { chains, costs, size } = this;
    const dearest = chains.reduce((sum, { low, high }, i) => {
      const [a, b] = [costs[i]!.miss(size, low[size]!), costs[i]!.miss(size, high[size]!)];
      return sum + Math.max(a, b) + costs[i]!.hair;
    }, 0);
    return dearest <= ceiling;
  }
}

/** For each chain of a link, how often it is taken, and between what the chains after it can bring the sum. */
function reachAfter(
  { terms }: Link,
  windows: readonly (readonly [number, number])[],
): readonly { readonly times: number; readonly least: number; readonly most: number }[] {
  const times = windows.map((_, i) => terms.find(({ chain }) => chain === i)?.times ?? 0);
  const reach: { times: number; least: number; most: number }[] = [];
  let [least, most] = [0, 0];
  for (let i = windows.length - 1; i >= 0; i--) {
    reach[i] = { times: times[i]!, least, most };
    const [a, b] = [times[i]! * windows[i]![0], times[i]! * windows[i]![1]];
    least += Math.min(a, b);
    most += Math.max(a, b);
  }
  return reach;
}
