import type { Clause, LeaveClause, SkipClause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";
import { hereTarget, readPlace } from "./targets.ts";

const SKIP = "skip|sk|skp|skips|skipping|miss|missing|misses|omit|pass|passing";

/** "sk next 2 sts", "miss 1 ch", "sk3", "skip to next ch-1 sp", "sk ch-3". */
export function readSkip(reading: Reading): SkipClause | null {
  const { cursor } = reading;
  const start = cursor.at;
  if (!cursor.accept(SKIP)) return null;
  cursor.accept("over");
  if (cursor.accept("to|until|up to?")) {
    const place = readPlace(reading, true);
    return place ? { kind: "skip", span: cursor.spanFrom(start), target: place.target, to: true } : null;
  }
  const place = readPlace(reading, true);
  if (!place) {
    // "sk 1" before a stitch: the number stands alone.
    const count = readAmount(reading);
    const span = cursor.spanFrom(start);
    const target = count
      ? { span: count.span, ref: "next" as const, count, what: { is: "any" as const } }
      : hereTarget(span);
    return count || cursor.isBoundary()
      ? { kind: "skip", span, target: count ? target : { ...target, ref: "next" } }
      : null;
  }
  cursor.accept(
    "for|as|to form? the? armhole|armholes|underarm|thumb|thumbhole|buttonhole|opening|hole|made?",
  );
  return { kind: "skip", span: cursor.spanFrom(start), target: place.target };
}

/** "Starting in 4th ch from hook", "beginning with 2nd ch from hook": where the next stitch goes. */
export function readStartingPlace(reading: Reading): SkipClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const said = cursor.accept("starting|beginning|start|begin|beg with|in|at|from?");
    if (!said && !cursor.fits("in|into")) return null;
    const place = readPlace(reading, said);
    if (place?.target.from !== "hook") return null;
    cursor.accept(",|:");
    // "in 2nd ch from hook hdc across": the stitches follow with a place of their own.
    if (!said && !cursor.isWord() && !cursor.isNumber()) return null;
    return {
      kind: "skip",
      span: place.target.span,
      target: place.target,
      to: true,
      ...(said ? { span: cursor.spanFrom(start) } : {}),
    };
  });
}

/** "leave remaining sts unworked", "leaving last 4 sts unworked". */
export function readLeave(reading: Reading): Clause | null {
  const { cursor } = reading;
  const start = cursor.at;
  if (cursor.accept("leave|leaving the? rest|remainder of the? row|rnd|round|sts unworked|free|undone"))
    return { kind: "leave", span: cursor.spanFrom(start) };
  if (
    !cursor.accept("leave|leaving|leaves") &&
    !cursor.fits("rem|remaining st|sts|stitches unworked|free|left|unattached")
  )
    return null;
  cursor.accept("the");
  const rest = cursor.accept("rem|remaining|remainder|rest|other|balance");
  cursor.accept("of the?");
  cursor.accept("last|next|final");
  const before = readAmount(reading);
  const noun = readNoun(reading);
  cursor.accept("of the? row|rnd|round");
  cursor.accept("on hook");
  const unworked = cursor.accept("are? left? unworked|free|unattached|open|undone|unused|alone");
  const named = before !== null && noun !== null && cursor.isBoundary();
  if (!unworked && !(rest && noun) && !named) return null;
  cursor.accept("for the? neck|armhole|shoulder|armholes|opening|thumb|now|later|sleeve|back|front");
  return made<LeaveClause>({ kind: "leave", span: cursor.spanFrom(start), count: before ?? undefined });
}
