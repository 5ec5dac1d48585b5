import { type PerSize, type SizeRun, valueAt } from "../../base/index.ts";
import type { Cm, Count } from "../units.ts";
import { mustBePositive, mustBeWhole } from "../units.ts";

/** Everything that grading has to go by: which counts to choose, what they should measure, which rules they keep. */
export interface GradingProblem {
  readonly sizes: SizeRun;
  readonly quantities: readonly Quantity[];
  readonly rules: readonly GradingRule[];
  /**
   * "least sum" (the usual): the sum of all weighted misses and uneven steps is as small as can be.
   * "least worst": first the largest weighted miss is as small as can be, then the sum.
   */
  readonly aim?: "least sum" | "least worst";
}

/** One count to choose for every size. No count is ever below 0, or beyond all reason, see `reachOf`. */
export interface Quantity {
  /** How rules name it; unlike all others. */
  readonly id: string;
  /** cm that one stitch, row or repeat measures. */
  readonly unit: Cm;
  /** Wanted cm, one per size. */
  readonly targets: PerSize<Cm>;
  /** What a cm of miss costs; 1 unless said. One number, or one per size. */
  readonly weight?: number | PerSize<number>;
  /** What it costs when a step from size to size differs from the step before by one count, in weighted cm; 0.05 unless said. */
  readonly smoothness?: number;
}

/** A rule in the designer's own words, so that a conflict can be said. */
interface Said {
  readonly words: string;
}

/** A count times a number: half of a count is `times: 0.5`. */
export interface Term {
  readonly of: string;
  readonly times: number;
}

/** A count that is a multiple of so many plus so many. */
export interface MultipleRule extends Said {
  readonly kind: "multiple";
  readonly of: string;
  readonly multiple: Count;
  readonly remainder: Count;
}

/** A least or greatest count; null where a size has none. One number alone stands for all sizes. */
export interface BoundRule extends Said {
  readonly kind: "at least" | "at most";
  readonly of: string;
  readonly counts: PerSize<Count | null>;
}

/** A count the designer has settled for one size. */
export interface HoldRule extends Said {
  readonly kind: "hold";
  readonly of: string;
  /** Index into the size run. */
  readonly size: number;
  readonly count: Count;
}

/** Which way a count goes from size to size; it may stay. Without such a rule it may go either way. */
export interface OrderRule extends Said {
  readonly kind: "order";
  readonly of: string;
  readonly direction: "up" | "down";
}

/** Two counts that differ by the same whole number in all sizes: of = as + plus. */
export interface EqualRule extends Said {
  readonly kind: "equal";
  readonly of: string;
  readonly as: string;
  /** 0 unless said. */
  readonly plus?: Count;
}

/** Terms that come to a number, in counts or in cm: back − 2 front − band = 0. */
export interface SumRule extends Said {
  readonly kind: "sum";
  readonly terms: readonly Term[];
  readonly makes: number;
  readonly measured: "counts" | "cm";
  /** How far the sum may miss, either way; 0 unless said. Sums in cm need some: cm of two gauges never agree exactly. */
  readonly within?: number;
}

/** One count over another, in counts or in cm: least ≤ of / to ≤ most. */
export interface RatioRule extends Said {
  readonly kind: "ratio";
  readonly of: string;
  readonly to: string;
  readonly measured: "counts" | "cm";
  readonly least: number;
  readonly most: number;
}

export type GradingRule = MultipleRule | BoundRule | HoldRule | OrderRule | EqualRule | SumRule | RatioRule;

/** What a change of step costs unless a quantity says otherwise (computation notes, section 5). */
export const USUAL_SMOOTHNESS = 0.05;

/** Costs are whole millionths of a weighted cm, so that a tie is a tie on every machine, however the sum was made. */
export const MICRO = 1_000_000;

/** Weight of a cm of miss in one size. */
export function weightOf({ weight }: Quantity, size: number): number {
  if (weight === undefined) return 1;
  return typeof weight === "number" ? weight : (weight[size] ?? 1);
}

/**
 * The most that any count may be: four times the largest that a target wants or a rule asks for, and the largest multiple.
 * What holds only with more than that is no garment, and an end to the search is needed.
 */
