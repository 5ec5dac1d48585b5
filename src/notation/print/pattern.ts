import type { Clause, Instruction, PatternTree } from "../tree.ts";
import { printInstruction } from "./instruction.ts";
import { inTerms } from "./other-words.ts";
import type { PrintStyle } from "./style.ts";

/**
 * The whole text with its rows in clean notation, one a line. What is not a row stays as the designer wrote it, and so does a row
 * that was not read to the end. Where the style asks for the other terms, stitch names are changed there too, word for word.
 */
export function printPattern(tree: PatternTree, style: PrintStyle): string {
  const { text } = tree;
  const rows = tree.pieces
    .flatMap((piece) => piece.instructions)
    .toSorted((a, b) => a.span.from - b.span.from);
  const kept = (from: number, to: number): string => inTerms(text.slice(from, to), tree.terms, style.terms);
  let out = "";
  let done = 0;
  let after: "start" | "words" | "row" = "start";
  for (const row of rows) {
    const { from, to } = row.span;
    if (from < done) continue;
    const gap = kept(done, from);
    out += after === "row" ? afterRow(gap) : gap;
    if (isRead(row.clauses)) {
      out += printInstruction(row, style, text);
      after = "row";
    } else {
      out += kept(from, to);
      after = "words";
    }
    done = to;
  }
  const rest = kept(done, text.length);
  return out + (after === "row" ? withoutStop(rest) : rest);
}

/** Between two rows: a row that shared the line of the one before gets its own. */
function afterRow(gap: string): string {
  const words = withoutStop(gap);
  return words.trim() === "" && !words.includes("\n") ? "\n" : words;
}

/** The full stop of a printed row is its own; the one of the text goes. */
function withoutStop(gap: string): string {
  return gap.replace(/^[ \t]*[.,;]+/u, "");
}

/** Whether every clause was understood, however deep it stands. */
export function isRead(clauses: readonly Clause[]): boolean {
  return clauses.every((clause) => {
    switch (clause.kind) {
      case "remark":
        return false;
      case "repeat":
      case "group":
      case "size-only":
        return isRead(clause.body);
      case "choice":
        return isRead(clause.options[0] ?? []);
      default:
        return true;
    }
  });
}

/** Rows that `printPattern` leaves as they are, because some of their words were not understood. */
export function unreadRows(tree: PatternTree): readonly Instruction[] {
  return tree.pieces.flatMap((piece) => piece.instructions).filter((row) => !isRead(row.clauses));
}
