// For tests only: grading by trying every count, straight from the rules as they are said. It knows nothing of chains,
// windows or solvers, so that what agrees with it agrees for no shared reason.
import {
  boundAt,
  type GradingProblem,
  type GradingRule,
  MICRO,
  USUAL_SMOOTHNESS,
  weightOf,
} from "./problem.ts";

/** The best counts by quantity and size, with their cost in millionths; null when no counts keep all rules. */
export interface Tried {
  readonly counts: readonly (readonly number[])[];
  readonly cost: number;
  /** Largest weighted miss, in millionths. */
  readonly worst: number;
}

/**
 * @param problem  every quantity bounded by "at least" and "at most" in every size, few counts between
 * @param except   counts that are not to be the answer
 */
export function tryAll(problem: GradingProblem, except?: readonly (readonly number[])[]): Tried | null {
  const index = new Map(problem.quantities.map(({ id }, i) => [id, i]));
  const layers = problem.sizes.map((_, size) => tuplesOf(problem, index, size));
  const leastWorst = problem.aim === "least worst";
  let best: { path: (readonly number[])[]; cost: number; worst: number } | null = null;
  const better = (worst: number, cost: number, path: (readonly number[])[]) => {
    if (best === null) return true;
    if (leastWorst && worst !== best.worst) return worst < best.worst;
    if (cost !== best.cost) return cost < best.cost;
    for (let s = 0; s < path.length; s++) {
      for (let q = 0; q < path[s]!.length; q++)
        if (path[s]![q] !== best.path[s]![q]) return path[s]![q]! > best.path[s]![q]!;
    }
    return false;
  };
  // What a tuple costs by itself; the cheapest are tried first, and what cannot catch up with the best is left.
  const priced = layers.map((tuples, size) =>
    tuples
      .map((tuple) => {
        const offs = tuple.map((count, q) => {
          const one = problem.quantities[q]!;
          return Math.round(MICRO * weightOf(one, size) * Math.abs(one.unit * count - one.targets[size]!));
        });
        return { tuple, cost: offs.reduce((a, b) => a + b, 0), worst: Math.max(...offs) };
      })
      .sort((a, b) => (leastWorst ? a.worst - b.worst : 0) || a.cost - b.cost),
  );
  const atLeast = [...problem.sizes, ""].map((_, size) =>
    priced.slice(size).reduce((sum, tuples) => sum + Math.min(...tuples.map(({ cost }) => cost)), 0),
  );
  const hopeless = (size: number, cost: number, worst: number) => {
    if (best === null) return false;
    if (leastWorst && worst !== best.worst) return worst > best.worst;
    return cost + atLeast[size]! > best.cost;
  };
  const walk = (size: number, path: (readonly number[])[], cost: number, worst: number): void => {
    if (hopeless(size, cost, worst)) return;
    if (size === layers.length) {
      const excluded = except?.every((one, q) => path.every((tuple, s) => tuple[q] === one[s]));
      if (excluded !== true && better(worst, cost, path)) best = { path, cost, worst };
      return;
    }
    for (const { tuple, cost: off, worst: worse } of priced[size]!) {
      if (size > 0 && !keepsOrder(problem.rules, index, path[size - 1]!, tuple)) continue;
      let bend = 0;
      for (const [q, count] of size > 1 ? tuple.entries() : []) {
        const steady = Math.round(MICRO * (problem.quantities[q]!.smoothness ?? USUAL_SMOOTHNESS));
        bend += steady * Math.abs(count - 2 * path[size - 1]![q]! + path[size - 2]![q]!);
      }
      walk(size + 1, [...path, tuple], cost + off + bend, Math.max(worst, worse));
    }
  };
  walk(0, [], 0, 0);
  const found = best as { path: (readonly number[])[]; cost: number; worst: number } | null;
  if (found === null) return null;
  return {
    counts: problem.quantities.map((_, q) => found.path.map((tuple) => tuple[q]!)),
    cost: found.cost,
    worst: found.worst,
  };
}

/** Whether any counts keep all rules: from each size, only what can be reached from the sizes before goes on. */
export function tryAny(problem: GradingProblem): boolean {
  const index = new Map(problem.quantities.map(({ id }, i) => [id, i]));
  let reached = tuplesOf(problem, index, 0);
  for (let size = 1; size < problem.sizes.length; size++) {
    const before = reached;
    reached = tuplesOf(problem, index, size).filter((tuple) =>
      before.some((one) => keepsOrder(problem.rules, index, one, tuple)),
    );
  }
  return reached.length > 0;
}

