import type { Span } from "../base/index.ts";
import type { ChainClause, Clause, Target } from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import { type Cursor, Edge } from "./edge.ts";
import type { Hands } from "./hands.ts";
import { chainPlace, type Place, placeOf } from "./place.ts";
import { isRing, RING } from "./ring.ts";
import { chainsOfMultiple } from "./samples.ts";
import { type Seeker, seek, seekAny, takePlaces } from "./seeking.ts";
import { Stuck, Unknowable } from "./trouble.ts";
import { baseOf, firstStitch, partPlace } from "./units.ts";

/** Chains as high as a row of the stitch. Source: trade handbook, section 3.3. */
export const CHAINS_HIGH: Readonly<Record<string, number>> = {
  "sl st": 0,
  sc: 1,
  hdc: 2,
  dc: 3,
  tr: 4,
  dtr: 5,
  trtr: 6,
};

/** Works a chain: the foundation, the chain that begins a row, the one that ends it, or one inside it. */
export function workChain(hands: Hands, clause: ChainClause, rest: readonly Clause[]): void {
  const chains = clause.multiple
    ? chainsOfMultiple(clause.multiple, hands.table.sampleWidth)
    : hands.number(clause.count);
  if (chains === 0) return;
  if (hands.holding) {
    if (hands.groupBegins && hands.out.last === undefined) {
      // "(Ch 3, 2 dc, ch 2, 3 dc) in corner sp" at the start of a round: its chain stands for a stitch like any other.
      hands.groupBegins = false;
      const first = firstStitch(rest);
      stand(
        hands,
        chains,
        clause.countsAs?.parts ?? meaningOf(hands, chains, first === null ? null : baseOf(first), clause),
      );
      return;
    }
    hands.out.add(chainPlace(chains));
    return;
  }
  if (!hands.below && !hands.madeFoundation) {
    if (hands.start.labelled && chains <= CHAINS_TURNING && worksIntoStitches(rest)) {
      hands.troubles.push({ is: "worked-on-nothing", span: hands.start.span });
      throw new Unknowable("the row below is not known");
    }
    if (
      hands.start.labelled &&
      chains <= CHAINS_TURNING &&
      (intoRing(rest) || (hands.start.round && firstTarget(rest) === "here"))
    ) {
      // "Rnd 1: Ch 3, 9 dc in magic ring", and "Rnd 1: Ch 1, 10 hdc, join", which can only be worked into one too.
      hands.moveTo(RING);
      hands.along = false;
      startRow(hands, clause, chains, rest);
      return;
    }
    foundation(hands, chains);
    return;
  }
  hands.beginRoundHere(firstTarget(rest) === "same");
  if (!hands.chainStands && hands.nothingButSlips() && !isRepeated(hands, clause)) {
    startRow(hands, clause, chains, rest);
    return;
  }
  if (hands.started && endsRow(rest, hands.joined)) {
    hands.chainAfter = { chains, parts: clause.countsAs?.parts ?? null, span: clause.span };
    if (clause.countsAs?.throughout) hands.table.meanings.say(chains, null, clause.countsAs.parts);
    return;
  }
  const last = hands.out.last;
  if (last?.role === "chain" && last.group === null) hands.out.replaceLast(chainPlace(last.chains + chains));
  else hands.out.add(chainPlace(chains));
}

/** "*Ch 1, sk 1, sc in next st; rep from * around": a chain that every turn of a repeat makes is none of the row's own. */
function isRepeated({ repeating }: Hands, { countsAs }: ChainClause): boolean {
  return repeating !== null && !countsAs && !repeating.some(({ kind }) => kind === "turn" || kind === "join");
}

/** The longest chain that is taken for a turning chain where no row stands below. */
const CHAINS_TURNING = 5;

/** How the first stitch finds its place; null where none follows, or a join or chain comes first. */
function firstTarget(rest: readonly Clause[]): Target["ref"] | null {
  for (const clause of rest) {
    if (clause.kind === "join" || clause.kind === "chain" || clause.kind === "repeat") return null;
    if (clause.kind === "work" || clause.kind === "group") return clause.target.ref;
  }
  return null;
}

