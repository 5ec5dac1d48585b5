import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { ChainMeaningsSaid } from "./chain-meanings.ts";
import { Choices } from "./choices.ts";
import { type Edge, EdgeMaker, flatten } from "./edge.ts";
import type { Table } from "./hands.ts";
import { tellsKindsApart } from "./kinds-told.ts";
import { chainPlace, inGroup, type Place, placeOf, stitchPlace } from "./place.ts";
import { workRow } from "./row.ts";
import { cutSegments } from "./segments.ts";
import { UNKNOWN_EDGE } from "./targets.ts";
import { specialsOf } from "./work-pattern.ts";

const samples = new URL("../../samples/", import.meta.url);
const trees = readdirSync(samples)
  .filter((name) => name.endsWith(".txt"))
  .map((name) => readPattern(readFileSync(new URL(name, samples), "utf8")));

const rowsOf = (text: string) => {
  const [piece] = readPattern(text).pieces;
  return (piece?.instructions ?? []).map(({ clauses }) => clauses);
};

const place: fc.Arbitrary<Place> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom("sc", "hdc", "dc", "tr", "sc2tog").map(stitchPlace) },
  { weight: 1, arbitrary: fc.constantFrom(1, 2, 3).map(chainPlace) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      stitchPlace("sl st"),
      placeOf("ch", "turning", false, 1),
      placeOf("dc", "turning", true, 3),
      inGroup(stitchPlace("dc"), "", 0, 3),
      inGroup(stitchPlace("dc"), "shell", 2, 3),
    ),
  },
);

/** Edges as rows leave them: some places, a unit of them many times over, some more. */
const edges: fc.Arbitrary<Edge> = fc
  .tuple(
    fc.array(place, { maxLength: 8 }),
    fc.array(place, { minLength: 1, maxLength: 7 }),
    fc.integer({ min: 1, max: 40 }),
    fc.array(place, { maxLength: 8 }),
    fc.boolean(),
  )
  .map(([first, unit, times, last, closed]) => {
    const maker = new EdgeMaker();
    maker.addUnit(first, 1);
    maker.addUnit(unit, times);
    maker.addUnit(last, 1);
    return maker.finish(closed);
  });

function tableFor(specials: Table["specials"], size: number, choices: Choices): Table {
  return {
    size,
    sampleWidth: "sample",
    choices,
    specials,
    meanings: new ChainMeaningsSaid([]),
    manner: { chainsArePlaces: true },
    edgeOfRow: () => null,
    freeLoops: () => null,
    mainStitch: () => "sc",
    rowEnds: () => UNKNOWN_EDGE,
    foundation: () => null,
  };
}

describe("a row that does not ask for kinds of stitch", () => {
  const cases = trees.flatMap((tree) => {
    const specials = specialsOf(tree.definitions);
    return tree.pieces
      .flatMap((piece) => piece.instructions)
      .flatMap(({ clauses }) => cutSegments(clauses).segments)
      .flatMap((segment) =>
        segment.is === "own" && !tellsKindsApart(segment.clauses, specials)
          ? [{ clauses: segment.clauses, specials }]
          : [],
      );
  });

  it("is most of the rows of the samples", () => {
    expect(cases.length).toBeGreaterThan(200);
  });

  it("comes out the same whatever kinds the edge is made of", () => {
    fc.assert(
      fc.property(fc.constantFrom(...cases), edges, fc.boolean(), ({ clauses, specials }, edge, round) => {
        const outcomes = [edge, edge.ofOneKind].map((below) => {
          const choices = new Choices(new Map());
          const before = { edge: below, chainBefore: null, round, labelled: true };
          const after = workRow(tableFor(specials, 0, choices), before, clauses, { from: 0, to: 1 });
          const { edge: made, held, rest, ...others } = after;
          return {
            ...others,
            made: others.made && made ? flatten(made.runs) : null,
            lengths: [held?.length, rest?.length],
            met: [...choices.met.keys()],
          };
        });
        expect(outcomes[1]).toEqual(outcomes[0]);
      }),
      { numRuns: 600 },
    );
  });
});

it("knows rows that ask for kinds", () => {
  const asks = rowsOf(
    [
      "Row 1: Ch 1, dc in each sc across, turn.",
      "Row 2: Ch 1, *sc in next 2 sts, skip next hdc; rep from * across, turn.",
      "Row 3: Ch 1, sc in center st of next shell, turn.",
    ].join("\n"),
  );
  const others = rowsOf(
    [
      "Row 1: Ch 1, dc in each st across, turn.",
      "Row 2: Ch 1, *sc in next 2 sts, skip next st, 2 dc in ch-2 sp; rep from * to last 3 sts, sc in last 3 sts, turn.",
    ].join("\n"),
  );
  expect(asks.map((row) => tellsKindsApart(row, new Map()))).toEqual([true, true, true]);
  expect(others.map((row) => tellsKindsApart(row, new Map()))).toEqual([false, false]);
});