/** Whether counts, by quantity and size, keep every rule as it is said. */
export function keepsAll(problem: GradingProblem, counts: readonly (readonly number[])[]): boolean {
  const index = new Map(problem.quantities.map(({ id }, i) => [id, i]));
  return problem.sizes.every((_, size) => {
    const tuple = counts.map((one) => one[size]!);
    return (
      tuple.every((count) => Number.isInteger(count) && count >= 0) &&
      (size === 0 ||
        keepsOrder(
          problem.rules,
          index,
          counts.map((one) => one[size - 1]!),
          tuple,
        )) &&
      problem.rules.every((rule) => {
        if (rule.kind === "at least") return tuple[index.get(rule.of)!]! >= (boundAt(rule, size) ?? 0);
        if (rule.kind === "at most")
          return tuple[index.get(rule.of)!]! <= (boundAt(rule, size) ?? Number.POSITIVE_INFINITY);
        return keepsRule(problem, rule, index, size, tuple, tuple.length);
      })
    );
  });
}

function tuplesOf(
  problem: GradingProblem,
  index: Map<string, number>,
  size: number,
): readonly (readonly number[])[] {
  let tuples: number[][] = [[]];
  for (const { id } of problem.quantities) {
    let [least, most] = [0, Number.POSITIVE_INFINITY];
    for (const rule of problem.rules) {
      if (rule.kind === "at least" && rule.of === id) least = Math.max(least, boundAt(rule, size) ?? 0);
      if (rule.kind === "at most" && rule.of === id) most = Math.min(most, boundAt(rule, size) ?? most);
    }
    if (!Number.isFinite(most)) throw new RangeError(`${id} has no bound in size ${size}`);
    tuples = tuples.flatMap((tuple) =>
      Array.from({ length: Math.max(0, most - least + 1) }, (_, i) => [...tuple, least + i]),
    );
    const done = tuples[0]?.length ?? 0;
    tuples = tuples.filter((tuple) =>
      problem.rules.every((rule) => keepsRule(problem, rule, index, size, tuple, done)),
    );
  }
  return tuples;
}

/** Whether a tuple, as far as it goes, keeps a rule about one size. */
function keepsRule(
  { quantities }: GradingProblem,
  rule: GradingRule,
  index: Map<string, number>,
  size: number,
  tuple: readonly number[],
  done: number,
): boolean {
  const at = (id: string) => index.get(id)!;
  const known = (...ids: string[]) => ids.every((id) => at(id) < done);
  const value = (id: string) => tuple[at(id)]!;
  const measure = (id: string, measured: "counts" | "cm") =>
    value(id) * (measured === "cm" ? quantities[at(id)]!.unit : 1);
  switch (rule.kind) {
    case "multiple":
      return (
        !known(rule.of) ||
        (((value(rule.of) - rule.remainder) % rule.multiple) + rule.multiple) % rule.multiple === 0
      );
    case "hold":
      return rule.size !== size || !known(rule.of) || value(rule.of) === rule.count;
    case "equal":
      return !known(rule.of, rule.as) || value(rule.of) === value(rule.as) + (rule.plus ?? 0);
    case "sum": {
      if (!known(...rule.terms.map(({ of }) => of))) return true;
      const sum = rule.terms.reduce((all, { of, times }) => all + times * measure(of, rule.measured), 0);
      return Math.abs(sum - rule.makes) <= (rule.within ?? 0) + 1e-7;
    }
    case "ratio": {
      if (!known(rule.of, rule.to)) return true;
      const [a, b] = [measure(rule.of, rule.measured), measure(rule.to, rule.measured)];
      return a - rule.least * b >= -1e-7 && a - rule.most * b <= 1e-7;
    }
    default:
      return true;
  }
}

function keepsOrder(
  rules: readonly GradingRule[],
  index: Map<string, number>,
  before: readonly number[],
  after: readonly number[],
): boolean {
  return rules.every((rule) => {
    if (rule.kind !== "order") return true;
    const step = after[index.get(rule.of)!]! - before[index.get(rule.of)!]!;
    return rule.direction === "up" ? step >= 0 : step <= 0;
  });
}
