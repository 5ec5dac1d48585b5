import { type Chain, HAIR, isOpen, type Link, type Model, settleOrder } from "./model.ts";

/** Chains that links tie together; a chain without links is a block of its own. Blocks are solved one by one. */
export interface Block {
  /** Indices into the model's chains, ascending. */
  readonly chains: readonly number[];
  /** Links among them, with terms by position in `chains`. */
  readonly links: readonly Link[];
}

/** Cuts a model where nothing ties its parts together. */
export function blocksOf({ chains, links }: Model): readonly Block[] {
  const group = chains.map((_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (group[root] !== root) root = group[root]!;
    group[i] = root;
    return root;
  };
  for (const { terms } of links) {
    for (const { chain } of terms) {
      const [a, b] = [rootOf(terms[0]!.chain), rootOf(chain)];
      group[Math.max(a, b)] = Math.min(a, b);
    }
  }
  const members = new Map<number, number[]>();
  for (let i = 0; i < chains.length; i++) {
    const root = rootOf(i);
    if (!members.has(root)) members.set(root, []);
    members.get(root)!.push(i);
  }
  return [...members].map(([root, inside]) => ({
    chains: inside,
    links: links
      .filter(({ terms }) => rootOf(terms[0]!.chain) === root)
      .map((link) => ({
        ...link,
        terms: link.terms.map(({ chain, times }) => ({ chain: inside.indexOf(chain), times })),
      })),
  }));
}

/** Copies of chains that may be narrowed. */
export function copyChains(chains: readonly Chain[]): Chain[] {
  return chains.map((chain) => ({ ...chain, low: [...chain.low], high: [...chain.high] }));
}

/**
 * Narrows the k of every size by links and order as far as bounds alone go.
 *
 * @param chains  of a block, by position; changed in place
 * @returns       false when nothing is left: then no counts keep the rules
 */
export function narrowByLinks(chains: readonly Chain[], links: readonly Link[]): boolean {
  for (let round = 0; round < 100; round++) {
    for (const chain of chains) settleOrder(chain);
    if (!chains.every(isOpen)) return false;
    let narrowed = false;
    for (const link of links) {
      for (let size = 0; size < chains[0]!.low.length; size++) {
        if (narrowSize(chains, link, size)) narrowed = true;
      }
    }
    if (!narrowed) return true;
  }
  return true;
}

/** Whether the k of one size keep a link. */
export function keepsLink({ terms, least, most }: Link, k: (chain: number) => number): boolean {
  let sum = 0;
  for (const { chain, times } of terms) sum += times * k(chain);
  return sum >= least - HAIR && sum <= most + HAIR;
}

function narrowSize(chains: readonly Chain[], { terms, least, most }: Link, size: number): boolean {
  let [low, high] = [0, 0];
  for (const { chain, times } of terms) {
    const [a, b] = ends(chains[chain]!, times, size);
    low += a;
    high += b;
  }
  let narrowed = false;
  for (const { chain, times } of terms) {
    const one = chains[chain]!;
    const [a, b] = ends(one, times, size);
    // What the others leave for this term, between the least and the most they can come to.
    const from = (least - (high - b) - HAIR) / times;
    const to = (most - (low - a) + HAIR) / times;
    const [newLow, newHigh] = [Math.ceil(Math.min(from, to)), Math.floor(Math.max(from, to))];
    if (newLow > one.low[size]!) {
      one.low[size] = newLow;
      narrowed = true;
    }
    if (newHigh < one.high[size]!) {
      one.high[size] = newHigh;
      narrowed = true;
    }
    const [c, d] = ends(one, times, size);
    low += c - a;
    high += d - b;
  }
  return narrowed;
}

function ends(chain: Chain, times: number, size: number): readonly [number, number] {
  const [a, b] = [times * chain.low[size]!, times * chain.high[size]!];
  return a < b ? [a, b] : [b, a];
}
