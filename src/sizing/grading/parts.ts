import { type GradingProblem, type GradingRule, namedIn } from "./problem.ts";

/** A part of a problem that no rule ties to the rest: the sum of all parts' costs is the whole's. */
export interface Part {
  readonly problem: GradingProblem;
  /** Indices into the whole problem's quantities and rules. */
  readonly quantities: readonly number[];
  readonly rules: readonly number[];
}

/** Cuts a problem where no rule goes across; a problem that minds the largest miss of all is one part. */
export function partsOf(problem: GradingProblem): readonly Part[] {
  const { quantities, rules } = problem;
  const index = new Map(quantities.map(({ id }, i) => [id, i]));
  const groupOf = quantities.map((_, i) => i);
  const join = (a: number, b: number) => {
    const [from, to] = [groupOf[Math.max(a, b)]!, groupOf[Math.min(a, b)]!];
    for (const [i, group] of groupOf.entries()) if (group === from) groupOf[i] = to;
  };
  for (const rule of rules)
    for (const id of namedIn(rule)) join(index.get(id)!, index.get(namedIn(rule)[0]!)!);
  if (problem.aim === "least worst") for (const i of quantities.keys()) join(0, i);
  return [...new Set(groupOf)].map((group) => {
    const inside = [...quantities.keys()].filter((i) => groupOf[i] === group);
    const own = [...rules.keys()].filter((i) => groupOf[index.get(namedIn(rules[i]!)[0]!)!] === group);
    return {
      problem: {
        ...problem,
        quantities: inside.map((i) => quantities[i]!),
        rules: own.map((i): GradingRule => rules[i]!),
      },
      quantities: inside,
      rules: own,
    };
  });
}
