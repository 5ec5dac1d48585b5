import {
  type Edit,
  type Finding,
  ordinal,
  type SizedNumbers,
  type Span,
  type Whereabouts,
} from "../base/index.ts";
import { editAmount, type PatternTree } from "../notation/index.ts";
import {
  cannotShapeEvenly,
  chainFromHook,
  changeDiffers,
  countDiffers,
  endsOnOtherSide,
  endsOutsideMeasure,
  evenlyWithoutNumber,
  joinMissing,
  missesItsCount,
  moreRowsThanThereAre,
  notEnoughStitches,
  nothingToWorkInto,
  numberRepeats,
  numberSkips,
  rejoinWithoutPlace,
  repeatedRowDoesNotFit,
  repeatLeavesStitches,
  rowNotFound,
  rowsToldDiffer,
  stitchesLeftOver,
  turnDoubled,
  turningChainTwoWays,
  turnMissing,
  unknownPiece,
  workedOnNothing,
} from "./findings/index.ts";
import { sayKind, totalOf } from "./line-report.ts";
import type { LineOutcome } from "./maker.ts";
import { claimedAmount, editRowAbove, editRowNumber, withEdit } from "./mend.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";
import { labelBefore, type Placed, sayRow, type WorkedSizes } from "./worked-sizes.ts";

type Kind = Trouble["is"];
type Of<K extends Kind> = Extract<Trouble, { is: K }>;

/** The same trouble in some sizes of one line, and what its finding needs to know of the line. */
interface Met<K extends Kind> {
  readonly work: WorkedSizes;
  readonly at: number;
  readonly sizes: readonly number[];
  /** In the order of `sizes`. */
  readonly troubles: readonly Of<K>[];
  readonly first: Of<K>;
  readonly where: Whereabouts;
  readonly row: string;
  readonly before: string;
  readonly tag: "RS" | "WS" | null;
  /** The words at the trouble's place. */
  readonly words: string;
  /** A number of each size. */
  sized(value: (trouble: Of<K>) => number): SizedNumbers;
  /** Some facts of each size. */
  cases<Facts>(facts: (trouble: Of<K>) => Facts): readonly (Facts & { readonly size: string })[];
}

