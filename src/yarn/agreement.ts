import type { PerSize } from "../base/index.ts";
import type { TwoWays, YarnEstimate } from "./estimate.ts";

/** Ways that differ by more than this are a sign of a mistake. Trade handbook, 4.1. */
export const MOST_APART = 0.1;

/** A swatch may weigh this much more or less than its stitches would by geometry before it is doubted. Own choice: two standard deviations of the prior. */
export const SWATCH_DOUBT = 0.3;

/** By stitch over by area, less 1; null where a way is not known or takes nothing. */
export function apart({ byStitch, byArea }: TwoWays): number | null {
  if (byStitch === null || byArea === null || byArea === 0 || byStitch === 0) return null;
  return byStitch / byArea - 1;
}

/** Where the two ways differ by more than a tenth: piece (null for the whole), yarn, sizes and how far. */
export interface Disagreement {
  readonly piece: string | null;
  readonly yarn: string;
  readonly cases: readonly { readonly size: number; readonly byStitch: number; readonly byArea: number }[];
}

/** The whole garment is judged, and each piece that takes a tenth of a yarn or more: in small ones the edges decide. */
export function disagreements(estimate: YarnEstimate): readonly Disagreement[] {
  const found: Disagreement[] = [];
  estimate.yarns.forEach(({ name, ways }, at) => {
    const judge = (piece: string | null, own: PerSize<TwoWays>): void => {
      const cases = own.flatMap((two, size) => {
        const off = apart(two);
        const { byStitch, byArea } = two;
        if (off === null || byStitch === null || byArea === null || Math.abs(off) <= MOST_APART) return [];
        const all = ways[size]?.byStitch ?? 0;
        return piece !== null && byStitch < all / 10 ? [] : [{ size, byStitch, byArea }];
      });
      if (cases.length > 0) found.push({ piece, yarn: name, cases });
    };
    judge(null, ways);
    for (const piece of estimate.pieces) judge(piece.name, piece.yarns[at] ?? []);
  });
  return found;
}
