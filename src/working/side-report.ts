import { type Finding, namesOf } from "../base/index.ts";
import type { Until } from "../notation/index.ts";
import { endsOnOtherSide, sideContradictsTurns } from "./findings/index.ts";
import type { LineOutcome } from "./maker.ts";
import { editSideTag, withEdit } from "./mend.ts";
import { type SideTold, type StrandSides, settleSides } from "./sides.ts";
import { labelBefore, type Placed, sayRow, type WorkedSizes } from "./worked-sizes.ts";

/** The sides of every strand, by size, piece and strand. */
export type SideTable = ReadonlyMap<string, StrandSides>;

/** Which strand a line of one size belongs to. */
export const strandKey = (size: number, outcome: LineOutcome): string =>
  `${size}:${outcome.piece}:${outcome.strand}`;

/** Settles the sides of every strand by the words about them. */
export function settleAllSides(work: WorkedSizes): SideTable {
  const { placed, outcomes } = work;
  const told = new Map<string, SideTold[]>();
  outcomes.forEach((lines, size) => {
    lines.forEach((outcome, at) => {
      if (!outcome.worked || outcome.made === "nothing" || outcome.made === "foundation") return;
      const key = strandKey(size, outcome);
      const side = placed[at]?.instruction.label?.side;
      const list = told.get(key) ?? [];
      told.set(key, list);
      // Where the yarn is joined the work lies as it is said to lie; nothing has been turned since.
      if (outcome.facing && outcome.flipsFirst === 0)
        list.push({ line: at, flips: 0, side: outcome.facing, facing: true });
      // Rows up to a measure end a strand, since nobody knows their number; the side they end with begins the next.
      const until = untilOf(placed[at] as Placed);
      if (until?.measure && until.endingSide)
        list.push({ line: at, flips: outcome.flips, side: until.endingSide, facing: true });
      else if (side) list.push({ line: at, flips: outcome.flipsFirst, side });
    });
  });
  return new Map([...told].map(([key, list]) => [key, settleSides(list)]));
}

/** Findings about a side tag that the turns contradict. */
export function sideFindings(work: WorkedSizes, sides: SideTable, at: number): Finding[] {
  const { tree, placed, outcomes } = work;
  const { instruction, piece } = placed[at] as Placed;
  const words = outcomes.map((lines, size) =>
    sides.get(strandKey(size, lines[at] as LineOutcome))?.contradicted.find((word) => word.line === at),
  );
  const wrong = words.flatMap((word, size) => (word ? [size] : []));
  const side = words.find((word) => word)?.side;
  if (!side) return [];
  const row = sayRow(placed[at] as Placed);
  const finding = sideContradictsTurns.at(
    { span: instruction.label?.span ?? instruction.span, piece, row, sizes: wrong },
    {
      row,
      written: side,
      worked: side === "RS" ? "WS" : "RS",
      before: labelBefore(work, at),
      sizes: namesOf(tree.sizes, wrong),
    },
  );
  return [
    withEdit(
      finding,
      0,
      wrong.length === tree.sizes.length && words.every((word) => !word?.facing)
        ? editSideTag(tree.text, instruction)
        : null,
    ),
  ];
}

/** The words that say with which side rows end. */
function untilOf({ instruction }: Placed): Until | undefined {
  return instruction.clauses
    .map((clause) => ("until" in clause ? (clause.until as Until | undefined) : undefined))
    .find((each) => each?.endingSide);
}

/** "Ending with a WS row", held against the side of the last row. */
export function endingFindings(work: WorkedSizes, sides: SideTable, at: number): Finding[] {
  const { tree, placed, outcomes } = work;
  const { instruction, piece } = placed[at] as Placed;
  const until = untilOf(placed[at] as Placed);
  const asked = until?.endingSide;
  if (!until || !asked || until.measure) return [];
  const wrong = outcomes.flatMap((lines, size) => {
    const outcome = lines[at] as LineOutcome;
    if (!outcome.worked || outcome.rows === 0 || outcome.last === null) return [];
    const side = sides.get(strandKey(size, outcome))?.sideAt(outcome.flips) ?? null;
    return side !== null && side !== asked
      ? [{ size: tree.sizes[size] ?? "", n: outcome.rows, index: size }]
      : [];
  });
  if (wrong.length === 0) return [];
  const row = sayRow(placed[at] as Placed);
  const indices = tree.sizes.length === 1 ? [] : wrong.map(({ index }) => index);
  return [
    endsOnOtherSide.at(
      { span: until.span, piece: piece || null, row: instruction.label?.words ?? null, sizes: indices },
      { row, asked, rows: wrong.map(({ size, n }) => ({ size, n })) },
    ),
  ];
}
