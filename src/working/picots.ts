import type { Clause, WorkClause } from "../notation/index.ts";
import type { Hands } from "./hands.ts";
import { placeOf } from "./place.ts";

/**
 * "Ch 3, sl st in 3rd ch from hook", "ch 3, sl st in sc just made" within a row: the chain is closed into a picot, which stands on
 * the stitch before it. False where the chain is no picot's.
 */
export function closesPicot(hands: Hands, { stitch, target, count }: WorkClause, before?: Clause): boolean {
  const { last } = hands.out;
  if (last?.role !== "chain" || last.chains > MOST_IN_PICOT || count || target.count) return false;
  const nth = target.nth ? hands.number(target.nth) : 1;
  const drawn = stitch === "sl st" ? nth <= last.chains + 1 : stitch === "sc" && nth === last.chains;
  const backAtHook = target.from === "hook" && target.ref === "nth" && drawn;
  const backAtStitch =
    target.ref === "same" &&
    target.what.is === "stitch" &&
    stitch === "sl st" &&
    before?.kind === "chain" &&
    hands.madeStitch &&
    !hands.holding;
  if (!backAtHook && !backAtStitch) return false;
  hands.out.replaceLast(placeOf("picot", "join", false, 0, "picot"));
  return true;
}

/** A longer chain that is worked back along is more than a picot. Common practice, no source. */
const MOST_IN_PICOT = 6;
