import { type Finding, ordinal, type SizedNumbers, type Span } from "../base/index.ts";
import {
  cannotShapeEvenly,
  chainFromHook,
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
  stitchesLeftOver,
  takenOnTrust,
  turnDoubled,
  turningChainTwoWays,
  turnMissing,
  unknownPiece,
  workedOnNothing,
} from "./findings/index.ts";
import { sayKind, totalOf } from "./line-report.ts";
import type { LineOutcome } from "./maker.ts";
import { claimedAmount, editAmount, withEdit } from "./mend.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";
import { labelBefore, type Placed, sayRow, type WorkedSizes } from "./worked-sizes.ts";

/** The findings of one line: the same trouble of several sizes is one finding. */
export function reportTroubles(work: WorkedSizes, at: number): Finding[] {
  const { outcomes } = work;
  const grouped = new Map<string, { trouble: Trouble; sizes: number[]; troubles: Trouble[] }>();
  outcomes.forEach((lines, size) => {
    const seen = new Set<string>();
    const { troubles } = lines[at] as LineOutcome;
    const differs = troubles.some((trouble) => trouble.is === "count-differs");
    for (const trouble of troubles) {
      // A count that differs says it all; that stitches are left over is why.
      if (differs && trouble.is === "left-over") continue;
      const key = keyOfTrouble(trouble);
      if (seen.has(key)) continue;
      seen.add(key);
      const group = grouped.get(key) ?? { trouble, sizes: [], troubles: [] };
      group.sizes.push(size);
      group.troubles.push(trouble);
      grouped.set(key, group);
    }
  });
  return [...grouped.values()].flatMap((group) => say(work, at, group.troubles, group.sizes));
}

function keyOfTrouble(trouble: Trouble): string {
  if (trouble.is === "repeated-row") return `repeated:${trouble.inner.is}`;
  const more =
    trouble.is === "count-differs" ? (trouble.of ?? "") : trouble.is === "nothing-there" ? trouble.place : "";
  return `${trouble.is}:${trouble.span.from}:${trouble.span.to}:${more}`;
}

type Of<Kind extends Trouble["is"]> = Extract<Trouble, { is: Kind }>;

