// For tests only: random problems small enough for every count to be tried.
import fc from "fast-check";
import type { GradingProblem, GradingRule, Quantity } from "./problem.ts";

/** Small problems with every kind of rule. Bounds are few counts wide, so that all counts can be tried. */
export const problems = (withSums: boolean): fc.Arbitrary<GradingProblem> =>
  fc
    .record({
      sizes: fc.integer({ min: 1, max: 4 }),
      quantities: fc.integer({ min: 1, max: 3 }),
      aim: fc.constantFrom("least sum" as const, "least worst" as const),
    })
    .map((one) => ({ ...one, sizes: one.quantities === 3 ? Math.min(one.sizes, 3) : one.sizes }))
    .chain(({ sizes, quantities, aim }) =>
      fc
        .record({
          quantities: fc.array(quantity(sizes), { minLength: quantities, maxLength: quantities }),
          bounds: fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 3, max: 5 })), {
            minLength: quantities,
            maxLength: quantities,
          }),
          rules: fc.array(rule(sizes, quantities, withSums), { maxLength: 5 }),
        })
        .map((made) => ({
          sizes: Array.from({ length: sizes }, (_, s) => `size ${s + 1}`),
          quantities: made.quantities.map((one, q) => ({ ...one, id: `q${q}` })),
          rules: [
            ...made.bounds.flatMap(([least, width], q): GradingRule[] => [
              { kind: "at least", of: `q${q}`, counts: [least], words: `q${q} at least ${least}` },
              {
                kind: "at most",
                of: `q${q}`,
                counts: [least + width],
                words: `q${q} at most ${least + width}`,
              },
            ]),
            ...made.rules.filter(sensible),
          ],
          aim,
        })),
    );

/** Lengths to a tenth, as designers give them: ties between counts are then common. */
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const quantity = (sizes: number): fc.Arbitrary<Omit<Quantity, "id">> =>
  fc.record({
    unit: fc.constantFrom(0.5, 0.625, 0.8, 1),
    targets: fc.array(tenths(1, 14), { minLength: sizes, maxLength: sizes }),
    weight: fc.constantFrom(1, 1, 0.5, 3),
    smoothness: fc.constantFrom(0.05, 0.05, 0, 0.4),
  });

function rule(sizes: number, quantities: number, withSums: boolean): fc.Arbitrary<GradingRule> {
  const of = fc.integer({ min: 0, max: quantities - 1 }).map((q) => `q${q}`);
  const words = fc.constant("a rule");
  const order = fc.record({
    kind: fc.constant("order" as const),
    of,
    direction: fc.constantFrom("up" as const, "up" as const, "down" as const),
    words,
  });
  const multiple = fc.record({
    kind: fc.constant("multiple" as const),
    of,
    multiple: fc.integer({ min: 1, max: 4 }),
    remainder: fc.integer({ min: -2, max: 5 }),
    words,
  });
  const hold = fc.record({
    kind: fc.constant("hold" as const),
    of,
    size: fc.integer({ min: 0, max: sizes - 1 }),
    count: fc.integer({ min: 2, max: 14 }),
    words,
  });
  const equal = fc.record({
    kind: fc.constant("equal" as const),
    of,
    as: of,
    plus: fc.integer({ min: -3, max: 3 }),
    words,
  });
  const term = fc.record({ of, times: fc.constantFrom(1, -1, 2, -2, 0.5, -0.5) });
  const measured = fc.constantFrom("counts" as const, "cm" as const);
  const sum = fc
    .record({
      kind: fc.constant("sum" as const),
      terms: fc.uniqueArray(term, { minLength: 1, maxLength: 3, selector: (one) => one.of }),
      makes: fc.integer({ min: -4, max: 12 }),
      measured,
      within: fc.constantFrom(0, 0, 1, 2.5),
      words,
    })
    // Sums in cm come out exactly by accident only.
    .map((one) => (one.measured === "cm" ? { ...one, within: one.within + 0.5 } : one));
  const ratio = fc.record({
    kind: fc.constant("ratio" as const),
    of,
    to: of,
    measured,
    least: fc.constantFrom(0.25, 0.5, 0.9),
    most: fc.constantFrom(1, 1.25, 2),
    words,
  });
  return withSums
    ? fc.oneof(order, order, multiple, hold, equal, sum, sum, ratio)
    : fc.oneof(order, order, multiple, hold, equal);
}

const sensible = (one: GradingRule) =>
  !(one.kind === "equal" && one.of === one.as) && !(one.kind === "ratio" && one.of === one.to);