/** Whether the first stitch goes into a ring. */
function intoRing(rest: readonly Clause[]): boolean {
  const first = rest.find((clause) => !["aside", "colour", "facing", "marker"].includes(clause.kind));
  if (first?.kind === "repeat") return intoRing(first.body);
  return (first?.kind === "work" || first?.kind === "group") && first.target.what.is === "ring";
}

/** Whether what comes next goes into stitches that must be there already: "ch 2, htr in first st". */
function worksIntoStitches(rest: readonly Clause[]): boolean {
  for (const clause of rest) {
    if (clause.kind === "join" || clause.kind === "chain") return false;
    if (clause.kind === "work" || clause.kind === "group") {
      const { what, ref, from } = clause.target;
      return from !== "hook" && ref !== "nth" && ref !== "here" && what.is !== "ring" && what.is !== "chain";
    }
    if (clause.kind === "repeat") return worksIntoStitches(clause.body);
  }
  return false;
}

function foundation(hands: Hands, chains: number): void {
  const edge = new Edge([{ unit: [placeOf("ch", "foundation", true, chains)], times: 1 }], false);
  hands.madeFoundation = edge;
  hands.moveTo(edge.reversed());
  hands.along = false;
}

/** Nothing but the turn, fastening off and the like comes after. */
function endsRow(rest: readonly Clause[], joined: boolean): boolean {
  let turns = joined;
  for (const clause of rest) {
    if (clause.kind === "turn") turns = true;
    else if (
      !["aside", "fasten-off", "marker", "colour", "hook", "do-not-join", "repeat-rows"].includes(clause.kind)
    )
      return false;
  }
  return turns;
}

/** The chain that begins a row. What it stands for is said beside it, in the notes, or chosen once for the document. */
function startRow(hands: Hands, clause: ChainClause, chains: number, rest: readonly Clause[]): void {
  if (startsFromHook(rest)) {
    // "Ch 3, dc in 4th ch from hook": the chain lengthens the edge it stands on.
    lengthen(hands, chains);
    if (clause.countsAs) hands.passedCountsAs = clause.countsAs.parts;
    return;
  }
  const first = firstStitch(rest);
  const stitch = first === null ? null : baseOf(first);
  if (clause.countsAs) {
    const { parts, throughout } = clause.countsAs;
    const counts = parts.length > 0;
    if (hands.table.meanings.differs(chains, stitch, counts))
      hands.troubles.push({
        is: "chain-two-ways",
        span: clause.countsAs.span,
        chains,
        stitch: stitch ?? "sc",
        here: counts,
      });
    if (throughout) hands.table.meanings.say(chains, stitch, parts);
    stand(hands, chains, parts, stitch);
    return;
  }
  stand(hands, chains, meaningOf(hands, chains, stitch, clause), stitch);
}

/** The chain made before the turn, taken up at the start of the next row. */
export function takeUpChainBefore(hands: Hands, rest: readonly Clause[]): void {
  const before = hands.start.chainBefore;
  if (!before || !hands.below) return;
  if (startsFromHook(rest)) {
    lengthen(hands, before.chains);
    return;
  }
  const own = rest.find(
    (clause) =>
      clause.kind !== "turn" &&
      clause.kind !== "aside" &&
      clause.kind !== "colour" &&
      clause.kind !== "loops",
  );
  if (own?.kind === "chain") return;
  const first = firstStitch(rest);
  stand(
    hands,
    before.chains,
    before.parts ?? meaningOf(hands, before.chains, first === null ? null : baseOf(first), before),
  );
}

function startsFromHook(rest: readonly Clause[]): boolean {
  for (const clause of rest) {
    if (clause.kind === "work" || clause.kind === "group" || clause.kind === "skip")
      return clause.target.from === "hook" || clause.target.of?.from === "hook";
    if (clause.kind === "repeat") return startsFromHook(clause.body);
    if (!["turn", "aside", "colour", "loops", "marker"].includes(clause.kind)) return false;
  }
  return false;
}

function lengthen(hands: Hands, chains: number): void {
  const edge = hands.below;
  if (!edge) return;
  const added = { unit: [placeOf("ch", "foundation", true, chains)], times: 1 };
  hands.moveTo(new Edge([added, ...edge.runs], edge.closed));
  hands.along = false;
}

