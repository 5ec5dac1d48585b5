import type { Span, Whereabouts } from "../../base/index.ts";
import type { Amount, Clause, Instruction, OtherLine, PatternTree } from "../tree.ts";

/*
 * The tree laid out flat, once, for all inspections: every instruction with its place, its clauses however deep they
 * stand, and its amounts with what they are numbers of. Nothing here recurses, so that no text is too deep.
 */

/** What a number is a number of. */
export type Sort =
  /** A chain that is made. */
  | "chain"
  /** A count printed for a row. */
  | "count"
  /** Stitches or places inside a row. */
  | "worked"
  /** How often something is repeated. */
  | "times"
  /** Rows: in labels, "for 6 rows", "every 4th row". */
  | "rows"
  /** A length. */
  | "measure";

/** A number or list of an instruction. */
export interface AmountSeen {
  readonly amount: Amount;
  readonly sort: Sort;
  /** Number of sizes that the words around it speak of: fewer than the run inside "Sizes M and L only". */
  readonly sizes: number;
  /** One of the counts of several rows in order. */
  readonly ofSeveralRows: boolean;
}

/** One instruction, laid out flat. */
export interface RowSeen {
  readonly instruction: Instruction;
  /** Index of its heading among the pieces. */
  readonly pieceAt: number;
  readonly piece: string | null;
  readonly row: string | null;
  /** In the order of the text; of a choice only the likeliest reading. */
  readonly clauses: readonly Clause[];
  readonly amounts: readonly AmountSeen[];
}

/** The whole text, laid out flat. */
export interface Seen {
  readonly tree: PatternTree;
  readonly rows: readonly RowSeen[];
}

export function layOut(tree: PatternTree): Seen {
  const rows = tree.pieces.flatMap((piece, pieceAt) =>
    piece.instructions.map((instruction) => {
      const { clauses, amounts } = flatten(instruction, tree.sizes.length);
      const row = instruction.label?.words.trim() || null;
      return { instruction, pieceAt, piece: piece.name || null, row, clauses, amounts };
    }),
  );
  return { tree, rows };
}

/** A place in a row. */
export function inRow(row: RowSeen, span: Span, sizes: readonly number[] = []): Whereabouts {
  return { span, piece: row.piece, row: row.row, sizes };
}

/** A place outside the pieces. */
export function outside(span: Span): Whereabouts {
  return { span, piece: null, row: null, sizes: [] };
}

/** The row's label, or words that stand for it in a sentence. */
export function nameRow(row: RowSeen): string {
  return row.row ?? (row.piece === null ? "an instruction" : `an instruction of ${row.piece}`);
}

/** The designer's own words, on one line. */
export function wordsAt(tree: PatternTree, span: Span): string {
  return tree.text.slice(span.from, span.to).replace(/\s+/gu, " ").trim();
}

/** The text of all lines of these kinds, a line each. */
export function linesOf(tree: PatternTree, ...kinds: readonly OtherLine["is"][]): string {
  return tree.others
    .filter((line) => kinds.includes(line.is))
    .map((line) => tree.text.slice(line.span.from, line.span.to))
    .join("\n");
}

/** The text of all lines of a kind, less the spans. */
export function textBetween(tree: PatternTree, spans: readonly Span[], kind: OtherLine["is"]): string {
  const inOrder = spans.toSorted((a, b) => a.from - b.from);
  const words: string[] = [];
  for (const { span } of tree.others.filter((line) => line.is === kind)) {
    let at = span.from;
    for (let i = Math.max(0, lastFrom(inOrder, at)); i < inOrder.length; i += 1) {
      const { from, to } = inOrder[i] as Span;
      if (from >= span.to) break;
      if (from > at) words.push(tree.text.slice(at, from));
      at = Math.max(at, to);
    }
    if (at < span.to) words.push(tree.text.slice(at, span.to));
  }
  return words.join("\n");
}

