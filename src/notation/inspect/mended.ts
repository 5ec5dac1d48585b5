import type { Edit, Finding, Remedy, Span } from "../../base/index.ts";
import { lineMended } from "../findings/index.ts";
import type { PatternTree } from "../tree.ts";
import { inRow, lastFrom, outside, type Seen, wordsAt } from "./seen.ts";

/** One finding for each slip that the reader read past, with the edit where there is one. */
export function findMended(seen: Seen): Finding[] {
  const { tree } = seen;
  if (tree.forgiven.length === 0) return [];
  const rows = seen.rows.toSorted((a, b) => a.instruction.span.from - b.instruction.span.from);
  const spans = rows.map(({ instruction }) => instruction.span);
  return tree.forgiven.map(({ span, words, mend }) => {
    const how = mend === undefined ? words : sayMend(tree, span, mend);
    const at = lastFrom(spans, span.from);
    const row = (spans[at]?.to ?? 0) > span.from ? rows[at] : undefined;
    const edits: Remedy[] =
      mend === undefined
        ? []
        : [{ say: mend.text === "" ? "Take it out." : `Write "${mend.text}".`, edits: [mend] }];
    const where = row === undefined ? outside(span) : inRow(row, span);
    return lineMended.at(where, { words: wordsAt(tree, span), how }, edits);
  });
}

function sayMend(tree: PatternTree, slip: Span, mend: Edit): string {
  const old = wordsAt(tree, mend.span);
  if (old === "") return `"${mend.text}" is read ${mend.span.from <= slip.from ? "before" : "behind"} it`;
  return mend.text === ""
    ? `"${old}" is read as if it did not stand there`
    : `"${old}" is read as "${mend.text}"`;
}
