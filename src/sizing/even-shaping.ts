import { deal, spread } from "./distribute.ts";
import type { Count } from "./units.ts";
import { mustBeWhole } from "./units.ts";

/** Part of a shaping row. */
export type ShapingStep =
  /** This many stitches worked as they come. */
  | { readonly kind: "plain"; readonly stitches: Count }
  /** This many stitches worked into one. */
  | { readonly kind: "increase"; readonly stitches: Count }
  /** This many stitches worked together as one. */
  | { readonly kind: "decrease"; readonly stitches: Count };

/** Steps that are worked over and over: "(sc 6, sc2tog) 9 times". */
export interface StepGroup {
  readonly times: Count;
  readonly steps: readonly ShapingStep[];
}

/** A row of increases or decreases, or why it cannot be worked in one row. */
export type EvenShaping =
  | { readonly kind: "even"; readonly steps: readonly ShapingStep[]; readonly result: Count }
  | {
      readonly kind: "refused";
      /** The most that one row can take away, three together throughout. */
      readonly most: Count;
      /** Decreases for each of the fewest rows that get there, as equal as can be; empty when nothing would be left. */
      readonly rows: readonly Count[];
    };

/** Whether the row has ends, or goes round. */
export type Way = "flat" | "round";

/**
 * Increases spread evenly over a row. Where there are more increases than stitches, some stitches take one more than others
 * (trade handbook, 3.4).
 *
 * @param stitches   before the row, at least 1
 * @param increases  from 0
 */
export function increaseEvenly(
  stitches: Count,
  increases: Count,
): Extract<EvenShaping, { readonly kind: "even" }> {
  mustBeWhole(stitches, "stitches", 1);
  mustBeWhole(increases, "increases");
  const result = stitches + increases;
  const into = Array.from({ length: stitches }, () => Math.floor(result / stitches));
  for (const at of spread(stitches, result % stitches)) into[at]! += 1;
  return { kind: "even", steps: joinPlain(into.map((n) => (n === 1 ? PLAIN : increaseOf(n)))), result };
}

/**
 * Decreases spread evenly over a row: two together with plain stitches between while that is enough, then two and three
 * together, then refused (trade handbook, 3.5).
 *
 * @param stitches   before the row, at least 1
 * @param decreases  how many stitches fewer there are to be
 */
export function decreaseEvenly(stitches: Count, decreases: Count, way: Way = "flat"): EvenShaping {
  mustBeWhole(stitches, "stitches", 1);
  mustBeWhole(decreases, "decreases");
  const result = stitches - decreases;
  const most = stitches - Math.ceil(stitches / 3);
  if (decreases > most) return { kind: "refused", most, rows: rowsToDecrease(stitches, decreases) };
  if (stitches <= 2 * result) {
    const gaps = deal(stitches - 2 * decreases, way === "flat" ? decreases + 1 : Math.max(1, decreases));
    const steps = gaps.flatMap((plain, i): ShapingStep[] => [
      { kind: "plain", stitches: plain },
      ...(i < decreases ? [decreaseOf(2)] : []),
    ]);
    return { kind: "even", steps: joinPlain(steps), result };
  }
  const takes = Array.from({ length: result }, () => 2);
  for (const at of spread(result, stitches - 2 * result)) takes[at]! += 1;
  return { kind: "even", steps: takes.map(decreaseOf), result };
}

/** Stitches the steps use up, and stitches they make. */
export function tally(steps: readonly ShapingStep[]): { readonly takes: Count; readonly makes: Count } {
  let takes = 0;
  let makes = 0;
  for (const { kind, stitches } of steps) {
    takes += kind === "increase" ? 1 : stitches;
    makes += kind === "decrease" ? 1 : stitches;
  }
  return { takes, makes };
}

/** The places, from 1, of the stitches that are increased in or that a decrease begins with. */
export function shapingPlaces(steps: readonly ShapingStep[]): readonly Count[] {
  const places: Count[] = [];
  let at = 1;
  for (const step of steps) {
    if (step.kind !== "plain") places.push(at);
    at += tally([step]).takes;
  }
  return places;
}

/** Says neighbouring alike pairs once: plain and shaping step with how often they are worked; what is left stands alone. */
export function groupSteps(steps: readonly ShapingStep[]): readonly StepGroup[] {
  const units: ShapingStep[][] = [];
  for (const step of steps) {
    const last = units.at(-1);
    if (last?.length === 1 && last[0]!.kind === "plain") last.push(step);
    else units.push([step]);
  }
  const groups: { times: Count; steps: ShapingStep[] }[] = [];
  for (const unit of units) {
    const last = groups.at(-1);
    if (last !== undefined && alike(last.steps, unit)) last.times += 1;
    else groups.push({ times: 1, steps: unit });
  }
  return groups;
}

const PLAIN: ShapingStep = { kind: "plain", stitches: 1 };
const increaseOf = (stitches: Count): ShapingStep => ({ kind: "increase", stitches });
const decreaseOf = (stitches: Count): ShapingStep => ({ kind: "decrease", stitches });

function joinPlain(steps: readonly ShapingStep[]): readonly ShapingStep[] {
  const joined: ShapingStep[] = [];
  for (const step of steps) {
    const last = joined.at(-1);
    if (step.kind !== "plain") joined.push(step);
    else if (last?.kind === "plain")
      joined[joined.length - 1] = { kind: "plain", stitches: last.stitches + step.stitches };
    else if (step.stitches > 0) joined.push(step);
  }
  return joined;
}

function alike(a: readonly ShapingStep[], b: readonly ShapingStep[]): boolean {
  return (
    a.length === b.length &&
    a.every((step, i) => step.kind === b[i]!.kind && step.stitches === b[i]!.stitches)
  );
}

function rowsToDecrease(stitches: Count, decreases: Count): readonly Count[] {
  if (decreases >= stitches) return [];
  for (let rows = 2; ; rows++) {
    const dealt = sharesOfRows(stitches, decreases, rows);
    if (dealt !== null) return dealt;
  }
}

/** Equal shares, but for rows that cannot take theirs: what they leave comes earlier, where there are more stitches. */
function sharesOfRows(stitches: Count, decreases: Count, rows: Count): readonly Count[] | null {
  const shares: Count[] = [];
  let have = stitches;
  let left = decreases;
  for (let row = 0; row < rows; row++) {
    const most = have - Math.ceil(have / 3);
    let share = Math.ceil(left / (rows - row));
    while (share < most && left - share > mostOver(have - share, rows - row - 1)) share += 1;
    if (share > most || left - share > mostOver(have - share, rows - row - 1)) return null;
    shares.push(share);
    have -= share;
    left -= share;
  }
  return shares;
}

function mostOver(stitches: Count, rows: Count): Count {
  let have = stitches;
  for (let row = 0; row < rows; row++) have = Math.ceil(have / 3);
  return stitches - have;
}
