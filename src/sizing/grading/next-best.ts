import type { Count } from "../units.ts";
import { type Grading, grade, gradeIfAble } from "./grade.ts";
import { buildModel } from "./model.ts";
import { partsOf } from "./parts.ts";
import type { GradingProblem, GradingRule } from "./problem.ts";

/** One count that another choice has otherwise. */
export interface CountChange {
  readonly id: string;
  /** Index into the size run. */
  readonly size: number;
  readonly from: Count;
  readonly to: Count;
}

/** The best of all other choices. */
export interface NextBest {
  readonly changes: readonly CountChange[];
  /** Weighted cm more than the best choice; 0 for one that is just as good. */
  readonly costsMore: number;
  readonly proved: boolean;
}

/**
 * The best choice of counts that differs somewhere from a given one. Each count in each size is in turn made to be more and to
 * be less, and the cheapest of these choices is kept; so none is overlooked.
 *
 * @param best  what `grade` chose for this problem
 * @returns     null when the rules leave no other choice
 */
export function findNextBest(problem: GradingProblem, best: Grading): NextBest | null {
  const now = new Map(best.quantities.map(({ id, counts }) => [id, counts]));
  let next: NextBest | null = null;
  for (const part of partsOf(problem)) {
    const model = buildModel(part.problem);
    const base = gradeIfAble(part.problem, part.problem.rules);
    if ("kind" in model || base === null) continue;
    for (const { members } of model.chains) {
      const { id } = part.problem.quantities[members[0]!.quantity]!;
      for (const [size, count] of now.get(id)!.entries()) {
        for (const kind of ["at least", "at most"] as const) {
          const bound = kind === "at least" ? count + 1 : count - 1;
          if (bound < 0) continue;
          const counts = problem.sizes.map((_, s) => (s === size ? bound : null));
          const rule: GradingRule = { kind, of: id, counts, words: "" };
          const other = gradeIfAble(part.problem, [...part.problem.rules, rule]);
          if (other === null) continue;
          const costsMore = Math.max(0, other.cost - base.cost);
          if (next !== null && costsMore >= next.costsMore) continue;
          next = { changes: changesBetween(now, other), costsMore, proved: other.proved && base.proved };
        }
      }
    }
  }
  return next;
}

/**
 * What a choice costs in which the designer settles counts of her own.
 *
 * @param held  counts by size; each becomes a rule that says it is held
 */
export function gradeHolding(
  problem: GradingProblem,
  held: readonly { readonly id: string; readonly size: number; readonly count: Count }[],
): ReturnType<typeof grade> {
  const holds = held.map(
    ({ id, size, count }): GradingRule => ({
      kind: "hold",
      of: id,
      size,
      count,
      words: `${id} is ${count} in ${problem.sizes[size]}`,
    }),
  );
  return grade({ ...problem, rules: [...problem.rules, ...holds] });
}

function changesBetween(now: ReadonlyMap<string, readonly Count[]>, other: Grading): readonly CountChange[] {
  return other.quantities.flatMap(({ id, counts }) =>
    counts.flatMap((to, size) => {
      const from = now.get(id)![size]!;
      return from === to ? [] : [{ id, size, from, to }];
    }),
  );
}
