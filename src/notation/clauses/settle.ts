import type { Clause, Target, WorkClause } from "../tree.ts";
import { singleValue } from "./amounts.ts";

/** Beyond this many stitches nobody means "all in one place" by "5dc" alone. */
const MOST_IN_ONE = 5;

/**
 * "(2 sc, sc) 6 times": may be two stitches in two places or both in one. Inside a repeat each such form holds both readings, unless the
 * repeat says elsewhere how it increases or decreases.
 */
export function settleAlone(body: readonly Clause[]): readonly Clause[] {
  if (body.some(shapes)) return body;
  return body.map((clause) => (clause.kind === "work" && mayBeAlone(clause) ? aloneChoice(clause) : clause));
}

function shapes(clause: Clause): boolean {
  if (clause.kind === "group" || clause.kind === "skip") return true;
  if (clause.kind === "repeat") return clause.body.some(shapes);
  if (clause.kind !== "work") return false;
  if (/^(inc|dec)$|tog$|-inc$|^invdec$/u.test(clause.stitch)) return true;
  const count = singleValue(clause.count);
  return count !== null && count > 1 && clause.target.ref !== "here" && clause.target.count === undefined;
}

function mayBeAlone(clause: WorkClause): boolean {
  const count = singleValue(clause.count);
  return (
    count !== null &&
    count >= 2 &&
    count <= MOST_IN_ONE &&
    clause.target.ref === "here" &&
    clause.target.what.is === "any"
  );
}

export function aloneChoice(clause: WorkClause): Clause {
  const at = { from: clause.span.to, to: clause.span.to };
  const { count, ...one } = clause;
  const each: Target = {
    span: at,
    ref: "next",
    what: { is: "any" },
    each: true,
    ...(count ? { count } : {}),
  };
  const together: Target = { span: at, ref: "next", what: { is: "any" } };
  return {
    kind: "choice",
    span: clause.span,
    form: "n-alone",
    options: [[{ ...one, target: each }], [{ ...one, ...(count ? { count } : {}), target: together }]],
  };
}
