import { gradeIfAble } from "./grade.ts";
import { partsOf } from "./parts.ts";
import type { GradingProblem, GradingRule } from "./problem.ts";

/** What a rule costs: how much better the best choice would be without it. */
export interface RuleCost {
  readonly rule: GradingRule;
  /** Weighted cm that lifting it saves, 0 for a rule that costs nothing; null where there is nothing to compare. */
  readonly saves: number | null;
  /** The same for the largest weighted miss, below 0 where it grows; null where there is nothing to compare. */
  readonly savesWorst: number | null;
  /** Whether both choices, with it and without it, are proved to be the best. */
  readonly proved: boolean;
}

/**
 * What every rule of a problem costs, one lifted at a time; of two rules that ask for the same thing, neither costs anything.
 *
 * @returns in the order of the problem's rules; costs are null in a part whose rules cannot all hold
 */
export function costRules(problem: GradingProblem): readonly RuleCost[] {
  const costs: RuleCost[] = [];
  for (const part of partsOf(problem)) {
    const { rules } = part.problem;
    const whole = gradeIfAble(part.problem, rules);
    for (const [i, rule] of rules.entries()) {
      const lifted = whole && gradeIfAble(part.problem, rules.toSpliced(i, 1));
      costs[part.rules[i]!] = {
        rule,
        // Unproved answers may be better with a rule than without it; no rule saves by being kept.
        saves: whole && lifted && Math.max(0, whole.cost - lifted.cost),
        savesWorst: whole && lifted && whole.worst - lifted.worst,
        proved: whole?.proved === true && lifted?.proved === true,
      };
    }
  }
  return costs;
}