/** How each trouble is worded as a finding. */
const WORDING: { readonly [K in Kind]: (met: Met<K>) => Finding } = {
  "repeat-leaves": ({ where, row, before, cases }) =>
    repeatLeavesStitches.at(where, {
      row,
      before,
      cases: cases(({ have, takes, fixed }) => ({ have, takes, fixed })),
    }),
  "not-enough": ({ where, row, before, words, cases }) =>
    notEnoughStitches.at(where, { row, before, words, cases: cases(({ have, need }) => ({ have, need })) }),
  "left-over": ({ where, row, before, cases }) =>
    stitchesLeftOver.at(where, {
      row,
      before,
      cases: cases(({ left, have }) => ({ left: Math.abs(left), have })),
    }),
  "nothing-there": ({ where, row, before, words, first }) =>
    nothingToWorkInto.at(where, { row, place: first.place, before, words }),
  "chain-from-hook": ({ where, row, first: { nth, chains } }) =>
    chainFromHook.at(where, { row, nth, chains }),
  "worked-on-nothing": ({ where, row }) => workedOnNothing.at(where, { row }),
  "turn-missing": ({ work, at, where, row, before, tag }) =>
    withEdit(turnMissing.at(where, { row, before, tag }), 0, editRowAbove(work.placed, at, ", turn")),
  "turn-doubled": ({ where, row, before }) => turnDoubled.at(where, { row, before }),
  "join-missing": ({ work, at, where, row, before }) =>
    withEdit(
      joinMissing.at(where, { row, before, how: "joined" }),
      0,
      editRowAbove(work.placed, at, "; join with sl st in first st"),
    ),
  "evenly-unsaid": ({ where, row, cases }) =>
    evenlyWithoutNumber.at(where, {
      row,
      offered: cases(({ offer }) => ({ offer })).flatMap(({ size, offer }) =>
        offer === null ? [] : [{ size, n: offer }],
      ),
    }),
  "cannot-shape": ({ where, row, cases }) =>
    cannotShapeEvenly.at(where, { row, cases: cases(({ have, change }) => ({ have, change })) }),
  "rejoin-nowhere": ({ where, row }) => rejoinWithoutPlace.at(where, { row }),
  "row-not-found": ({ where, row, first: { asked } }) => rowNotFound.at(where, { row, asked }),
  "piece-not-found": ({ where, row, first: { asked } }) => unknownPiece.at(where, { row, asked }),
  "number-skips": ({ work, at, where, row, first: { expected, found } }) =>
    withEdit(
      numberSkips.at(where, { row, expected, found }),
      0,
      editRowNumber(work.tree.text, (work.placed[at] as Placed).instruction, expected),
    ),
  "number-repeats": ({ where, row, first: { found } }) => numberRepeats.at(where, { row, found }),
  "ends-on-other-side": ({ where, row, first: { asked }, sized }) =>
    endsOnOtherSide.at(where, { row, asked, rows: sized(({ rows }) => rows) }),
  "more-rows": ({ where, row, cases }) =>
    moreRowsThanThereAre.at(where, { row, cases: cases(({ needs, has }) => ({ needs, has })) }),
  "misses-count": ({ where, row, cases }) =>
    missesItsCount.at(where, { row, cases: cases(({ from, to, wanted }) => ({ from, to, wanted })) }),
  "outside-measure": ({ where, row, cases }) =>
    endsOutsideMeasure.at(where, {
      row,
      cases: cases(({ workedCm, statedCm }) => ({ workedCm, statedCm })),
    }),
  "chain-two-ways": ({ work, where, row, first }) =>
    turningChainTwoWays.at(where, {
      row,
      chain: `ch ${first.chains}`,
      stitch: sayKind(first.stitch, work.tree.terms),
      here: first.here ? "counts" : "does not count",
      elsewhere: first.here ? "does not count" : "counts",
    }),
  "count-differs": sayCount,
  "change-differs": ({ work, at, where, row, first, sizes, troubles, sized }) => {
    const finding = changeDiffers.at(where, {
      row: first.row ?? row,
      change: first.change,
      printed: sized(({ printed }) => printed),
      worked: sized(({ worked }) => worked),
    });
    if (troubles.some(({ worked }) => worked <= 0)) return finding;
    const amount = claimedAmount(work.placed, at, first.span);
    return withEdit(
      finding,
      0,
      amount && editAmount(work.tree.text, amount, bySize(sizes, troubles), work.tree.sizes.length),
    );
  },
  "rows-told": ({ work, at, where, sizes, troubles, sized, first }) =>
    withEdit(
      rowsToldDiffer.at(where, { told: sized(({ told }) => told), worked: sized(({ worked }) => worked) }),
      0,
      editRowsDone(work.tree, work.placed[at] as Placed, first.span, bySize(sizes, troubles)),
    ),
  "repeated-row": ({ work, at, where, row, first, troubles, sizes }) =>
    repeatedRowDoesNotFit.at(where, {
      row,
      repeated: first.repeated,
      inner: sayTrouble(
        work,
        at,
        troubles.map(({ inner }) => inner),
        sizes,
      ).why,
      at: `the ${ordinal(first.time)} time`,
    }),
};

/**
 * The finding that the same trouble makes in some sizes of a line.
 *
 * @param troubles  at least one, all of one kind, in the order of `sizes`
 */
export function sayTrouble(
  work: WorkedSizes,
  at: number,
  troubles: readonly Trouble[],
  sizes: readonly number[],
): Finding {
  const [first] = troubles as [Trouble, ...Trouble[]];
  return wordingOf(first.is)(meet(work, at, troubles as never, sizes) as never);
}

const wordingOf = <K extends Kind>(kind: K): ((met: Met<K>) => Finding) => WORDING[kind];

