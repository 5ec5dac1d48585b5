import type { EvenlyClause } from "../notation/index.ts";
import { hasStitch } from "../stitches/index.ts";
import type { Hands } from "./hands.ts";
import { workAlong } from "./joining.ts";
import { stitchPlace } from "./place.ts";
import { isTrusted, isUnknown } from "./targets.ts";
import { Stuck, Unknowable } from "./trouble.ts";

/**
 * Stitches spread evenly over the row: the words leave the places to the maker, the number must be there.
 * A row of n stitches can lose k by working two or three together only while n is at most three times what is left.
 * Source: trade handbook, section 3.5.
 */
export function workEvenly(hands: Hands, clause: EvenlyClause): void {
  if (clause.along) workAlong(hands, clause.along);
  const stitch =
    clause.stitch && hasStitch(clause.stitch)
      ? clause.stitch
      : (hands.lastStitch ?? hands.table.mainStitch());
  const count = clause.count ? hands.number(clause.count) : null;
  const total = clause.total ? hands.number(clause.total) : null;
  if (count === null && total === null) {
    hands.troubles.push({ is: "evenly-unsaid", span: clause.span, offer: null });
    throw new Unknowable("no number of stitches is said");
  }
  if (clause.change === "make") {
    finish(hands, stitch, total ?? (count as number));
    return;
  }
  const cursor = hands.needCursor(clause.span);
  if (isUnknown(cursor.edge)) {
    if (total === null) throw new Unknowable("the edge is not known");
    finish(hands, stitch, total);
    return;
  }
  const have = hands.countLeft();
  if (have === 0 && count !== null && hands.madeStitch) {
    changeMade(hands, clause, clause.change === "inc" ? count : -count);
    return;
  }
  const after = total ?? (clause.change === "inc" ? have + (count as number) : have - (count as number));
  if (total !== null && count !== null && !isTrusted(cursor.edge)) {
    const change = clause.change === "inc" ? total - have : have - total;
    if (change !== count)
      hands.troubles.push({
        is: "misses-count",
        span: clause.span,
        from: have,
        to: clause.change === "inc" ? have + count : have - count,
        wanted: total,
      });
  }
  if (
    after <= 0 ||
    (clause.change === "dec" && have > 3 * after) ||
    (clause.change === "inc" && after > 3 * have)
  )
    throw new Stuck({ is: "cannot-shape", span: clause.span, have, change: after - have });
  finish(hands, stitch, after);
}

/** "Sc in each st across, increasing 5 sts evenly": the change falls among the stitches that stand already. */
function changeMade(hands: Hands, clause: EvenlyClause, change: number): void {
  const runs = hands.out.snapshot();
  const last = runs.at(-1);
  if (last?.unit.length !== 1) throw new Unknowable("the row does not say where the stitches are changed");
  const after = last.times + change;
  if (after <= 0 || after > 3 * last.times || last.times > 3 * after)
    throw new Stuck({ is: "cannot-shape", span: clause.span, have: last.times, change });
  hands.out.restore([...runs.slice(0, -1), { ...last, times: after }]);
}

function finish(hands: Hands, stitch: string, count: number): void {
  hands.out.add(stitchPlace(stitch), count);
  hands.cursor?.toEnd();
  hands.started = true;
  hands.madeStitch = true;
  hands.lastStitch = stitch;
  hands.entered = "place";
}
