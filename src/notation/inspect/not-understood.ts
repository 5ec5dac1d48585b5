import { type Finding, joinSpans, type Span } from "../../base/index.ts";
import { lineNotUnderstood } from "../findings/index.ts";
import type { Clause, RemarkClause } from "../tree.ts";
import { inRow, lastFrom, type Seen, wordsAt } from "./seen.ts";

/**
 * One finding for each instruction in which words stand that say nothing to the reader.
 *
 * @param told  places of findings that say why the reader could not go on there: one fault is told once
 */
export function findNotUnderstood(seen: Seen, told: readonly Span[] = []): Finding[] {
  const { tree } = seen;
  const places = told.toSorted((a, b) => a.from - b.from);
  return seen.rows.flatMap((row) => {
    const remarks = row.clauses.filter(isRemark).filter(({ span }) => {
      const at = lastFrom(places, span.from);
      return ![places[at], places[at + 1]].some((place) => place && touches(span, place, tree.text));
    });
    const first = remarks[0];
    if (first === undefined) return [];
    const words = new Set(stretches(remarks, tree.text).map((span) => wordsAt(tree, span)));
    return [lineNotUnderstood.at(inRow(row, first.span), { words: [...words] })];
  });
}

/** Punctuation alone says nothing that could be missed. */
function isRemark(clause: Clause): clause is RemarkClause {
  return clause.kind === "remark" && /[\p{L}\d]/u.test(clause.words);
}

/** Whether one lies over the other, or nothing but blanks stand between them. */
function touches(a: Span, b: Span, text: string): boolean {
  if (a.from < b.to && b.from < a.to) return true;
  return text.slice(Math.min(a.to, b.to), Math.max(a.from, b.from)).trim() === "";
}

/** Remarks with nothing but blanks and commas between them are one stretch. */
function stretches(remarks: readonly RemarkClause[], text: string): Span[] {
  const spans: Span[] = [];
  for (const { span } of remarks) {
    const last = spans.at(-1);
    const joins = last && span.from >= last.to && /^[\s,;]*$/u.test(text.slice(last.to, span.from));
    if (last && joins) spans[spans.length - 1] = joinSpans(last, span);
    else spans.push(span);
  }
  return spans;
}
