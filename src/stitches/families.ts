import { DICTIONARY } from "./dictionary.ts";
import { CLUSTERS_BY_NAME } from "./records/clusters.ts";
import { EDGINGS_BY_NAME } from "./records/edgings.ts";
import { FANS_BY_NAME } from "./records/fans.ts";
import { STEMS } from "./records/stems.ts";

/**
 * Names that speak of other stitches besides their own. A plain name speaks of its whole family: "in next dc" also
 * means a dc2tog, a post or an extended dc. A post name speaks of the decreases round the same post, "sc2tog" of the
 * invisible decrease, a bare "cluster" of every numbered one. Common practice, no source.
 */
const COVERED: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ...["ch", "sl st", ...STEMS.map((stem) => stem.code)].map((name) =>
    both(
      name,
      codesWhere((family) => family === name),
    ),
  ),
  ...STEMS.flatMap((stem) =>
    (["front-post", "back-post"] as const).map((hold) =>
      both(
        `${hold === "front-post" ? "fp" : "bp"}${stem.code}`,
        codesWhere((family, itsHold) => family === stem.family && itsHold === hold),
      ),
    ),
  ),
  both("sc2tog", ["invdec"]),
  both("invdec", ["sc2tog"]),
  ...Object.entries({ ...CLUSTERS_BY_NAME, ...FANS_BY_NAME, ...EDGINGS_BY_NAME }).map(([name, codes]) =>
    both(name, codes),
  ),
]);

/**
 * Whether a place named `name` may be a stitch with the code `code`: coversPlace("dc", "fpdc") is true, the reverse is
 * not. A name or code outside the dictionary, such as a pattern's own special stitch, covers only itself.
 */
export function coversPlace(name: string, code: string): boolean {
  return name === code || COVERED.get(name)?.has(code) === true;
}

/** Every code that a place name covers, its own first. */
export function codesCovered(name: string): readonly string[] {
  return [...new Set([name, ...(COVERED.get(name) ?? [])])];
}

function codesWhere(fits: (family: string, hold: string) => boolean): string[] {
  return DICTIONARY.filter((stitch) => fits(stitch.family, stitch.hold)).map((stitch) => stitch.code);
}

function both(name: string, codes: readonly string[]): readonly [string, ReadonlySet<string>] {
  return [name, new Set([name, ...codes])];
}
