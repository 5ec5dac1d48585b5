import { type Finding, LineIndex, type PerSize } from "../../base/index.ts";
import {
  type Conflict,
  type Grading,
  type GradingResult,
  type GradingRule,
  grade,
} from "../../sizing/index.ts";
import { betterChoice, rulesCannotHold } from "../findings/index.ts";
import type { DesignTable } from "./document.ts";
import { type DesignProblem, holdAll, problemOf } from "./problem.ts";

/** How the counts as written stand to the best there are. */
export interface Choice {
  /** Misses and uneven steps of the counts as written, weighted cm; null where some count has no value. */
  readonly cost: number | null;
  /** No choice of counts costs less than this; null where rules contradict each other or nothing was settled. */
  readonly floor: number | null;
  /** Whether no choice keeps the rules and comes closer to the plan than the written one. */
  readonly best: boolean;
  /** The best that was found, by count; null where there is none. */
  readonly counts: ReadonlyMap<string, PerSize<number>> | null;
  /** What was found about it. */
  readonly findings: readonly Finding[];
}

/** Costs less apart than this are alike, cm. */
const ALIKE = 0.005;

const known = new WeakMap<DesignTable, Choice | null>();

/** The choice of a table's counts; null where there is nothing to choose. Worked out once a table. */
export function choiceOf(table: DesignTable): Choice | null {
  let choice = known.get(table);
  if (choice === undefined) {
    choice = choose(table);
    known.set(table, choice);
  }
  return choice;
}

function choose(table: DesignTable): Choice | null {
  const made = problemOf(table);
  if (made === null) return null;
  const result = gradeOrNull(made.problem);
  if (result === null) return null;
  const cost = costAsWritten(table, made);
  if (result.kind === "conflict")
    return { cost, floor: null, best: false, counts: null, findings: [conflictFinding(table, result)] };
  if (result.kind === "unsettled")
    return { cost, floor: result.floor, best: false, counts: null, findings: [] };
  const counts = new Map(result.quantities.map((one) => [one.id, one.counts] as const));
  const better = cost !== null && result.cost < cost - ALIKE;
  return {
    cost,
    floor: result.floor,
    best: cost !== null && cost <= result.floor + ALIKE,
    counts,
    findings: better ? [betterFinding(table, result, cost)] : [],
  };
}

/** Solves a problem; null where the designer's numbers are no problem at all (a gauge of nothing, sizes without end). */
export function gradeOrNull(problem: DesignProblem["problem"]): GradingResult | null {
  try {
    return grade(problem);
  } catch (fault) {
    if (fault instanceof RangeError) return null;
    throw fault;
  }
}

/** What the counts as written cost: the only choice there is when all are held. */
export function costAsWritten(table: DesignTable, { problem }: DesignProblem): number | null {
  if (table.counts.some(({ values }) => values === null || values.some((value) => value === null)))
    return null;
  const rules: GradingRule[] = table.counts.flatMap(({ name, values }) => holdAll(name, values ?? []));
  const held = gradeOrNull({ ...problem, rules });
  return held?.kind === "graded" ? held.cost : null;
}

function betterFinding(table: DesignTable, result: Grading, cost: number): Finding {
  const changes = changesOf(table, result);
  const first = table.counts.find(({ name }) => name === changes[0]?.count) ?? table.counts[0];
  const sizes = new Set(changes.map(({ size }) => table.sizes.indexOf(size)));
  return betterChoice.at(
    { span: first?.keySpan ?? table.span, piece: null, row: null, sizes: [...sizes].sort((a, b) => a - b) },
    { changes, asWritten: cost, atBest: result.cost, proved: result.proved },
  );
}

/** Every count that a grading has otherwise than it is written. */
export function changesOf(
  table: DesignTable,
  result: Grading,
): { readonly count: string; readonly size: string; readonly from: number; readonly to: number }[] {
  return table.counts.flatMap((count, at) =>
    table.sizes.flatMap((size, index) => {
      const from = count.values?.[index] ?? null;
      const to = result.quantities[at]?.counts[index];
      return from === null || to === undefined || from === to ? [] : [{ count: count.name, size, from, to }];
    }),
  );
}

/** The rules that contradict each other, each with its line. */
export function conflictFinding(table: DesignTable, { rules, tight }: Conflict): Finding {
  const lines = new LineIndex(table.text);
  const placed = rules.map((rule) => ({ rule, span: placeOf(table, rule) }));
  const [first, second] = placed;
  return rulesCannotHold.at(
    {
      span: first?.span ?? table.span,
      ...(second ? { also: second.span } : {}),
      piece: null,
      row: null,
      sizes: [],
    },
    {
      rules: placed.map(({ rule, span }) => ({ words: rule.words, line: lines.position(span.from).line })),
      tight,
    },
  );
}

function placeOf(table: DesignTable, rule: GradingRule) {
  const placed = table.rules.find((one) => one.rule === rule);
  if (placed) return placed.span;
  const name = "of" in rule ? rule.of : "";
  const count = table.counts.find((one) => one.name === name);
  return count?.valuesSpan ?? count?.keySpan ?? table.span;
}
