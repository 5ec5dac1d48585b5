import type { Span } from "../../base/index.ts";
import type { Amount } from "../tree.ts";
import { type RowSeen, type Seen, type Sort, wordsAt } from "./seen.ts";

/** A list of the rows with one number for every size of the run. */
export interface GradedList {
  readonly span: Span;
  readonly words: string;
  /** As the pattern has them: inches where it measures in inches. */
  readonly values: readonly number[];
  readonly sort: Sort;
  readonly row: RowSeen;
}

/** Every list of the rows that has one number for each size, in the order of the text, for each piece. */
export function gradedLists(seen: Seen): ReadonlyMap<number, readonly GradedList[]> {
  const run = seen.tree.sizes.length;
  const pieces = new Map<number, GradedList[]>();
  if (run < 3) return pieces;
  for (const row of seen.rows) {
    const list = pieces.get(row.pieceAt) ?? [];
    pieces.set(row.pieceAt, list);
    for (const { amount, sort, sizes } of row.amounts) {
      const { span, values } = amount;
      if (values.length !== run || sizes !== run || !values.every(isNumber)) continue;
      const asWritten = isInches(amount) ? values.map((cm) => Math.round((cm / 2.54) * 100) / 100) : values;
      list.push({ span, words: wordsAt(seen.tree, span), values: asWritten, sort, row });
    }
  }
  return pieces;
}

function isNumber(value: number | null): value is number {
  return value !== null;
}

function isInches(amount: Amount): boolean {
  return "unit" in amount && amount.unit === "in";
}

/** The steps from size to size. */
export function stepsOf(values: readonly number[]): number[] {
  return values.slice(1).map((value, i) => value - (values[i] as number));
}

/** Sorts whose lists a designer grades in even steps: counts that stand for a width. */
export function isWidth({ sort }: GradedList): boolean {
  return sort === "chain" || sort === "count";
}

/**
 * Whether a count may well be meant to be out of step at a size because what leads to it is: a number of repeats or rows,
 * or of stitches inside a row, that is out of step there as well.
 *
 * @param others  the lists of the same piece
 * @param at      index of the step
 * @param isOut   whether the steps of such a list are out of step there
 */
export function isExplained(
  others: readonly GradedList[],
  isOut: (steps: readonly number[]) => boolean,
): boolean {
  const leads: readonly Sort[] = ["times", "rows", "worked"];
  return others.some((list) => leads.includes(list.sort) && isOut(stepsOf(list.values)));
}
