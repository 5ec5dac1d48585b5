import fc, { type Arbitrary } from "fast-check";
import type { Answer, Claim, Clause, Instruction, Label } from "../../tree.ts";
import { all, amounts, just, maybe, SPAN, sides } from "./amounts.ts";
import { clauses } from "./clauses.ts";
import { makings } from "./making.ts";
import { ranges } from "./shaping.ts";

/*
 * Rows made up at random for the tests, each in the form the reader gives a row of that meaning. Spans are all nought.
 */

function labels(sizes: number): Arbitrary<Label> {
  const side = maybe("side", sides);
  return fc
    .oneof(
      {
        weight: 4,
        arbitrary: all(
          fc.record({
            is: fc.constantFrom("row", "round"),
            rows: fc.array(ranges(sizes), { minLength: 1, maxLength: 1 }),
          }),
          side,
        ),
      },
      all(
        fc.record({ is: fc.constantFrom("row", "round") }),
        just({
          rows: [3, 5, 7].map((row) => ({
            from: { span: SPAN, values: [row] },
            to: { span: SPAN, values: [row] },
          })),
        }),
      ),
      all(just({ is: "next", rows: [], rounds: false }), maybe("next", amounts(sizes, 2, 30)), side),
      all(just({ is: "named", rows: [], rounds: false, words: "Inc row" }), side),
      all(just({ is: "foundation", rows: [], rounds: false, words: "Foundation row" }), side),
    )
    .map((fields: object) => {
      const label = { span: SPAN, words: "", ...fields } as Label;
      return { ...label, rounds: label.is === "round" || label.rounds === true };
    });
}

function claims(sizes: number): Arbitrary<Claim> {
  const part = fc
    .record({
      amount: amounts(sizes, 2, 200),
      kind: fc.constantFrom("any", "sc", "hdc", "dc", "petal stitch", "shell", "ch-sp", "sc2tog"),
    })
    .chain(({ amount, kind }) =>
      all(
        just({ span: SPAN, amount, kind, words: "" }),
        kind === "ch-sp" ? maybe("chains", fc.integer({ min: 1, max: 5 })) : just({}),
      ),
    );
  const says = fc.oneof(
    { weight: 5, arbitrary: just({}) },
    fc.constantFrom(
      { change: "inc" },
      { change: "dec" },
      { includesChain: true },
      { countsChains: 1 },
      { countsChains: "all" },
      { excludes: "sl st" },
      { excludes: "turning-chain" },
      { excludes: "chain" },
      { eachSide: true },
    ),
    fc.record({ ofRow: amounts(1, 2, 60) }),
  );
  return fc.oneof(
    { weight: 4, arbitrary: all(just({ span: SPAN }), fc.record({ parts: fc.tuple(part) }), says) },
    all(just({ span: SPAN }), fc.record({ parts: fc.array(part, { minLength: 2, maxLength: 3 }) })),
  );
}

/** Counts of the rows of a range in turn. */
function claimsInTurn(sizes: number): Arbitrary<readonly Claim[]> {
  return fc.array(amounts(sizes, 2, 200), { minLength: 2, maxLength: 4 }).map((numbers) =>
    numbers.map(
      (amount, index): Claim => ({
        span: SPAN,
        index,
        parts: [{ span: SPAN, amount, kind: "any", words: "" }],
      }),
    ),
  );
}

function answers(sizes: number): Arbitrary<Answer> {
  const stamp = fc.option(fc.constantFrom("k7f2q", "0a1b2"), { nil: null });
  const reason = fc.constantFrom("the last stitch is left for the band.", "the chart shows this row");
  return fc.oneof(
    all(
      just({ span: SPAN, is: "as-meant" }),
      fc.record({ reason, stamp }),
      maybe("code", just("rows/count-differs")),
    ),
    all(just({ span: SPAN, is: "vouched" }), fc.record({ reason, stamp, count: amounts(sizes, 2, 90) })),
  );
}

/** "Sizes M and L only: ...": the last sentence of a row. */
function forSizes(sizes: number): Arbitrary<readonly Clause[]> {
  if (sizes < 2) return just([]);
  const some = fc.subarray(
    Array.from({ length: sizes }, (_, size) => size),
    { minLength: 1, maxLength: sizes - 1 },
  );
  return fc.oneof(
    { weight: 3, arbitrary: just<readonly Clause[]>([]) },
    fc
      .record({ sizes: some, body: fc.array(makings(sizes), { minLength: 1, maxLength: 3 }) })
      .map(({ sizes: of, body }): readonly Clause[] => [
        { kind: "size-only", span: SPAN, sizes: of, words: "", body },
      ]),
    some.map((of): readonly Clause[] => [{ kind: "size-end", span: SPAN, sizes: of }]),
  );
}

export function rows(sizes: number): Arbitrary<Instruction> {
  return fc
    .record({
      label: fc.option(labels(sizes), { nil: null }),
      clauses: fc.tuple(clauses(sizes), forSizes(sizes)).map(([steps, last]) => [...steps, ...last]),
      claims: fc.oneof(
        { weight: 3, arbitrary: fc.array(claims(sizes), { maxLength: 1 }) },
        claimsInTurn(sizes),
      ),
      answers: fc.oneof({ weight: 4, arbitrary: just([]) }, fc.tuple(answers(sizes))),
    })
    .filter(({ label, clauses: [first] }) => !(label && !label.side && first && "side" in first))
    .filter(({ clauses: steps, claims: counts }) => counts.length === 0 || steps.some(isWorked))
    .map((fields): Instruction => ({ span: SPAN, ...fields, sizes: [] }));
}

/** Nobody counts a row that makes no stitches. */
function isWorked({ kind }: Clause): boolean {
  return ["work", "group", "repeat", "even", "evenly", "repeat-rows"].includes(kind);
}
