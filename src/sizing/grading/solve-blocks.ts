import { type Block, copyChains, keepsLink, narrowByLinks } from "./blocks.ts";
import { ChainCosts } from "./chain-costs.ts";
import type { Chain, Model } from "./model.ts";
import type { GradingProblem } from "./problem.ts";
import { remaindersAgree } from "./remainders.ts";
import { type ChainAnswer, solveChain } from "./solve-chains.ts";
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
import { TupleSearch } from "./tuples.ts";

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
const BEAM = 40;
const WIDE_BEAM = 600;
const MOST_TUPLES = 4000;
const MOST_SEARCH_STEPS = 400_000;
const MOST_STEPS = 30_000_000;

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
  const alone = chains.map((chain) => solveChain(problem, chain));
  if (alone.includes(null)) return { kind: "none" };
  const free = alone as readonly ChainAnswer[];
  const floor = free.reduce((sum, { cost }) => sum + cost, 0);
  const sizes = problem.sizes.map((_, size) => size);
  if (sizes.every((size) => block.links.every((link) => keepsLink(link, (chain) => free[chain]!.k[size]!)))) {
    return proved(
      free.map(({ k }) => k),
      floor,
    );
  }
  return searchTuples(problem, block, chains, floor, known);
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
  block: Block,
  chains: readonly Chain[],
  freeFloor: number,
  known: readonly (readonly number[])[] | undefined,
): BlockAnswer {
  const costs = chains.map((chain) => new ChainCosts(problem, chain));
  const hair = costs.reduce((sum, one) => sum + one.hair, 0) * problem.sizes.length;
  const searches = problem.sizes.map((_, size) => new TupleSearch(chains, costs, block.links, size));
  const limit = { tuples: MOST_TUPLES, steps: MOST_SEARCH_STEPS };
  let best: TupleAnswer | null =
    known === undefined ? null : { path: turned(known), cost: costOfBlock(problem, chains, known) };
  let floors: readonly number[] = [];
  for (const enough of [BEAM, WIDE_BEAM]) {
    const found = searches.map((search) => search.cheapest(enough, limit));
    if (found.some(({ tuples, whole }) => whole && tuples.length === 0)) return { kind: "none" };
    if (found.some(({ tuples }) => tuples.length === 0)) return bestSoFar(best, freeFloor);
    const layers = found.map(({ tuples }) => layerOfTuples(tuples, chains.length));
    floors = found.map(({ tuples, complete }, size) =>
      complete
        ? tuples.reduce((least, { cost }) => Math.min(least, cost), Number.POSITIVE_INFINITY)
        : searches[size]!.floor,
    );
    best = cheaper(best, beam(layers, chains, BEAM));
    if (best !== null) break;
    if (found.every(({ whole }) => whole)) return { kind: "none" };
  }
  const sum = floors.reduce((all, one) => all + one, 0);
  if (best === null) return { kind: "unknown", floor: Math.max(freeFloor, sum) };

  const ceiling = best.cost + hair;
  const all = searches.map((search, size) => search.upTo(ceiling - sum + floors[size]!, limit));
  const floor = Math.max(freeFloor, sum);
  if (!all.every(({ complete }) => complete)) return bestSoFar(best, floor);
  let layers: readonly TupleLayer[] = all.map(({ tuples }) => layerOfTuples(tuples, chains.length));
  for (;;) {
    layers = cutTuples(layers, chains, best.cost + hair);
    const exact = solveTupleLayers(layers, chains, best.cost + hair, MOST_STEPS);
    if (exact === null) return bestSoFar(best, floor);
    if (exact !== "too many") return proved(turned(exact.path), exact.cost);
    const better = beam(layers, chains, BEAM);
    if (better === null || better.cost >= best.cost) return bestSoFar(best, floor);
    best = better;
  }
}

/** The best way through the most promising tuples, or any way in order. */
function beam(layers: readonly TupleLayer[], chains: readonly Chain[], width: number): TupleAnswer | null {
  const few = solveTupleLayers(
    bestTuples(layers, chains, width),
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
