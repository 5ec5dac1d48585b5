import { LineIndex } from "../../base/index.ts";
import { gradeOrNull } from "./choice.ts";
import type { DesignTable } from "./document.ts";
import { problemOf } from "./problem.ts";

/** What a rule costs: how much closer to the plan the counts could come without it. */
export interface RuleCost {
  readonly words: string;
  readonly line: number;
  /** Misses and uneven steps that would go, weighted cm. */
  readonly cost: number;
}

/** More rules than this are not tried one by one. */
const MOST_RULES = 60;

/**
 * What each written rule costs, dearest first: the best choice with all rules, against the best without this one. Rules that
 * cost nothing are left out, and so is a rule without which no choice was settled.
 */
export function ruleCosts(table: DesignTable): RuleCost[] {
  const made = problemOf(table);
  const whole = made && gradeOrNull(made.problem);
  if (!made || whole?.kind !== "graded" || table.rules.length > MOST_RULES) return [];
  const lines = new LineIndex(table.text);
  return table.rules
    .flatMap(({ rule, span }): RuleCost[] => {
      const without = gradeOrNull({
        ...made.problem,
        rules: made.problem.rules.filter((one) => one !== rule),
      });
      if (without?.kind !== "graded") return [];
      const cost = whole.cost - without.cost;
      return cost > 1e-4 ? [{ words: rule.words, line: lines.position(span.from).line, cost }] : [];
    })
    .sort((a, b) => b.cost - a.cost);
}