function meet<K extends Kind>(
  work: WorkedSizes,
  at: number,
  troubles: readonly Of<K>[],
  sizes: readonly number[],
): Met<K> {
  const { tree, placed } = work;
  const here = placed[at] as Placed;
  const { label } = here.instruction;
  const first = troubles[0] as Of<K>;
  const name = (i: number): string => tree.sizes[sizes[i] as number] ?? "";
  return {
    work,
    at,
    sizes,
    troubles,
    first,
    where: {
      span: first.span,
      piece: here.piece || null,
      row: label?.words ?? null,
      sizes: tree.sizes.length === 1 ? [] : sizes,
    },
    row: sayRow(here),
    before: labelBefore(work, at),
    tag: label?.side ?? null,
    words: clip(tree.text, first.span),
    sized: (value) => troubles.map((trouble, i) => ({ size: name(i), n: value(trouble) })),
    cases: (facts) => troubles.map((trouble, i) => ({ size: name(i), ...facts(trouble) })),
  };
}

function sayCount({ work, at, where, row, first, sizes, troubles, sized }: Met<"count-differs">): Finding {
  const { tree, placed } = work;
  const none = first.of !== null && troubles.every(({ worked }) => worked === 0);
  const finding = countDiffers.at(where, {
    row,
    of: first.of === null ? null : sayKind(first.of, tree.terms),
    printed: sized(({ printed }) => printed),
    worked: sized(({ worked }) => worked),
    how: none
      ? `The row makes no ${sayKind(first.of ?? "", tree.terms)}`
      : howItComes(work, at, sizes[0] as number),
  });
  if (none) return finding;
  const amount = claimedAmount(placed, at, first.span);
  return withEdit(
    finding,
    0,
    amount && editAmount(tree.text, amount, bySize(sizes, troubles), tree.sizes.length),
  );
}

/** The edit of "the sleeve has 46 rnds". */
function editRowsDone(
  tree: PatternTree,
  { instruction }: Placed,
  { from }: Span,
  wanted: ReadonlyMap<number, number>,
): Edit | null {
  for (const clause of instruction.clauses)
    if (clause.kind === "aside" && clause.rowsDone?.span.from === from)
      return editAmount(tree.text, clause.rowsDone, wanted, tree.sizes.length);
  return null;
}

const bySize = (
  sizes: readonly number[],
  troubles: readonly { readonly worked: number }[],
): ReadonlyMap<number, number> => new Map(sizes.map((size, i) => [size, troubles[i]?.worked ?? 0]));

/** "Row 11 ends with 66 sts; this row adds 2." */
function howItComes(work: WorkedSizes, at: number, size: number): string | null {
  const { placed, outcomes, chainsCount } = work;
  const lines = outcomes[size] as readonly LineOutcome[];
  const here = lines[at] as LineOutcome;
  for (let before = at - 1; before >= 0; before--) {
    const line = lines[before] as LineOutcome;
    if (!line.worked || line.made === "nothing" || !line.edge) continue;
    if (isUnknown(line.edge) || !here.edge || isUnknown(here.edge)) return null;
    if (placed[before]?.pieceAt !== placed[at]?.pieceAt) return null;
    const from = totalOf(line, chainsCount);
    const change = totalOf(here, chainsCount) - from;
    const label =
      line.made === "foundation" ? "The foundation" : (placed[before]?.instruction.label?.words ?? null);
    if (label === null) return null;
    const says =
      change === 0
        ? "this row keeps the number"
        : change > 0
          ? `this row adds ${change}`
          : `this row takes away ${-change}`;
    return `${label} ends with ${from} ${line.made === "foundation" ? "ch" : from === 1 ? "st" : "sts"}; ${says}`;
  }
  return null;
}

/** The words at a place, short enough to be quoted. */
function clip(text: string, span: Span): string {
  const words = text.slice(span.from, span.to).replace(/\s+/g, " ").trim();
  return words.length > 60 ? `${words.slice(0, 57)}...` : words;
}
