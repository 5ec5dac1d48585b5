import type { Clause } from "../notation/index.ts";

/** Whether words that were not understood stand among clauses, at any depth. */
export function hasRemark(clauses: readonly Clause[]): boolean {
  return clauses.some((clause) => {
    if (clause.kind === "remark") return true;
    if (clause.kind === "group" || clause.kind === "repeat" || clause.kind === "size-only")
      return hasRemark(clause.body);
    if (clause.kind === "choice") return hasRemark(clause.options[0] ?? []);
    return false;
  });
}
