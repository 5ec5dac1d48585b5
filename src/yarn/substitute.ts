import { yarnClass } from "../stitches/index.ts";
import type { YarnBall } from "./buying.ts";

/** A yarn with its class. */
export interface ClassedYarn extends YarnBall {
  readonly yarnClass: number | null;
}

/** What another yarn asks for. */
export interface Substitution {
  /** Multiplies the metres: 1 where it can be worked at the same gauge. */
  readonly lengthFactor: number;
  /** Thickness of the other over that of the first; null where a band does not say metres and grams. */
  readonly thickness: number | null;
  /** "as it is": same thickness. "swatch first": near enough to try. "another gauge": the counts will not come out to size. */
  readonly fit: "as it is" | "swatch first" | "another gauge";
}

/** Yarns whose thickness differs by no more than this are worked alike. Own choice: about a third of the way to the next class. */
const ALIKE = 0.06;
/** Beyond this the gauge cannot be got. Own choice: about the step from one class to the next. */
const OTHER = 0.15;

/**
 * How one yarn does for another. At the same gauge the same length is used, so lengths are matched and never weights
 * (trade handbook, 4.3). Where the thickness differs the gauge goes with it, and a fabric of the same area takes length in
 * inverse proportion; that is a first guess, to be replaced by a swatch.
 */
export function substitute(first: ClassedYarn, other: ClassedYarn): Substitution {
  const [a, b] = [perGram(first), perGram(other)];
  // Thickness goes with the root of weight per length (Ashenhurst).
  const thickness = a === null || b === null ? null : Math.sqrt(a / b);
  const sameClass =
    first.yarnClass === null || other.yarnClass === null || first.yarnClass === other.yarnClass;
  const off = thickness === null ? 0 : Math.abs(thickness - 1);
  const fit = !sameClass || off > OTHER ? "another gauge" : off > ALIKE ? "swatch first" : "as it is";
  return { lengthFactor: fit === "another gauge" && thickness !== null ? 1 / thickness : 1, thickness, fit };
}

const perGram = ({ metres, grams }: YarnBall): number | null =>
  metres === null || grams === null ? null : metres / grams;

/** Metres in 100 g that each class usually has: a quick check of a band. Trade handbook, 4.3, common practice, no source. */
const METRES_IN_100_G: Readonly<Record<number, readonly [number, number]>> = {
  1: [350, 460],
  2: [270, 340],
  3: [200, 260],
  4: [150, 200],
  5: [90, 140],
  6: [40, 90],
};

/** The class whose usual length for its weight is nearest; null beyond the table. */
export function classByLength(ball: YarnBall): number | null {
  const length = perGram(ball);
  if (length === null) return null;
  const in100 = length * 100;
  const off = ([from, to]: readonly [number, number]): number =>
    in100 < from ? from / in100 : in100 > to ? in100 / to : 1;
  const [best] = Object.entries(METRES_IN_100_G).sort(([, a], [, b]) => off(a) - off(b));
  return best && off(best[1]) <= 1.2 ? yarnClass(Number(best[0])).number : null;
}
