import type { Claim, ClaimPart, ConventionNote } from "../notation/index.ts";
import { coversPlace } from "../stitches/index.ts";
import type { Edge } from "./edge.ts";
import type { Place } from "./place.ts";
import { isShell } from "./seeking.ts";
import { isUnknown } from "./targets.ts";

/** Stitches of an edge as patterns count them, and how many chains stand between. */
export interface StitchCount {
  readonly stitches: number;
  readonly chains: number;
  readonly slipStitches: number;
  /** Turning chains that count as stitches, and whether one stands that does not. */
  readonly turning: number;
  readonly uncountedTurning: number;
}

const counts = new WeakMap<Edge, StitchCount>();

export function countStitches(edge: Edge): StitchCount {
  let count = counts.get(edge);
  if (!count) {
    count = countAnew(edge);
    counts.set(edge, count);
  }
  return count;
}

function countAnew(edge: Edge): StitchCount {
  return {
    stitches: edge.sum((place) =>
      place.role === "foundation" ? place.chains : place.counted && place.role !== "ring" ? 1 : 0,
    ),
    chains: edge.sum((place) => (place.role === "chain" ? place.chains : 0)),
    slipStitches: edge.sum((place) => (place.code === "sl st" ? 1 : 0)),
    turning: edge.sum((place) => (place.role === "turning" && place.counted ? 1 : 0)),
    uncountedTurning: edge.sum((place) => (place.role === "turning" && !place.counted ? 1 : 0)),
  };
}

/** Key of a kind of place as a count names it: "dc", "ch-2 sp", "shell". */
export function kindOf(place: Place): string | null {
  if (place.role === "chain") return `ch-${place.chains} sp`;
  if (place.role === "foundation") return "ch";
  if (place.role === "unknown" || place.role === "ring" || place.role === "join") return null;
  if (!place.counted && place.code !== "sl st") return null;
  return place.code;
}

/** How many of each kind an edge has, keyed by `kindOf` and by the names of special stitches. */
export function countKinds(edge: Edge): ReadonlyMap<string, number> {
  let counted = kinds.get(edge);
  if (!counted) {
    counted = countKindsAnew(edge);
    kinds.set(edge, counted);
  }
  return counted;
}

const kinds = new WeakMap<Edge, ReadonlyMap<string, number>>();

function countKindsAnew(edge: Edge): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const add = (key: string, count: number): void => {
    counts.set(key, (counts.get(key) ?? 0) + count);
  };
  for (const run of edge.runs)
    for (const place of run.unit) {
      const kind = kindOf(place);
      if (kind !== null) add(kind, run.times * (place.role === "foundation" ? place.chains : 1));
      if (place.group && place.groupAt === 0 && !place.group.startsWith("@") && place.group !== place.code)
        add(place.group, run.times);
    }
  // Slip stitches that only move the hook along are not counted beside stitches.
  if (countStitches(edge).stitches > 0) counts.delete("sl st");
  return counts;
}

/** Whether an edge has places whose kind is not known. */
const hasUnknown = (edge: Edge): boolean => edge.some((place) => place.role === "unknown");

/** The count of one part of a claim on an edge; null where it cannot be told. */
export function countPart(edge: Edge, part: ClaimPart): number | null {
  if (isUnknown(edge)) return null;
  if (part.kind === "any") return countStitches(edge).stitches;
  if (hasUnknown(edge)) return null;
  if (part.kind === "ch-sp") {
    return edge.sum((place) =>
      place.role === "chain" && (part.chains === undefined || place.chains === part.chains) ? 1 : 0,
    );
  }
  if (part.kind === "ch")
    return edge.sum((place) => (place.role === "chain" || place.role === "foundation" ? place.chains : 0));
  if (part.kind === "unit") return null;
  const groups = edge.sum((place) => (place.group === part.kind && place.groupAt === 0 ? 1 : 0));
  if (groups > 0) return groups;
  if (isShell(part.kind))
    return edge.sum((place) => (place.group === "" && place.groupAt === 0 && place.groupSize >= 3 ? 1 : 0));
  const named = edge.sum((place) =>
    place.counted && coversPlace(part.kind, place.code)
      ? 1
      : !place.counted && place.code === part.kind
        ? 1
        : 0,
  );
  return named === 0 && part.kind === "picot" ? closedChains(edge) : named;
}

/** Chains closed by a slip stitch, as "ch 2, sl st in same place" makes a picot without its name. */
function closedChains(edge: Edge): number {
  let closed = 0;
  let before: Place | undefined;
  const closes = (chain: Place | undefined, place: Place | undefined): number =>
    chain?.role === "chain" && place?.code === "sl st" ? 1 : 0;
  for (const { unit, times } of edge.runs) {
    closed += closes(before, unit[0]);
    for (let at = 1; at < unit.length; at++) closed += times * closes(unit[at - 1], unit[at]);
    before = unit[unit.length - 1];
    closed += (times - 1) * closes(before, unit[0]);
  }
  return closed;
}

/** Which chains inside rows a pattern counts as stitches: none, all, or those of one length ("each ch-1 sp is one st"). */
export type ChainsCounted = "none" | "all" | number;

/** What the notes say of chains in counts; null where they say nothing. */
export function chainsByNotes(notes: readonly ConventionNote[]): ChainsCounted | null {
  for (const { says } of notes)
    if (says.about === "chains") return says.counted ? (says.chains ?? "all") : "none";
  return null;
}

/** Chains of an edge that count as stitches. */
export function chainsCounted(edge: Edge, chains: ChainsCounted): number {
  if (chains === "none") return 0;
  return edge.sum((place) =>
    place.role === "chain" && (chains === "all" || place.chains === chains) ? place.chains : 0,
  );
}

/** The number that a printed total means on an edge: stitches that count, with the chains and turning chains its words add or leave out. */
export function totalOfClaim(edge: Edge, claim: Claim, chains: ChainsCounted): number {
  const count = countStitches(edge);
  let total = count.stitches;
  if (claim.includesChain && count.turning === 0) total += count.uncountedTurning;
  if (claim.excludes === "turning-chain") total -= count.turning;
  if (count.stitches === 0 && count.slipStitches > 0) total = count.slipStitches;
  return total + chainsCounted(edge, chains);
}
