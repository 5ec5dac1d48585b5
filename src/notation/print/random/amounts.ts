import fc, { type Arbitrary } from "fast-check";
import type { Amount, LoopWord } from "../../tree.ts";

export const SPAN = { from: 0, to: 0 };

export const SPECIALS: ReadonlyMap<string, string> = new Map([
  ["petal stitch", "petal stitch"],
  ["grit", "grit"],
]);
export const COLOURS = ["A", "B", "MC", "cream"];

/** A field that may be missing. */
export function maybe<Name extends string, T>(
  name: Name,
  value: Arbitrary<T>,
): Arbitrary<{ readonly [K in Name]?: T }> {
  return fc
    .option(value, { nil: undefined })
    .map((found) => (found === undefined ? {} : { [name]: found })) as never;
}

export function all(...parts: Arbitrary<object>[]): Arbitrary<never> {
  return fc.tuple(...parts).map((fields) => Object.assign({}, ...fields)) as never;
}

export function just<T>(fields: T): Arbitrary<T> {
  return fc.constant(fields);
}

/** One number for all sizes, or one for each. */
export function amounts(sizes: number, from = 1, to = 120): Arbitrary<Amount> {
  const number = fc.integer({ min: from, max: to });
  const one = number.map((value): Amount => ({ span: SPAN, values: [value] }));
  if (sizes === 1) return one;
  const list = fc
    .array(number, { minLength: sizes, maxLength: sizes })
    .map((values): Amount => ({ span: SPAN, values: values.toSorted((a, b) => a - b) }))
    .filter(({ values: [first, second] }) => sizes > 2 || (second ?? 0) <= 2 * (first ?? 0) + 2);
  return fc.oneof(one, list);
}

/** Amounts of which some sizes may do none. */
export function amountsOrNone(sizes: number): Arbitrary<Amount> {
  if (sizes === 1) return amounts(1);
  const value = fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 0, max: 30 }) },
    { weight: 1, arbitrary: just(null) },
  );
  return fc
    .oneof(
      amounts(sizes),
      fc
        .array(value, { minLength: sizes, maxLength: sizes })
        .map((values): Amount => ({ span: SPAN, values })),
    )
    .filter(({ values }) => values.some((one) => one !== null));
}

export const PLAIN = ["sc", "hdc", "dc", "tr", "dtr", "sl st", "esc"];
export const POSTS = ["fpdc", "bpdc", "fptr", "bphdc"];
const TOGETHER = ["sc2tog", "dc2tog", "hdc3tog", "invdec"];
const OWN = ["petal stitch", "grit", "shell", "puff", "v-stitch", "picot"];

export const stitches = fc.constantFrom(...PLAIN, ...POSTS, ...TOGETHER, ...OWN, "inc", "dec", "fsc");
export const colours = fc.constantFrom(...COLOURS);
export const sides = fc.constantFrom("RS" as const, "WS" as const);
export const loops: Arbitrary<LoopWord> = fc.constantFrom("back", "front", "both", "third", "back-bump");

export const placeStitches = fc.constantFrom(
  ...PLAIN,
  ...POSTS,
  "sc2tog",
  "petal stitch",
  "shell",
  "v-stitch",
  "picot",
);
