import type { PatternTree } from "../notation/index.ts";
import { abbreviationIn, hasStitch } from "../stitches/index.ts";
import { type ChainsCounted, chainsCounted, countKinds, countStitches } from "./counting.ts";
import type { LineOutcome } from "./maker.ts";
import { hasRemark } from "./remarks.ts";
import { type SideTable, strandKey } from "./side-report.ts";
import { isUnknown } from "./targets.ts";
import type { WorkedLine, WorkedSample } from "./worked.ts";
import type { Placed, WorkedSizes } from "./worked-sizes.ts";

/** One written line with its counts in every size. */
export function reportLine(work: WorkedSizes, sides: SideTable, at: number): WorkedLine {
  const { tree, placed, outcomes, chainsCount } = work;
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
  const stitches = perSize.map((outcome) =>
    known(outcome) && outcome.edge ? totalOf(outcome, chainsCount) : null,
  );
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
  const sample = makes ? sampleOf(work, at) : undefined;
  return {
    ...(sample ? { sample } : {}),
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
        ? (sides.get(strandKey(size, outcome))?.sideAt(outcome.flips) ?? null)
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

/** The sample that a line is worked on, and how its count grows with each repeat. */
function sampleOf({ outcomes, wider, chainsCount }: WorkedSizes, at: number): WorkedSample | undefined {
  const sample = outcomes.map((lines) => lines[at]?.sample).find((found) => found);
  if (!sample) return undefined;
  const perRepeat = outcomes.map((lines, size) => {
    const narrow = lines[at];
    const wide = wider?.[size]?.[at];
    const more = (wide?.sample?.repeats ?? 0) - (narrow?.sample?.repeats ?? 0);
    if (!narrow?.edge || !wide?.edge || isUnknown(narrow.edge) || isUnknown(wide.edge) || more <= 0)
      return null;
    return (totalOf(wide, chainsCount) - totalOf(narrow, chainsCount)) / more;
  });
  return { wide: sample.wide, repeats: sample.repeats, perRepeat };
}

/** Stitches as the pattern counts them: with the chains inside the row where it does so. */
export function totalOf(outcome: LineOutcome, chains: ChainsCounted): number {
  if (!outcome.edge) return 0;
  const count = countStitches(outcome.edge);
  const stitches = count.stitches === 0 ? count.slipStitches : count.stitches;
  return stitches + chainsCounted(outcome.edge, chains);
}

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
export function sayKind(code: string, terms: "US" | "UK"): string {
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
