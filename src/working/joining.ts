import type { AlongClause, JoinClause, JoinYarnClause, Target } from "../notation/index.ts";
import { hasStitch, stitchOf } from "../stitches/index.ts";
import { Cursor, Edge, type EdgeMaker } from "./edge.ts";
import { goToFreeLoops } from "./entering.ts";
import type { Hands } from "./hands.ts";
import { chainPlace, placeOf } from "./place.ts";
import { closedChain, ringOf } from "./ring.ts";
import { goToNext } from "./seeking.ts";
import { workStitches } from "./stitching.ts";
import { isTrusted, nothingThere, seekerFor, UNKNOWN_EDGE } from "./targets.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/** Closes a round, or a chain into a ring. */
export function closeRound(hands: Hands, clause: JoinClause): void {
  const { stitch } = clause;
  if (hands.holding) return;
  hands.joined = true;
  if (!hands.started && (hands.madeFoundation || clause.ring || hands.onFoundation())) {
    // A ring takes any number of stitches; a long chain joined without being twisted is a round of chains.
    const chains = (hands.madeFoundation ?? (hands.onFoundation() ? hands.below : null))?.length ?? 0;
    hands.ring = true;
    hands.moveTo(chains > RING_MOST ? closedChain(chains) : ringOf(chains));
    hands.along = false;
    return;
  }
  // A round closed by a stitch ends in a space as long as that stitch is high, together with the chains before it.
  if (stitch !== "sl st" && hasStitch(stitch))
    closeWithSpace(hands.out, Math.max(1, Math.round(stitchOf(stitch).height)));
}

/** The longest chain that is taken for a ring to work into; a longer one is a round of chains. Common practice, no source. */
const RING_MOST = 12;

/** The other side of a chain whose end has been gone round: all but that end, which is worked into already. */
const otherSide = (worked: number): Edge =>
  new Edge([{ unit: [placeOf("ch", "foundation", true, Math.max(1, worked - 1))], times: 1 }], false);

function closeWithSpace(out: EdgeMaker, chains: number): void {
  const last = out.last;
  if (last?.role === "chain") out.replaceLast(chainPlace(last.chains + chains));
  else out.add(chainPlace(chains));
}

/** Joins the yarn at a place; the row begins there. */
export function joinYarn(hands: Hands, clause: JoinYarnClause): void {
  const { target } = clause;
  // "Join A with sl st in first sc" at the end of a round closes it too.
  if (hands.started && (target?.ref === "first" || target?.what.is === "turning-chain")) hands.joined = true;
  if (!hands.cursor || hands.started) return;
  if (target?.what.is === "free-loop") {
    goToFreeLoops(hands, target);
    return;
  }
  if (target && hands.entered === "nowhere") {
    const named = target.what.is === "space" || target.what.is === "corner" || target.what.is === "marked";
    if (named && target.ref !== "same") startRoundAt(hands, target);
  }
  if (clause.stitch && clause.stitch !== "sl st" && hasStitch(clause.stitch)) {
    const span = target?.span ?? clause.span;
    const what = target?.what ?? { is: "any" as const };
    workStitches(
      hands,
      {
        kind: "work",
        span: clause.span,
        stitch: clause.stitch,
        stitchSpan: clause.span,
        target: { span, ref: "next", what },
      },
      () => [],
      undefined,
    );
    return;
  }
  if (target && ["space", "corner", "marked"].includes(target.what.is)) {
    hands.cursor.step();
    hands.entered = "place";
  }
}

/** Begins a round at a named place: the edge is turned round so that it comes first. */
function startRoundAt(hands: Hands, target: Target): void {
  const edge = hands.below;
  if (!edge) return;
  const cursor = new Cursor(edge);
  const seeker = seekerFor(hands, target);
  if (!goToNext(cursor, seeker)) {
    if (isTrusted(edge)) throw new Unknowable("the edge was taken on trust");
    nothingThere(hands, target);
  }
  const here = cursor.position();
  const runs = [...edge.from(here, (place) => place).runs, ...(edge.closed ? edge.before(here).runs : [])];
  hands.moveTo(new Edge(runs, edge.closed));
}

/** Takes up the work along another edge. */
export function workAlong(hands: Hands, clause: AlongClause): void {
  const { table } = hands;
  switch (clause.edge) {
    case "row-ends":
      hands.moveTo(table.rowEnds());
      return;
    case "foundation": {
      const worked = hands.started && hands.onFoundation() ? hands.workedLength() : null;
      const edge = worked === null ? table.foundation() : otherSide(worked);
      if (!edge) throw new Unknowable("the foundation is not known");
      hands.moveTo(edge);
      return;
    }
    case "free-loops": {
      const edge = table.freeLoops(clause.ofRow ? hands.number(clause.ofRow) : null, clause.loops);
      if (!edge) throw new Stuck({ is: "nothing-there", span: clause.span, place: "free loop" });
      hands.moveTo(edge);
      return;
    }
    default:
      hands.moveTo(UNKNOWN_EDGE);
  }
}
