import { LineIndex } from "../../base/index.ts";
import { costRules, findNextBest, type NextBest } from "../../sizing/index.ts";
import { choiceOf } from "./choice.ts";
import type { DesignTable } from "./document.ts";
import { isMeasured, problemOf } from "./problem.ts";

/** What a rule costs: how much closer to the plan the counts could come without it. */
export interface RuleCost {
  readonly words: string;
  readonly line: number;
  /** Weighted cm of misses and uneven steps that would go, or of the largest miss where the design aims at that. */
  readonly cost: number;
}

/** More rules than this are not tried one by one. */
const MOST_RULES = 200;
/** Less than this is the weight of counts that make no measure, cm. */
const NOTHING = 1e-4;

/**
 * What each written rule costs, dearest first: the best choice with all rules, against the best without this one. Rules that
 * cost nothing are left out, and so is a rule without which no choice was settled.
 */
export function ruleCosts(table: DesignTable): RuleCost[] {
  const made = problemOf(table);
  if (!made || !choiceOf(table)?.grading || table.rules.length > MOST_RULES) return [];
  const lines = new LineIndex(table.text);
  const spans = new Map(table.rules.map(({ rule, span }) => [rule, span] as const));
  return costRules(made.problem)
    .flatMap(({ rule, saves, savesWorst }): RuleCost[] => {
      const span = spans.get(rule);
      const cost = (table.aim === "least worst" ? savesWorst : saves) ?? 0;
      return span === undefined || cost <= NOTHING
        ? []
        : [{ words: rule.words, line: lines.position(span.from).line, cost }];
    })
    .sort((a, b) => b.cost - a.cost);
}

/** The best choice that has some measure otherwise; null where the rules leave none, or nothing was settled. */
export function nextBestChoice(table: DesignTable): NextBest | null {
  const made = problemOf(table);
  const best = choiceOf(table)?.grading;
  if (!made || !best) return null;
  const measured = table.counts.filter(isMeasured).map(({ name }) => name);
  return findNextBest(made.problem, best, new Set(measured));
}
