import { type Finding, namesOf, ordinal, type SizedNumbers, type Span } from "../base/index.ts";
import type { Clause, PatternTree } from "../notation/index.ts";
import { abbreviationIn, hasStitch } from "../stitches/index.ts";
import type { Choices } from "./choices.ts";
import { countKinds, countStitches } from "./counting.ts";
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
  sideContradictsTurns,
  stitchesLeftOver,
  turnDoubled,
  turningChainTwoWays,
  turnMissing,
  unknownPiece,
  workedOnNothing,
} from "./findings/index.ts";
import type { LineOutcome } from "./maker.ts";
import { type SideTold, type StrandSides, settleSides } from "./sides.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";
import type { Placed } from "./work-pattern.ts";
import type { WorkedLine, WorkedPattern } from "./worked.ts";

/** Puts the sizes side by side: one line an instruction, one finding for the same trouble of several sizes. */
export function reportWork(
  tree: PatternTree,
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  choices: Choices,
): WorkedPattern {
  const sides = settleAllSides(placed, outcomes);
  const findings: Finding[] = [];
  const lines = placed.map((_, at) => lineOf(tree, placed, outcomes, sides, at));
  placed.forEach((_, at) => {
    findings.push(...findingsOf(tree, placed, outcomes, at));
    findings.push(...sideFindings(tree, placed, outcomes, sides, at));
  });
  const pieces: { name: string; lines: WorkedLine[] }[] = [];
  placed.forEach((place, at) => {
    const before = placed[at - 1];
    const line = lines[at] as WorkedLine;
    if (before && before.pieceAt === place.pieceAt) pieces[pieces.length - 1]?.lines.push(line);
    else pieces.push({ name: place.piece, lines: [line] });
  });
  return { sizes: tree.sizes, pieces, findings, conventions: sayConventions(choices, tree.terms) };
}

/* ------------------------------------------------------------------ lines */

function lineOf(
  tree: PatternTree,
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  sides: SideTable,
  at: number,
): WorkedLine {
  const { instruction } = placed[at] as Placed;
  const perSize = outcomes.map((lines) => lines[at] as LineOutcome);
  const known = (outcome: LineOutcome): boolean =>
    outcome.edge !== null && !isUnknown(outcome.edge) && outcome.made !== "nothing";
  const makes = perSize.some((outcome) => outcome.made !== "nothing");
  const kinds: Record<string, (number | null)[]> = {};
  perSize.forEach((outcome, size) => {
    if (!known(outcome) || !outcome.edge) return;
    for (const [code, count] of countKinds(outcome.edge)) {
      const name = sayKind(code, tree.terms);
      kinds[name] ??= perSize.map((other) => (known(other) ? 0 : null));
      (kinds[name] as (number | null)[])[size] = ((kinds[name] as (number | null)[])[size] ?? 0) + count;
    }
  });
  const stitches = perSize.map((outcome) => (known(outcome) && outcome.edge ? totalOf(outcome) : null));
  const remark = hasRemark(instruction.clauses);
  const missing = perSize.some(
    (outcome) =>
      outcome.worked &&
      makes &&
      outcome.made !== "nothing" &&
      (outcome.edge === null || isUnknown(outcome.edge)),
  );
  const { printed, printedKinds } = printedOf(tree, placed[at] as Placed);
  const trust = perSize.some((outcome) => outcome.trust);
  const troubled = perSize.some((outcome) => outcome.troubles.length > 0);
  return {
    label:
      instruction.label?.words ??
      (perSize.some((outcome) => outcome.made === "foundation") ? "Foundation" : ""),
    kind: kindOf(perSize, instruction.label?.is ?? null),
    span: instruction.span,
    first: perSize.map((outcome) => outcome.first),
    last: perSize.map((outcome) => outcome.last),
    read: !remark && !missing,
    side: perSize.map((outcome, size) =>
      outcome.worked && outcome.rows > 0
        ? (sides.get(keyOf(size, at, placed, outcome))?.sideAt(outcome.flips) ?? null)
        : null,
    ),
    stitches,
    kinds,
    printed,
    printedKinds,
    proved:
      makes &&
      !trust &&
      !troubled &&
      !remark &&
      !missing &&
      perSize.every((outcome) => outcome.unknown === null),
    trust,
  };
}

const totalOf = (outcome: LineOutcome): number => (outcome.edge ? countStitches(outcome.edge).stitches : 0);

function kindOf(perSize: readonly LineOutcome[], label: string | null): WorkedLine["kind"] {
  for (const outcome of perSize) {
    if (outcome.made === "foundation") return "foundation";
    if (outcome.made === "round") return "round";
    if (outcome.made === "row") return "row";
    if (outcome.made === "edge") return "edge";
  }
  return label === "round" ? "round" : label === "row" ? "row" : "other";
}

