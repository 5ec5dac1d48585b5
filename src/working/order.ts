import type { Clause, WorkClause } from "../notation/index.ts";

/**
 * "2 sc in first and last st, 1 sc in each st between" tells a row as a whole; it is worked from one end to the other. Gives the clauses
 * in the order of the hook.
 */
export function inOrderOfHook(clauses: readonly Clause[]): readonly Clause[] {
  const at = clauses.findIndex((clause, index) => isPair(clause, clauses[index + 1]));
  if (at < 0) return clauses;
  const [before, first, last, after] = [clauses[at - 1], clauses[at], clauses[at + 1], clauses[at + 2]];
  if (!first || !last) return clauses;
  if (after && coversAll(after))
    return [...clauses.slice(0, at), first, after, last, ...clauses.slice(at + 3)];
  if (before && coversAll(before))
    return [...clauses.slice(0, at - 1), first, before, last, ...clauses.slice(at + 2)];
  return clauses;
}

/** One stitch said once, in the first and in the last place. */
function isPair(first: Clause, last: Clause | undefined): boolean {
  return (
    isAt(first, "first") &&
    last !== undefined &&
    isAt(last, "last") &&
    first.stitchSpan.from === last.stitchSpan.from
  );
}

function isAt(clause: Clause, ref: "first" | "last"): clause is WorkClause {
  if (clause.kind !== "work" || clause.target.ref !== ref) return false;
  const { count } = clause.target;
  return count === undefined || (count.values.length === 1 && count.values[0] === 1);
}

/** One stitch in each place, with no end but that of the row. */
function coversAll(clause: Clause): boolean {
  if (clause.kind === "in-pattern") return clause.target.ref === "each";
  if (clause.kind !== "work" || clause.target.ref !== "each") return false;
  const one =
    clause.count === undefined || (clause.count.values.length === 1 && clause.count.values[0] === 1);
  return one && (clause.target.until === undefined || clause.target.until.at === "end");
}