export function reachOf({ quantities, rules }: GradingProblem): Count {
  let asked = 0;
  let multiple = 0;
  for (const { unit, targets } of quantities)
    asked = Math.max(asked, ...targets.map((target) => target / unit));
  for (const rule of rules) {
    if (rule.kind === "hold") asked = Math.max(asked, rule.count);
    else if (rule.kind === "at least") asked = Math.max(asked, ...rule.counts.map((n) => n ?? 0));
    else if (rule.kind === "equal") asked = Math.max(asked, Math.abs(rule.plus ?? 0));
    else if (rule.kind === "multiple")
      multiple = Math.max(multiple, rule.multiple + Math.abs(rule.remainder));
  }
  return Math.ceil(4 * asked) + multiple;
}

/** The quantities a rule speaks of, by name. */
export function namedIn(rule: GradingRule): readonly string[] {
  switch (rule.kind) {
    case "equal":
      return [rule.of, rule.as];
    case "ratio":
      return [rule.of, rule.to];
    case "sum":
      return rule.terms.map(({ of }) => of);
    default:
      return [rule.of];
  }
}

/**
 * Looks over a problem before it is solved.
 *
 * @throws {RangeError} on what no designer can have meant: a name twice or unknown, a list of another length than the size
 *         run, a gauge or weight of zero or less, a multiple that is not a whole number
 */
export function checkProblem({ sizes, quantities, rules }: GradingProblem): void {
  mustBeWhole(sizes.length, "the number of sizes", 1);
  const known = new Set<string>();
  for (const { id, unit, targets, weight, smoothness } of quantities) {
    if (known.has(id)) throw new RangeError(`two quantities are called ${id}`);
    known.add(id);
    mustBePositive(unit, `the gauge of ${id}`);
    if (targets.length !== sizes.length)
      throw new RangeError(`${id} has ${targets.length} targets for ${sizes.length} sizes`);
    for (const target of targets) {
      if (!(target >= 0) || !Number.isFinite(target)) throw new RangeError(`a target of ${id} is ${target}`);
    }
    if (typeof weight === "object" && weight.length !== sizes.length) {
      throw new RangeError(`${id} has ${weight.length} weights for ${sizes.length} sizes`);
    }
    for (const one of typeof weight === "object" ? weight : [weight ?? 1])
      mustBePositive(one, `a weight of ${id}`);
    if (smoothness !== undefined && !(smoothness >= 0))
      throw new RangeError(`the smoothness of ${id} is ${smoothness}`);
  }
  for (const rule of rules) {
    for (const name of namedIn(rule)) {
      if (!known.has(name)) throw new RangeError(`a rule speaks of ${name}, which there is not`);
    }
    checkRule(rule, sizes.length);
  }
}

/** The count a bound sets in one size, or null. */
export function boundAt(rule: BoundRule, size: number): Count | null {
  return valueAt(rule.counts, size) ?? null;
}

function checkRule(rule: GradingRule, sizes: number): void {
  switch (rule.kind) {
    case "multiple":
      mustBeWhole(rule.multiple, "a multiple", 1);
      mustBeWhole(rule.remainder, "a remainder", Number.NEGATIVE_INFINITY);
      return;
    case "at least":
    case "at most":
      if (rule.counts.length !== sizes && rule.counts.length !== 1) {
        throw new RangeError(`a bound of ${rule.of} has ${rule.counts.length} numbers for ${sizes} sizes`);
      }
      for (const count of rule.counts) if (count !== null) mustBeWhole(count, `a bound of ${rule.of}`);
      return;
    case "hold":
      mustBeWhole(rule.count, `the count held for ${rule.of}`);
      mustBeWhole(rule.size, "a size");
      if (rule.size >= sizes) throw new RangeError(`there is no size ${rule.size}`);
      return;
    case "equal":
      mustBeWhole(rule.plus ?? 0, "a difference", Number.NEGATIVE_INFINITY);
      return;
    case "sum":
      if (rule.terms.length === 0) throw new RangeError("a sum has no terms");
      if (new Set(rule.terms.map(({ of }) => of)).size < rule.terms.length)
        throw new RangeError("a sum names a quantity twice");
      for (const { times } of rule.terms)
        if (!Number.isFinite(times) || times === 0) throw new RangeError(`a term is taken ${times} times`);
      if (!((rule.within ?? 0) >= 0)) throw new RangeError(`a sum may miss by ${rule.within}`);
      return;
    case "ratio":
      if (!(rule.least >= 0) || !(rule.most >= rule.least))
        throw new RangeError(`a ratio from ${rule.least} to ${rule.most}`);
      return;
    case "order":
      return;
  }
}
