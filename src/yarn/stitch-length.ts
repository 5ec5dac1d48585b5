import { hasStitch, stitchOf } from "../stitches/index.ts";

/** What a stitch is worked with: the width it fills, the height of a single crochet, the thickness of the yarn; all cm. */
export interface StitchSize {
  readonly width: number;
  /** Height of a single crochet; taller stitches stand to it as the dictionary says. */
  readonly scHeight: number;
  readonly yarn: number;
}

/** Single crochet of a medium yarn, as the geometry below was first held against measured rows: 0.6 cm wide, yarn 0.2 cm thick. */
const USUAL = { yarn: 0.2, metresPerGram: 2, width: 0.6, scHeight: 0.857 } as const;

/**
 * How thick a yarn lies in the fabric, cm. By Ashenhurst's law the wraps that fit on a length go with the square root of the
 * yarn's length for its weight; the law is anchored where the geometry was measured, 2 m in a gram taken as 2 mm.
 */
export function yarnThickness(metresPerGram: number): number {
  if (!(metresPerGram > 0)) throw new RangeError(`a yarn has more than 0 m in a gram, got ${metresPerGram}`);
  return USUAL.yarn * Math.sqrt(USUAL.metresPerGram / metresPerGram);
}

/** The thickness where only the gauge is known: stitches are about three times as wide as their yarn is thick. Rough. */
export const thicknessByWidth = (width: number): number => (width * USUAL.yarn) / USUAL.width;

/**
 * Wraps in one inch at full packing, by Ashenhurst: K times the root of yards in a pound, K 0.85 soft, 0.9 firm, 0.91 very
 * firm. Wrapped loosely as makers do, about half the root. Source: computation notes, section 8.
 */
export function wrapsPerInch(
  metresPerGram: number,
  packing: "soft" | "firm" | "very firm" | "loose",
): number {
  const yardsPerPound = (metresPerGram / 0.9144) * 453.59237;
  const share = { soft: 0.85, firm: 0.9, "very firm": 0.91, loose: 0.5 }[packing];
  return share * Math.sqrt(yardsPerPound);
}

/** Legs that a stitch draws up and bends of the yarn in them, beside its top. Own geometry, a prior only. */
interface Legs {
  readonly heights: number;
  readonly bends: number;
}

/** The chain on top of every stitch: three widths and the bends of a chain. */
const TOP = { widths: 3, bends: 1.7 } as const;

/** Legs by family; bends are those beyond the top's. Computation notes, section 8, to tr; further by the same step of two. */
const LEGS: Readonly<Record<string, Legs>> = {
  sc: { heights: 2, bends: 2 },
  hdc: { heights: 4, bends: 2 },
  dc: { heights: 4, bends: 4 },
  tr: { heights: 4, bends: 6 },
  dtr: { heights: 4, bends: 8 },
  trtr: { heights: 4, bends: 10 },
};

/** A stitch round a post bends round it twice more, a tenth on a double crochet. Trade handbook, 4.2: 10 to 40 % more, no source. */
const POST_BENDS = 2;

/** How many legs stand under one top: 3 of dc3tog and 3dc-cluster. What a bare name usually means is as the dictionary says it. */
const USUAL_LEGS: Readonly<Record<string, readonly [stem: string, legs: number]>> = {
  cluster: ["dc", 3],
  bobble: ["dc", 5],
  puff: ["hdc", 3],
  popcorn: ["dc", 5],
  bean: ["hdc", 3],
  invdec: ["sc", 2],
  "inverted-y": ["dc", 2],
  bullion: ["dc", 2],
};

/**
 * Centimetres of yarn in one stitch: the chain on top, the legs and the bends of the yarn. A prior, from geometry alone: within
 * a tenth of the rows that were measured (computation notes, section 8).
 *
 * @returns null for a kind that the dictionary does not have, "?" among them
 */
export function stitchLength(kind: string, size: StitchSize): number | null {
  const bend = Math.PI * size.yarn;
  const top = TOP.widths * size.width + TOP.bends * bend;
  if (kind === "ch" || kind === "sl st") return top;
  const picot = /^(?:ch(\d+)-)?picot$/.exec(kind);
  if (picot) return (Number(picot[1] ?? 3) + 1) * top;
  if (!hasStitch(kind)) return null;
  const { family, height, hold, parts, takes } = stitchOf(kind);
  if (parts)
    return parts.reduce((sum, part) => {
      const chains = /^ch (\d+)$/.exec(part);
      return sum + (chains ? Number(chains[1]) * top : (stitchLength(part, size) ?? 0));
    }, 0);
  const numbered = /^(\d+)(hdc|dc|tr|dtr)-(?:cluster|bobble|puff|popcorn)$/.exec(kind);
  const [stem, legs] =
    USUAL_LEGS[kind] ??
    (numbered ? [numbered[2] as string, Number(numbered[1])] : [family, Math.max(1, takes)]);
  const shape = LEGS[stem];
  if (!shape) return null;
  // A spike reaches down over a row below; a foundation stitch makes its own chain.
  const reach = (height + (hold === "spike" ? 1 : 0)) * size.scHeight;
  const leg = shape.heights * reach + shape.bends * bend;
  const post = hold === "front-post" || hold === "back-post" ? POST_BENDS * bend : 0;
  // Each stitch of a popcorn has a top of its own; other legs share one.
  const tops = kind.endsWith("popcorn") ? legs : hold === "none" ? 2 : 1;
  return tops * top + legs * (leg + post);
}

/** Height of a stitch in single crochets; a chain lies flat and counts as none. */
export const heightOf = (kind: string): number =>
  kind === "ch" || kind === "sl st" || !hasStitch(kind) ? 0 : stitchOf(kind).height;

/** A row's height for its stitches' width where a swatch tells only the width: that of single crochet as first measured. */
export const usualScHeight = (width: number): number => (width * USUAL.scHeight) / USUAL.width;
