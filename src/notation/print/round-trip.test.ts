import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Terms } from "../../stitches/index.ts";
import { findAnswers } from "../answers.ts";
import type { ReadContext } from "../context.ts";
import { plainText } from "../glyphs.ts";
import { readInstructionBody } from "../instruction.ts";
import { readLabel } from "../labels.ts";
import { lex } from "../lex.ts";
import type { Instruction } from "../tree.ts";
import { printInstruction } from "./instruction.ts";
import { COLOURS, SPECIALS } from "./random/amounts.ts";
import { rows } from "./random/rows.ts";
import { sameTree } from "./same-tree.ts";
import { settled } from "./settled.ts";

// The same rows on every machine, so that a failure belongs to the change that made it; another seed makes others.
const SAME_ROWS = { seed: 20_260 };
const NAMES = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"];

/** One row as the reader of whole texts reads it: label, body, answers. */
function readRow(text: string, terms: Terms, sizes: readonly string[]): Omit<Instruction, "span"> {
  const context: ReadContext = {
    text,
    terms,
    sizes: sizes.length,
    sizeNames: sizes,
    specials: SPECIALS,
    colours: COLOURS,
  };
  const plain = plainText(text);
  const label = readLabel(text, plain, 0, text.length, { ...context, rounds: false });
  const answers = findAnswers(text, plain, 0, text.length, context);
  const end = answers[0]?.span.from ?? text.length;
  const { clauses, claims } = readInstructionBody(lex(text, label?.to ?? 0, end, context), context);
  return { label: label?.label ?? null, clauses, claims, answers, sizes: [] };
}

function same(row: Omit<Instruction, "span">, back: Omit<Instruction, "span">): boolean {
  const { span: _span, ...fields } = { span: null, ...row };
  return sameTree({ ...fields, clauses: settled(row.clauses) }, { ...back, clauses: settled(back.clauses) });
}

describe("clean notation is read back as the tree it was printed from", () => {
  for (const count of [1, 2, 3, 5, 9]) {
    const sizes = NAMES.slice(0, count);
    for (const terms of ["US", "UK"] as const) {
      it(`in ${terms} terms and ${count === 1 ? "one size" : `${count} sizes`}`, () => {
        fc.assert(
          fc.property(rows(count), (row) => {
            const text = printInstruction(row, { terms, sizes });
            expect(same(row, readRow(text, terms, sizes)), text).toBe(true);
          }),
          { ...SAME_ROWS, numRuns: 300 },
        );
      });
    }
  }

  it("and stays the same when it goes to British terms and comes back", () => {
    const sizes = NAMES.slice(0, 3);
    fc.assert(
      fc.property(rows(3), (row) => {
        const american = printInstruction(row, { terms: "US", sizes });
        const british = printInstruction(
          { span: row.span, ...readRow(american, "US", sizes) },
          { terms: "UK", sizes },
        );
        const again = printInstruction(
          { span: row.span, ...readRow(british, "UK", sizes) },
          { terms: "US", sizes },
        );
        expect(again).toBe(american);
      }),
      { ...SAME_ROWS, numRuns: 200 },
    );
  });
});
