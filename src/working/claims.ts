import { valueAt } from "../base/index.ts";
import type { Claim, ClaimPart, ConventionNote } from "../notation/index.ts";
import { coversPlace, hasStitch } from "../stitches/index.ts";
import type { Choices } from "./choices.ts";
import { type ChainsCounted, chainsByNotes, countPart, countStitches, totalOfClaim } from "./counting.ts";
import type { Edge } from "./edge.ts";
import { isUnknown } from "./targets.ts";
import type { Trouble } from "./trouble.ts";

/** What printed counts are held against beside the edge. */
export interface ClaimContext {
  readonly size: number;
  readonly choices: Choices;
  readonly notes: readonly ConventionNote[];
}

/** Compares what is printed for a row with what was worked. */
export function checkClaims(
  context: ClaimContext,
  edge: Edge,
  claims: readonly Claim[],
  below: Edge | null,
): Trouble[] {
  if (isUnknown(edge)) return [];
  return claims.flatMap((claim) => {
    if (claim.eachSide || isSumOfOthers(claim, claims, context.size)) return [];
    if (claim.change) return checkChange(context, edge, claim, below);
    return claim.parts.flatMap((part) => checkPart(context, edge, claim, part));
  });
}

/** "102 sts: 56 dc and 46 ch-1 sps": the total is the sum of the parts, and those are held one by one. */
function isSumOfOthers(claim: Claim, claims: readonly Claim[], size: number): boolean {
  const [part] = claim.parts;
  if (claim.parts.length !== 1 || part?.kind !== "any") return false;
  const said = valueAt(part.amount.values, size);
  return claims.some(
    (other) =>
      other.parts.length > 1 &&
      other.parts.reduce((sum, each) => sum + (valueAt(each.amount.values, size) ?? 0), 0) === said,
  );
}

/** "4 sts increased". */
function checkChange({ size }: ClaimContext, edge: Edge, claim: Claim, below: Edge | null): Trouble[] {
  const [part] = claim.parts;
  const printed = part ? valueAt(part.amount.values, size) : null;
  if (!part || !claim.change || printed === null || printed === undefined || !below || isUnknown(below))
    return [];
  const gained = countStitches(edge).stitches - countStitches(below).stitches;
  const worked = claim.change === "inc" ? gained : -gained;
  if (worked === printed) return [];
  return [{ is: "change-differs", span: part.span, row: null, change: claim.change, printed, worked }];
}

function checkPart(context: ClaimContext, edge: Edge, claim: Claim, part: ClaimPart): Trouble[] {
  const said = valueAt(part.amount.values, context.size);
  if (said === null || said === undefined || part.kind === "unit") return [];
  if (part.kind === "sl st" || part.kind === "ch") return checkBeside(edge, claim, part, said);
  const total = totalOfClaim(edge, claim, claim.countsChains ?? chainsIn(context, edge, part));
  const differs = (of: string | null, worked: number): Trouble[] => [
    { is: "count-differs", span: part.span, of, printed: said, worked },
  ];
  if (part.kind === "any") return total === said ? [] : differs(null, total);
  // "27 sc, 8 spikes": what has a number of its own is not among the others.
  const apart = claim.parts.filter(
    (other) => other.kind !== part.kind && hasStitch(other.kind) && coversPlace(part.kind, other.kind),
  );
  const all = countPart(edge, part);
  if (all === null) return [];
  let worked = apart.reduce((rest, other) => rest - (countPart(edge, other) ?? 0), all);
  if (worked === said) return [];
  // "12 shells and 2 dc": the dc within the shells are in the shells' number already.
  const outside = countOutside(edge, claim, part);
  if (outside === said) return [];
  worked = outside ?? worked;
  if (part.kind === "ch-sp")
    return differs(part.chains === undefined ? "ch sp" : `ch-${part.chains} sp`, worked);
  // Writers name a row's stitches by its main kind, and mean all of them.
  const only = claim.parts.length === 1;
  const bare = totalOfClaim(edge, claim, "none");
  if (only && bare === said && !(worked === 0 && isPlain(part.kind) && ofOnePlainKind(edge))) return [];
  return differs(only && worked === bare ? null : part.kind, worked);
}

/**
 * Slip stitches and chains. Joins and the chains beside them are told, not counted, "12 sc, 1 sl st, 1 ch": slip stitches are held
 * in a row of nothing else, chains where the row has long ones.
 */
function checkBeside(edge: Edge, claim: Claim, part: ClaimPart, said: number): Trouble[] {
  const { stitches, slipStitches, chains, uncountedTurning } = countStitches(edge);
  if (part.kind === "sl st") {
    if (stitches > 0 || slipStitches === 0 || slipStitches === said) return [];
    return [{ is: "count-differs", span: part.span, of: "sl st", printed: said, worked: slipStitches }];
  }
  const long = edge.some((place) => place.role === "chain" && place.chains > 1);
  const alone = claim.parts.some((other) => other.kind === "sl st" || other.kind === "ch-sp");
  if (!long || alone || uncountedTurning > 1 || edge.some((place) => place.role === "unknown")) return [];
  const spaces = edge.sum((place) => (place.role === "chain" ? 1 : 0));
  if (said === chains || said === spaces) return [];
  return [{ is: "count-differs", span: part.span, of: "ch", printed: said, worked: chains }];
}

/** Stitches of a kind that stand outside the groups which the claim counts beside them; null where it counts no groups. */
function countOutside(edge: Edge, claim: Claim, part: ClaimPart): number | null {
  const groups = new Set(claim.parts.filter((other) => other !== part).map((other) => other.kind));
  if (!edge.some((place) => place.group !== null && groups.has(place.group))) return null;
  return edge.sum((place) =>
    place.counted && coversPlace(part.kind, place.code) && !(place.group !== null && groups.has(place.group))
      ? 1
      : 0,
  );
}

const PLAIN: readonly string[] = ["sc", "hdc", "dc", "tr"];
const isPlain = (code: string): boolean => PLAIN.includes(code);

/** A row of one plain stitch cannot be meant where another plain stitch is counted. */
function ofOnePlainKind(edge: Edge): boolean {
  const codes = new Set(
    edge.runs
      .flatMap((run) => run.unit)
      .filter((place) => place.role !== "turning" || place.counted)
      .map((place) => `${place.role} ${place.code}`),
  );
  const [only] = [...codes];
  return codes.size === 1 && PLAIN.some((code) => only === `stitch ${code}`);
}

/** Which chains a printed total counts: as the notes say, else as comes true for the document. */
function chainsIn({ notes, choices }: ClaimContext, edge: Edge, part: ClaimPart): ChainsCounted {
  const noted = chainsByNotes(notes);
  if (noted !== null) return noted;
  if (part.kind !== "any" || countStitches(edge).chains === 0) return "none";
  return choices.take("chains-in-counts", 2, part.span) === 1 ? "all" : "none";
}
