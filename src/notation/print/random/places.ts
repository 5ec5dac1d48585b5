import fc, { type Arbitrary } from "fast-check";
import type { Limit, PlaceWord, Target } from "../../tree.ts";
import { all, amounts, just, loops, maybe, placeStitches, SPAN } from "./amounts.ts";

const places: Arbitrary<PlaceWord> = fc.oneof(
  { weight: 5, arbitrary: just<PlaceWord>({ is: "any" }) },
  { weight: 4, arbitrary: placeStitches.map((code): PlaceWord => ({ is: "stitch", code })) },
  just<PlaceWord>({ is: "chain" }),
  all(just({ is: "space" }), maybe("chains", fc.integer({ min: 1, max: 7 })), maybe("corner", just(true))),
  just<PlaceWord>({ is: "row-end" }),
  just<PlaceWord>({ is: "corner" }),
  just<PlaceWord>({ is: "skipped" }),
);
/** Kinds of place that are counted or named with "each". */
export const manyPlaces = places.filter(({ is }) => is !== "corner" && is !== "skipped" && is !== "row-end");

/** A short place, as a part of others and as the end of a stretch. */
export const shortPlaces: Arbitrary<Target> = fc
  .record({ ref: fc.constantFrom("next" as const, "first" as const), what: manyPlaces })
  .map(({ ref, what }): Target => ({ span: SPAN, ref, what }));

function isStitchOrAny({ what }: Target): boolean {
  return what.is === "any" || what.is === "stitch";
}

export function limits(sizes: number): Arbitrary<Limit> {
  return fc.oneof(
    {
      weight: 3,
      arbitrary: fc
        .constantFrom("across" as const, "around" as const, "end" as const)
        .map((word): Limit => ({ at: "end", span: SPAN, word })),
    },
    fc
      .tuple(amounts(sizes), manyPlaces)
      .map(([count, what]): Limit => ({ at: "last", span: SPAN, count, what })),
    shortPlaces.map((place): Limit => ({ at: "place", span: SPAN, place })),
  );
}

export function targets(sizes: number): Arbitrary<Target> {
  const span = just({ span: SPAN });
  const few = amounts(sizes, 2, 60);
  return fc.oneof(
    {
      weight: 4,
      arbitrary: all(span, just({ ref: "next" }), fc.record({ what: manyPlaces }), maybe("count", few)),
    },
    {
      weight: 2,
      arbitrary: all(span, just({ ref: "next", each: true }), fc.record({ what: manyPlaces, count: few })),
    },
    {
      weight: 3,
      arbitrary: all(
        span,
        just({ ref: "each" }),
        fc.record({ what: places }),
        maybe("until", limits(sizes)),
        maybe("loops", loops),
      ),
    },
    all(span, just({ ref: "every-other" }), fc.record({ what: manyPlaces }), maybe("until", limits(sizes))),
    all(
      span,
      fc.record({ ref: fc.constantFrom("first", "last"), what: manyPlaces }),
      maybe("count", few),
      maybe("loops", loops),
    ),
    all(
      span,
      just({ ref: "same" }),
      fc.record({
        what: fc.constantFrom<PlaceWord>({ is: "any" }, { is: "base" }, { is: "space", chains: 2 }),
      }),
    ),
    all(
      span,
      just({ ref: "nth", from: "hook", what: { is: "chain" } }),
      fc.record({ nth: amounts(sizes, 2, 6) }),
    ),
    all(
      span,
      just({
        ref: "nth",
        what: { is: "chain" },
        of: { span: SPAN, ref: "any", what: { is: "turning-chain" } },
      }),
      fc.record({ nth: amounts(1, 2, 6) }),
    ),
    all(
      span,
      just({ ref: "center" }),
      fc.record({
        what: placeStitches.map((code) => ({ is: "stitch", code })),
        of: shortPlaces.filter(isStitchOrAny),
      }),
    ),
    all(
      span,
      just({ ref: "any" }),
      fc.record({
        what: fc.constantFrom<PlaceWord>(
          { is: "ring" },
          { is: "turning-chain" },
          { is: "turning-chain", chains: 3 },
          { is: "marked" },
          { is: "marked", name: "A" },
          { is: "space", chains: 2 },
        ),
      }),
    ),
    all(
      span,
      just({ ref: "next", what: { is: "any" } }),
      fc.record({ rowsBelow: fc.integer({ min: 2, max: 4 }) }),
    ),
    all(
      span,
      just({ ref: "next", what: { is: "stitch", code: "sc" } }),
      fc.record({ ofRow: amounts(1, 1, 40) }),
    ),
    all(
      span,
      fc.record({
        ref: fc.constantFrom("next", "each"),
        what: fc.constantFrom<PlaceWord>({ is: "foundation" }, { is: "free-loop" }),
      }),
    ),
    all(span, just({ ref: "next", what: { is: "between" } })),
    all(
      span,
      just({ ref: "each" }),
      fc.record({ what: just({ is: "any" }), and: just([{ is: "chain" }]) }),
      maybe("until", just({ at: "end", span: SPAN, word: "across" })),
    ),
  );
}
