import { type Block, blocksOf, copyChains, keepsLink, narrowByLinks } from "./blocks.ts";
import { leastWorstOf } from "./cap.ts";
import { ChainCosts } from "./chain-costs.ts";
import { type Conflict, canHold, findConflictSlowly, type Verdict } from "./conflicts.ts";
import {
  type BlockTried,
  capModel,
  type Grading,
  leastWorstCap,
  resultOf,
  solveAll,
  type Unsettled,
  worstOf,
} from "./grade.ts";
import type { LinearModel, LinearSolver } from "./linear-solver.ts";
import { buildModel, type Chain, isOpen, type Link, type Model } from "./model.ts";
import { checkProblem, type GradingProblem, type GradingRule, MICRO, weightOf } from "./problem.ts";
import { type BlockAnswer, costOfBlock, solveBlock } from "./solve-blocks.ts";

/** Branches a solver may look into for one block, unless said. */
export const USUAL_NODES = 20_000;

/**
 * As `grade`, and what its search leaves open goes to a solver: the answer found so far is where it begins and the ceiling
 * for what it has to look at.
 *
 * @param solver  see `highsSolver`
 * @param nodes   branches it may look into for each block
 */
export async function gradeWithSolver(
  problem: GradingProblem,
  solver: LinearSolver,
  nodes: number = USUAL_NODES,
): Promise<Grading | Conflict | Unsettled> {
  checkProblem(problem);
  const { rules } = problem;
  const conflict = () => findConflictSlowly(rules, (some) => decideWithSolver(problem, some, solver, nodes));
  const model = buildModel(problem);
  if ("kind" in model) return conflict();
  const cap = problem.aim === "least worst" ? await leastWorstWith(problem, model, solver, nodes) : NO_CAP;
  if (cap === null) return conflict();
  const solved = solveAll(problem, capModel(problem, model, cap.cap), cap.proved);
  if (solved.kind === "none") return conflict();
  const blocks: BlockTried[] = [];
  for (const { block, answer } of solved.blocks) {
    const done = answer.kind === "found" && answer.floor === answer.cost;
    const better = done ? answer : await solveBlockWith(problem, solved.model, block, answer, solver, nodes);
    if (better.kind === "none") return conflict();
    blocks.push({
      block,
      answer: cap.proved || better.kind === "unknown" ? better : { ...better, proved: false },
    });
  }
  return resultOf(problem, { ...solved, blocks });
}

/** Solves one block with a solver, from an answer that is known or from none. */
export async function solveBlockWith(
  problem: GradingProblem,
  model: Model,
  block: Block,
  known: BlockAnswer | null,
  solver: LinearSolver,
  nodes: number,
): Promise<BlockAnswer> {
  const chains = copyChains(block.chains.map((chain) => model.chains[chain]!));
  if (!narrowByLinks(chains, block.links)) return { kind: "none" };
  const first = known ?? solveBlock(problem, model, block);
  if (first.kind === "none" || (first.kind === "found" && first.proved)) return first;
  if (first.kind === "found") narrowToCeiling(problem, chains, first.cost);
  const linear = writeModel(problem, chains, block.links);
  const start = first.kind === "found" ? startOf(problem, chains, first.k) : {};
  const said = await solver.solve(linear, { nodes, start });
  if (said.status === "infeasible") return first.kind === "found" ? first : { kind: "none" };
  const bound = said.bound === null || !Number.isFinite(said.bound) ? 0 : Math.floor(said.bound * MICRO);
  const floor = Math.max(first.floor, bound);
  const k = said.values === null ? null : readAnswer(chains, block.links, said.values);
  if (k === null)
    return first.kind === "found"
      ? { ...first, floor: Math.min(floor, first.cost) }
      : { kind: "unknown", floor };
  const cost = costOfBlock(problem, chains, k);
  const better = first.kind === "found" && first.cost <= cost ? first.k : k;
  const least = Math.min(cost, first.kind === "found" ? first.cost : cost);
  // With so low a ceiling the search may prove itself after all, and then settles ties in the fixed order.
  const again = solveBlock(problem, model, block, better);
  if (again.kind === "found" && again.proved) return again;
  const optimal = said.status === "optimal";
  return {
    kind: "found",
    k: better,
    cost: least,
    floor: optimal ? least : Math.min(floor, least),
    proved: optimal,
  };
}

