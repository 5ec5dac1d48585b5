import type { Finding, Span } from "../../base/index.ts";
import { listLength } from "../findings/index.ts";
import { plainText } from "../glyphs.ts";
import { type AmountSeen, inRow, lastFrom, outside, type RowSeen, type Seen, wordsAt } from "./seen.ts";

/*
 * Lists with more or fewer values than the pattern has sizes. A run of sizes that the lists themselves do not bear out
 * is the reader's mistake sooner than the designer's, so the lists have to agree before one of them can be wrong.
 */

interface Found {
  readonly span: Span;
  readonly has: number;
  readonly row: RowSeen | null;
}

export function findListLengths(seen: Seen): Finding[] {
  const { tree } = seen;
  const run = tree.sizes.length;
  if (run < 2) return [];
  const agreeing = seen.rows.reduce((sum, row) => sum + row.amounts.filter(hasLength(run)).length, 0);
  const odd = once([
    ...seen.rows.flatMap((row) => oddInRow(row, seen)),
    ...oddUnread(seen),
    ...oddMeasures(seen),
  ]);
  const isBorneOut =
    tree.sizesSpan === null
      ? agreeing >= 4 && odd.length * 4 <= agreeing
      : agreeing >= 2 && odd.length * 2 <= agreeing;
  if (!isBorneOut) return [];
  return odd.map(({ span, has, row }) =>
    listLength.at(row === null ? outside(span) : inRow(row, span), {
      words: wordsAt(tree, span),
      has,
      sizes: run,
    }),
  );
}

/** Each list once: the first and the last row of a label may be one list. */
function once(found: readonly Found[]): Found[] {
  return [...new Map(found.map((one) => [`${one.span.from}-${one.span.to}`, one])).values()];
}

function hasLength(length: number): (seen: AmountSeen) => boolean {
  return ({ amount }) => amount.values.length === length;
}

/** Lists of a row that fit neither the run nor the sizes, nor the rows, that the row speaks of. */
function oddInRow(row: RowSeen, { tree }: Seen): Found[] {
  const run = tree.sizes.length;
  const found = row.amounts
    .filter(({ amount, sizes, ofSeveralRows }) => {
      const has = amount.values.length;
      const first = firstOutside(amount.span, tree.text);
      return has > 1 && has + first !== run && has !== run && has !== sizes && !ofSeveralRows;
    })
    .map(({ amount }): Found => ({ span: amount.span, has: amount.values.length, row }));
  if (isRangeOfRows(row)) return found.filter(({ has }) => has !== rowsOf(row));
  return run > 2 && !speaksOfSome(row) ? [...found, ...pairs(row, tree.text)] : found;
}

function speaksOfSome({ instruction, clauses }: RowSeen): boolean {
  return instruction.sizes.length > 0 || clauses.some(({ kind }) => kind === "size-only");
}

