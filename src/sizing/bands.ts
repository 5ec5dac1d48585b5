import { deal } from "./distribute.ts";
import type { Cm, Count } from "./units.ts";
import { mustBePositive, mustBeWhole } from "./units.ts";

/** Holes along a band worked over its length: hole by hole with the stitches between. */
export type HolesInRow =
  | {
      readonly kind: "holes";
      /** Stitches before the first hole, between two holes each, after the last. */
      readonly edges: readonly [Count, Count];
      readonly gaps: readonly Count[];
      /** First stitch of each hole, from 1. */
      readonly places: readonly Count[];
    }
  | {
      readonly kind: "refused" /** The most holes of this width that leave a stitch between. */;
      readonly most: Count;
    };

/** A pocket's place in a row. */
export interface PocketPlace {
  /** Stitches before it. */
  readonly before: Count;
  readonly width: Count;
  /** Stitches after it. */
  readonly after: Count;
}

/**
 * Buttonholes along a band; gaps that cannot all be alike differ by one (trade handbook, 3.8).
 *
 * @param stitches  of the whole band
 * @param holes     how many
 * @param width     stitches a hole takes
 * @param edge      stitches before the first hole and after the last; with one hole alone the hole stands in the middle
 */
export function holesInRow(stitches: Count, holes: Count, width: Count, edge: Count): HolesInRow {
  mustBeWhole(stitches, "stitches", 1);
  mustBeWhole(holes, "holes", 1);
  mustBeWhole(width, "a hole's stitches", 1);
  mustBeWhole(edge, "edge stitches");
  if (holes === 1) {
    const rest = stitches - width;
    if (rest < 2 * edge) return { kind: "refused", most: 0 };
    const before = Math.floor(rest / 2);
    return { kind: "holes", edges: [before, rest - before], gaps: [], places: [before + 1] };
  }
  const between = stitches - 2 * edge - holes * width;
  if (between < holes - 1) {
    return { kind: "refused", most: Math.max(0, Math.floor((stitches - 2 * edge + 1) / (width + 1))) };
  }
  const gaps = deal(between, holes - 1);
  const places = [edge + 1];
  for (const gap of gaps) places.push(places.at(-1)! + width + gap);
  return { kind: "holes", edges: [edge, edge], gaps, places };
}

/**
 * Rows of the buttonholes of a band worked upwards (trade handbook, 3.8).
 *
 * @param rows    of the whole band
 * @param margin  row of the first hole, and rows from the last hole to the end
 * @returns       row numbers from 1, ascending; null when two holes would fall on one row
 */
export function holesInRows(rows: Count, holes: Count, margin: Count): readonly Count[] | null {
  mustBeWhole(rows, "rows", 1);
  mustBeWhole(holes, "holes", 1);
  mustBeWhole(margin, "a margin");
  const span = rows - 2 * margin;
  if (holes === 1) return [Math.ceil(rows / 2)];
  if (span < holes - 1) return null;
  const at = [margin];
  for (const gap of deal(span, holes - 1)) at.push(at.at(-1)! + gap);
  return at;
}

/**
 * How many buttons a front needs, evenly spaced.
 *
 * @param length   cm of the band
 * @param margin   cm from each end to the nearest button
 * @param spacing  least and most cm between buttons; 6 to 9 is common practice, no source
 * @returns        every number whose spacing lies within, fewest first, with its spacing
 */
export function buttonsFor(
  length: Cm,
  margin: Cm,
  spacing: { readonly least: Cm; readonly most: Cm },
): readonly { readonly buttons: Count; readonly spacing: Cm }[] {
  mustBePositive(spacing.least, "the least spacing");
  const span = length - 2 * margin;
  const choices: { buttons: Count; spacing: Cm }[] = [];
  for (let gaps = 1; span / gaps >= spacing.least - 1e-9; gaps++) {
    if (span / gaps <= spacing.most + 1e-9) choices.push({ buttons: gaps + 1, spacing: span / gaps });
  }
  return choices;
}

/**
 * Stitches of one front, so that two fronts and the band that shows are as wide as the back (trade handbook, 3.8).
 *
 * @param band  stitches that the band's width takes at the body's gauge; 0 for fronts that meet edge to edge
 * @returns     null when back and band leave an odd number
 */
export function frontStitches(back: Count, band: Count): Count | null {
  mustBeWhole(back, "stitches of the back", 1);
  mustBeWhole(band, "stitches of the band");
  const both = back - band;
  return both >= 0 && both % 2 === 0 ? both / 2 : null;
}

/** The same pocket on the other front, mirrored. */
export function mirrorPocket({ before, width, after }: PocketPlace): PocketPlace {
  return { before: after, width, after: before };
}