/** Index of the last of these, which are in the order of the text, that begins at or before the offset; -1 for none. */
export function lastFrom(list: readonly { readonly from: number }[], offset: number): number {
  let low = -1;
  let high = list.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((list[middle] as Span).from <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Where the first instruction of the text begins; the end of the text where there is none. */
export function firstInstruction(seen: Seen): number {
  return seen.rows.reduce((least, row) => Math.min(least, row.instruction.span.from), seen.tree.text.length);
}

interface Visit {
  readonly node: unknown;
  readonly key: string;
  readonly sort: Sort;
  readonly sizes: number;
  readonly ofSeveralRows: boolean;
}

/** Fields that hold numbers of one sort wherever they stand; all others take the sort of what they stand in. */
const SORT_OF_KEY: Readonly<Record<string, Sort>> = {
  times: "times",
  rows: "rows",
  from: "rows",
  to: "rows",
  next: "rows",
  every: "rows",
  first: "rows",
  ofRow: "rows",
  endingRow: "rows",
  measure: "measure",
  open: "measure",
};

/** Fields without numbers that a size list could stand in. */
const PASSED_BY = new Set(["span", "stitchSpan", "nameSpan", "answers", "words", "sizes", "mm"]);

interface Flat {
  readonly clauses: readonly Clause[];
  readonly amounts: readonly AmountSeen[];
}

/** What stands in the bodies of rows, laid out before. */
const bodies = new WeakMap<
  readonly Clause[],
  { readonly claims: Instruction["claims"]; readonly whole: number; readonly flat: Flat }
>();

function flatten({ label, clauses, claims, sizes }: Instruction, run: number): Flat {
  const whole = sizes.length || run;
  const known = bodies.get(clauses);
  const fits = known !== undefined && known.claims === claims && known.whole === whole;
  const body = fits ? known.flat : flattenParts(null, clauses, claims, whole);
  if (!fits) bodies.set(clauses, { claims, whole, flat: body });
  if (label === null) return body;
  const labelled = flattenParts(label, [], [], whole);
  return {
    clauses: labelled.clauses.length > 0 ? [...labelled.clauses, ...body.clauses] : body.clauses,
    amounts: [...labelled.amounts, ...body.amounts],
  };
}

/**
 * Goes through every node of an instruction by its fields. The walk does not know the clause kinds by name, so that a
 * kind that is added to the tree is looked through as well.
 */
function flattenParts(
  label: Instruction["label"],
  body: readonly Clause[],
  claims: Instruction["claims"],
  whole: number,
): Flat {
  const clauses: Clause[] = [];
  const amounts: AmountSeen[] = [];
  const stack: Visit[] = [];
  const push = (node: unknown, from: Omit<Visit, "node">) => {
    if (typeof node === "object" && node !== null) stack.push({ ...from, node });
  };
  const start = { key: "", sort: "worked" as Sort, sizes: whole, ofSeveralRows: false };
  for (const claim of claims.toReversed())
    push(claim, { ...start, sort: "count", ofSeveralRows: claim.index !== undefined });
  for (const clause of body.toReversed()) push(clause, start);
  push(label, { ...start, sort: "rows" });
  for (let visit = stack.pop(); visit !== undefined; visit = stack.pop()) {
    const { node, sort, sizes, ofSeveralRows } = visit;
    if (Array.isArray(node)) {
      for (let i = node.length - 1; i >= 0; i -= 1) push(node[i], visit);
      continue;
    }
    const fields = node as Readonly<Record<string, unknown>>;
    if (Array.isArray(fields.values)) {
      const amount = node as Amount;
      amounts.push({ amount, sort: "unit" in fields ? "measure" : sort, sizes, ofSeveralRows });
      continue;
    }
    if (typeof fields.kind === "string" && visit.sort !== "count") clauses.push(node as Clause);
    const within = {
      sort: fields.kind === "chain" ? ("chain" as Sort) : sort === "chain" ? "worked" : sort,
      sizes: fields.kind === "size-only" && Array.isArray(fields.sizes) ? fields.sizes.length : sizes,
      ofSeveralRows,
    };
    const names = Object.keys(fields);
    for (let i = names.length - 1; i >= 0; i -= 1) {
      const key = names[i] as string;
      if (PASSED_BY.has(key)) continue;
      const value = key === "options" && Array.isArray(fields.options) ? fields.options[0] : fields[key];
      const keyed = sort === "count" ? undefined : SORT_OF_KEY[key];
      push(value, { ...within, key, sort: keyed ?? within.sort });
    }
  }
  return { clauses, amounts };
}
