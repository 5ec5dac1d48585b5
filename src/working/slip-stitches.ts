import type { Clause, WorkClause } from "../notation/index.ts";
import type { Hands } from "./hands.ts";

/**
 * "Sl st in next 4 sts, hdc in next 6 sts": slip stitches with other stitches beside them move the hook along, or are stitches of the
 * row as any others. The counts tell; before a chain they only move along.
 */
export function standAsStitches(hands: Hands, clause: WorkClause, rest: readonly Clause[]): boolean {
  const { target } = clause;
  if (clause.stitch !== "sl st" || hands.holding || !["next", "here", "each"].includes(target.ref))
    return false;
  if (target.what.is !== "any" && target.what.is !== "stitch") return false;
  const next = rest.find(({ kind }) => kind !== "aside");
  if (next?.kind !== "work" && !(hands.madeStitch && next?.kind !== "chain")) return false;
  return hands.table.choices.take("slip-stitches-in-counts", 2, clause.span) === 1;
}
