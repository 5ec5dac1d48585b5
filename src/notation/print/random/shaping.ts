import fc, { type Arbitrary } from "fast-check";
import type { Clause, RowRange, Until } from "../../tree.ts";
import { all, amounts, amountsOrNone, just, maybe, PLAIN, SPAN, sides } from "./amounts.ts";

function untils(sizes: number): Arbitrary<Until> {
  const ending = fc.oneof(maybe("endingSide", sides), all(fc.record({ endingRow: amounts(1, 2, 40) })));
  const measure = fc.oneof(
    all(just({ span: SPAN, unit: "cm" }), amounts(sizes, 3, 90)),
    all(
      just({ span: SPAN, unit: "in" }),
      amounts(sizes, 8, 280).map(({ values }) => ({
        values: values.map((eighth) => ((eighth ?? 0) / 8) * 2.54),
      })),
    ),
  );
  return fc.oneof(
    all(just({ span: SPAN }), fc.record({ measure }), maybe("from", just("beginning")), ending),
    all(just({ span: SPAN }), fc.record({ rows: amounts(sizes, 2, 90) }), maybe("more", just(true as const))),
    all(just({ span: SPAN }), fc.record({ stitches: amounts(sizes, 2, 90) })),
  );
}

export function ranges(sizes: number): Arbitrary<RowRange> {
  return fc.oneof(
    amounts(1, 1, 90).map((from): RowRange => ({ from, to: from })),
    fc.record({ from: amounts(1, 1, 40), to: amounts(sizes, 41, 120) }),
  );
}

export function rowRefs(sizes: number): Arbitrary<Clause> {
  const numbered = all(
    just({ are: "numbered", span: SPAN }),
    fc.record({
      list: fc.array(
        fc.oneof(
          amounts(1, 1, 30).map((from): RowRange => ({ from, to: from })),
          fc.record({ from: amounts(1, 1, 20), to: amounts(1, 21, 40) }),
        ),
        { minLength: 1, maxLength: 3 },
      ),
    }),
    maybe("piece", fc.constantFrom("Back", "Left Front")),
  );
  const last = all(just({ are: "last", span: SPAN }), fc.record({ count: amounts(1, 1, 8) }));
  return all(
    just({ kind: "repeat-rows", span: SPAN }),
    fc.record({ rows: fc.oneof(numbered, last) }),
    fc.oneof(maybe("times", amountsOrNone(sizes)), maybe("until", untils(sizes))),
  );
}

export function evens(sizes: number): Arbitrary<Clause> {
  return all(
    just({ kind: "even", span: SPAN }),
    fc.record({ inPattern: fc.boolean() }),
    fc.oneof(
      fc.record({ rows: amounts(sizes, 1, 40) }),
      fc
        .record({ until: untils(sizes) })
        // "Work even for 4 more rows" is so many rows: no end has to be told.
        .map(({ until }) => (until.rows && until.more ? { rows: until.rows } : { until })),
    ),
  );
}

export function schedules(sizes: number): Arbitrary<Clause> {
  const beats = fc.array(
    all(just({ span: SPAN }), fc.record({ every: amounts(1, 1, 8) }), maybe("times", amountsOrNone(sizes))),
    { minLength: 1, maxLength: 3 },
  );
  return all(
    just({ kind: "schedule", span: SPAN }),
    fc.record({
      change: fc.constantFrom("inc", "dec"),
      by: amounts(1, 1, 3),
      where: fc.constantFrom(
        "each-end",
        "neck-edge",
        "armhole-edge",
        "beginning",
        "end",
        "one-edge",
        "each-marker",
      ),
      beats,
    }),
    maybe("first", amounts(1, 1, 6)),
    maybe("together", just(true)),
  );
}

export function evenlies(sizes: number): Arbitrary<Clause> {
  const along = fc
    .constantFrom("neck", "armhole", "front", "hem")
    .map((edge) => ({ kind: "along", span: SPAN, edge, words: "" }));
  return fc.oneof(
    all(
      just({ kind: "evenly", span: SPAN }),
      fc.record({ change: fc.constantFrom("inc", "dec"), count: amounts(sizes, 1, 30) }),
    ),
    all(
      just({ kind: "evenly", span: SPAN, change: "make" }),
      fc.record({ stitch: fc.constantFrom(...PLAIN), count: amounts(sizes, 2, 120) }),
      maybe("along", along),
    ),
  );
}
