import type { PerSize } from "../base/index.ts";

/** A yarn as its band and the shop say; null for what is not known. */
export interface YarnBall {
  readonly metres: number | null;
  readonly grams: number | null;
  readonly price: { readonly amount: number; readonly currency: string } | null;
}

/** What is bought of one yarn for one size. */
export interface Purchase {
  /** Metres with the safety on them; null where they are not known. */
  readonly metres: number | null;
  readonly balls: number | null;
  readonly cost: number | null;
  /** Metres and grams of the bought that are not used, safety and all. */
  readonly leftMetres: number | null;
  readonly leftGrams: number | null;
}

/** Bought beyond what is used, where the design does not say: a tenth. Trade handbook, 4.4, common practice, no source. */
export const USUAL_SAFETY = 0.1;

/** Whole balls for a length: always up. A hair above a whole ball is the arithmetic's own. */
export const ballsFor = (metres: number, metresPerBall: number): number =>
  Math.max(0, Math.ceil(metres / metresPerBall - 1e-9));

/** What is bought for the metres that are used. */
export function purchaseOf(used: number | null, ball: YarnBall, safety = USUAL_SAFETY): Purchase {
  if (used === null) return { metres: null, balls: null, cost: null, leftMetres: null, leftGrams: null };
  const metres = used * (1 + safety);
  const balls = ball.metres === null ? null : ballsFor(metres, ball.metres);
  const bought = balls === null || ball.metres === null ? null : balls * ball.metres;
  const leftMetres = bought === null ? null : bought - used;
  return {
    metres,
    balls,
    cost: balls === null || ball.price === null ? null : balls * ball.price.amount,
    leftMetres,
    leftGrams: leftMetres === null ? null : gramsOf(leftMetres, ball),
  };
}

/** Grams of a length; null where the band does not say. */
export function gramsOf(metres: number, { metres: ofBall, grams }: YarnBall): number | null {
  return ofBall === null || grams === null ? null : (metres * grams) / ofBall;
}

/** Metres in a weight: leftovers are weighed. */
export function metresIn(grams: number, { metres, grams: ofBall }: YarnBall): number | null {
  return metres === null || ofBall === null ? null : (grams * metres) / ofBall;
}

/** Whole rows that a remainder still makes, from the weight of one. */
export const rowsLeft = (gramsLeft: number, gramsPerRow: number): number =>
  Math.floor(gramsLeft / gramsPerRow + 1e-9);

/** Metres for another size from the sample's: by area, with the parts that every size has alike added after. */
export function metresByArea(sample: number, fixed: number, areaSample: number, areaSize: number): number {
  return ((sample - fixed) * areaSize) / areaSample + fixed;
}

/** Every size's metres used, made into what is bought. */
export const purchasesOf = (
  used: PerSize<number | null>,
  ball: YarnBall,
  safety?: number,
): PerSize<Purchase> => used.map((metres) => purchaseOf(metres, ball, safety));