/** What a starting chain stands for, where the clause itself does not say. */
function meaningOf(
  hands: Hands,
  chains: number,
  stitch: string | null,
  where: { readonly span: ChainClause["span"] },
): readonly string[] {
  const said = hands.table.meanings.said(chains, stitch);
  if (said) return said;
  const readings = readingsOf(chains, stitch);
  if (readings.length === 1) return readings[0] as readonly string[];
  const taken = hands.table.choices.take(
    `turning-chain:${chains}:${stitch ?? "-"}`,
    readings.length,
    where.span,
  );
  return readings[taken] as readonly string[];
}

/**
 * What a chain at the start of a row may stand for, likelier first. The likelier reading follows an editor's experience:
 * ch 1 almost never counts, ch 2 about half the time, ch 3 usually. Source: trade handbook, section 3.3.
 */
export function readingsOf(chains: number, stitch: string | null): readonly (readonly string[])[] {
  const none: readonly string[] = [];
  if (stitch === null || stitch === "sl st" || !(stitch in CHAINS_HIGH))
    return chains <= 2 ? [none, ["dc"]] : [["dc"], none];
  const high = CHAINS_HIGH[stitch] as number;
  const own = [stitch];
  if (chains === 1 || chains < high) return [none, own];
  if (chains === high) return high >= 3 ? [own, none] : [none, own];
  // More chains than the stitch is high: the stitch and a space, or a bare arch in lace of low stitches.
  const withSpace = [stitch, `ch ${chains - high}`];
  if (stitch === "sc" || stitch === "hdc") {
    if (chains === 2) return [none, own, withSpace];
    return [["dc", ...(chains > 3 ? [`ch ${chains - 3}`] : [])], withSpace, [`ch ${chains}`], none];
  }
  return [withSpace, own, none];
}

/** Puts the chain at the row's start. A chain that counts takes the first place, unless the hook stands in a place already. */
function stand(hands: Hands, chains: number, said: readonly string[], stitch: string | null = null): void {
  const parts = said.map((part) => (part === "st" ? (stitch ?? hands.table.mainStitch()) : part));
  hands.stood = true;
  const first = parts[0];
  if (first === undefined) {
    // Recorded so that a later row that names it can go into it.
    hands.out.add(placeOf("ch", "turning", false, chains));
    return;
  }
  const made: Place[] = parts.map((part, at) =>
    at === 0 && !part.startsWith("ch ") ? placeOf(part, "turning", true, chains) : partPlace(part),
  );
  for (const place of made) hands.out.add(place);
  const startsWithStitch = !first.startsWith("ch ");
  if (startsWithStitch && hands.entered === "nowhere" && hands.cursor) {
    const ring = isRing(hands.cursor.edge);
    if (!ring) takePlaces(hands.cursor, seekAny(hands.cursor.edge, hands.table.manner), 1);
  }
  hands.chainStands = true;
  hands.entered = "place";
  const record = hasStitch(first) ? stitchOf(first) : null;
  if (record && hands.lastStitch === null) hands.lastStitch = first;
}

/**
 * "In the Nth chain from the hook": the chains before it are passed. Those that are as many as a stitch is high may count as
 * that stitch, like a turning chain.
 *
 * @throws {Stuck} when there are not so many chains
 */
export function startFromHook(
  hands: Hands,
  target: Target,
  nth: number,
  rest: readonly Clause[],
  stitchSaid?: string,
): void {
  const cursor = hands.needCursor(target.span);
  const any = seek({ is: "chain" }, cursor.edge, hands.table.manner) as Seeker;
  const have = chainsAhead(cursor);
  if (have <= 0) {
    if (cursor.place?.role === "unknown" || cursor.place?.role === "ring")
      throw new Unknowable("no chain is known here");
    if (hands.out.last?.role === "chain") throw new Unknowable("worked back along a chain of the row");
    throw new Stuck({ is: "nothing-there", span: target.span, place: "chain" });
  }
  if (nth > have) throw new Stuck({ is: "chain-from-hook", span: target.span, nth, chains: have });
  const passed = nth - 1;
  takePlaces(cursor, any, passed);
  if (!hands.started) hands.passedAtStart = passed;
  const first = stitchSaid ?? firstStitch(rest);
  const stitch = first === null ? null : baseOf(first);
  if (passed > 0 && !hands.started) passedChains(hands, passed, stitch, target);
  takePlaces(cursor, any, 1);
  hands.entered = "place";
}

