import type { Count } from "../units.ts";
import { blocksOf } from "./blocks.ts";
import { type Grading, grade, gradeIfAble } from "./grade.ts";
import { buildModel } from "./model.ts";
import { partsOf } from "./parts.ts";
import { type BoundRule, type GradingProblem, type GradingRule, MICRO } from "./problem.ts";
import { forcedFloors } from "./solve-blocks.ts";

/** Choices that cost more than this above the best are all taken to cost at least so much, weighted cm. */
const SPARE = 20;

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
  /** Weighted cm more than the best choice; 0 for one that is just as good. Where the largest miss is minded, below 0 at times. */
  readonly costsMore: number;
  /** By how much its largest weighted miss is more, cm; below 0 where it is less. */
  readonly worstMore: number;
  readonly proved: boolean;
}

/**
 * The best choice of counts that differs somewhere from a given one. Each count in each size is in turn made to be more and to
 * be less, and the cheapest of these choices is kept; so none is overlooked.
 *
 * @param best   what `grade` chose for this problem
 * @param among  the counts of which one has to differ; all unless said
 * @returns      null when the rules leave no other choice
 */
export function findNextBest(
  problem: GradingProblem,
  best: Grading,
  among?: ReadonlySet<string>,
): NextBest | null {
  const now = new Map(best.quantities.map(({ id, counts }) => [id, counts]));
  let next: NextBest | null = null;
  for (const part of partsOf(problem)) {
    const base = gradeIfAble(part.problem, part.problem.rules);
    if (base === null) continue;
    for (const { rule, atLeast } of candidatesOf(part.problem, base.cost, now, among)) {
      // Candidates come by what they must cost at least: from here on none is better.
      if (next !== null && problem.aim !== "least worst" && atLeast >= next.costsMore) break;
      const other = gradeIfAble(part.problem, [...part.problem.rules, rule]);
      if (other === null) continue;
      const more = compared(problem, base, other);
      if (next !== null && !isBetter(problem, more, next)) continue;
      next = { changes: changesBetween(now, other), ...more, proved: other.proved && base.proved };
    }
  }
  return next;
}

interface Candidate {
  readonly rule: BoundRule;
  /** Weighted cm that it costs more at least. */
  readonly atLeast: number;
}

/** Each count in each size made to be more, and made to be less; what must cost the least first. */
function candidatesOf(
  problem: GradingProblem,
  cost: number,
  now: ReadonlyMap<string, readonly Count[]>,
  among: ReadonlySet<string> | undefined,
): readonly Candidate[] {
  const model = buildModel(problem);
  if ("kind" in model) return [];
  const floors = blocksOf(model).map((block) => ({
    block,
    forced: forcedFloors(problem, model, block, SPARE * MICRO),
  }));
  const floor = floors.reduce((sum, { forced }) => sum + (forced?.floor ?? 0), 0) / MICRO;
  return floors
    .flatMap(({ block, forced }) =>
      block.chains.flatMap((chain, position) => {
        // Counts of one chain move together: one of them speaks for all.
        const member = model.chains[chain]!.members.find(
          ({ quantity }) => among?.has(problem.quantities[quantity]!.id) ?? true,
        );
        if (member === undefined || forced === null) return [];
        const { id } = problem.quantities[member.quantity]!;
        const counts = now.get(id)!;
        return counts.flatMap((count, size) =>
          (["at least", "at most"] as const).flatMap((kind): Candidate[] => {
            const bound = kind === "at least" ? count + 1 : count - 1;
            if (bound < 0) return [];
            const k = (bound - member.offset) / member.factor;
            const up = (kind === "at least") === member.factor > 0;
            const more = forced.more(position, size, k, up ? "at least" : "at most");
            return [
              {
                rule: {
                  kind,
                  of: id,
                  counts: problem.sizes.map((_, s) => (s === size ? bound : null)),
                  words: "",
                },
                atLeast: floor + more / MICRO - cost,
              },
            ];
          }),
        );
      }),
    )
    .sort((a, b) => a.atLeast - b.atLeast);
}

type Behind = Pick<NextBest, "costsMore" | "worstMore">;

function compared({ aim }: GradingProblem, base: Grading, other: Grading): Behind {
  const costsMore = other.cost - base.cost;
  // An answer that is not proved may be bettered by one with a rule more; no rule makes a choice better.
  return {
    costsMore: aim === "least worst" ? costsMore : Math.max(0, costsMore),
    worstMore: other.worst - base.worst,
  };
}

/** Whether one choice is better than another by what the problem minds first. */
function isBetter({ aim }: GradingProblem, one: Behind, than: Behind): boolean {
  if (aim !== "least worst" || one.worstMore === than.worstMore) return one.costsMore < than.costsMore;
  return one.worstMore < than.worstMore;
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
