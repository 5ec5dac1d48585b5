import { type PerSize, valueAt } from "../base/index.ts";
import type { PatternTree } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import type { Edge } from "./edge.ts";
import type { PieceState, WorkedRow } from "./piece.ts";
import type { Place } from "./place.ts";
import { isUnknown } from "./targets.ts";
import type { MadePiece, MadeRow, MadeStitches, Making } from "./worked.ts";

/** What every piece is made of, size beside size: a piece goes by the heading that it begins under. */
export function makingOf(tree: PatternTree, pieces: PerSize<readonly PieceState[]>): readonly Making[] {
  const begun = new Set(pieces.flatMap((one) => one.filter(isMade).map(({ at }) => at)));
  return [...begun]
    .sort((a, b) => a - b)
    .map((at) => {
      const heading = tree.pieces[at];
      return {
        name: heading?.name ?? "",
        times: pieces.map((_, size) => timesOf(tree, at, size)),
        made: pieces.map((one) => {
          const piece = one.find((each) => each.at === at && isMade(each));
          return piece ? madeOf(piece) : null;
        }),
      };
    });
}

const isMade = ({ rows, foundations }: PieceState): boolean => rows.length > 0 || foundations.length > 0;

/** "Make 2" at the heading of a piece, or at the one above a section that a piece begins with. */
function timesOf(tree: PatternTree, at: number, size: number): number {
  const heading = tree.pieces[at];
  const above = tree.pieces[at - 1];
  const make =
    heading?.make ??
    (heading && above && above.level < heading.level && above.instructions.length === 0
      ? above.make
      : undefined);
  return (make && valueAt(make.values, size)) ?? 1;
}

function madeOf(piece: PieceState): MadePiece {
  return {
    chains: piece.foundations.flatMap(({ edge, colour }) => stitchesOf(edge, colour, false)),
    // On a sample nobody knows how wide the piece will be.
    rows: piece.rows.map((row) => (piece.sample ? { ...rowOf(row), stitches: null, made: [] } : rowOf(row))),
  };
}

function rowOf(row: WorkedRow): MadeRow {
  const { edge, at, section, rows, untilCm, begins, colour, joined, stitchesBefore } = row;
  const known = !isUnknown(edge);
  // Chains between stitches fill the row as stitches do.
  const { stitches: counted, chains } = countStitches(edge);
  const last = known ? counted + chains : null;
  // Rows that are shaped on their way are taken at their mean.
  const stitches = last === null || stitchesBefore === null ? last : (stitchesBefore + last) / 2;
  const made = known ? stitchesOf(edge, colour, row.onFoundation) : [];
  const share = stitches === null || last === null || last === 0 ? 1 : stitches / last;
  return {
    at,
    section,
    rows,
    untilCm,
    stitches,
    begins,
    made: [
      ...(share === 1 ? made : made.map((one) => ({ ...one, count: one.count * share }))),
      ...(joined ? [{ kind: "sl st", colour, count: 1 }] : []),
    ],
  };
}

const kept = new WeakMap<Edge, Map<string, readonly MadeStitches[]>>();

/** Stitches by kind and colour, in the order of their first; rows worked alike share their edge and so their stitches. */
function stitchesOf(edge: Edge, colour: string | null, onFoundation: boolean): readonly MadeStitches[] {
  const key = `${onFoundation}|${colour ?? ""}`;
  const byKey = kept.get(edge) ?? new Map<string, readonly MadeStitches[]>();
  kept.set(edge, byKey);
  let found = byKey.get(key);
  if (!found) {
    found = countedBy(edge, colour, onFoundation);
    byKey.set(key, found);
  }
  return found;
}

function countedBy(edge: Edge, colour: string | null, onFoundation: boolean): MadeStitches[] {
  const counts = new Map<string, { kind: string; colour: string | null; count: number }>();
  for (const { unit, times } of edge.runs)
    for (const place of unit) {
      const { kind, count } = yarnIn(place, onFoundation);
      if (count === 0) continue;
      const own = place.colour ?? colour;
      const key = `${kind}|${own ?? ""}`;
      const one = counts.get(key) ?? { kind, colour: own, count: 0 };
      one.count += count * times;
      counts.set(key, one);
    }
  return [...counts.values()];
}

/** What a place took of the yarn: a chain that stands for a stitch is chains all the same. */
function yarnIn(place: Place, onFoundation: boolean): { readonly kind: string; readonly count: number } {
  switch (place.role) {
    case "chain":
    case "foundation":
      return { kind: "ch", count: place.chains };
    case "ring":
      return { kind: "ch", count: place.chains };
    case "turning":
      return { kind: "ch", count: onFoundation ? 0 : place.chains };
    case "row-end":
    case "free-loop":
      return { kind: "ch", count: 0 };
    default:
      return { kind: place.code, count: 1 };
  }
}
