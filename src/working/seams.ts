import type { Finding } from "../base/index.ts";
import type { PatternTree, SeamClause } from "../notation/index.ts";
import { countStitches } from "./counting.ts";
import { piecesDoNotMirror, seamsDoNotMatch } from "./findings/index.ts";
import { type FabricSize, fabricSize } from "./lengths.ts";
import { countRows, type PieceState, type WorkedRow } from "./piece.ts";
import { isUnknown } from "./targets.ts";

/*
 * Edges that are sewn together, and parts that mirror one another, compared in every size. Only what the words name plainly is
 * compared: the fronts and backs, sleeves and shoulders of a garment. Where a number is not known nothing is said.
 */

/** Sewn edges may differ by this share and be eased in. Source: trade handbook, section 2.4 (up to 1 in of a sleeve cap), and 3.10. */
const EASED = 0.08;

type Pieces = readonly PieceState[];

/** Rows of a section, as one size worked them. */
function rowsOf(piece: PieceState | undefined, section: RegExp): readonly WorkedRow[] {
  return piece?.rows.filter((row) => section.test(row.section)) ?? [];
}

const lastCount = (rows: readonly WorkedRow[]): number | null => {
  const last = rows[rows.length - 1];
  return last && !isUnknown(last.edge) ? countStitches(last.edge).stitches : null;
};

const firstCount = (rows: readonly WorkedRow[]): number | null => lastCount(rows.slice(0, 1));

const pieceNamed = (pieces: Pieces, name: RegExp): PieceState | undefined =>
  pieces.find((piece) => name.test(piece.name));

/** Finds parts named left and right, or first and second, that do not come to the same stitches and rows. */
export function compareMirrored(tree: PatternTree, perSize: readonly Pieces[]): Finding[] {
  const findings: Finding[] = [];
  const names = tree.pieces.map((piece) => piece.name);
  for (const [left, right] of PAIRS) {
    for (const [at, name] of names.entries()) {
      if (!left.test(name)) continue;
      const twin = name.replace(left, right.words);
      const other = names.findIndex(
        (each, index) => index !== at && each.toLowerCase() === twin.toLowerCase(),
      );
      if (other === -1) continue;
      const cases = perSize.flatMap((pieces, size) => {
        const one = partRows(pieces, names, at);
        const two = partRows(pieces, names, other);
        if (one.length === 0 || two.length === 0) return [];
        const a = lastCount(one);
        const b = lastCount(two);
        const name = tree.sizes[size] ?? "";
        // Worked sideways, one of the two begins where the other ends.
        const turned = a === firstCount(two) && b === firstCount(one);
        if (a !== null && b !== null && a !== b && !turned)
          return [{ size: name, one: a, other: b, what: "sts at the end", index: size }];
        // One row more is usual, since one side begins where the other ends.
        const rows = countRows(one);
        const others = countRows(two);
        if (rows === null || others === null || Math.abs(rows - others) < 2) return [];
        if ([...one, ...two].some((row) => isUnknown(row.edge))) return [];
        return [{ size: name, one: rows, other: others, what: "rows", index: size }];
      });
      const place = tree.pieces[Math.max(at, other)];
      if (cases.length > 0 && place)
        findings.push(
          piecesDoNotMirror.at(
            {
              span: place.nameSpan,
              piece: place.name,
              row: null,
              sizes: tree.sizes.length === 1 ? [] : cases.map((each) => each.index),
            },
            { one: name, other: names[other] as string, cases: cases.map(({ index: _, ...rest }) => rest) },
          ),
        );
    }
  }
  return findings;
}

const PAIRS: readonly (readonly [RegExp, { readonly words: string }])[] = [
  [/\bleft\b/i, { words: "right" }],
  [/\bfirst\b/i, { words: "second" }],
];

/** The rows under one heading: all of a piece, or those of a section. */
function partRows(pieces: Pieces, names: readonly string[], at: number): readonly WorkedRow[] {
  const whole = pieces.find((piece) => piece.name === names[at] && piece.rows[0]?.sectionAt === at);
  if (whole) return whole.rows;
  return pieces.flatMap((piece) =>
    piece.rows.filter((row) => row.sectionAt === at && row.section === names[at]),
  );
}