/** The finding that the same trouble in some sizes makes. */
function say(
  work: WorkedSizes,
  at: number,
  troubles: readonly Trouble[],
  sizes: readonly number[],
): Finding[] {
  const { tree, placed } = work;
  const here = placed[at] as Placed;
  const row = sayRow(here);
  const before = labelBefore(work, at);
  const first = troubles[0] as Trouble;
  const name = (i: number): string => tree.sizes[sizes[i] as number] ?? "";
  const sized = (value: (trouble: never) => number): SizedNumbers =>
    troubles.map((trouble, i) => ({ size: name(i), n: value(trouble as never) }));
  const cases = <T extends Trouble, Facts>(facts: (trouble: T) => Facts) =>
    troubles.map((trouble, i) => ({ size: name(i), ...facts(trouble as T) }));
  const where = {
    span: first.span,
    piece: here.piece || null,
    row: here.instruction.label?.words ?? null,
    sizes: tree.sizes.length === 1 ? [] : sizes,
  };
  const words = clip(tree.text, first.span);
  switch (first.is) {
    case "repeat-leaves":
      return [
        repeatLeavesStitches.at(where, {
          row,
          before,
          cases: cases((t: Of<"repeat-leaves">) => ({
            have: t.have,
            takes: t.takes,
            fixed: t.fixed,
          })),
        }),
      ];
    case "not-enough":
      return [
        notEnoughStitches.at(where, {
          row,
          before,
          words,
          cases: cases((t: Of<"not-enough">) => ({
            have: t.have,
            need: t.need,
          })),
        }),
      ];
    case "left-over":
      return [
        stitchesLeftOver.at(where, {
          row,
          before,
          cases: cases((t: Of<"left-over">) => ({
            left: Math.abs(t.left),
            have: t.have,
          })),
        }),
      ];
    case "nothing-there":
      return [nothingToWorkInto.at(where, { row, place: first.place, before, words })];
    case "chain-from-hook":
      return [chainFromHook.at(where, { row, nth: first.nth, chains: first.chains })];
    case "worked-on-nothing":
      return [workedOnNothing.at(where, { row })];
    case "turn-missing":
      return [turnMissing.at(where, { row, before, tag: here.instruction.label?.side ?? null })];
    case "turn-doubled":
      return [turnDoubled.at(where, { row, before })];
    case "join-missing":
      return [joinMissing.at(where, { row, before, how: "joined" })];
    case "evenly-unsaid":
      return [
        evenlyWithoutNumber.at(where, {
          row,
          offered: troubles.flatMap((t, i) =>
            (t as Of<"evenly-unsaid">).offer === null
              ? []
              : [{ size: name(i), n: (t as Of<"evenly-unsaid">).offer as number }],
          ),
        }),
      ];
    case "cannot-shape":
      return [
        cannotShapeEvenly.at(where, {
          row,
          cases: cases((t: Of<"cannot-shape">) => ({
            have: t.have,
            change: t.change,
          })),
        }),
      ];
    case "rejoin-nowhere":
      return [rejoinWithoutPlace.at(where, { row })];
    case "row-not-found":
      return [rowNotFound.at(where, { row, asked: first.asked })];
    case "piece-not-found":
      return [unknownPiece.at(where, { row, asked: first.asked })];
    case "number-skips":
      return [numberSkips.at(where, { row, expected: first.expected, found: first.found })];
    case "number-repeats":
      return [numberRepeats.at(where, { row, found: first.found })];
    case "ends-on-other-side":
      return [
        endsOnOtherSide.at(where, {
          row,
          asked: first.asked,
          rows: sized((t: Of<"ends-on-other-side">) => t.rows),
        }),
      ];
    case "more-rows":
      return [
        moreRowsThanThereAre.at(where, {
          row,
          cases: cases((t: Of<"more-rows">) => ({
            needs: t.needs,
            has: t.has,
          })),
        }),
      ];
    case "misses-count":
      return [
        missesItsCount.at(where, {
          row,
          cases: cases((t: Of<"misses-count">) => ({
            from: t.from,
            to: t.to,
            wanted: t.wanted,
          })),
        }),
      ];
    case "outside-measure":
      return [
        endsOutsideMeasure.at(where, {
          row,
          cases: cases((t: Of<"outside-measure">) => ({
            workedCm: t.workedCm,
            statedCm: t.statedCm,
          })),
        }),
      ];
    case "chain-two-ways":
      return [
        turningChainTwoWays.at(where, {
          row,
          chain: `ch ${first.chains}`,
          stitch: sayKind(first.stitch, tree.terms),
          here: first.here ? "counts" : "does not count",
          elsewhere: first.here ? "does not count" : "counts",
        }),
      ];
    case "count-differs": {
      const none = first.of !== null && troubles.every((t) => (t as Of<"count-differs">).worked === 0);
      const finding = countDiffers.at(where, {
        row,
        of: first.of === null ? null : sayKind(first.of, tree.terms),
        printed: sized((t: Of<"count-differs">) => t.printed),
        worked: sized((t: Of<"count-differs">) => t.worked),
        how: none
          ? `The row makes no ${sayKind(first.of ?? "", tree.terms)}`
          : howItComes(work, at, sizes[0] as number),
      });
      if (none) return [finding];
      const amount = claimedAmount(here.instruction, first.span.from, first.span.to);
      const wanted = new Map(sizes.map((size, i) => [size, (troubles[i] as Of<"count-differs">).worked]));
      return [withEdit(finding, 0, amount && editAmount(tree.text, amount, wanted, tree.sizes.length))];
    }
    case "repeated-row": {
      const inner = troubles.map((trouble) => (trouble as Of<"repeated-row">).inner);
      const said = say(work, at, inner, sizes)[0];
      return [
        repeatedRowDoesNotFit.at(where, {
          row,
          repeated: first.repeated,
          inner: said?.why ?? "",
          at: `the ${ordinal(first.time)} time`,
        }),
      ];
    }
  }
}

/** Lines whose count was taken from what is printed, since they could not be worked. */
export function reportTrust(work: WorkedSizes, at: number): Finding[] {
  const { tree, placed, outcomes } = work;
  const here = placed[at] as Placed;
  const sizes = outcomes.flatMap((lines, size) => ((lines[at] as LineOutcome).trust ? [size] : []));
  const first = outcomes[sizes[0] ?? 0]?.[at];
  // A line that is vouched for says so itself, and one that is at fault has its finding.
  if (
    sizes.length === 0 ||
    !first ||
    first.troubles.length > 0 ||
    here.instruction.answers.some((answer) => answer.is === "vouched")
  )
    return [];
  const row = sayRow(here);
  const where = {
    span: here.instruction.label?.span ?? here.instruction.span,
    piece: here.piece || null,
    row: here.instruction.label?.words ?? null,
    sizes: tree.sizes.length === 1 ? [] : sizes,
  };
  const count = sizes.map((size) => ({
    size: tree.sizes[size] ?? "",
    n: totalOf(outcomes[size]?.[at] as LineOutcome, work.chainsCount),
  }));
  return [takenOnTrust.at(where, { row, count, because: first.unknown ?? "the row could not be worked" })];
}

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
