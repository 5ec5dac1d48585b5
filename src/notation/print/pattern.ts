import { statedWords } from "../find-terms.ts";
import { plainText } from "../glyphs.ts";
import { readPattern } from "../read-pattern.ts";
import type { Clause, Instruction, PatternTree } from "../tree.ts";
import { printRow } from "./instruction.ts";
import { inTerms, sayTerms } from "./other-words.ts";
import { sameTree } from "./same-tree.ts";
import { optionOf, settled } from "./settled.ts";
import { chosenIn, type PrintStyle } from "./style.ts";

/** A pattern set anew. */
export interface PrintedPattern {
  readonly text: string;
  /** Rows that stand as the designer wrote them, because clean notation of them would not say the same. */
  readonly asWritten: readonly Instruction[];
}

/**
 * The whole text with its rows in clean notation, one a line. What is not a row stays as the designer wrote it. Where the style asks
 * for the other terms, stitch names are changed there too, word for word.
 *
 * Every printed row is read again. A row that was not understood to its end, or that would read otherwise than before, stays as it was.
 */
export function printWhole(tree: PatternTree, style: PrintStyle): PrintedPattern {
  const rows = rowsInOrder(tree);
  const kept = new Set(
    rows.filter((row) => isTalk(row) || !isRead(row.clauses, style) || style.keeps?.(row) === true),
  );
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const printed = setRows(tree, rows, kept, style);
    const changed = changedRows(printed, tree, style);
    if (changed.length === 0) return { text: printed.text, asWritten: rows.filter((row) => kept.has(row)) };
    for (const row of changed) kept.add(row);
  }
  return { text: setRows(tree, rows, new Set(rows), style).text, asWritten: rows };
}

/** The text of `printWhole`. */
export function printPattern(tree: PatternTree, style: PrintStyle): string {
  return printWhole(tree, style).text;
}

/** A row kept as it was may change how its neighbours read; it soon comes to an end. */
const MOST_PASSES = 5;

function rowsInOrder(tree: PatternTree): readonly Instruction[] {
  return tree.pieces
    .flatMap((piece) => piece.instructions)
    .toSorted((a, b) => a.span.from - b.span.from)
    .filter((row, at, all) => at === 0 || row.span.from >= (all[at - 1] as Instruction).span.to);
}

/** Where each printed row stands in the new text. */
interface Setting {
  readonly text: string;
  readonly places: readonly { readonly row: Instruction; readonly from: number; readonly to: number }[];
}

function setRows(
  tree: PatternTree,
  rows: readonly Instruction[],
  kept: ReadonlySet<Instruction>,
  style: PrintStyle,
): Setting {
  const { text } = tree;
  const asWritten = (from: number, to: number): string =>
    inTerms(text.slice(from, to), tree.terms, style.terms);
  const places: Setting["places"][number][] = [];
  let done = endOfTitle(tree);
  let out = asWritten(0, done);
  if (style.terms !== tree.terms && !statesTerms(text))
    out += `${out === "" ? "" : "\n\n"}${sayTerms(style.terms)}${out === "" ? "\n\n" : ""}`;
  let printed = false;
  for (const row of rows) {
    const gap = asWritten(done, row.span.from);
    out += printed ? gapAfterRow(gap) : gap;
    printed = !kept.has(row);
    if (printed) {
      const from = out.length;
      out += printRow(row, style, (span) => asWritten(span.from, span.to));
      places.push({ row, from, to: out.length });
    } else {
      out += asWritten(row.span.from, row.span.to);
    }
    done = row.span.to;
  }
  const rest = asWritten(done, text.length);
  return { text: out + (printed ? withoutStop(rest) : rest), places };
}

/** Where a sentence about the terms may stand: behind the title, or at the very start. */
function endOfTitle({ others }: PatternTree): number {
  return others.find(({ is }) => is === "title")?.span.to ?? 0;
}

function statesTerms(text: string): boolean {
  return statedWords(plainText(text)).length > 0;
}

/** Between two rows: a row that shared the line of the one before gets its own. */
function gapAfterRow(gap: string): string {
  const words = withoutStop(gap);
  return words.trim() === "" && !words.includes("\n") ? "\n" : words;
}

/** The full stop of a printed row is its own; the one of the text goes. */
function withoutStop(gap: string): string {
  return gap.replace(/^[ \t]*[.,;]+/u, "");
}

/** The printed rows that are not read as one row of the same meaning. */
function changedRows(
  { text, places }: Setting,
  tree: PatternTree,
  style: PrintStyle,
): readonly Instruction[] {
  const back = rowsInOrder(readPattern(text, { terms: style.terms, sizes: tree.sizes }));
  return places
    .filter(({ row, from, to }) => {
      const there = back.filter(({ span }) => span.from < to && span.to > from);
      const [only] = there;
      return there.length !== 1 || only === undefined || !sameRow(row, only, style);
    })
    .map(({ row }) => row);
}

function sameRow(row: Instruction, back: Instruction, style: PrintStyle): boolean {
  const counted = (style.counts?.(row) ?? null) !== null;
  return (
    sameTree(row.label, back.label) &&
    sameTree(settled(row.clauses, chosenIn(style)), settled(back.clauses)) &&
    sameTree(row.sizes, back.sizes) &&
    sameTree(row.answers, back.answers) &&
    (counted || sameTree(row.claims, back.claims))
  );
}

/** Words that ask for nothing; they may hold a count. */
function isTalk({ label, clauses }: Instruction): boolean {
  return label === null && clauses.length > 0 && clauses.every((clause) => clause.kind === "aside");
}

/** Whether every clause was understood, however deep it stands. */
function isRead(clauses: readonly Clause[], style: PrintStyle): boolean {
  return clauses.every((clause) => {
    switch (clause.kind) {
      case "remark":
        return false;
      case "repeat":
      case "group":
      case "size-only":
        return isRead(clause.body, style);
      case "choice":
        return isRead(optionOf(clause, chosenIn(style)), style);
      default:
        return true;
    }
  });
}