/**
 * The cost of the best grading by the solver alone, in weighted cm; for comparing, it searches nothing by itself.
 *
 * @returns null when the rules cannot all hold
 */
export async function solveWithSolver(
  problem: GradingProblem,
  solver: LinearSolver,
  nodes: number = USUAL_NODES,
): Promise<number | null> {
  const model = buildModel(problem);
  if ("kind" in model || !model.chains.every(isOpen)) return null;
  const linear = writeModel(problem, model.chains, model.links);
  const { status, values } = await solver.solve(linear, { nodes });
  if (status === "infeasible") return null;
  const k = values === null ? null : readAnswer(model.chains, model.links, values);
  if (status === "stopped" || k === null) throw new RangeError("the solver was stopped before it was done");
  return costOfBlock(problem, model.chains, k) / MICRO;
}

/**
 * Writes a block as a whole-number linear program, costs in weighted cm. Columns: k of chain c in size s is `k{c}_{s}`, the
 * miss of quantity q is `d{q}_{s}`, the change of step of a chain is `e{c}_{s}`.
 *
 * @param worst  when given, the largest weighted miss is made small instead, `z`, down to this many millionths
 */
export function writeModel(
  problem: GradingProblem,
  chains: readonly Chain[],
  links: readonly Link[],
  worst?: number,
): LinearModel {
  const cost: string[] = [];
  const rows: string[] = [];
  const bounds: string[] = [];
  const whole: string[] = [];
  const atMost = (row: string, most: number) => rows.push(` ${row} <= ${most}`);
  if (worst !== undefined) {
    cost.push("+ 1 z");
    bounds.push(` z >= ${worst / MICRO}`);
  }
  for (const [c, chain] of chains.entries()) {
    for (const s of problem.sizes.keys()) {
      whole.push(`k${c}_${s}`);
      bounds.push(` ${chain.low[s]} <= k${c}_${s} <= ${chain.high[s]}`);
      for (const { quantity, factor, offset } of chain.members) {
        const one = problem.quantities[quantity]!;
        const slope = one.unit * factor;
        const wish = one.targets[s]! - one.unit * offset;
        const miss = `d${quantity}_${s}`;
        atMost(`${term(slope, `k${c}_${s}`)} - ${miss}`, wish);
        atMost(`${term(-slope, `k${c}_${s}`)} - ${miss}`, -wish);
        if (worst === undefined) cost.push(term(weightOf(one, s), miss));
        else atMost(`${term(weightOf(one, s), miss)} - z`, 0);
      }
      if (s > 0 && chain.up) atMost(`k${c}_${s - 1} - k${c}_${s}`, 0);
      if (s > 0 && chain.down) atMost(`k${c}_${s} - k${c}_${s - 1}`, 0);
      if (s > 1 && chain.steady > 0 && worst === undefined) {
        cost.push(term(chain.steady / MICRO, `e${c}_${s}`));
        const [here, before, first] = [`k${c}_${s}`, `2 k${c}_${s - 1}`, `k${c}_${s - 2}`];
        atMost(`${here} - ${before} + ${first} - e${c}_${s}`, 0);
        atMost(`- ${here} + ${before} - ${first} - e${c}_${s}`, 0);
      }
    }
  }
  for (const { terms, least, most } of links) {
    for (const s of problem.sizes.keys()) {
      const sum = terms.map(({ chain, times }) => term(times, `k${chain}_${s}`)).join(" ");
      if (least === most) rows.push(` ${sum} = ${least}`);
      else {
        if (Number.isFinite(most)) rows.push(` ${sum} <= ${most}`);
        if (Number.isFinite(least)) rows.push(` ${sum} >= ${least}`);
      }
    }
  }
  const text = [
    "Minimize",
    ...cost.map((one, i) => (i === 0 ? ` cost: ${one}` : ` ${one}`)),
    "Subject To",
    ...rows,
    "Bounds",
    ...bounds,
    "General",
    ...whole.map((one) => ` ${one}`),
    "End",
    "",
  ].join("\n");
  return { text, columns: whole };
}

async function decideWithSolver(
  problem: GradingProblem,
  rules: readonly GradingRule[],
  solver: LinearSolver,
  nodes: number,
): Promise<Verdict> {
  const quick = canHold(problem, rules);
  if (quick !== "unknown") return quick;
  const model = buildModel(problem, rules);
  if ("kind" in model || !model.chains.every(isOpen)) return "no";
  let verdict: Verdict = "yes";
  for (const block of blocksOf(model)) {
    const { kind } = await solveBlockWith(problem, model, block, null, solver, nodes);
    if (kind === "none") return "no";
    if (kind === "unknown") verdict = "unknown";
  }
  return verdict;
}

