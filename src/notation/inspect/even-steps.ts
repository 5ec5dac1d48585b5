import type { Finding } from "../../base/index.ts";
import { unevenStep } from "../findings/index.ts";
import { gradedLists, isExplained, isWidth, stepsOf } from "./graded-lists.ts";
import { inRow, type Seen } from "./seen.ts";

/*
 * One value off an even progression, as a single mistyped number leaves it. Graded lists are seldom quite even, and are
 * right so: larger steps from some size on, a motif that comes out. So all other sizes must lie on one straight line.
 */

/** Fewer sizes do not show a line: with four, two steps out of three are changed by one value. */
const FEWEST = 5;

export function findUnevenSteps(seen: Seen): Finding[] {
  const found: Finding[] = [];
  const said = new Set<string>();
  for (const lists of gradedLists(seen).values())
    for (const list of lists) {
      if (!isWidth(list)) continue;
      const off = offLine(list.values);
      const key = stepsOf(list.values).join();
      if (off === null || said.has(key)) continue;
      const { size } = off;
      if (isExplained(lists, (steps) => steps[size - 1] !== steps[size])) continue;
      said.add(key);
      const where = inRow(list.row, list.span, [size]);
      found.push(
        unevenStep.at(where, {
          words: list.words,
          size: seen.tree.sizes[size] as string,
          found: list.values[size] as number,
          expected: off.expected,
        }),
      );
    }
  return found;
}

/** The one size between first and last that leaves the line through all others, or null. */
function offLine(values: readonly number[]): { readonly size: number; readonly expected: number } | null {
  const last = values.length - 1;
  if (values.length < FEWEST) return null;
  const first = values[0] as number;
  const step = ((values[last] as number) - first) / last;
  // A line that rises by one stitch is rounded up and down as its shaping needs.
  if (!Number.isInteger(step) || Math.abs(step) < 2) return null;
  const off = values.flatMap((value, size) => (value === first + size * step ? [] : [size]));
  const size = off[0];
  if (size === undefined || off.length > 1) return null;
  const [before, value, after] = [values[size - 1], values[size], values[size + 1]] as [
    number,
    number,
    number,
  ];
  // Two sizes that share a count are a choice; a value beyond its neighbours is out of order, which is another finding.
  const isBetween = step > 0 ? before < value && value < after : before > value && value > after;
  return isBetween ? { size, expected: first + size * step } : null;
}