/**
 * A first row that does not say in which chain it begins: "ch 38, hdc across". The chains at the hook may all be worked into, or
 * those as high as the stitch are passed, counting or not; the printed counts tell.
 */
export function startOnFoundation(
  hands: Hands,
  clause: { readonly stitch: string; readonly span: Span },
): void {
  const { cursor } = hands;
  if (
    !cursor ||
    hands.started ||
    hands.stood ||
    hands.entered !== "nowhere" ||
    hands.holding ||
    cursor.edge.closed
  )
    return;
  if (cursor.place?.role !== "foundation" || cursor.used > 0 || cursor.edge.runs.length > 1) return;
  const stitch = baseOf(clause.stitch);
  const high = CHAINS_HIGH[stitch] ?? 0;
  if (high === 0) return;
  const reading = hands.table.choices.take(`first-chain:${stitch}`, 3, clause.span);
  if (reading === 0) return;
  takePlaces(cursor, seekAny(cursor.edge, hands.table.manner), high);
  hands.passedAtStart = high;
  standOnFoundation(hands, high, reading === 1 ? [] : [stitch]);
}

/** Chains from the hook on, before anything else stands on the edge. */
function chainsAhead(cursor: Cursor): number {
  let chains = -cursor.used;
  for (let run = cursor.run; run < cursor.edge.runs.length; run++)
    for (const place of cursor.edge.runs[run]?.unit ?? []) {
      if (place.role !== "foundation" && place.role !== "chain") return chains;
      chains += place.chains;
    }
  return chains;
}

/** The chains passed at the start of the first row. */
function passedChains(hands: Hands, passed: number, stitch: string | null, target: Target): void {
  const saidHere = target.countsAs?.parts ?? hands.passedCountsAs;
  if (saidHere) {
    standOnFoundation(hands, passed, saidHere, stitch);
    return;
  }
  const said = hands.table.meanings.said(passed, stitch);
  if (said) {
    standOnFoundation(hands, passed, said, stitch);
    return;
  }
  const readings = readingsOnFoundation(passed, stitch);
  const taken = hands.table.choices.take(passedKey(passed, stitch), readings.length, target.span);
  standOnFoundation(hands, passed, readings[taken] as readonly string[]);
}

/** Chains passed beyond the height of a tall stitch: they leave a space. */
function surplusOf(passed: number, stitch: string | null): number {
  const high = stitch === null ? undefined : CHAINS_HIGH[stitch];
  return high === undefined || high < 3 ? 0 : Math.max(0, passed - high);
}

/** Chains that leave a space are dealt out apart from those that turn a row. */
const passedKey = (passed: number, stitch: string | null): string =>
  `${surplusOf(passed, stitch) > 0 ? "passed" : "turning"}-chain:${passed}:${stitch ?? "-"}`;

/**
 * On the foundation an even surplus is half space, half chains passed over: 8th ch from hook is a dc, ch 2, and 2 ch skipped. Writers
 * deal it out otherwise too, and the rows above tell.
 */
export function readingsOnFoundation(passed: number, stitch: string | null): readonly (readonly string[])[] {
  const surplus = surplusOf(passed, stitch);
  if (stitch !== null && surplus > 0) {
    const space = surplus % 2 === 0 ? surplus / 2 : Math.max(1, surplus - 1);
    const others = Array.from({ length: surplus }, (_, at) => at + 1).filter((chains) => chains !== space);
    return [[stitch, `ch ${space}`], [stitch], [], ...others.map((chains) => [stitch, `ch ${chains}`])];
  }
  return readingsOf(passed, stitch);
}

function standOnFoundation(
  hands: Hands,
  passed: number,
  said: readonly string[],
  stitch: string | null = null,
): void {
  const parts = said.map((part) => (part === "st" ? (stitch ?? hands.table.mainStitch()) : part));
  hands.stood = true;
  if (parts.length === 0) {
    hands.out.add(placeOf("ch", "turning", false, passed));
    return;
  }
  parts.forEach((part, at) => {
    hands.out.add(
      at === 0 && !part.startsWith("ch ") ? placeOf(part, "turning", true, passed) : partPlace(part),
    );
  });
  hands.chainStands = true;
}
