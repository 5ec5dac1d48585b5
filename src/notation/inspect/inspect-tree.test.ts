import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { root } from "../../../scripts/repository.mjs";
import { rows as randomRows } from "../print/random/rows.ts";
import { readPattern } from "../read-pattern.ts";
import type { Clause, Instruction, PatternTree } from "../tree.ts";
import { inspectTree } from "./inspect-tree.ts";

const SPAN = { from: 0, to: 0 };

/** A tree of these rows alone, with nothing in its head. */
function treeOf(instructions: readonly Instruction[], text: string, sizes: readonly string[]): PatternTree {
  return {
    text,
    title: "",
    terms: "US",
    termsFrom: "told",
    sizes,
    sizesSpan: SPAN,
    pieces: [{ span: SPAN, name: "Back", nameSpan: SPAN, level: 1, instructions }],
    definitions: [],
    abbreviations: [],
    notes: [],
    gauges: [],
    multiples: [],
    materials: { span: SPAN, hooksMm: [], colours: [], notions: [] },
    others: [],
    sizeLists: [],
    forgiven: [{ span: SPAN, words: "a star is read" }],
  };
}

it("never throws on a tree made up at random", () => {
  const tree = fc.integer({ min: 1, max: 9 }).chain((sizes) =>
    fc.tuple(fc.array(randomRows(sizes), { maxLength: 6 }), fc.string()).map(([rows, text]) =>
      treeOf(
        rows,
        text,
        Array.from({ length: sizes }, (_, i) => `size ${i + 1}`),
      ),
    ),
  );
  fc.assert(fc.property(tree, (made) => Array.isArray(inspectTree(made))));
});

it("looks through repeats inside each other however deep they are", () => {
  let clause: Clause = { kind: "remark", span: { from: 0, to: 4 }, words: "flip" };
  for (let depth = 0; depth < 50_000; depth += 1)
    clause = {
      kind: "repeat",
      span: SPAN,
      body: [clause],
      stop: { by: "unsaid", span: SPAN },
      style: "star",
    };
  const row: Instruction = { span: SPAN, label: null, clauses: [clause], claims: [], sizes: [], answers: [] };
  const codes = inspectTree(treeOf([row], "flip", ["one size"])).map(({ code }) => code);
  expect(codes).toEqual(["lines/not-understood", "lines/mended"]);
});

const SAMPLES = readdirSync(`${root}samples`).filter((name) => name.endsWith(".txt"));

it.each(SAMPLES)("finds nothing in the words, lists and materials of %s", (name) => {
  const text = readFileSync(`${root}samples/${name}`, "utf8");
  const found = inspectTree(readPattern(text)).filter(({ code }) => !code.startsWith("lines/"));
  expect(found.map(({ code, what }) => `${code}: ${what}`)).toEqual([]);
});

const WORDS = [
  ..."Row Rnd 1 2 10 (12, 14) 8-10-12 : . , ; * ** ( ) [ ] { } - turn ch sc htr hdc shell FPdc BLO inc dec2tog".split(
    " ",
  ),
  ...'rep from * sts in next each across join with A B MC until measures cm " Sizes: S M L'.split(" "),
  ..."ABBREVIATIONS sc = single MATERIALS 5 mm hook buttons sew on marker Note: counts as US UK terms only".split(
    " ",
  ),
  "\n",
  "\n\n",
  "\u0000",
  "½",
];

it("never throws on a text made up at random", () => {
  const texts = fc.array(fc.oneof(fc.constantFrom(...WORDS), fc.string({ maxLength: 6 })), { maxLength: 80 });
  fc.assert(
    fc.property(texts, (words) => Array.isArray(inspectTree(readPattern(words.join(" "))))),
    { numRuns: 300 },
  );
});

it("gives every finding a place inside the text, in order", () => {
  const text =
    "Sizes: S (M, L)\nCh 11 (13, 15).\nRow 1: Sc in next 10 (12, 14) sts, glorp, turn.\nRow 2: Sc in next 10 (12) sts.";
  const spans = inspectTree(readPattern(text)).map(({ span }) => span);
  expect(spans.length).toBeGreaterThan(1);
  for (const { from, to } of spans)
    expect([from >= 0, from < to, to <= text.length]).toEqual([true, true, true]);
  expect(spans).toEqual(spans.toSorted((a, b) => a.from - b.from));
});
