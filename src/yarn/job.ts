import type { PerSize } from "../base/index.ts";
import type { MadeRow, Making } from "../working/index.ts";
import type { YarnBall } from "./buying.ts";

/** A test piece as it was counted, weighed and timed. */
export interface FabricSwatch {
  readonly stitches: number;
  readonly rows: number;
  readonly grams: number | null;
  /** Minutes that working it took, turning and counting in them. */
  readonly minutes: number | null;
  /** What it is made of, where that is said; else as the rows of the fabric are. */
  readonly madeOf: ReadonlyMap<string, number> | null;
}

/** A stitch pattern at its washed gauge. */
export interface YarnFabric {
  readonly name: string;
  /** cm a stitch and cm a row; null where they are not known. A row is then as high as its stitches usually are. */
  readonly stitchCm: number | null;
  readonly rowCm: number | null;
  /** Name of the yarn it was measured in. */
  readonly yarn: string | null;
  readonly swatches: readonly FabricSwatch[];
}

/** A yarn of the design. */
export interface NamedYarn extends YarnBall {
  readonly name: string;
  readonly yarnClass: number | null;
}

/** All that yarn and time are worked out from. */
export interface YarnJob {
  /** How many sizes. */
  readonly sizes: number;
  readonly makings: readonly Making[];
  readonly fabrics: readonly YarnFabric[];
  readonly yarns: readonly NamedYarn[];
  /** Index of the fabric that a row is worked in. */
  fabricOf(row: MadeRow): number;
  /** Index of the yarn that a colour of the rows means. */
  yarnOf(colour: string | null, fabric: number): number;
  /** cm left hanging at each end of the yarn. */
  readonly tailCm: number;
  /** Length of all sewn seams together; null where it is not said. */
  readonly seamsCm: PerSize<number | null> | null;
  /** Bought beyond what is used, as a share; a tenth where it is not said. */
  readonly safety?: number;
  /** Minutes of sewing, ends and washing; null: so much for each end. */
  readonly finishing: number | null;
}

/** An end is left 18 cm long where the design does not say: 15 to 20. Trade handbook, 4.4, common practice, no source. */
export const USUAL_TAIL_CM = 18;

/** Sewing takes so much yarn for the length of the seam: 2.5 to 3 times. Trade handbook, 4.4, common practice, no source. */
export const SEAM_FACTOR = 3;

/** A yarn carried up the side to its next row takes so much for each row passed. Trade handbook, 4.4, no source. */
export const CARRY_FACTOR = 1.3;

/** A yarn is carried up over so many rows and cut for more. Common practice, no source. */
export const MOST_CARRIED_ROWS = 4;
