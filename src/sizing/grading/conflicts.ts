import { blocksOf } from "./blocks.ts";
import { buildModel, isOpen } from "./model.ts";
import type { GradingProblem, GradingRule } from "./problem.ts";
import { solveBlock } from "./solve-blocks.ts";

/** Rules that cannot all hold. */
export interface Conflict {
  readonly kind: "conflict";
  /** In the order in which the problem lists them; each carries its words. */
  readonly rules: readonly GradingRule[];
  /** Whether leaving out any one of them lets the others hold; false when that could not be settled for some. */
  readonly tight: boolean;
}

/** Whether counts exist that keep rules: "unknown" when a search was stopped. */
export type Verdict = "yes" | "no" | "unknown";

/**
 * The smallest set of rules that cannot all hold, from rules that cannot. Every rule in it is needed: without it the others
 * hold. One such set is found by leaving out rule by rule; then smaller ones are looked for until there surely is none, or
 * enough was asked.
 *
 * @param rules  rules that were proved not to hold together
 */
export function findConflict(
  problem: GradingProblem,
  rules: readonly GradingRule[] = problem.rules,
): Conflict {
  return drive(filterRules(rules), (left) => canHold(problem, left));
}

/** The same, where each question may take another's time, such as a solver's. */
export async function findConflictSlowly(
  rules: readonly GradingRule[],
  decide: (rules: readonly GradingRule[]) => Promise<Verdict>,
): Promise<Conflict> {
  const questions = filterRules(rules);
  let step = questions.next();
  while (!step.done) step = questions.next(await decide(step.value));
  return step.value;
}

/** Whether some counts keep all of these rules, as far as bounds, remainders and a limited search can tell. */
export function canHold(problem: GradingProblem, rules: readonly GradingRule[]): Verdict {
  const model = buildModel(problem, rules);
  if ("kind" in model || !model.chains.every(isOpen)) return "no";
  let verdict: Verdict = "yes";
  for (const block of blocksOf(model)) {
    if (block.links.length === 0) continue;
    const { kind } = solveBlock(problem, model, block);
    if (kind === "none") return "no";
    if (kind === "unknown") verdict = "unknown";
  }
  return verdict;
}

function drive(questions: Questions, decide: (rules: readonly GradingRule[]) => Verdict): Conflict {
  let step = questions.next();
  while (!step.done) step = questions.next(decide(step.value));
  return step.value;
}

type Questions = Generator<readonly GradingRule[], Conflict, Verdict>;

/** Ties first, sizes last: what is tried first is left out first, and a hold or a bound says more than a chain of ties. */
/** Sets to be hit beyond which no smaller conflict is looked for. */
const MOST_ROUNDS = 60;
/** Questions beyond which none is looked for either: each may take a solver's time. */
const MOST_QUESTIONS = 600;

const LEFT_OUT_FIRST: readonly GradingRule["kind"][] = [
  "order",
  "equal",
  "multiple",
  "ratio",
  "sum",
  "at least",
  "at most",
  "hold",
];

function* filterRules(rules: readonly GradingRule[]): Questions {
  const listed = rules.map((_, i) => i);
  const byKind = [...listed].sort(
    (a, b) => LEFT_OUT_FIRST.indexOf(rules[a]!.kind) - LEFT_OUT_FIRST.indexOf(rules[b]!.kind) || a - b,
  );
  let smallest: Kept | null = null;
  for (const order of [byKind, [...listed].reverse(), listed]) {
    const found = yield* filterInOrder(rules, order);
    if (smallest === null || found.kept.length < smallest.kept.length) smallest = found;
    if (smallest.kept.length <= 1) break;
  }
  const { kept, tight } = yield* shrink(rules, smallest!);
  return { kind: "conflict", rules: listed.filter((i) => kept.includes(i)).map((i) => rules[i]!), tight };
}

interface Kept {
  readonly kept: readonly number[];
  readonly tight: boolean;
}

/**
 * Looks for a smaller conflict than one that was found. Rules that hold together, as many as can be, leave some out; every
 * conflict has one of those left out in it. So a set of rules that has one of each such lot is where a conflict may be, and the
 * smallest set like that is either a conflict, the smallest there is, or holds and gives another lot.
 */
function* shrink(
  rules: readonly GradingRule[],
  found: Kept,
): Generator<readonly GradingRule[], Kept, Verdict> {
  const all = rules.map((_, i) => i);
  const lots: (readonly number[])[] = [];
  let questions = 0;
  const ask = (some: readonly number[]) => {
    questions++;
    return some.toSorted((a, b) => a - b).map((i) => rules[i]!);
  };
  while (lots.length < MOST_ROUNDS && questions < MOST_QUESTIONS) {
    const hit = smallestHitting(lots, found.kept.length - 1);
    if (hit === null) return found;
    const verdict = yield ask(hit);
    if (verdict === "no") return { kept: hit, tight: true };
    if (verdict === "unknown") return found;
    const held = new Set(hit);
    const left = [all.filter((i) => !held.has(i))];
    for (let lot = left.pop(); lot !== undefined; lot = left.pop()) {
      if (lot.length === 0) continue;
      // What was not settled is left out: a lot that is too large is still one that every conflict has to hit.
      if ((yield ask([...held, ...lot])) === "yes") for (const i of lot) held.add(i);
      else if (lot.length > 1) left.push(lot.slice(lot.length >> 1), lot.slice(0, lot.length >> 1));
    }
    lots.push(all.filter((i) => !held.has(i)));
  }
  return found;
}

/** The smallest set with at least one of each lot, or null when it would have more than `most`. */
function smallestHitting(lots: readonly (readonly number[])[], most: number): readonly number[] | null {
  const search = (chosen: readonly number[], room: number): readonly number[] | null => {
    const open = lots.find((lot) => !lot.some((i) => chosen.includes(i)));
    if (open === undefined) return chosen;
    if (room === 0) return null;
    for (const i of open) {
      const hit = search([...chosen, i], room - 1);
      if (hit !== null) return hit;
    }
    return null;
  };
  for (let room = 0; room <= most; room++) {
    const hit = search([], room);
    if (hit !== null) return hit;
  }
  return null;
}

/** Deletion filter: a rule without which the others still cannot hold is left out for good. */
function* filterInOrder(
  rules: readonly GradingRule[],
  order: readonly number[],
): Generator<readonly GradingRule[], Kept, Verdict> {
  let kept = [...order];
  let tight = true;
  for (const one of order) {
    const without = kept.filter((i) => i !== one);
    const verdict = yield without.toSorted((a, b) => a - b).map((i) => rules[i]!);
    if (verdict === "no") kept = without;
    else if (verdict === "unknown") tight = false;
  }
  return { kept, tight };
}