/** Compares the two edges of a seam sentence in every size. */
export function compareSeam(
  tree: PatternTree,
  clause: SeamClause,
  perSize: readonly Pieces[],
  piece: string | null,
): Finding[] {
  const gauge = fabricSize(tree.gauges);
  const cases = perSize.flatMap((pieces, size) => {
    const edges = edgesOf(clause, pieces, gauge);
    if (!edges) return [];
    const { one, other } = edges;
    const matches =
      one.cm !== null && other.cm !== null
        ? Math.abs(one.cm - other.cm) <= EASED * Math.max(one.cm, other.cm)
        : one.count === null || other.count === null || one.count === other.count;
    if (matches) return [];
    return [
      {
        size: tree.sizes[size] ?? "",
        index: size,
        one: one.name,
        oneCm: one.cm,
        oneCount: one.count,
        other: other.name,
        otherCm: other.cm,
        otherCount: other.count,
      },
    ];
  });
  if (cases.length === 0) return [];
  return [
    seamsDoNotMatch.at(
      {
        span: clause.span,
        piece,
        row: null,
        sizes: tree.sizes.length === 1 ? [] : cases.map((each) => each.index),
      },
      { words: clause.words, cases: cases.map(({ index: _, ...rest }) => rest) },
    ),
  ];
}

interface SeamEdge {
  readonly name: string;
  readonly count: number | null;
  readonly cm: number | null;
}

function edgesOf(
  clause: SeamClause,
  pieces: Pieces,
  gauge: FabricSize | null,
): { readonly one: SeamEdge; readonly other: SeamEdge } | null {
  const back = pieceNamed(pieces, /\bback\b/i);
  const front = pieceNamed(pieces, /^(?!.*\b(?:left|right)\b).*\bfront\b/i);
  if (back?.everUnread || front?.everUnread) return null;
  if (clause.seam === "shoulder" && back && front) {
    for (const side of ["right", "left"]) {
      const section = new RegExp(`\\b${side}\\b.*shoulder|shoulder.*\\b${side}\\b`, "i");
      const a = lastCount(rowsOf(back, section));
      const b = lastCount(rowsOf(front, section));
      if (a !== null && b !== null && a !== b)
        return {
          one: { name: `back, ${side} shoulder`, count: a, cm: null },
          other: { name: `front, ${side} shoulder`, count: b, cm: null },
        };
    }
    return null;
  }
  if (clause.seam === "side" && back && front) {
    // Without armholes the whole sides are sewn, but only where the words name side seams and the pieces lie upright.
    if (hasArmhole(back) !== hasArmhole(front)) return null;
    if (!hasArmhole(back) && clause.calledSeam !== true) return null;
    const a = rowsToArmhole(back);
    const b = rowsToArmhole(front);
    if (a === null || b === null) return null;
    return {
      one: { name: "back, rows of the side", count: a, cm: null },
      other: { name: "front, rows of the side", count: b, cm: null },
    };
  }
  if (clause.seam === "sleeve-to-armhole" && gauge && back) {
    const sleeve = pieceNamed(pieces, /\bsleeves?\b/i);
    const top = sleeve ? topOf(sleeve) : null;
    const depth = rowsOfArmhole(back);
    if (top === null || depth === null) return null;
    const cm = top * gauge.stitchCm;
    const [least, most] = depth.map((rows) => 2 * rows * gauge.rowCm) as [number, number];
    return {
      one: { name: "sleeve top", count: null, cm },
      other: { name: "armhole", count: null, cm: Math.min(Math.max(cm, least), most) },
    };
  }
  return null;
}

/** Stitches of a sleeve's top: its wider end, since a sleeve may be worked up or down. */
function topOf({ rows, foundation }: PieceState): number | null {
  const end = lastCount(rows);
  const begin = lastCount(rows.slice(0, 1));
  if (end === null || begin === null || foundation === null) return end;
  return Math.max(begin, end);
}

const hasArmhole = (piece: PieceState): boolean =>
  piece.rows.some((row) => /armhole|underarm/i.test(row.section));

/** Rows before the armhole section, or all where there is none; null where a measure made the number unknown. */
function rowsToArmhole(piece: PieceState): number | null {
  if (piece.rowsWorked === null || piece.everUnread) return null;
  const first = piece.rows.findIndex((row) => /armhole|underarm/i.test(row.section));
  return countRows(first === -1 ? piece.rows : piece.rows.slice(0, first));
}

/** Rows of the armhole's edge, with none and with all of the shoulder's rows, which a slope may leave; null where they cannot be told. */
function rowsOfArmhole(piece: PieceState): readonly [least: number, most: number] | null {
  const rows = piece.rows.filter((row) => /armhole/i.test(row.section));
  const shoulders = piece.rows.filter((row) => /\bright\b.*shoulder/i.test(row.section));
  if (piece.rowsWorked === null || rows.length === 0 || shoulders.length === 0) return null;
  const least = countRows(rows);
  const slope = countRows(shoulders);
  return least === null || slope === null ? null : [least, least + slope];
}
