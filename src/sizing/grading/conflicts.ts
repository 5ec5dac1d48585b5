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
 * A small set of rules that cannot all hold, from rules that cannot. Every rule in it is needed: without it the others hold.
 * Several such sets may exist; the rules are gone through in three orders and the smallest set found is kept.
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
  let smallest: { kept: readonly number[]; tight: boolean } | null = null;
  for (const order of [byKind, [...listed].reverse(), listed]) {
    const found = yield* filterInOrder(rules, order);
    if (smallest === null || found.kept.length < smallest.kept.length) smallest = found;
    if (smallest.kept.length <= 1) break;
  }
  const { kept, tight } = smallest!;
  return { kind: "conflict", rules: listed.filter((i) => kept.includes(i)).map((i) => rules[i]!), tight };
}

/** Deletion filter: a rule without which the others still cannot hold is left out for good. */
function* filterInOrder(
  rules: readonly GradingRule[],
  order: readonly number[],
): Generator<readonly GradingRule[], { kept: readonly number[]; tight: boolean }, Verdict> {
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
