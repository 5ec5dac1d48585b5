import type { Finding, Span } from "../../base/index.ts";
import { editAmount } from "../edit-amount.ts";
import { listDiffersOnce } from "../findings/index.ts";
import { firstInstruction, inRow, lastFrom, outside, type Seen, wordsAt } from "./seen.ts";

/*
 * Words that nobody works, at a seam or in a sentence about the rows, say numbers of the rows again: "sew the 48 (52, 56, 60) sts".
 * Where such a list is that of a row in all sizes but one, a figure was mistyped or not changed with the row.
 */

/** Fewer sizes than these are alike by chance. */
const FEWEST = 4;

/** Lists of small numbers are alike by chance too. */
const SMALLEST = 10;

interface List {
  readonly span: Span;
  readonly values: readonly (number | null)[];
}

export function findListEchoes(seen: Seen): Finding[] {
  const { tree } = seen;
  const run = tree.sizes.length;
  if (run < FEWEST) return [];
  const worked = seen.rows.flatMap(({ amounts }) =>
    amounts.filter(({ sort }) => !["measure", "rows", "times"].includes(sort)).map(({ amount }) => amount),
  );
  const held = new Set(worked.map(({ span }) => span.from));
  const read = new Set(seen.rows.flatMap(({ amounts }) => amounts.map(({ amount }) => amount.span.from)));
  const from = firstInstruction(seen);
  const lists = tree.sizeLists.filter(({ values }) => values.length === run);
  const told = lists.filter((list) => list.span.from >= from && isTold(seen, list, read));
  return told.flatMap((list) => {
    const others = lists.filter((other) => other.span.from >= from && other.span.from !== list.span.from);
    if (others.some((other) => differAt(list, other).length === 0)) return [];
    const near = others.find((other) => held.has(other.span.from) && differAt(list, other).length === 1);
    const at = near ? (differAt(list, near)[0] as number) : -1;
    if (!near || !isTelling(near)) return [];
    const row =
      seen.rows[
        lastFrom(
          seen.rows.map(({ instruction }) => instruction.span),
          list.span.from,
        )
      ];
    const inside = row && list.span.to <= row.instruction.span.to;
    const where = inside ? inRow(row, list.span, [at]) : { ...outside(list.span), sizes: [at] };
    const expected = near.values[at] ?? 0;
    const facts = {
      words: wordsAt(tree, list.span),
      other: wordsAt(tree, near.span),
      size: tree.sizes[at] as string,
      found: list.values[at] ?? 0,
      expected,
    };
    const finding = listDiffersOnce.at({ ...where, also: near.span }, facts);
    const edit = editAmount(tree.text, list, new Map([[at, expected]]), run);
    const todo = finding.todo.map((remedy, first) =>
      edit && first === 0 ? { ...remedy, edits: [edit] } : remedy,
    );
    return [{ ...finding, todo }];
  });
}

/** A list of words that no maker works: of stitches or pieces, not of rows, lengths or balls. */
function isTold({ tree }: Seen, { span, values }: List, read: ReadonlySet<number>): boolean {
  if (read.has(span.from) || values.some((value) => value === null || !Number.isInteger(value))) return false;
  const behind = tree.text.slice(span.to, span.to + 24);
  return !/^\s*(?:cm|mm|in\b|inch|"|”|m\b|yds?\b|yards?\b|met|g\b|oz|balls?\b|skeins?\b|times\b|(?:[a-z]+ )?(?:rows?|rnds?|rounds?)\b|%|[[(/-])/iu.test(
    behind,
  );
}

/** Sizes that are told apart, and numbers that are not small. */
function isTelling({ values }: List): boolean {
  return new Set(values).size > 1 && values.every((value) => (value ?? 0) >= SMALLEST);
}

function differAt(one: List, other: List): number[] {
  return one.values.flatMap((value, at) => (value === other.values[at] ? [] : [at]));
}
