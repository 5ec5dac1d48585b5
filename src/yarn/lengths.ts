import type { MadeRow } from "../working/index.ts";
import { fitLengths, type WeighedSwatch, weighingShare } from "./fit-lengths.ts";
import type { FabricSwatch, YarnFabric, YarnJob } from "./job.ts";
import {
  heightOf,
  type StitchSize,
  stitchLength,
  thicknessByWidth,
  usualScHeight,
  yarnThickness,
} from "./stitch-length.ts";

/** What a fabric's swatch weighs against what its stitches would by geometry. */
export interface SwatchWeight {
  readonly fabric: number;
  readonly grams: number;
  /** Grams by geometry alone. */
  readonly expected: number;
}

/** Lengths of yarn in stitches, cm, in each fabric of a job. */
export interface StitchLengths {
  /** cm in one stitch; one whose kind is not told takes what the fabric's stitches take on the average. Null without a gauge. */
  of(kind: string, fabric: number): number | null;
  /** What the stitches of each fabric are worked with; null without a gauge. */
  readonly sizes: readonly (StitchSize | null)[];
  /** Height of a row on the average, cm, from the gauge or from the stitches' usual shape. */
  readonly rowCm: readonly (number | null)[];
  /** Whether weighed swatches stand behind a fabric's lengths; else geometry alone. */
  readonly weighed: readonly boolean[];
  /** How much more or less than geometry says a kind takes: 1 is as much. */
  readonly factors: ReadonlyMap<string, number>;
  readonly weights: readonly SwatchWeight[];
  /** Kinds and how many of each make one stitch of the fabric's count. */
  readonly mixes: readonly ReadonlyMap<string, number>[];
}

/** Lengths for a job: geometry fitted to all weighed swatches together, whatever fabric they are of. */
export function lengthsOf(job: YarnJob): StitchLengths {
  const mixes = job.fabrics.map((_, fabric) => mixOf(job, fabric));
  const heights = job.fabrics.map((_, at) => meanHeight(job, at));
  const sizes = job.fabrics.map((fabric, at) => sizeOf(job, fabric, heights[at] ?? 1));
  const prior = (kind: string, fabric: number): number | null => {
    const size = sizes[fabric];
    return size ? stitchLength(kind, size) : null;
  };
  const swatches: WeighedSwatch[] = [];
  const weights: SwatchWeight[] = [];
  const kinds = new Set<string>();
  job.fabrics.forEach((fabric, at) => {
    const perGram = metresPerGram(job, fabric);
    for (const swatch of fabric.swatches) {
      if (swatch.grams === null || perGram === null || !sizes[at]) continue;
      const stitches = new Map<string, number>();
      let expected = 0;
      for (const [kind, count] of compositionOf(swatch, mixes[at])) {
        const length = prior(kind, at);
        if (length === null) continue;
        stitches.set(kind, count * length);
        expected += count * length;
        kinds.add(kind);
      }
      if (expected === 0) continue;
      // Two ends hang from a swatch that is weighed as it is.
      const cm = swatch.grams * perGram * 100;
      swatches.push({ stitches, cm, share: weighingShare(swatch.grams) });
      weights.push({ fabric: at, grams: swatch.grams, expected: expected / 100 / perGram });
    }
  });
  const factors = fitLengths(swatches, new Map([...kinds].map((kind) => [kind, 1] as const)));
  // What no swatch has is made in the same hand as what they have.
  const hand = handOf(swatches, factors);
  const known = (kind: string, fabric: number): number | null => {
    const length = prior(kind, fabric);
    return length === null ? null : length * (factors.get(kind) ?? hand);
  };
  const means = job.fabrics.map((_, fabric) => {
    let cm = 0;
    for (const [kind, count] of mixes[fabric] ?? []) cm += count * (known(kind, fabric) ?? 0);
    return cm > 0 ? cm : known("sc", fabric);
  });
  return {
    of: (kind, fabric) => known(kind, fabric) ?? means[fabric] ?? null,
    sizes,
    rowCm: job.fabrics.map(({ rowCm }, at) => {
      const size = sizes[at];
      return rowCm ?? (size ? size.scHeight * (heights[at] ?? 1) : null);
    }),
    weighed: job.fabrics.map((_, at) => weights.some(({ fabric }) => fabric === at)),
    factors,
    weights,
    mixes,
  };
}

function handOf(swatches: readonly WeighedSwatch[], factors: ReadonlyMap<string, number>): number {
  let [by, prior] = [0, 0];
  for (const { stitches } of swatches)
    for (const [kind, cm] of stitches) {
      by += cm * (factors.get(kind) ?? 1);
      prior += cm;
    }
  return prior === 0 ? 1 : by / prior;
}

export function metresPerGram(job: YarnJob, fabric: YarnFabric): number | null {
  const yarn = job.yarns.find(({ name }) => name === fabric.yarn) ?? job.yarns[0];
  return yarn?.metres && yarn.grams ? yarn.metres / yarn.grams : null;
}

/** Every stitch of a swatch by kind. */
export function compositionOf(
  swatch: FabricSwatch,
  mix: ReadonlyMap<string, number> = new Map(),
): ReadonlyMap<string, number> {
  if (swatch.madeOf) return swatch.madeOf;
  const all = swatch.stitches * swatch.rows;
  return new Map([...mix].map(([kind, share]) => [kind, share * all] as const));
}

/** The rows of one fabric whose stitches are all told. */
function rowsIn(job: YarnJob, fabric: number): MadeRow[] {
  return job.makings.flatMap(({ made }) =>
    made.flatMap((piece) =>
      (piece?.rows ?? []).filter(
        (row) =>
          row.stitches !== null &&
          row.stitches > 0 &&
          !row.made.some(({ kind }) => kind === "?") &&
          job.fabricOf(row) === fabric,
      ),
    ),
  );
}

/** What one stitch of the fabric's count is made of, on the average over its rows. */
function mixOf(job: YarnJob, fabric: number): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  let stitches = 0;
  for (const row of rowsIn(job, fabric)) {
    const rows = row.rows ?? 1;
    stitches += rows * (row.stitches ?? 0);
    for (const { kind, count } of row.made) counts.set(kind, (counts.get(kind) ?? 0) + rows * count);
  }
  return new Map([...counts].map(([kind, count]) => [kind, count / stitches] as const));
}

/** Height of a fabric's rows on the average, in single crochets. */
function meanHeight(job: YarnJob, at: number): number {
  let [rows, heights] = [0, 0];
  for (const row of rowsIn(job, at)) {
    let [sum, count] = [0, 0];
    for (const one of row.made) {
      const height = heightOf(one.kind);
      if (height === 0) continue;
      sum += one.count * height;
      count += one.count;
    }
    if (count === 0) continue;
    rows += row.rows ?? 1;
    heights += ((row.rows ?? 1) * sum) / count;
  }
  return rows === 0 ? 1 : heights / rows;
}

/** Rows of tall stitches share the gauge's mean height with rows of low ones as the stitches' heights stand to each other. */
function sizeOf(job: YarnJob, fabric: YarnFabric, height: number): StitchSize | null {
  const { stitchCm, rowCm } = fabric;
  if (stitchCm === null) return null;
  const perGram = metresPerGram(job, fabric);
  return {
    width: stitchCm,
    scHeight: rowCm === null ? usualScHeight(stitchCm) : rowCm / height,
    yarn: perGram === null ? thicknessByWidth(stitchCm) : yarnThickness(perGram),
  };
}
