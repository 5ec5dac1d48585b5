import fc, { type Arbitrary } from "fast-check";
import type {
  Amount,
  Answer,
  Claim,
  Clause,
  Instruction,
  Label,
  Limit,
  LoopWord,
  PlaceWord,
  RowRange,
  Stop,
  Target,
  Until,
} from "../tree.ts";

/*
 * Rows made up at random for the tests, each in the form the reader gives a row of that meaning. Spans are all nought.
 */

const SPAN = { from: 0, to: 0 };

export const SPECIALS: ReadonlyMap<string, string> = new Map([
  ["petal stitch", "petal stitch"],
  ["grit", "grit"],
]);
export const COLOURS = ["A", "B", "MC", "cream"];

/** A field that may be missing. */
function maybe<Name extends string, T>(
  name: Name,
  value: Arbitrary<T>,
): Arbitrary<{ readonly [K in Name]?: T }> {
  return fc
    .option(value, { nil: undefined })
    .map((found) => (found === undefined ? {} : { [name]: found })) as never;
}

function all(...parts: Arbitrary<object>[]): Arbitrary<never> {
  return fc.tuple(...parts).map((fields) => Object.assign({}, ...fields)) as never;
}

function just<T>(fields: T): Arbitrary<T> {
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
function amountsOrNone(sizes: number): Arbitrary<Amount> {
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

const PLAIN = ["sc", "hdc", "dc", "tr", "dtr", "sl st", "esc"];
const POSTS = ["fpdc", "bpdc", "fptr", "bphdc"];
const TOGETHER = ["sc2tog", "dc2tog", "hdc3tog", "invdec"];
const OWN = ["petal stitch", "grit", "shell", "puff", "v-stitch", "picot"];

const stitches = fc.constantFrom(...PLAIN, ...POSTS, ...TOGETHER, ...OWN, "inc", "dec", "fsc");
const colours = fc.constantFrom(...COLOURS);
const sides = fc.constantFrom("RS" as const, "WS" as const);
const loops: Arbitrary<LoopWord> = fc.constantFrom("back", "front", "both", "third", "back-bump");

const placeStitches = fc.constantFrom(
  ...PLAIN,
  ...POSTS,
  "sc2tog",
  "petal stitch",
  "shell",
  "v-stitch",
  "picot",
);
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
const manyPlaces = places.filter(({ is }) => is !== "corner" && is !== "skipped" && is !== "row-end");

/** A short place, as a part of others and as the end of a stretch. */
const shortPlaces: Arbitrary<Target> = fc
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

export function works(sizes: number): Arbitrary<Clause> {
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

export function chains(sizes: number): Arbitrary<Clause> {
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

export function groups(sizes: number): Arbitrary<Clause> {
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
    maybe("named", fc.constantFrom("shell", "v-st")),
  );
}

export function skips(sizes: number): Arbitrary<Clause> {
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

function makings(sizes: number): Arbitrary<Clause> {
  return fc.oneof(
    { weight: 5, arbitrary: works(sizes) },
    { weight: 2, arbitrary: chains(sizes) },
    groups(sizes),
    skips(sizes),
  );
}

export function untils(sizes: number): Arbitrary<Until> {
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
    all(just({ span: SPAN }), fc.record({ rows: amounts(sizes, 2, 90) })),
    all(just({ span: SPAN }), fc.record({ stitches: amounts(sizes, 2, 90) })),
  );
}

function ranges(sizes: number): Arbitrary<RowRange> {
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
        .map(({ until }) => (until.rows ? { until, rows: until.rows } : { until })),
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

/** Clauses other than stitches, as a row may end or begin with them. */
export function others(sizes: number): Arbitrary<Clause> {
  const span = { span: SPAN };
  const place = fc.oneof(just(null), shortPlaces);
  return fc.oneof(
    all(just({ kind: "join", stitch: "sl st", ring: false, ...span }), fc.record({ target: place })),
    all(
      just({ kind: "join", ring: false, ...span }),
      fc.record({ stitch: fc.constantFrom("hdc", "dc"), target: shortPlaces }),
    ),
    just({
      kind: "join",
      stitch: "sl st",
      ring: true,
      target: { span: SPAN, ref: "first", what: { is: "chain" } },
      ...span,
    } as Clause),
    fc.constantFrom<Clause>(
      { kind: "do-not-turn", ...span },
      { kind: "do-not-join", ...span },
      { kind: "fasten-off", ...span },
    ),
    all(
      just({ kind: "join-yarn", ...span }),
      fc.record({ target: place }),
      maybe("colour", colours),
      maybe("side", sides),
      maybe("stitch", fc.constantFrom("sc", "sl st")),
    ),
    all(
      just({ kind: "join-yarn", target: null, ...span }),
      fc.record({ where: fc.constantFrom("underarm", "neck edge") }),
      maybe("side", sides),
    ),
    all(just({ kind: "colour", ...span }), fc.record({ colour: colours })),
    all(just({ kind: "facing", ...span }), fc.record({ side: sides })),
    all(
      just({ kind: "marker", ...span }),
      fc.record({ action: fc.constantFrom("place", "move"), target: shortPlaces }),
    ),
    just({ kind: "marker", action: "remove", target: null, ...span } as Clause),
    all(just({ kind: "leave", ...span }), maybe("count", amounts(sizes))),
    all(just({ kind: "loops", ...span }), fc.record({ loops: fc.constantFrom("back", "front", "both") })),
    all(
      just({ kind: "along", ...span, words: "" }),
      fc.record({
        edge: fc.constantFrom("row-ends", "foundation", "free-loops", "neck", "armhole", "front"),
      }),
    ),
    all(
      just({ kind: "in-pattern", ...span }),
      fc.record({
        target: fc.oneof(
          limits(sizes).map((until): Target => ({ span: SPAN, ref: "each", what: { is: "any" }, until })),
          amounts(sizes, 2, 80).map(
            (count): Target => ({ span: SPAN, ref: "next", count, what: { is: "any" } }),
          ),
        ),
      }),
    ),
    all(just({ kind: "hold", ...span }), maybe("count", amounts(sizes))),
    all(
      just({ kind: "hook", ...span, words: "" }),
      fc.record({ mm: fc.constantFrom<Amount>({ span: SPAN, values: [4] }, { span: SPAN, values: [5.5] }) }),
    ),
    all(
      just({ kind: "as-piece", ...span }),
      fc.record({ piece: fc.constantFrom("Back", "Left Front"), reversing: fc.boolean() }),
    ),
    all(
      just({ kind: "seam", words: "", ...span }),
      fc.record({ seam: fc.constantFrom("side", "shoulder", "sleeve") }),
    ),
    evens(sizes),
    rowRefs(sizes),
    schedules(sizes),
    evenlies(sizes),
  );
}

export function clauses(sizes: number): Arbitrary<readonly Clause[]> {
  const simple = fc.array(makings(sizes), { minLength: 1, maxLength: 4 });
  const inner = fc.oneof(
    { weight: 3, arbitrary: simple },
    fc.tuple(simple, repeats(sizes, simple).filter(isBracket)).map(([steps, repeat]) => [...steps, repeat]),
  );
  const step = fc.oneof(
    { weight: 6, arbitrary: makings(sizes) },
    { weight: 2, arbitrary: repeats(sizes, inner) },
    { weight: 2, arbitrary: others(sizes) },
  );
  return fc
    .tuple(fc.array(step, { minLength: 1, maxLength: 5 }), fc.boolean())
    .map(([steps, turned]) => (turned ? [...steps, { kind: "turn", span: SPAN } as Clause] : steps))
    .filter((steps) => !holdsListBeforeSpace(steps) && !steps.some(runsOn));
}

/** "sc, ch 2, sc in next ch-2 sp": without brackets all of it goes into the space for the reader, and no wording says otherwise. */
function holdsListBeforeSpace(steps: readonly Clause[]): boolean {
  return steps.some((clause, at) => {
    if (clause.kind === "repeat") return holdsListBeforeSpace(clause.body);
    const inSpace = clause.kind === "work" && ["space", "corner"].includes(clause.target.what.is);
    return inSpace && steps[at - 1]?.kind === "chain";
  });
}

/** Two clauses that the reader takes as one: "with RS facing, join yarn", "do not turn, turn". */
function runsOn(clause: Clause, at: number, steps: readonly Clause[]): boolean {
  const pair = `${clause.kind} ${steps[at + 1]?.kind}`;
  return ["facing join-yarn", "join-yarn facing", "join-yarn join-yarn", "do-not-turn turn"].includes(pair);
}

function isBracket(clause: Clause): boolean {
  return clause.kind === "repeat" && clause.style === "bracket";
}

export function labels(sizes: number): Arbitrary<Label> {
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

export function claims(sizes: number): Arbitrary<Claim> {
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

export function answers(sizes: number): Arbitrary<Answer> {
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
