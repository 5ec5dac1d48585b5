import type { Finding } from "../../base/index.ts";
import { listOutOfOrder } from "../findings/index.ts";
import { type GradedList, gradedLists, isExplained, isWidth, stepsOf } from "./graded-lists.ts";
import { inRow, type Seen } from "./seen.ts";

/*
 * A count or a length that turns round between two sizes, where everything says that a figure was mistyped. Lists may turn round for
 * good reasons: a sleeve of a drop shoulder grows shorter, a size with more repeats has fewer rows, a count half way
 * through a yoke depends on how far each size has come. So one step alone has to go the other way, mending it has to leave
 * a list that goes on evenly, and nothing in the piece may lead up to it.
 */

export function findListOrder(seen: Seen): Finding[] {
  const found: Finding[] = [];
  const said = new Set<string>();
  const pieces = gradedLists(seen);
  const widths = [...pieces.values()].flat().filter(isWidth);
  for (const lists of pieces.values())
    for (const list of lists) {
      if (!isWidth(list) && list.sort !== "measure") continue;
      const turn = turnOf(list, widths);
      const key = stepsOf(list.values).join();
      if (turn === null || said.has(key)) continue;
      const { at, rises } = turn;
      if (isExplained(lists, (steps) => (steps[at] as number) * (rises ? 1 : -1) < 0)) continue;
      said.add(key);
      const [from, to] = [list.values[at] as number, list.values[at + 1] as number];
      const where = inRow(list.row, list.span, [at, at + 1]);
      found.push(listOutOfOrder.at(where, { words: list.words, from, to }));
    }
  return found;
}

interface Turn {
  /** Index of the step that goes the other way. */
  readonly at: number;
  readonly rises: boolean;
}

function turnOf(list: GradedList, widths: readonly GradedList[]): Turn | null {
  const { values } = list;
  const steps = stepsOf(values);
  const ups = steps.filter((step) => step > 0).length;
  const downs = steps.filter((step) => step < 0).length;
  if (ups + downs !== steps.length || Math.min(ups, downs) !== 1) return null;
  // With three sizes one step goes each way: the other lists say which way is right.
  const rises = ups === downs ? mostRise(widths, list) : ups > downs;
  if (rises === null) return null;
  const at = steps.findIndex((step) => step > 0 !== rises);
  const mended = [swap(values, at), ...[at, at + 1].flatMap((size) => transposed(values, size))];
  return mended.some((one) => isEven(one, rises)) ? { at, rises } : null;
}

/** Whether the other lists rise or fall: null where they are few or of two minds. */
function mostRise(widths: readonly GradedList[], but: GradedList): boolean | null {
  let rising = 0;
  let falling = 0;
  for (const { values } of widths) {
    if (values.join() === but.values.join()) continue;
    const steps = stepsOf(values);
    if (steps.every((step) => step > 0)) rising += 1;
    else if (steps.every((step) => step < 0)) falling += 1;
    else if (steps.some((step) => step > 0) && steps.some((step) => step < 0)) return null;
  }
  if (rising + falling < 3 || Math.min(rising, falling) > 0) return null;
  return rising > 0;
}

function swap(values: readonly number[], at: number): number[] {
  return values.with(at, values[at + 1] as number).with(at + 1, values[at] as number);
}

/** The list with two neighbouring figures of one number the other way round: 96 for 69, 117 for 171. */
function transposed(values: readonly number[], size: number): number[][] {
  const digits = String(values[size]);
  if (!/^\d+$/.test(digits)) return [];
  return Array.from({ length: Math.max(0, digits.length - 1) }, (_, i) => {
    const other = digits.slice(0, i) + digits[i + 1] + digits[i] + digits.slice(i + 2);
    return values.with(size, Number(other));
  });
}

/** Whether a list goes one way in steps of which none is more than half as large again as another, give or take two. */
function isEven(values: readonly number[], rises: boolean): boolean {
  const steps = stepsOf(values).map((step) => (rises ? step : -step));
  const least = Math.min(...steps);
  return least > 0 && Math.max(...steps) <= least * 1.5 + 2;
}