/** A kind in the pattern's own words. */
function sayKind(code: string, terms: "US" | "UK"): string {
  return hasStitch(code) ? abbreviationIn(code, terms) : code;
}

function printedOf(tree: PatternTree, { instruction }: Placed): Pick<WorkedLine, "printed" | "printedKinds"> {
  const sizes = tree.sizes.length;
  const spread = (values: readonly (number | null)[]): (number | null)[] =>
    Array.from({ length: sizes }, (_, size) =>
      values.length === 1 ? (values[0] ?? null) : (values[size] ?? null),
    );
  let printed: (number | null)[] | null = null;
  let printedKinds: Record<string, (number | null)[]> | null = null;
  for (const claim of instruction.claims) {
    if (claim.change || claim.ofRow || claim.eachSide) continue;
    for (const part of claim.parts) {
      if (part.kind === "any") printed = spread(part.amount.values);
      else {
        printedKinds ??= {};
        const name =
          part.kind === "ch-sp"
            ? `ch-${part.chains ?? ""} sp`.replace("ch- sp", "ch sp")
            : sayKind(part.kind, tree.terms);
        printedKinds[name] = spread(part.amount.values);
      }
    }
  }
  return { printed, printedKinds };
}

export function hasRemark(clauses: readonly Clause[]): boolean {
  return clauses.some((clause) => {
    if (clause.kind === "remark") return true;
    if (clause.kind === "group" || clause.kind === "repeat" || clause.kind === "size-only")
      return hasRemark(clause.body);
    if (clause.kind === "choice") return hasRemark(clause.options[0] ?? []);
    return false;
  });
}

/* ------------------------------------------------------------------ sides */

type SideTable = ReadonlyMap<string, StrandSides>;

const keyOf = (size: number, at: number, placed: readonly Placed[], outcome: LineOutcome): string =>
  `${size}:${pieceStart(placed, at)}:${outcome.strand}`;

/** Sections of a piece share its turns; what tells pieces apart is the strand, which begins anew with the piece. */
function pieceStart(placed: readonly Placed[], at: number): number {
  return placed[at]?.strandAt ?? 0;
}

function settleAllSides(placed: readonly Placed[], outcomes: readonly (readonly LineOutcome[])[]): SideTable {
  const told = new Map<string, SideTold[]>();
  outcomes.forEach((lines, size) => {
    lines.forEach((outcome, at) => {
      if (!outcome.worked || outcome.made === "nothing" || outcome.made === "foundation") return;
      const key = keyOf(size, at, placed, outcome);
      const side = placed[at]?.instruction.label?.side;
      if (side) {
        const list = told.get(key) ?? [];
        list.push({ line: at, flips: outcome.flipsFirst, side });
        told.set(key, list);
      }
    });
  });
  return new Map([...told].map(([key, list]) => [key, settleSides(list)]));
}

function sideFindings(
  tree: PatternTree,
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  sides: SideTable,
  at: number,
): Finding[] {
  const { instruction, piece } = placed[at] as Placed;
  const side = instruction.label?.side;
  if (!side) return [];
  const wrong = outcomes.flatMap((lines, size) => {
    const outcome = lines[at] as LineOutcome;
    return sides.get(keyOf(size, at, placed, outcome))?.contradicted.some((word) => word.line === at)
      ? [size]
      : [];
  });
  if (wrong.length === 0) return [];
  const row = sayRow(placed[at] as Placed);
  return [
    sideContradictsTurns.at(
      { span: instruction.label?.span ?? instruction.span, piece, row, sizes: wrong },
      {
        row,
        written: side,
        worked: side === "RS" ? "WS" : "RS",
        before: labelBefore(placed, outcomes, at),
        sizes: namesOf(tree.sizes, wrong),
      },
    ),
  ];
}

/* --------------------------------------------------------------- findings */

/** A row as findings call it. */
export function sayRow({ instruction }: Placed): string {
  return instruction.label?.words ?? "This line";
}

function labelBefore(
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  at: number,
): string {
  for (let before = at - 1; before >= 0; before--) {
    const outcome = outcomes
      .map((lines) => lines[before])
      .find((line) => line?.worked && line.made !== "nothing");
    if (!outcome) continue;
    return outcome.made === "foundation"
      ? "the foundation"
      : (placed[before]?.instruction.label?.words ?? "the row before");
  }
  return "the row before";
}

