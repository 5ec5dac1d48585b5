import fc, { type Arbitrary } from "fast-check";
import type { Clause, PlaceWord, Stop, Target } from "../../tree.ts";
import { all, amounts, amountsOrNone, just, maybe, PLAIN, POSTS, SPAN, stitches } from "./amounts.ts";
import { limits, manyPlaces, shortPlaces, targets } from "./places.ts";

const HERE: Target = { span: SPAN, ref: "here", what: { is: "any" } };

const POSTS_AT: ReadonlySet<PlaceWord["is"]> = new Set(["any", "stitch"]);
const POST_REFS: ReadonlySet<Target["ref"]> = new Set(["next", "each", "first", "last", "every-other"]);

const SHAPERS: ReadonlySet<string> = new Set(["inc", "dec"]);

/** A slip stitch there joins a round, and is a clause of its own kind. */
function closes({ ref, what, of }: Target): boolean {
  return ref === "first" || what.is === "turning-chain" || (ref === "nth" && of !== undefined);
}

/** A stitch and where it goes; one round a post goes round a stitch, by no loop of it. */
function placed(sizes: number): Arbitrary<object> {
  return fc
    .record({ stitch: stitches, target: targets(sizes) })
    .filter(
      ({ stitch, target }) =>
        (stitch !== "sl st" || !closes(target)) && (!SHAPERS.has(stitch) || target.what.is !== "row-end"),
    )
    .filter(
      ({ stitch, target }) =>
        !POSTS.includes(stitch) ||
        (POSTS_AT.has(target.what.is) && POST_REFS.has(target.ref) && target.loops === undefined),
    );
}

function works(sizes: number): Arbitrary<Clause> {
  const work = just({ kind: "work", span: SPAN, stitchSpan: SPAN });
  const plainTargets = targets(sizes).filter(({ loops: named }) => named === undefined);
  // From two to five stitches without a place may be meant for one place: in a repeat the reader holds both readings.
  const many = amounts(sizes, 6, 60);
  return fc.oneof(
    { weight: 4, arbitrary: all(work, placed(sizes)) },
    { weight: 2, arbitrary: all(work, placed(sizes), fc.record({ count: amounts(sizes, 1, 60) })) },
    {
      weight: 2,
      arbitrary: all(
        work,
        just({ target: HERE }),
        fc.record({ stitch: stitches }),
        maybe("count", many),
        maybe("loops", fc.constantFrom("back", "front")),
      ),
    },
    all(
      work,
      fc.record({
        stitch: fc.constantFrom(...PLAIN.filter((code) => code !== "sl st")),
        target: plainTargets,
        loops: fc.constantFrom("back", "front"),
      }),
    ),
  );
}

function chains(sizes: number): Arbitrary<Clause> {
  const countsAs = all(
    just({ span: SPAN }),
    fc.record({
      parts: fc.constantFrom<readonly string[]>([], ["dc"], ["hdc"], ["tr"], ["dc", "ch 1"], ["sc"]),
      throughout: fc.boolean(),
    }),
  );
  const multiple = all(
    just({ kind: "chain", span: SPAN, count: { span: SPAN, values: [] } }),
    fc.record({
      multiple: fc.record({ of: fc.integer({ min: 2, max: 30 }), plus: fc.integer({ min: 0, max: 9 }) }),
    }),
  );
  const counted = all(
    just({ kind: "chain", span: SPAN }),
    fc.record({ count: amounts(sizes, 1, 140) }),
    maybe("countsAs", countsAs),
  );
  return fc.oneof({ weight: 9, arbitrary: counted }, multiple);
}

function inPlace(sizes: number): Arbitrary<Target> {
  return fc.oneof(
    all(
      just({ span: SPAN }),
      fc.record({ ref: fc.constantFrom("next", "first", "last", "same", "each"), what: manyPlaces }),
    ),
    all(
      just({ span: SPAN, ref: "next", each: true }),
      fc.record({ what: manyPlaces, count: amounts(sizes, 2, 30) }),
    ),
  );
}

function groups(sizes: number): Arbitrary<Clause> {
  const bare = fc.oneof(
    all(
      just({ kind: "work", span: SPAN, stitchSpan: SPAN, target: HERE }),
      fc.record({ stitch: fc.constantFrom(...PLAIN) }),
      maybe("count", amounts(1, 2, 6)),
    ),
    all(just({ kind: "chain", span: SPAN }), fc.record({ count: amounts(1, 1, 5) })),
  ) as Arbitrary<Clause>;
  return all(
    just({ kind: "group", span: SPAN }),
    fc.record({ body: fc.array(bare, { minLength: 2, maxLength: 5 }), target: inPlace(sizes) }),
    maybe("named", fc.constantFrom("shell", "v-stitch")),
  );
}

function skips(sizes: number): Arbitrary<Clause> {
  return fc.oneof(
    all(
      just({ kind: "skip", span: SPAN }),
      fc.record({
        target: targets(sizes).filter(
          ({ ref, count, what, of, loops: named }) =>
            (ref === "next" || ref === "first") &&
            !of &&
            named === undefined &&
            what.is !== "between" &&
            (count === undefined || true),
        ),
      }),
    ),
    all(just({ kind: "skip", span: SPAN, to: true }), fc.record({ target: shortPlaces })),
  );
}

function stops(sizes: number): Arbitrary<Stop> {
  return fc.oneof(
    {
      weight: 3,
      arbitrary: all(
        just({ by: "times", span: SPAN }),
        fc.record({
          times: amountsOrNone(sizes),
          counting: fc.constantFrom("total", "extra", "either-total", "either-extra"),
        }),
      ),
    },
    { weight: 3, arbitrary: all(just({ by: "limit", span: SPAN }), fc.record({ limit: limits(sizes) })) },
    just<Stop>({ by: "unsaid", span: SPAN }),
  );
}

const STYLES = {
  total: "bracket",
  extra: "star",
  "either-total": "star-pair",
  "either-extra": "star",
} as const;

/** A repeat as the printer writes it: brackets where it is so many times in all, else a star. */
export function repeats(sizes: number, body: Arbitrary<readonly Clause[]>): Arbitrary<Clause> {
  return fc
    .record({ body, stop: stops(sizes), early: fc.boolean() })
    .map(({ body: steps, stop, early }): Clause => {
      const style = stop.by === "times" ? STYLES[stop.counting] : "star";
      const repeat: Clause = { kind: "repeat", span: SPAN, body: steps, stop, style };
      return early && stop.by === "limit" && steps.length > 1 ? { ...repeat, endBefore: 1 } : repeat;
    });
}

export function makings(sizes: number): Arbitrary<Clause> {
  return fc.oneof(
    { weight: 5, arbitrary: works(sizes) },
    { weight: 2, arbitrary: chains(sizes) },
    groups(sizes),
    skips(sizes),
  );
}
