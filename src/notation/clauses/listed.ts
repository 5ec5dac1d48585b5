import type { Clause, WorkClause } from "../tree.ts";

/**
 * "2 dc, ch 2, 2 dc in corner sp" without brackets: all of it may go into the space, or only the last. Both readings are kept;
 * into a space or a corner the whole list is likelier, into a stitch the single steps are.
 */
export function settleLists(clauses: readonly Clause[]): Clause[] {
  const out: Clause[] = [];
  for (const clause of clauses) {
    const start = clause.kind === "work" && closesList(clause) ? listStart(out) : -1;
    if (start < 0 || clause.kind !== "work") {
      out.push(clause);
      continue;
    }
    const { target, ...rest } = clause;
    const listed = out.splice(start);
    const here = {
      span: { from: target.span.from, to: target.span.from },
      ref: "here",
      what: { is: "any" },
    } as const;
    const first = listed[0] as Clause;
    const span = { from: first.span.from, to: clause.span.to };
    const group: Clause = { kind: "group", span, body: [...listed, { ...rest, target: here }], target };
    const sequence: readonly Clause[] = [...listed, clause];
    const inSpace = target.what.is === "space" || target.what.is === "corner";
    out.push({
      kind: "choice",
      span,
      form: inSpace ? "list-before-space" : "list-before-stitch",
      options: inSpace ? [[group], sequence] : [sequence, [group]],
    });
  }
  return out;
}

/** One place, named. */
function closesList(clause: WorkClause): boolean {
  const { target } = clause;
  return (
    ["next", "same", "any", "center"].includes(target.ref) &&
    target.count === undefined &&
    !target.each &&
    target.what.is !== "turning-chain" &&
    target.what.is !== "ring"
  );
}

/** Where a list of bare stitches parted by chains begins that ends the clauses so far; -1 where there is none. */
function listStart(out: readonly Clause[]): number {
  let at = out.length - 1;
  let stitches = 0;
  if (out[at]?.kind !== "chain") return -1;
  while (at >= 0) {
    const clause = out[at] as Clause;
    if (clause.kind === "work" && clause.target.ref === "here" && clause.stitch !== "sl st") stitches += 1;
    else if (clause.kind !== "chain" || clause.countsAs) break;
    at -= 1;
  }
  let start = at + 1;
  while (out[start]?.kind === "chain") start += 1;
  return stitches > 0 && start < out.length ? start : -1;
}
