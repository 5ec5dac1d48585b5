import type { PerSize } from "../../base/index.ts";
import { nearestFitting } from "../multiples.ts";
import type { Cm, Count } from "../units.ts";
import { type Block, blocksOf } from "./blocks.ts";
import { capChain, leastWorstOf, smallestWhere } from "./cap.ts";
import { ChainCosts } from "./chain-costs.ts";
import { type Conflict, findConflict } from "./conflicts.ts";
import { buildModel, isOpen, type Model } from "./model.ts";
import { checkProblem, type GradingProblem, type GradingRule, MICRO, weightOf } from "./problem.ts";
import { answerBlockAtOnce, type BlockAnswer, solveBlock } from "./solve-blocks.ts";

/** What was chosen for one quantity, and how far it is from what was wanted. */
export interface Graded {
  readonly id: string;
  readonly counts: PerSize<Count>;
  readonly made: PerSize<Cm>;
  /** made − wanted. */
  readonly off: PerSize<Cm>;
  /** The smallest miss, of either sign, that its multiples and ties allow at all: "cannot be closer with this repeat". */
  readonly closest: PerSize<Cm>;
}

/** Counts for every quantity in every size that keep all rules. */
export interface Grading {
  readonly kind: "graded";
  /** In the order of the problem's quantities. */
  readonly quantities: readonly Graded[];
  /** Weighted cm: misses and changes of step. */
  readonly cost: number;
  /** The part of it that changes of step cost. */
  readonly stepCost: number;
  /** The largest weighted miss, cm. */
  readonly worst: number;
  /** No choice of counts costs less than this; equal to `cost` when the choice is proved to be the best. */
  readonly floor: number;
  /** What the nearest allowed counts would cost if no rule tied sizes or quantities together. */
  readonly latticeFloor: number;
  /** Whether this is the best there is; otherwise it is within cost − floor of it. */
  readonly proved: boolean;
}

/** Neither counts nor a proof that there are none were found within the limits. */
export interface Unsettled {
  readonly kind: "unsettled";
  readonly floor: number;
}

export type GradingResult = Grading | Conflict | Unsettled;

/**
 * Chooses every count of every size together.
 *
 * Exact wherever ties join quantities two by two. Where sums tie several counts, the answer is the best of a search that
 * mostly proves itself; if not, `proved` is false and `floor` says how much better another could be. A solver can then
 * settle it, see `gradeWithSolver`. Of several choices that cost the same, the one with more counts in the smallest size is
 * taken, first quantity first, then in the next size.
 *
 * @throws {RangeError} on a problem no designer can have meant, see `checkProblem`
 */
export function grade(problem: GradingProblem): GradingResult {
  checkProblem(problem);
  return gradeBy(problem, problem.rules);
}

/**
 * Counts that keep all rules, at once, for whoever waits for them while a slider moves: `floor` says how much better others may
 * be, and `grade` or `gradeWithSolver` finds them behind it. The largest miss is not minded, whatever the aim. Unsettled where
 * the quick way runs into a corner; a conflict is not looked into, so none of its rules are named.
 *
 * @throws {RangeError} on a problem no designer can have meant, see `checkProblem`
 */
export function gradeAtOnce(problem: GradingProblem): Grading | Unsettled | { readonly kind: "none" } {
  checkProblem(problem);
  const model = buildModel(problem);
  if ("kind" in model || !model.chains.every(isOpen)) return { kind: "none" };
  const blocks: BlockTried[] = [];
  for (const block of blocksOf(model)) {
    const answer = answerBlockAtOnce(problem, model, block);
    if (answer.kind === "none") return { kind: "none" };
    blocks.push({ block, answer });
  }
  return resultOf(problem, { kind: "solved", model, blocks });
}

/** As `grade`, with another list of rules and no look at the problem's form. */
export function gradeBy(problem: GradingProblem, rules: readonly GradingRule[]): GradingResult {
  const solved = solveRules(problem, rules);
  return solved.kind === "none" ? findConflict(problem, rules) : resultOf(problem, solved);
}

/** As `gradeBy`, where it does not matter why there is nothing: null on a conflict, and when a search was stopped. */
export function gradeIfAble(problem: GradingProblem, rules: readonly GradingRule[]): Grading | null {
  const solved = solveRules(problem, rules);
  const result = solved.kind === "none" ? null : resultOf(problem, solved);
  return result?.kind === "graded" ? result : null;
}

/** A block that has an answer, or may have one. */
export interface BlockTried {
  readonly block: Block;
  readonly answer: Exclude<BlockAnswer, { readonly kind: "none" }>;
}

/** Every block with what was found, or that the rules cannot all hold. */
export type Solved =
  | { readonly kind: "solved"; readonly model: Model; readonly blocks: readonly BlockTried[] }
  | { readonly kind: "none" };

