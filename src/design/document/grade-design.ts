import type { Edit, Finding, PerSize } from "../../base/index.ts";
import type { ReadOptions } from "../../notation/index.ts";
import { type GradingResult, gradeWithSolver, type LinearSolver } from "../../sizing/index.ts";
import type { Proof } from "../proof.ts";
import { applyEdits, proveDesign } from "../prove.ts";
import { asWritten, conflictFinding, gradeOrNull } from "./choice.ts";
import type { Count, DesignTable } from "./document.ts";
import { isFree, problemOf } from "./problem.ts";

/** A count that grading has otherwise than it is written. */
export interface CountChange {
  readonly name: string;
  /** As written; null where there were no values. */
  readonly before: PerSize<number | null> | null;
  readonly after: PerSize<number | null>;
  /** Whether the values stand in the table, or follow from other counts. */
  readonly written: boolean;
}

/** A design with its counts chosen anew, beside what it was. Nothing is written: the edits do that. */
export interface Regraded {
  readonly is: "graded";
  readonly before: Proof;
  readonly after: Proof;
  readonly edits: readonly Edit[];
  readonly text: string;
  readonly changes: readonly CountChange[];
  /** Misses and uneven steps, weighted cm, as written; null where some count had no value. */
  readonly costBefore: number | null;
  readonly costAfter: number;
  /** The largest weighted miss, cm. */
  readonly worstBefore: number | null;
  readonly worstAfter: number;
  /** No choice costs less than this. */
  readonly floor: number;
  /** Whether the new choice is proved to be the best there is. */
  readonly proved: boolean;
}

/** Why nothing was chosen, with the findings that say so. */
export interface NotGraded {
  readonly is: "no table" | "no counts" | "table has errors" | "rules clash" | "unsettled";
  readonly before: Proof;
  readonly findings: readonly Finding[];
}

/**
 * Chooses all counts of a design anew.
 *
 * @param solver  settles what the search leaves open, see `highsSolver`; without one the best that was found is taken
 */
export async function gradeDesign(
  text: string,
  solver: LinearSolver | null = null,
  options: ReadOptions = {},
): Promise<Regraded | NotGraded> {
  const before = proveDesign(text, options);
  const { table } = before;
  const not = (is: NotGraded["is"], findings: readonly Finding[] = []): NotGraded => ({
    is,
    before,
    findings,
  });
  if (table === undefined) return not("no table");
  // Where part of the plan was not understood, a choice without it would be written as if it were the whole.
  const errors = table.findings.filter(({ severity }) => severity === "error");
  if (errors.length > 0) return not("table has errors", errors);
  const made = problemOf(table);
  if (made === null) return not("no counts");
  const result = await solve(made.problem, solver);
  if (result === null || result.kind === "unsettled") return not("unsettled");
  if (result.kind === "conflict") return not("rules clash", [conflictFinding(table, result)]);
  const chosen = new Map(result.quantities.map(({ id, counts }) => [id, counts] as const));
  const changes = table.counts.flatMap((count): CountChange[] => {
    const after = newValues(count, chosen.get(count.name), table);
    if (after === null) return [];
    const same = count.values !== null && after.every((value, size) => value === count.values?.[size]);
    return same ? [] : [{ name: count.name, before: count.values, after, written: isWritten(count) }];
  });
  const edits = changes.flatMap(({ name, after, written }) => {
    const count = table.counts.find((one) => one.name === name);
    return count && written ? [editOf(text, count, after)] : [];
  });
  const graded = applyEdits(text, edits);
  const written = asWritten(table, made);
  return {
    is: "graded",
    before,
    after: edits.length === 0 ? before : proveDesign(graded, options),
    edits,
    text: graded,
    changes,
    costBefore: written?.cost ?? null,
    costAfter: result.cost,
    worstBefore: written?.worst ?? null,
    worstAfter: result.worst,
    floor: result.floor,
    proved: result.proved,
  };
}

async function solve(
  problem: Parameters<typeof gradeOrNull>[0],
  solver: LinearSolver | null,
): Promise<GradingResult | null> {
  const first = gradeOrNull(problem);
  if (solver === null || first === null || first.kind === "conflict") return first;
  if (first.kind === "graded" && first.proved) return first;
  return gradeWithSolver(problem, solver);
}

/** The values a count gets; null where it is left alone. A size that has none keeps none. */
function newValues(
  count: Count,
  chosen: PerSize<number> | undefined,
  table: DesignTable,
): PerSize<number | null> | null {
  if (chosen === undefined || !isFree(count, table)) return null;
  const isPartly = count.valuesSpan !== null && (count.values?.some((value) => value !== null) ?? false);
  return chosen.map((value, size) => (isPartly && count.values?.[size] === null ? null : value));
}

/** A count that is the same as others and has no values of its own follows them without being written. */
const isWritten = ({ sameAs, valuesSpan }: Count): boolean => valuesSpan !== null || sameAs === null;

/** The edit that writes values: number by number where there are as many, so that brackets and spaces stay. */
export function editOf(text: string, count: Count, values: PerSize<number | null>): Edit {
  const words = values.map((value) => (value === null ? "-" : String(value)));
  const alike = new Set(words).size === 1;
  if (count.valuesSpan === null) {
    const { at, before, after } = count.insertAt;
    return {
      span: { from: at, to: at },
      text: before + (alike ? (words[0] ?? "") : words.join(" ")) + after,
    };
  }
  const written = text.slice(count.valuesSpan.from, count.valuesSpan.to);
  const numbers = written.match(/\d+/g)?.length ?? 0;
  let next = 0;
  if (numbers === words.length && values.every((value) => value !== null))
    return { span: count.valuesSpan, text: written.replace(/\d+/g, () => words[next++] ?? "") };
  if (alike && numbers === 1) return { span: count.valuesSpan, text: written.replace(/\d+/, words[0] ?? "") };
  const list = written.startsWith("[") ? `[${words.join(", ")}]` : words.join(" ");
  const quote = /^["']/.exec(written)?.[0] ?? "";
  return { span: count.valuesSpan, text: quote + list + quote };
}
