import fc, { type Arbitrary } from "fast-check";
import type { Amount, Clause, Target } from "../../tree.ts";
import { all, amounts, colours, just, maybe, SPAN, sides } from "./amounts.ts";
import { makings, repeats } from "./making.ts";
import { limits, shortPlaces } from "./places.ts";
import { evenlies, evens, rowRefs, schedules } from "./shaping.ts";

/** Clauses other than stitches, as a row may end or begin with them. */
function others(sizes: number): Arbitrary<Clause> {
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
      fc.constantFrom(
        { seam: "side" as const },
        { seam: "side" as const, calledSeam: true },
        { seam: "shoulder" as const },
        { seam: "shoulder" as const, calledSeam: true },
        { seam: "sleeve" as const, calledSeam: true },
      ),
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
