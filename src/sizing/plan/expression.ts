import type { PerSize, Span } from "../../base/index.ts";
import type { Cm, Count } from "../units.ts";

/** What words about a measure or a count come to, before anything is worked out. Spans are offsets into those words. */
export type Expression =
  /** "2 cm", "18 19.5 21 cm": one length, or one per size. */
  | { readonly is: "length"; readonly span: Span; readonly cm: PerSize<Cm> }
  /** A bare number, among counts only. */
  | { readonly is: "number"; readonly span: Span; readonly value: PerSize<number> }
  /** A measure or count by its name, as the list of known names has it. */
  | { readonly is: "name"; readonly span: Span; readonly name: string }
  /** "3 rows in bump": what so many stitches or rows of a fabric measure. */
  | {
      readonly is: "fabric";
      readonly span: Span;
      readonly count: PerSize<Count>;
      readonly of: "stitches" | "rows";
      readonly fabric: string;
    }
  /** "half of", "twice", "85 % of", "3 for every 4". */
  | { readonly is: "times"; readonly span: Span; readonly times: number; readonly what: Expression }
  /** "a plus b minus c". */
  | {
      readonly is: "sum";
      readonly span: Span;
      readonly terms: readonly { readonly sign: 1 | -1; readonly what: Expression }[];
    }
  /** "the larger of a and b"; "a, at least b". */
  | { readonly is: "larger" | "smaller"; readonly span: Span; readonly of: readonly Expression[] };

/** An expression as so many times each name, and what is added to it. */
export interface Linear {
  readonly times: ReadonlyMap<string, number>;
  /** cm, or a number among counts; one for all sizes or one per size. */
  readonly plus: PerSize<number>;
}

/** Every name in the expression, in the order of the words, each with its place. */
export function namesIn(expression: Expression): { readonly name: string; readonly span: Span }[] {
  switch (expression.is) {
    case "name":
      return [expression];
    case "times":
      return namesIn(expression.what);
    case "sum":
      return expression.terms.flatMap(({ what }) => namesIn(what));
    case "larger":
    case "smaller":
      return expression.of.flatMap(namesIn);
    default:
      return [];
  }
}

/** The expression as a straight line; null where it takes the larger or smaller of two, or a length of fabric. */
export function linearOf(expression: Expression): Linear | null {
  switch (expression.is) {
    case "length":
      return { times: new Map(), plus: expression.cm };
    case "number":
      return { times: new Map(), plus: expression.value };
    case "name":
      return { times: new Map([[expression.name, 1]]), plus: [0] };
    case "times": {
      const inner = linearOf(expression.what);
      return inner && scaled(inner, expression.times);
    }
    case "sum": {
      let all: Linear = { times: new Map(), plus: [0] };
      for (const { sign, what } of expression.terms) {
        const one = linearOf(what);
        if (one === null) return null;
        all = added(all, scaled(one, sign));
      }
      return all;
    }
    default:
      return null;
  }
}

function scaled({ times, plus }: Linear, by: number): Linear {
  return {
    times: new Map([...times].map(([name, n]) => [name, n * by])),
    plus: plus.map((one) => one * by),
  };
}

function added(a: Linear, b: Linear): Linear {
  const times = new Map(a.times);
  for (const [name, n] of b.times) times.set(name, (times.get(name) ?? 0) + n);
  for (const [name, n] of times) if (n === 0) times.delete(name);
  const length = Math.max(a.plus.length, b.plus.length);
  const at = (list: PerSize<number>, size: number) => (list.length === 1 ? list[0] : list[size]) ?? 0;
  return { times, plus: Array.from({ length }, (_, size) => at(a.plus, size) + at(b.plus, size)) };
}
