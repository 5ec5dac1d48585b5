import { type Finding, valueAt } from "../base/index.ts";
import type { Claim, ClaimShare, PatternTree } from "../notation/index.ts";
import { sharesDoNotSum } from "./findings/index.ts";
import { type Placed, sayRow } from "./worked-sizes.ts";

/* A count that is told once more part by part, "60 sts: back 30, fronts 15 each", is the sum of its parts in every size. */

/** Printed counts whose parts do not come to them. Only numbers are compared; which of them is wrong is for the rows to say. */
export function compareShares(tree: PatternTree, place: Placed): Finding[] {
  return place.instruction.claims.flatMap((claim) => {
    const { shares } = claim;
    const first = shares?.[0];
    const last = shares?.at(-1);
    if (!shares || !first || !last) return [];
    const cases = tree.sizes.flatMap((name, size) => {
      const case_ = differenceIn(claim, shares, size);
      return case_ ? [{ ...case_, name, size }] : [];
    });
    if (cases.length === 0) return [];
    return [
      sharesDoNotSum.at(
        {
          span: { from: first.span.from, to: last.span.to },
          piece: place.piece || null,
          row: place.instruction.label?.words ?? null,
          sizes: tree.sizes.length === 1 ? [] : cases.map(({ size }) => size),
        },
        {
          row: sayRow(place),
          total: cases.map(({ name, total }) => ({ size: name, n: total })),
          sum: cases.map(({ name, sum }) => ({ size: name, n: sum })),
        },
      ),
    ];
  });
}

/** The count and the sum of its parts in one size; null where they agree in some sense of the words, or cannot be told. */
function differenceIn(
  claim: Claim,
  shares: readonly ClaimShare[],
  size: number,
): { readonly total: number; readonly sum: number } | null {
  let sums: readonly number[] = [0];
  for (const { amount, times } of shares) {
    const value = valueAt(amount.values, size);
    if (value === undefined || value === null || times.length === 0) return null;
    sums = sums.flatMap((sum) => times.map((many) => sum + many * value));
  }
  const values = claim.parts.map((part) => valueAt(part.amount.values, size) ?? null);
  const [total] = values;
  const [sum] = sums;
  if (total === undefined || total === null || sum === undefined || values.includes(null)) return null;
  const totals = new Set([total, values.reduce<number>((all, value) => all + (value ?? 0), 0)]);
  // Between two sides a stitch may stand that is of neither.
  if (shares.some((share) => share.sides)) totals.add(total - 1);
  return sums.some((each) => totals.has(each)) ? null : { total, sum };
}
