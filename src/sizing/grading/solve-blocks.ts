import { type Block, copyChains, narrowByLinks } from "./blocks.ts";
import { ChainCosts } from "./chain-costs.ts";
import { dive } from "./dive.ts";
import type { Chain, Model } from "./model.ts";
import { priceLinks } from "./prices.ts";
import type { GradingProblem } from "./problem.ts";
import { remaindersAgree } from "./remainders.ts";
import { excessOf, solveChain } from "./solve-chains.ts";
import {
  bestTuples,
  cutTuples,
  firstPath,
  layerOfTuples,
  solveTupleLayers,
  type TupleAnswer,
  type TupleLayer,
  type TuplePath,
} from "./solve-tuples.ts";
import { findTuples } from "./tuples.ts";

/** What can be said about a block. Costs are in millionths. */
export type BlockAnswer =
  | {
      readonly kind: "found";
      /** k by chain of the block, then by size. */
      readonly k: readonly (readonly number[])[];
      readonly cost: number;
      /** No answer costs less. */
      readonly floor: number;
      /** Whether none is cheaper, and all ties were settled in the fixed order. */
      readonly proved: boolean;
    }
  /** No counts keep the rules; proved. */
  | { readonly kind: "none" }
  /** The search was stopped before any counts were found. */
  | { readonly kind: "unknown"; readonly floor: number };

/** How much work is put into a block before it is left to a solver; steps, so that every machine stops alike. */
const LIMIT = { tuples: 1200, steps: 60_000 };
const MOST_STEPS = 6_000_000;
/** Tuples of each size that a first answer is made from. */
const BEAM = 40;
/** A first guess at what links cost, in millionths; doubled until there is an answer. */
const FIRST_SPARE = 250_000;

/**
 * Solves a block: a lone chain exactly; linked chains first as if there were no links, then over the tuples that keep them.
 * When all tuples that could matter were looked at, the answer is proved to be the best.
 *
 * @param known  k of an answer found elsewhere, by chain, then size: a ceiling for the search
 */
export function solveBlock(
  problem: GradingProblem,
  model: Model,
  block: Block,
  known?: readonly (readonly number[])[],
): BlockAnswer {
  const own = block.chains.map((chain) => model.chains[chain]!);
  const single = own.length === 1 && block.links.length === 0 ? own[0] : undefined;
  if (single !== undefined) {
    const answer = solveChain(problem, single);
    return answer === null ? { kind: "none" } : proved([answer.k], answer.cost);
  }
  const chains = copyChains(own);
  if (!remaindersAgree(block.links, chains.length)) return { kind: "none" };
  if (!narrowByLinks(chains, block.links)) return { kind: "none" };
  return searchTuples(problem, block, chains, known);
}

/** How often prices are moved for a first answer, which is wanted at once. */
const FIRST_ROUNDS = 30;

/**
 * An answer at once, good but seldom the best, with a floor that says how far it may be off: a lone chain exactly, linked chains
 * size by size at a first guess of what their links cost. "unknown" where that runs into a corner.
 */
export function answerBlockAtOnce(problem: GradingProblem, model: Model, block: Block): BlockAnswer {
  if (block.links.length === 0) return solveBlock(problem, model, block);
  const chains = copyChains(block.chains.map((chain) => model.chains[chain]!));
  if (!remaindersAgree(block.links, chains.length)) return { kind: "none" };
  if (!narrowByLinks(chains, block.links)) return { kind: "none" };
  const tilted = chains.map((chain) => new ChainCosts(problem, chain));
  const { floor } = priceLinks(tilted, block.links, FIRST_ROUNDS);
  const sizes = [...problem.sizes.keys()];
  const path =
    dive(chains, tilted, block.links, sizes) ?? dive(chains, tilted, block.links, sizes.toReversed());
  if (path === null) return { kind: "unknown", floor };
  const k = turned(path);
  const cost = costOfBlock(problem, chains, k);
  return { kind: "found", k, cost, floor: Math.min(floor, cost), proved: floor >= cost };
}

/** What a block cannot go below when one of its k is made to be another, in millionths. */
export interface ForcedFloors {
  /** No answer at all costs less. */
  readonly floor: number;
  /**
   * No answer in which a chain, by position in the block, has a k of this size or more (or less) costs less than so much above
   * the floor; never more than `spare`.
   */
  more(chain: number, size: number, k: number, side: "at least" | "at most"): number;
}

/**
 * Floors for forced k, from links priced once: quick to ask, never too high, and close where prices settle the links.
 *
 * @param spare  what costs so much more than the floor does not matter
 * @returns      null when no counts keep the rules
 */
export function forcedFloors(
  problem: GradingProblem,
  model: Model,
  block: Block,
  spare: number,
): ForcedFloors | null {
  const chains = copyChains(block.chains.map((chain) => model.chains[chain]!));
  if (!narrowByLinks(chains, block.links)) return null;
  const costs = chains.map((chain) => new ChainCosts(problem, chain));
  const { floor, answers } = priceLinks(costs, block.links);
  const hair = costs.reduce((sum, one) => sum + 2 * (one.hair + 1) * one.sizes, 0);
  const excess = costs.map((one, i) => excessOf(one, answers[i]!.cost, spare + hair));
  return {
    floor,
    more: (chain, size, k, side) => {
      const { low, more } = excess[chain]![size]!;
      let least = spare + hair;
      for (const [i, one] of more.entries())
        if (side === "at least" ? low + i >= k : low + i <= k) least = Math.min(least, one);
      return least - hair;
    },
  };
}

