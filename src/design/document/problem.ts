import { type PerSize, valueAt } from "../../base/index.ts";
import {
  type GradingProblem,
  type GradingRule,
  linearOf,
  type OrderRule,
  type Quantity,
} from "../../sizing/index.ts";
import type { Count, DesignTable } from "./document.ts";

/** A count that makes no measure stays near what is written, for next to nothing: any real measure weighs more. */
const NEXT_TO_NOTHING = 1e-6;

/** The counts of a design as one problem: what is wanted of them, and every rule they keep. */
export interface DesignProblem {
  readonly problem: GradingProblem;
  /** Orders that nobody wrote: counts go the way their plan goes. */
  readonly implied: readonly OrderRule[];
}

/** Makes the problem; null where nothing is to be chosen. */
export function problemOf(table: DesignTable): DesignProblem | null {
  if (table.counts.length === 0) return null;
  const quantities = table.counts.map((count) => quantityOf(count, table));
  const implied = table.counts.flatMap((count, at) => impliedOrder(count, quantities[at] as Quantity) ?? []);
  // A count that nothing says anything about is held as it is written.
  const written = table.counts.flatMap((count): GradingRule[] =>
    isFree(count, table) ? [] : holdAll(count.name, count.values ?? []),
  );
  return {
    problem: {
      sizes: table.sizes,
      quantities,
      aim: table.aim,
      rules: [...table.rules.map(({ rule }) => rule), ...implied, ...written],
    },
    implied,
  };
}

/** Rules that hold every written count. */
export function holdAll(name: string, values: PerSize<number | null>): GradingRule[] {
  return values.flatMap((count, size): GradingRule[] =>
    count === null ? [] : [{ kind: "hold", of: name, size, count, words: `${name} is as written` }],
  );
}

/** Whether grading may choose a count: it makes a measure, or a tie speaks of it. */
export function isFree(count: Count, { rules }: DesignTable): boolean {
  if (isMeasured(count)) return true;
  return rules.some(
    ({ rule }) =>
      (rule.kind === "equal" && (rule.of === count.name || rule.as === count.name)) ||
      (rule.kind === "sum" && rule.terms.some(({ of }) => of === count.name)) ||
      (rule.kind === "ratio" && (rule.of === count.name || rule.to === count.name)),
  );
}

/** Whether a count makes a measure that is wanted in every size. */
export const isMeasured = ({ along, unit, wanted }: Count): boolean =>
  along !== null && unit !== null && wanted.every((cm) => cm !== null);

function quantityOf(count: Count, table: DesignTable): Quantity {
  const { name, unit, wanted, weight } = count;
  if (isMeasured(count) && unit !== null)
    return { id: name, unit, targets: wanted as PerSize<number>, weight };
  const near = count.values ?? estimate(count, table);
  return {
    id: name,
    unit: 1,
    targets: table.sizes.map((_, size) => (near && valueAt(near, size)) ?? 0),
    weight: NEXT_TO_NOTHING,
    smoothness: 0,
  };
}

/** About what a tied count comes to, from what the plan wants of the counts it is tied to. */
function estimate(count: Count, table: DesignTable): PerSize<number> | null {
  const line = count.sameAs && linearOf(count.sameAs);
  if (!line) return null;
  return table.sizes.map((_, size) => {
    let sum = valueAt(line.plus, size) ?? 0;
    for (const [of, times] of line.times) {
      const other = table.counts.find(({ name }) => name === of);
      const cm = other?.wanted[size] ?? null;
      sum += times * (other?.values?.[size] ?? (cm === null || !other?.unit ? 0 : cm / other.unit));
    }
    return Math.max(0, sum);
  });
}

/** Targets that go one way ask their counts to go that way too, unless the design says otherwise. */
function impliedOrder({ name, order, along }: Count, { targets }: Quantity): OrderRule | null {
  if (order !== null || along === null || targets.length < 2) return null;
  const steps = targets.slice(1).map((target, at) => target - (targets[at] as number));
  const direction = steps.every((step) => step >= 0)
    ? "up"
    : steps.every((step) => step <= 0)
      ? "down"
      : null;
  return (
    direction && {
      kind: "order",
      of: name,
      direction,
      words: `${name} goes ${direction} from size to size, as its plan does`,
    }
  );
}
