import type { Span } from "../../src/base/index.ts";
import type { Amount, Clause, Instruction, PatternTree } from "../../src/notation/index.ts";

/** An instruction where it stands: which piece, how many before it. */
export interface Placed {
  readonly at: number;
  readonly piece: number;
  readonly instruction: Instruction;
}

/** Every instruction of a pattern in the order of the text. */
export function placeAll(tree: PatternTree): Placed[] {
  return tree.pieces
    .flatMap((piece, pieceAt) => piece.instructions.map((instruction) => ({ piece: pieceAt, instruction })))
    .map((placed, at) => ({ at, ...placed }));
}

/** A clause with those it stands in, the outermost first. Of a clause that reads in several ways, the likeliest reading. */
export interface PlacedClause {
  readonly clause: Clause;
  readonly within: readonly Clause[];
}

export function allClauses(clauses: readonly Clause[], within: readonly Clause[] = []): PlacedClause[] {
  return clauses.flatMap((clause) => [
    { clause, within },
    ...allClauses(inside(clause), [...within, clause]),
  ]);
}

function inside(clause: Clause): readonly Clause[] {
  if (clause.kind === "repeat" || clause.kind === "group" || clause.kind === "size-only") return clause.body;
  return clause.kind === "choice" ? (clause.options[0] ?? []) : [];
}

/** Every amount in a part of the tree, whatever it is the amount of; the spans of equal amounts are given once. */
export function amountsIn(node: unknown): Amount[] {
  const found = new Map<string, Amount>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) visit(one);
    else if (value !== null && typeof value === "object") {
      if ("values" in value && "span" in value) {
        const amount = value as Amount;
        found.set(`${amount.span.from}-${amount.span.to}`, amount);
      } else for (const one of Object.values(value)) visit(one);
    }
  };
  visit(node);
  return [...found.values()];
}

export const covers = (outer: Span, inner: Span): boolean => outer.from <= inner.from && inner.to <= outer.to;

const ROW_CLAUSES = new Set([
  "chain",
  "work",
  "repeat",
  "group",
  "even",
  "schedule",
  "repeat-rows",
  "evenly",
  "in-pattern",
  "choice",
  "understood",
]);

/** Whether a maker makes stitches there: a labelled row, or a sentence that works some. */
export function makesRows({ label, clauses }: Instruction): boolean {
  return label !== null || allClauses(clauses).some(({ clause }) => ROW_CLAUSES.has(clause.kind));
}

/** The words of a row without its label and printed counts, to be compared with another row's. */
export function bodyOf(text: string, { span, label, claims }: Instruction): string {
  let body = text.slice(label?.span.to ?? span.from, span.to);
  for (const claim of claims) body = body.replace(text.slice(claim.span.from, claim.span.to), " ");
  return body
    .toLowerCase()
    .replace(/[^a-z0-9*]+/g, " ")
    .trim();
}
