import type { Clause, PlaceWord, Target } from "../notation/index.ts";
import type { Hands } from "./hands.ts";
import { countPlaces, type Seeker, seek, seekAny, takePlaces } from "./seeking.ts";
import { leftAtLimit } from "./targets.ts";

/**
 * Between stitches: the hook goes into the gap before the stitch where it stands, or past further stitches first. What is
 * worked so leaves stitches of the edge bare on either side, so that nothing is said of stitches left over.
 *
 * @returns  how many gaps the words name
 */
export function enterGaps(
  hands: Hands,
  target: Target & { readonly what: Extract<PlaceWord, { is: "between" }> },
  count: number,
  before: Clause | undefined,
  after: () => readonly Clause[],
): number {
  const cursor = hands.needCursor(target.span);
  const { edge } = cursor;
  const { manner } = hands.table;
  hands.amongGaps = true;
  const any = seekAny(edge, manner);
  const named =
    target.what.code === undefined ? null : seek({ is: "stitch", code: target.what.code }, edge, manner);
  const seeker: Seeker = named && edge.some((place) => named.takes(place) > 0) ? named : any;
  const behindOne = hands.entered !== "nowhere" || hands.chainStands || cursor.left < edge.length;
  if (target.ref === "each") {
    const limitLeft = leftAtLimit(hands, target.until, after());
    // The gap behind the last stitch before the limit is one more where a stitch stands there.
    const gaps =
      countPlaces(cursor, seeker, limitLeft) +
      (limitLeft > 0 ? 1 : 0) -
      (behindOne && hands.gapAt !== cursor.left ? 0 : 1);
    takePlaces(cursor, any, countPlaces(cursor, any, limitLeft), limitLeft);
    hands.gapAt = cursor.left;
    return Math.max(0, gaps);
  }
  if (target.ref === "last") {
    const left = countPlaces(cursor, any);
    if (left > 1) takePlaces(cursor, any, left - 1);
  } else {
    const here =
      behindOne && hands.gapAt !== cursor.left && (target.ref !== "next" || before?.kind === "skip");
    const steps = here ? count - 1 : count;
    if (steps > 0 && target.ref !== "same") takePlaces(cursor, seeker, steps);
  }
  hands.gapAt = cursor.left;
  return count;
}
