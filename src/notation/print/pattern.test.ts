import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPattern } from "../read-pattern.ts";
import type { Instruction, PatternTree } from "../tree.ts";
import { printPattern, printWhole } from "./pattern.ts";
import { sameTree } from "./same-tree.ts";
import { settled } from "./settled.ts";

const FOLDER = new URL("../../../samples/", import.meta.url);
const SAMPLES = readdirSync(FOLDER).filter((name) => name.endsWith(".txt"));

function rowsOf(tree: PatternTree): readonly Instruction[] {
  return tree.pieces.flatMap((piece) => piece.instructions);
}

/** What a row asks for, without where it stands and what it calls itself. */
function asked({ label, clauses, sizes }: Instruction): unknown {
  return { label, clauses: settled(clauses), sizes };
}

describe.each(SAMPLES)("%s", (name) => {
  const text = readFileSync(new URL(name, FOLDER), "utf8");
  const tree = readPattern(text);
  const other = tree.terms === "US" ? "UK" : "US";

  it("is set anew without changing what any printed row asks for", () => {
    const { text: clean, asWritten } = printWhole(tree, { terms: tree.terms, sizes: tree.sizes });
    const back = rowsOf(readPattern(clean));
    const printed = rowsOf(tree).filter((row) => !asWritten.includes(row));
    const lost = printed.filter((row) => !back.some((one) => sameTree(asked(one), asked(row))));
    expect(lost.map((row) => text.slice(row.span.from, row.span.to))).toEqual([]);
    expect(printed.length).toBeGreaterThan(0);
  });

  it("is the same again when printed twice", () => {
    const style = { terms: tree.terms, sizes: tree.sizes };
    const once = printPattern(tree, style);
    expect(printPattern(readPattern(once), style)).toBe(once);
  });

  it(`goes to ${other} terms and back`, () => {
    const there = printPattern(tree, { terms: other, sizes: tree.sizes });
    const abroad = readPattern(there);
    expect(abroad.terms).toBe(other);
    const home = readPattern(printPattern(abroad, { terms: tree.terms, sizes: tree.sizes }));
    expect(home.terms).toBe(tree.terms);
    const stitches = (one: PatternTree) => rowsOf(one).filter(isPrintable).length;
    expect(stitches(home)).toBe(stitches(tree));
  });
});

function isPrintable({ clauses }: Instruction): boolean {
  return clauses.length > 0;
}

it("leaves what is not a row, and a row that was not understood, as the designer wrote it", () => {
  const text = [
    "SOFT HAT",
    "",
    "Wash before wear.",
    "",
    "CROWN",
    "Rnd 1: ch1, 8sc in ring, join. Rnd 2: ch 1, 2sc in each st around, join [16]",
    "Rnd 3: ch1, sc in next 4 sts, flobber the wozzle 3 ways, join.",
  ].join("\n");
  expect(printPattern(readPattern(text), { terms: "US", sizes: ["one size"] })).toBe(
    [
      "SOFT HAT",
      "",
      "Wash before wear.",
      "",
      "CROWN",
      "Rnd 1: Ch 1, 8 sc in ring; join.",
      "Rnd 2: Ch 1, 2 sc in each st around; join. (16 sts)",
      "Rnd 3: ch1, sc in next 4 sts, flobber the wozzle 3 ways, join.",
    ].join("\n"),
  );
});

it("says the terms where the text did not", () => {
  const text =
    "PLAIN SCARF\n\nA first thing to make.\n\nSCARF\nRow 1: Hdc in 3rd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.";
  const british = printPattern(readPattern(text), { terms: "UK", sizes: ["one size"] });
  expect(british).toBe(
    "PLAIN SCARF\n\nUK terms are used throughout.\n\nA first thing to make.\n\nSCARF\nRow 1: Htr in 3rd ch from hook, htr in each ch across, turn.\nRow 2: Ch 1, dc in each st across, turn.",
  );
});