const NO_CAP = { cap: Number.MAX_SAFE_INTEGER, proved: true };

/** As `leastWorstCap`; what it leaves open is asked of the solver block by block. */
async function leastWorstWith(
  problem: GradingProblem,
  model: Model,
  solver: LinearSolver,
  nodes: number,
): Promise<{ readonly cap: number; readonly proved: boolean } | null> {
  const quick = leastWorstCap(problem, model, blocksOf(model));
  if (quick === null || quick.proved) return quick;
  let cap = 0;
  let proved = true;
  for (const chain of model.chains) cap = Math.max(cap, leastWorstOf(problem, chain) ?? 0);
  for (const block of blocksOf(model).filter(({ links }) => links.length > 0)) {
    const chains = copyChains(block.chains.map((chain) => model.chains[chain]!));
    if (!narrowByLinks(chains, block.links)) return null;
    const linear = writeModel(problem, chains, block.links, cap);
    const said = await solver.solve(linear, { nodes });
    if (said.status === "infeasible") return null;
    const k = said.values === null ? null : readAnswer(chains, block.links, said.values);
    if (k === null) return { cap: Number.MAX_SAFE_INTEGER, proved: false };
    if (said.status === "stopped") proved = false;
    cap = Math.max(cap, worstOf(problem, model, block, k));
  }
  return { cap, proved };
}

/** No k that alone costs more than the gap can be part of a better answer. */
function narrowToCeiling(problem: GradingProblem, chains: readonly Chain[], ceiling: number): void {
  const costs = chains.map((chain) => new ChainCosts(problem, chain));
  const bests = chains.map((chain, i) =>
    chain.low.map((low, size) => costs[i]!.best(size, low, chain.high[size]!)),
  );
  const sum = bests.reduce((all, sizes) => sizes.reduce((some, { cost }) => some + cost, all), 0);
  const hair = costs.reduce((all, one) => all + one.hair * one.sizes, 0);
  for (const [i, chain] of chains.entries()) {
    for (const [size, { k, cost }] of bests[i]!.entries()) {
      const [low, high] = costs[i]!.within(
        size,
        k,
        chain.low[size]!,
        chain.high[size]!,
        cost + ceiling - sum + hair,
      );
      [chain.low[size], chain.high[size]] = [low, high];
    }
  }
}

/** All columns of a known answer. */
function startOf(
  problem: GradingProblem,
  chains: readonly Chain[],
  k: readonly (readonly number[])[],
): Record<string, number> {
  const start: Record<string, number> = {};
  for (const [c, chain] of chains.entries()) {
    for (const [s, here] of k[c]!.entries()) {
      start[`k${c}_${s}`] = here;
      for (const { quantity, factor, offset } of chain.members) {
        const one = problem.quantities[quantity]!;
        start[`d${quantity}_${s}`] = Math.abs(one.unit * (factor * here + offset) - one.targets[s]!);
      }
      if (s > 1 && chain.steady > 0) start[`e${c}_${s}`] = Math.abs(here - 2 * k[c]![s - 1]! + k[c]![s - 2]!);
    }
  }
  return start;
}

/** Whole k from a solver's values; null when rounding breaks a rule, which a solver's tolerance may hide. */
function readAnswer(
  chains: readonly Chain[],
  links: readonly Link[],
  values: Readonly<Record<string, number>>,
): readonly (readonly number[])[] | null {
  const k = chains.map(({ low }, c) => low.map((_, s) => Math.round(values[`k${c}_${s}`]!)));
  for (const [c, { low, high, up, down }] of chains.entries()) {
    for (const [s, here] of k[c]!.entries()) {
      if (!(here >= low[s]! && here <= high[s]!)) return null;
      const step = s === 0 ? 0 : here - k[c]![s - 1]!;
      if ((up && step < 0) || (down && step > 0)) return null;
    }
  }
  for (const s of chains[0]!.low.keys()) {
    if (!links.every((link) => keepsLink(link, (chain) => k[chain]![s]!))) return null;
  }
  return k;
}

function term(times: number, name: string): string {
  return `${times < 0 ? "-" : "+"} ${Math.abs(times)} ${name}`;
}
