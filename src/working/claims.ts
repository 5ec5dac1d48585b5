import { valueAt } from "../base/index.ts";
import type { Claim } from "../notation/index.ts";
import type { Choices } from "./choices.ts";
import { countPart, countStitches, totalsOf } from "./counting.ts";
import type { Edge } from "./edge.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";

/** Compares what is printed for a row with what was worked. */
export function checkClaims(
  edge: Edge,
  claims: readonly Claim[],
  below: Edge | null,
  size: number,
  choices: Choices,
): Trouble[] {
  const troubles: Trouble[] = [];
  if (isUnknown(edge)) return troubles;
  for (const claim of claims) {
    if (claim.eachSide) continue;
    if (claim.change) {
      const part = claim.parts[0];
      const said = part ? valueAt(part.amount.values, size) : null;
      if (!part || said === null || said === undefined || !below || isUnknown(below)) continue;
      const change = countStitches(edge).stitches - countStitches(below).stitches;
      const wanted = claim.change === "inc" ? said : -said;
      if (change !== wanted)
        troubles.push({
          is: "count-differs",
          span: part.span,
          of: null,
          printed: countStitches(below).stitches + wanted,
          worked: countStitches(edge).stitches,
        });
      continue;
    }
    const only = claim.parts.length === 1;
    for (const part of claim.parts) {
      const said = valueAt(part.amount.values, size);
      // Joins and the chains beside them are told, not counted: "12 sc, 1 sl st, 1 ch".
      if (said === null || said === undefined || ["unit", "sl st", "ch"].includes(part.kind)) continue;
      if (part.kind === "any") {
        const chains = countStitches(edge).chains;
        const chainsCount = chains > 0 && choices.take("chains-in-counts", 2, part.span) === 1;
        const totals = totalsOf(edge, claim, chainsCount);
        if (!totals.includes(said))
          troubles.push({
            is: "count-differs",
            span: part.span,
            of: null,
            printed: said,
            worked: totals[0] as number,
          });
        continue;
      }
      const worked = countPart(edge, part);
      if (worked === null) {
        // The kinds are not known, but one kind alone that fills the row can be held against the number of stitches.
        continue;
      }
      if (worked === said) continue;
      // Writers name a row's stitches by its main kind, and mean all of them.
      if (only && part.kind !== "ch-sp" && part.kind !== "ch" && totalsOf(edge, claim, false)[0] === said)
        continue;
      if (only && part.kind !== "ch-sp" && part.kind !== "ch") {
        const total = totalsOf(edge, claim, false)[0] as number;
        troubles.push({
          is: "count-differs",
          span: part.span,
          of: worked === total ? null : part.kind,
          printed: said,
          worked,
        });
        continue;
      }
      troubles.push({
        is: "count-differs",
        span: part.span,
        of: part.kind === "ch-sp" ? `ch-${part.chains ?? ""} sp`.replace("ch- ", "ch ") : part.kind,
        printed: said,
        worked,
      });
    }
  }
  return troubles;
}
