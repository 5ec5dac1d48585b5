import { type Finding, LineIndex, type PerSize } from "../../base/index.ts";
import {
  type Conflict,
  type Grading,
  type GradingResult,
  type GradingRule,
  grade,
} from "../../sizing/index.ts";
import { betterChoice, rulesCannotHold } from "../findings/index.ts";
import type { Aim, DesignTable } from "./document.ts";
import { type DesignProblem, holdAll, problemOf } from "./problem.ts";

/** How the counts as written stand to the best there are. */
export interface Choice {
  /** Misses and uneven steps of the counts as written, weighted cm; null where some count has no value. */
  readonly cost: number | null;
  /** No choice of counts costs less than this; null where rules contradict each other or nothing was settled. */
  readonly floor: number | null;
  /** The largest weighted miss of the counts as written, and of the best that was found; null where there is none. */
  readonly worst: number | null;
  readonly worstAtBest: number | null;
  /** Weighted cm by which the written choice may be behind the best, of what the design aims at; null where not known. */
  readonly gap: number | null;
  /** Whether no choice keeps the rules and comes closer to the plan than the written one. */
  readonly best: boolean;
  /** The best that was found, by count; null where there is none. */
  readonly counts: ReadonlyMap<string, PerSize<number>> | null;
  /** The same with all that was found out about it. */
  readonly grading: Grading | null;
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
  const written = asWritten(table, made);
  const none = {
    cost: written?.cost ?? null,
    floor: null,
    worst: written?.worst ?? null,
    worstAtBest: null,
    gap: null,
    best: false,
    counts: null,
    grading: null,
  };
  if (result.kind === "conflict") return { ...none, findings: [conflictFinding(table, result)] };
  if (result.kind === "unsettled") return { ...none, floor: result.floor, findings: [] };
  const behind = written && gapOf(table.aim, written, result);
  return {
    ...none,
    floor: result.floor,
    worstAtBest: result.worst,
    gap: behind,
    best: behind === 0,
    counts: new Map(result.quantities.map((one) => [one.id, one.counts] as const)),
    grading: result,
    findings: written && isBetter(table.aim, result, written) ? [betterFinding(table, result, written)] : [],
  };
}

/** What a choice comes to. */
type Comes = Pick<Grading, "cost" | "worst">;

/** Whether one choice is better than another by what the design aims at. */
function isBetter(aim: Aim, one: Comes, than: Comes): boolean {
  if (aim === "least worst" && Math.abs(one.worst - than.worst) > ALIKE) return one.worst < than.worst;
  return one.cost < than.cost - ALIKE;
}

/** By how much a choice may be behind the best; 0 where it is as good as any. */
function gapOf(aim: Aim, written: Comes, result: Grading): number {
  const worse = aim === "least worst" ? written.worst - result.worst : 0;
  if (worse > ALIKE) return worse;
  const gap = written.cost - result.floor;
  return gap > ALIKE ? gap : 0;
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

/** What the counts as written come to: the only choice there is when all are held. */
export function asWritten(table: DesignTable, { problem }: DesignProblem): Comes | null {
  if (table.counts.some(({ values }) => values === null || values.some((value) => value === null)))
    return null;
  const rules: GradingRule[] = table.counts.flatMap(({ name, values }) => holdAll(name, values ?? []));
  const held = gradeOrNull({ ...problem, rules });
  return held?.kind === "graded" ? held : null;
}

function betterFinding(table: DesignTable, result: Grading, written: Comes): Finding {
  const changes = changesOf(table, result);
  const first = table.counts.find(({ name }) => name === changes[0]?.count) ?? table.counts[0];
  const sizes = new Set(changes.map(({ size }) => table.sizes.indexOf(size)));
  return betterChoice.at(
    { span: first?.keySpan ?? table.span, piece: null, row: null, sizes: [...sizes].sort((a, b) => a - b) },
    {
      changes,
      aim: table.aim,
      asWritten: table.aim === "least worst" ? written.worst : written.cost,
      atBest: table.aim === "least worst" ? result.worst : result.cost,
      proved: result.proved,
    },
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
