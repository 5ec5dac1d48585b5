import { type PerSize, valueAt } from "../../base/index.ts";
import type { GradingRule } from "../grading/problem.ts";
import { fits } from "../multiples.ts";
import type { Cm } from "../units.ts";

/** What is written of the counts, and how much each measures. */
export interface WrittenCounts {
  /** Values of a count; null where there are none yet. */
  values(name: string): PerSize<number | null> | null;
  /** cm a stitch, row or repeat. */
  unit(name: string): Cm;
}

/** A hair: sums of binary fractions of centimetres must not break a rule they keep. */
const HAIR = 1e-9;

/**
 * The sizes in which written counts break a rule, and what the rule's sum comes to in every size (for sums, ties and ratios;
 * else the count itself). Sizes without a value keep every rule.
 */
export function breaksOf(
  rule: GradingRule,
  sizes: number,
  written: WrittenCounts,
): { readonly sizes: readonly number[]; readonly comesTo: PerSize<number | null> } {
  const at = (name: string, size: number): number | null => {
    const values = written.values(name);
    return (values && valueAt(values, size)) ?? null;
  };
  const each = <T>(of: (size: number) => T): T[] => Array.from({ length: sizes }, (_, size) => of(size));
  const judge = (comesTo: PerSize<number | null>, keeps: (value: number, size: number) => boolean) => ({
    sizes: comesTo.flatMap((value, size) => (value === null || keeps(value, size) ? [] : [size])),
    comesTo,
  });
  switch (rule.kind) {
    case "multiple":
      return judge(
        each((size) => at(rule.of, size)),
        (value) => fits(value, rule),
      );
    case "at least":
      return judge(
        each((size) => at(rule.of, size)),
        (value, size) => value >= (valueAt(rule.counts, size) ?? Number.NEGATIVE_INFINITY),
      );
    case "at most":
      return judge(
        each((size) => at(rule.of, size)),
        (value, size) => value <= (valueAt(rule.counts, size) ?? Number.POSITIVE_INFINITY),
      );
    case "hold":
      return judge(
        each((size) => at(rule.of, size)),
        (value, size) => size !== rule.size || value === rule.count,
      );
    case "order": {
      const values = each((size) => at(rule.of, size));
      return judge(values, (value, size) => {
        const before = values[size - 1] ?? null;
        if (before === null) return true;
        return rule.direction === "up" ? value >= before : value <= before;
      });
    }
    case "equal":
      return judge(
        each((size) => difference(at(rule.of, size), at(rule.as, size), rule.plus ?? 0)),
        (value) => value === 0,
      );
    case "sum":
      return judge(
        each((size) => {
          let sum = -rule.makes;
          for (const { of, times } of rule.terms) {
            const value = at(of, size);
            if (value === null) return null;
            sum += times * value * (rule.measured === "cm" ? written.unit(of) : 1);
          }
          return Math.abs(sum) < HAIR ? 0 : sum;
        }),
        (value) => Math.abs(value) <= (rule.within ?? 0) + HAIR,
      );
    case "ratio":
      return judge(
        each((size) => {
          const [a, b] = [at(rule.of, size), at(rule.to, size)];
          if (a === null || b === null || b === 0) return null;
          return rule.measured === "cm" ? (a * written.unit(rule.of)) / (b * written.unit(rule.to)) : a / b;
        }),
        (value) => value >= rule.least - HAIR && value <= rule.most + HAIR,
      );
  }
}

function difference(a: number | null, b: number | null, plus: number): number | null {
  return a === null || b === null ? null : a - b - plus;
}