/** The cost of an answer, from its k by chain and size. */
export function costOfBlock(
  problem: GradingProblem,
  chains: readonly Chain[],
  k: readonly (readonly number[])[],
): number {
  return chains.reduce((sum, chain, i) => sum + new ChainCosts(problem, chain).total(k[i]!), 0);
}

function searchTuples(
  problem: GradingProblem,
  { links }: Block,
  chains: readonly Chain[],
  known: readonly (readonly number[])[] | undefined,
): BlockAnswer {
  const plain = chains.map((chain) => new ChainCosts(problem, chain));
  const tilted = chains.map((chain) => new ChainCosts(problem, chain));
  const priced = priceLinks(tilted, links);
  const { floor, answers, paid } = priced;
  let best: TupleAnswer | null =
    known === undefined ? null : { path: turned(known), cost: costOfBlock(problem, chains, known) };
  const hair = plain.reduce((sum, one) => sum + 2 * (one.hair + 1) * one.sizes, 0);

  /** All tuples that may be part of an answer that costs at most `spare` more than the floor. */
  const layersWithin = (spare: number) => {
    const excess = tilted.map((one, i) => excessOf(one, answers[i]!.cost, spare + hair));
    const found = problem.sizes.map((_, size) =>
      findTuples(
        excess.map((one) => one[size]!),
        links,
        spare + hair,
        LIMIT,
      ),
    );
    const layers = found.map(({ tuples }, size) =>
      layerOfTuples(
        tuples,
        chains.length,
        (tuple) => plain.reduce((sum, one, i) => sum + one.miss(size, tuple[i]!), 0),
        (tuple) => tilted.reduce((sum, one, i) => sum + one.miss(size, tuple[i]!), -paid[size]!),
      ),
    );
    return { layers, complete: found.every(({ complete }) => complete) };
  };

  const sizes = [...problem.sizes.keys()];
  for (const order of [sizes, sizes.toReversed()]) {
    const path = dive(chains, tilted, links, order);
    if (path !== null) best = cheaper(best, { path, cost: costOfBlock(problem, chains, turned(path)) });
  }
  // A better one: what is spared is doubled until there is one, or all there is was looked at, or enough was.
  const everything = dearest(plain) - floor;
  let grow = 2;
  for (let spare = FIRST_SPARE; best === null || spare < best.cost - floor; spare *= grow) {
    const { layers, complete } = layersWithin(spare);
    const found = beam(layers, chains);
    best = cheaper(best, found);
    if (found !== null) break;
    if (complete && spare > everything) return { kind: "none" };
    if (complete) continue;
    // Too many tuples, none of which go together: a little less room may show fewer but better ones.
    if (grow < 1.1) break;
    spare /= grow;
    grow = Math.sqrt(grow);
  }
  if (best === null) return { kind: "unknown", floor };

  let { layers, complete } = layersWithin(best.cost - floor);
  if (!complete) {
    // Too many to look at all; the best of a part may still bring the ceiling down far enough.
    best = cheaper(best, beam(layers, chains))!;
    ({ layers, complete } = layersWithin(best.cost - floor));
    if (!complete) return bestSoFar(best, floor);
  }
  for (;;) {
    layers = [...cutTuples(layers, chains, best.cost + hair)];
    const exact = solveTupleLayers(layers, chains, best.cost + hair, MOST_STEPS);
    if (exact === null) return bestSoFar(best, floor);
    if (exact !== "too many") return proved(turned(exact.path), exact.cost);
    const better = beam(layers, chains);
    if (better === null || better.cost >= best.cost) return bestSoFar(best, floor);
    best = better;
  }
}

/** More than any k within bounds can cost. */
function dearest(costs: readonly ChainCosts[]): number {
  let sum = 1;
  for (const one of costs) {
    const { low, high, steady } = one.chain;
    const span = Math.max(...high) - Math.min(...low);
    for (const size of low.keys()) {
      sum += Math.max(one.miss(size, low[size]!), one.miss(size, high[size]!)) + 2 * steady * span;
    }
  }
  return sum;
}

/** The best way through the most promising tuples, or any way in order. */
function beam(layers: readonly TupleLayer[], chains: readonly Chain[]): TupleAnswer | null {
  const few = solveTupleLayers(
    bestTuples(layers, chains, BEAM),
    chains,
    Number.POSITIVE_INFINITY,
    MOST_STEPS,
  );
  return cheaper(few === "too many" ? null : few, firstPath(layers, chains));
}

function cheaper(a: TupleAnswer | null, b: TupleAnswer | null): TupleAnswer | null {
  if (a === null || b === null) return a ?? b;
  return b.cost < a.cost ? b : a;
}

function proved(k: readonly (readonly number[])[], cost: number): BlockAnswer {
  return { kind: "found", k, cost, floor: cost, proved: true };
}

function bestSoFar(best: TupleAnswer | null, floor: number): BlockAnswer {
  if (best === null) return { kind: "unknown", floor };
  return {
    kind: "found",
    k: turned(best.path),
    cost: best.cost,
    floor: Math.min(floor, best.cost),
    proved: false,
  };
}

/** Rows become columns: by size and chain, or by chain and size. */
function turned(path: TuplePath): readonly (readonly number[])[] {
  return path[0]!.map((_, i) => path.map((row) => row[i]!));
}
