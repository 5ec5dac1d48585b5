import { HAIR, type Link } from "./model.ts";
import type { Excess } from "./solve-chains.ts";

/** k of all chains of a block in one size that keep all links. */
export type Tuple = readonly number[];

/** Tuples of one size. */
export interface Found {
  readonly tuples: readonly Tuple[];
  /** Whether these are all there are up to the spare cost; false when the search was stopped. */
  readonly complete: boolean;
}

/** Where a search for tuples stops. Steps, not seconds, so that every machine stops at the same place. */
export interface SearchLimit {
  readonly tuples: number;
  readonly steps: number;
}

/**
 * The tuples of one size that keep all links and whose chains together cost at most some more than their cheapest.
 *
 * @param excess  what each k costs more, by chain of the block; k outside are left out
 * @param spare   in millionths
 */
export function findTuples(
  excess: readonly Excess[],
  links: readonly Link[],
  spare: number,
  limit: SearchLimit,
): Found {
  const order = closeLinksEarly(excess, links);
  const times = links.map(({ terms }) =>
    order.map((chain) => terms.find((term) => term.chain === chain)?.times ?? 0),
  );
  const reaches = links.map((_, l) =>
    reachAfter(
      times[l]!,
      order.map((chain) => excess[chain]!),
    ),
  );
  const sums = new Float64Array(links.length);
  const k = new Array<number>(excess.length).fill(0);
  const tuples: Tuple[] = [];
  let steps = 0;
  let complete = true;

  const walk = (depth: number, cost: number): void => {
    if (depth === order.length) {
      if (tuples.length >= limit.tuples) complete = false;
      else tuples.push([...k]);
      return;
    }
    const { low: first, more } = excess[order[depth]!]!;
    let [low, high] = [first, first + more.length - 1];
    for (const [l, link] of links.entries()) {
      const factor = times[l]![depth]!;
      if (factor === 0) continue;
      const { least, most } = reaches[l]![depth]!;
      const from = (link.least - sums[l]! - most - HAIR) / factor;
      const to = (link.most - sums[l]! - least + HAIR) / factor;
      low = Math.max(low, Math.ceil(Math.min(from, to)));
      high = Math.min(high, Math.floor(Math.max(from, to)));
    }
    for (let here = high; here >= low && complete; here--) {
      if (++steps > limit.steps) complete = false;
      const sum = cost + more[here - first]!;
      if (sum > spare) continue;
      k[order[depth]!] = here;
      for (let l = 0; l < links.length; l++) sums[l]! += times[l]![depth]! * here;
      walk(depth + 1, sum);
      for (let l = 0; l < links.length; l++) sums[l]! -= times[l]![depth]! * here;
    }
  };
  walk(0, 0);
  return { tuples, complete };
}

/** Chains in an order in which links are soon complete: next always one of the link with the fewest chains still to come. */
function closeLinksEarly(excess: readonly Excess[], links: readonly Link[]): readonly number[] {
  const order: number[] = [];
  const open = new Set(excess.keys());
  while (open.size > 0) {
    const waiting = links
      .map(({ terms }) => terms.map(({ chain }) => chain).filter((chain) => open.has(chain)))
      .filter((chains) => chains.length > 0)
      .sort((a, b) => a.length - b.length || a[0]! - b[0]!)[0];
    const from = waiting ?? [...open];
    const next = from.reduce((a, b) => (excess[b]!.more.length < excess[a]!.more.length ? b : a));
    order.push(next);
    open.delete(next);
  }
  return order;
}

/** For each place in the order, between what the chains after it can bring a link's sum. */
function reachAfter(
  times: readonly number[],
  excess: readonly Excess[],
): readonly { readonly least: number; readonly most: number }[] {
  const reach: { least: number; most: number }[] = [];
  let [least, most] = [0, 0];
  for (let i = times.length - 1; i >= 0; i--) {
    reach[i] = { least, most };
    const { low, more } = excess[i]!;
    const [a, b] = [times[i]! * low, times[i]! * (low + more.length - 1)];
    least += Math.min(a, b);
    most += Math.max(a, b);
  }
  return reach;
}