/** Solves all blocks of a problem with these rules; stops at the first that has no answer. */
function solveRules(problem: GradingProblem, rules: readonly GradingRule[]): Solved {
  const model = buildModel(problem, rules);
  if ("kind" in model) return { kind: "none" };
  if (problem.aim !== "least worst") return solveAll(problem, model, true);
  const cap = leastWorstCap(problem, model, blocksOf(model));
  return cap === null ? { kind: "none" } : solveAll(problem, capModel(problem, model, cap.cap), cap.proved);
}

/** Solves all blocks; `sure` is false when even a best answer would not be known to be one. */
export function solveAll(problem: GradingProblem, model: Model, sure: boolean): Solved {
  const tried: BlockTried[] = [];
  for (const block of blocksOf(model)) {
    const answer = solveBlock(problem, model, block);
    if (answer.kind === "none") return { kind: "none" };
    tried.push({ block, answer: sure || answer.kind === "unknown" ? answer : { ...answer, proved: false } });
  }
  return { kind: "solved", model, blocks: tried };
}

/** The model in which no miss weighs more than a cap, in millionths. */
export function capModel(problem: GradingProblem, model: Model, cap: number): Model {
  return { ...model, chains: model.chains.map((chain) => capChain(problem, chain, cap)) };
}

/** The smallest largest miss of the whole, in millionths; null when the rules cannot all hold. */
export function leastWorstCap(
  problem: GradingProblem,
  model: Model,
  blocks: readonly Block[],
): { readonly cap: number; readonly proved: boolean } | null {
  let cap = 0;
  for (const chain of model.chains) {
    const least = leastWorstOf(problem, chain);
    if (least === null) return null;
    cap = Math.max(cap, least);
  }
  let proved = true;
  for (const block of blocks.filter(({ links }) => links.length > 0)) {
    const solveAt = (most: number) => solveBlock(problem, capModel(problem, model, most), block);
    const free = solveBlock(problem, model, block);
    if (free.kind === "none") return null;
    if (free.kind === "unknown") return { cap: Number.MAX_SAFE_INTEGER, proved: false };
    const high = worstOf(problem, model, block, free.k);
    if (high <= cap) continue;
    let unsure = -1;
    cap = smallestWhere(cap, high, (most) => {
      const { kind } = solveAt(most);
      if (kind === "unknown") unsure = Math.max(unsure, most);
      return kind === "found";
    });
    if (unsure >= 0) proved = false;
  }
  return { cap, proved };
}

export function worstOf(
  problem: GradingProblem,
  model: Model,
  { chains }: Block,
  k: readonly (readonly number[])[],
): number {
  let worst = 0;
  for (const [i, chain] of chains.entries()) {
    const costs = new ChainCosts(problem, model.chains[chain]!);
    for (const [size, one] of k[i]!.entries()) worst = Math.max(worst, costs.worst(size, one));
  }
  return worst;
}

/** Sets out the answers by quantity and size; unsettled while a block has none. */
export function resultOf(
  problem: GradingProblem,
  { model, blocks }: Extract<Solved, { readonly kind: "solved" }>,
): Grading | Unsettled {
  const k: (readonly number[])[] = [];
  let [cost, floor, steps] = [0, 0, 0];
  let proved = true;
  for (const { block, answer } of blocks) {
    floor += answer.floor;
    if (answer.kind === "unknown") continue;
    for (const [i, chain] of block.chains.entries()) {
      k[chain] = answer.k[i]!;
      steps += new ChainCosts(problem, model.chains[chain]!).steps(answer.k[i]!);
    }
    cost += answer.cost;
    proved &&= answer.proved;
  }
  if (blocks.some(({ answer }) => answer.kind === "unknown"))
    return { kind: "unsettled", floor: floor / MICRO };
  let [latticeFloor, worst] = [0, 0];
  const quantities = problem.quantities.map((quantity, q): Graded => {
    const { id, unit, targets } = quantity;
    const { chain, member } = model.places[q]!;
    const counts = k[chain]!.map((one) => member.factor * one + member.offset);
    const made = counts.map((count) => count * unit);
    const off = made.map((cm, size) => cm - targets[size]!);
    const lattice = { multiple: Math.abs(member.factor), remainder: member.offset };
    const closest = targets.map((target) => Math.abs(nearestFitting(target / unit, lattice) * unit - target));
    for (let size = 0; size < targets.length; size++) {
      latticeFloor += weightOf(quantity, size) * closest[size]!;
      worst = Math.max(worst, weightOf(quantity, size) * Math.abs(off[size]!));
    }
    return { id, counts, made, off, closest };
  });
  return {
    kind: "graded",
    quantities,
    cost: cost / MICRO,
    stepCost: steps / MICRO,
    worst,
    floor: floor / MICRO,
    latticeFloor,
    proved,
  };
}