function findingsOf(
  tree: PatternTree,
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  at: number,
): Finding[] {
  const grouped = new Map<string, { trouble: Trouble; sizes: number[]; troubles: Trouble[] }>();
  outcomes.forEach((lines, size) => {
    const seen = new Set<string>();
    for (const trouble of (lines[at] as LineOutcome).troubles) {
      const key = keyOfTrouble(trouble);
      if (seen.has(key)) continue;
      seen.add(key);
      const group = grouped.get(key) ?? { trouble, sizes: [], troubles: [] };
      group.sizes.push(size);
      group.troubles.push(trouble);
      grouped.set(key, group);
    }
  });
  return [...grouped.values()].flatMap((group) =>
    say(tree, placed, outcomes, at, group.troubles, group.sizes),
  );
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
  tree: PatternTree,
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  at: number,
  troubles: readonly Trouble[],
  sizes: readonly number[],
): Finding[] {
  const here = placed[at] as Placed;
  const row = sayRow(here);
  const before = labelBefore(placed, outcomes, at);
  const first = troubles[0] as Trouble;
  const name = (i: number): string => tree.sizes[sizes[i] as number] ?? "";
  const sized = (value: (trouble: never) => number): SizedNumbers =>
    troubles.map((trouble, i) => ({ size: name(i), n: value(trouble as never) }));
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
          cases: troubles.map((t, i) => ({
            size: name(i),
            have: (t as Of<"repeat-leaves">).have,
            takes: (t as Of<"repeat-leaves">).takes,
            fixed: (t as Of<"repeat-leaves">).fixed,
          })),
        }),
      ];
    case "not-enough":
      return [
        notEnoughStitches.at(where, {
          row,
          before,
          words,
          cases: troubles.map((t, i) => ({
            size: name(i),
            have: (t as Of<"not-enough">).have,
            need: (t as Of<"not-enough">).need,
          })),
        }),
      ];
    case "left-over":
      return [
        stitchesLeftOver.at(where, {
          row,
          before,
          cases: troubles.map((t, i) => ({
            size: name(i),
            left: Math.abs((t as Of<"left-over">).left),
            have: (t as Of<"left-over">).have,
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
          cases: troubles.map((t, i) => ({
            size: name(i),
            have: (t as Of<"cannot-shape">).have,
            change: (t as Of<"cannot-shape">).change,
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
          cases: troubles.map((t, i) => ({
            size: name(i),
            needs: (t as Of<"more-rows">).needs,
            has: (t as Of<"more-rows">).has,
          })),
        }),
      ];
    case "misses-count":
      return [
        missesItsCount.at(where, {
          row,
          cases: troubles.map((t, i) => ({
            size: name(i),
            from: (t as Of<"misses-count">).from,
            to: (t as Of<"misses-count">).to,
            wanted: (t as Of<"misses-count">).wanted,
          })),
        }),
      ];
    case "outside-measure":
      return [
        endsOutsideMeasure.at(where, {
          row,
          cases: troubles.map((t, i) => ({
            size: name(i),
            workedCm: (t as Of<"outside-measure">).workedCm,
            statedCm: (t as Of<"outside-measure">).statedCm,
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
    case "count-differs":
      return [
        countDiffers.at(where, {
          row,
          of: first.of === null ? null : sayKind(first.of, tree.terms),
          printed: sized((t: Of<"count-differs">) => t.printed),
          worked: sized((t: Of<"count-differs">) => t.worked),
          how: howItComes(placed, outcomes, at, sizes[0] as number),
        }),
      ];
    case "repeated-row": {
      const inner = troubles.map((trouble) => (trouble as Of<"repeated-row">).inner);
      const said = say(tree, placed, outcomes, at, inner, sizes)[0];
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

/** "Row 11 ends with 66 sts; this row adds 2." */
function howItComes(
  placed: readonly Placed[],
  outcomes: readonly (readonly LineOutcome[])[],
  at: number,
  size: number,
): string | null {
  const lines = outcomes[size] as readonly LineOutcome[];
  const here = lines[at] as LineOutcome;
  for (let before = at - 1; before >= 0; before--) {
    const line = lines[before] as LineOutcome;
    if (!line.worked || line.made === "nothing" || !line.edge) continue;
    if (isUnknown(line.edge) || !here.edge || isUnknown(here.edge)) return null;
    if (placed[before]?.pieceAt !== placed[at]?.pieceAt) return null;
    const from = totalOf(line);
    const change = totalOf(here) - from;
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

/* ------------------------------------------------------------ conventions */

/** The choices of reading in sentences. */
function sayConventions(choices: Choices, terms: "US" | "UK"): string[] {
  const said: string[] = [];
  for (const form of choices.met.values()) {
    const taken = choices.taken.get(form.key) ?? 0;
    const chain = /^turning-chain:(\d+):(.+)$/.exec(form.key);
    if (chain) {
      const stitch = sayKind(chain[2] as string, terms);
      said.push(
        `Where the text does not say, ch ${chain[1]} at the start of a row of ${stitch} is read in its ${ordinal(taken + 1)} likeliest way.`,
      );
    }
  }
  return said;
}