/** Lists in words of a row that the reader did not follow: only such as have their first value before a bracket. */
function oddUnread({ tree, rows }: Seen): Found[] {
  const run = tree.sizes.length;
  const inOrder = rows.toSorted((a, b) => a.instruction.span.from - b.instruction.span.from);
  const spans = inOrder.map(({ instruction }) => instruction.span);
  return tree.sizeLists.flatMap(({ span, values, inRow: stands }) => {
    const row = inOrder[lastFrom(spans, span.from)];
    const has = values.length;
    if (!stands || row === undefined || run < 3 || has < 3 || has === run || Math.abs(has - run) > 2)
      return [];
    if (speaksOfSome(row) || isRangeOfRows(row)) return [];
    return /^\d[^\s([]*\s?[([]/u.test(tree.text.slice(span.from, span.to)) ? [{ span, has, row }] : [];
  });
}

/** "- (-, 3, 6)": a dash before a bracket may be the first of the values; then 1, else 0. */
function firstOutside({ from }: Span, text: string): 0 | 1 {
  return /^[([{]/u.test(text.slice(from, from + 1)) &&
    /[-–—\d]\s?[,;]?\s?$/u.test(text.slice(Math.max(0, from - 4), from))
    ? 1
    : 0;
}

function isRangeOfRows({ instruction: { label } }: RowSeen): boolean {
  return label !== null && (label.next !== undefined || label.rows.length > 1 || rowsIn(label.rows) > 1);
}

function rowsOf({ instruction: { label } }: RowSeen): number {
  return label?.next?.values[0] ?? rowsIn(label?.rows ?? []);
}

function rowsIn(rows: NonNullable<RowSeen["instruction"]["label"]>["rows"]): number {
  return rows.reduce((sum, { from, to }) => sum + (to.values[0] ?? 0) - (from.values[0] ?? 0) + 1, 0);
}

/** "10 (12) sts": with more than two sizes these are read as two numbers, for a number in a bracket is often a count. */
const PAIR =
  /(?<![\d½¼¾(){}[\]/-]\s?|\d[.,]\s?)\b(\d{1,4})\s?\(\s?(\d{1,4})\s?\)(?=\s(?:sts?|stitches|sc|dc|hdc|tr|dtr|htr|ch|rows?|rnds?|rounds?|times|shells?|reps?|repeats)\b(?!\s(?:in|into|each)\b))/giu;
const LABELLING = /(?:row|rows|rnd|rnds|round|rounds|r|no\.?|#|step)\s?$/iu;

/** Pairs with a unit behind the bracket, in a row where no other list is a pair. */
function pairs(row: RowSeen, text: string): Found[] {
  const { from, to } = row.instruction.span;
  const plain = plainText(text.slice(from, to));
  const body = (row.instruction.label?.span.to ?? from) - from;
  const read = row.amounts.filter(({ amount }) => amount.values.length > 1).map(({ amount }) => amount.span);
  const found: Found[] = [];
  for (const match of plain.matchAll(PAIR)) {
    const span = { from: from + match.index, to: from + match.index + match[0].length };
    const [first, second] = [Number(match[1]), Number(match[2])];
    // A count in a bracket behind a number is far larger than the number; sizes of one thing lie close together.
    const isPair = second >= first && second <= first * 1.5 + 2 && first > 3;
    const isNew = read.every((one) => one.to <= span.from || one.from >= span.to);
    const isLabel =
      match.index < body || LABELLING.test(plain.slice(Math.max(0, match.index - 8), match.index));
    if (isPair && isNew && !isLabel) found.push({ span, has: 2, row });
  }
  return found;
}

const UNIT_BEHIND = /^\s?(?:cm|in\b|ins\b|inch|mm|")/iu;

/** Finished measurements: lists of lengths in the lines on sizes. */
function oddMeasures({ tree }: Seen): Found[] {
  const run = tree.sizes.length;
  if (run < 3) return [];
  const lines = tree.others.filter((line) => line.is === "sizes").map(({ span }) => span);
  if (lines.length === 0) return [];
  const lists = tree.sizeLists.filter(({ span, values, inRow: stands }) => {
    const isMeasure = UNIT_BEHIND.test(tree.text.slice(span.to, span.to + 6));
    return !stands && values.length > 2 && isMeasure && isWithin(lines, span);
  });
  const agreeing = lists.filter(({ values }) => values.length === run).length;
  const odd = lists.filter(({ values }) => values.length !== run && Math.abs(values.length - run) <= 2);
  // Body sizes and ranges of sizes stand here too: one list that differs is a slip, several are something else.
  return odd.length === 1 && agreeing >= 2
    ? odd.map(({ span, values }) => ({ span, has: values.length, row: null }))
    : [];
}

/** Whether a span lies in one of the lines, which are in order. */
function isWithin(lines: readonly Span[], span: Span): boolean {
  const line = lines[lastFrom(lines, span.from)];
  return line !== undefined && span.to <= line.to;
}
