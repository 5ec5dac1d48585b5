import type { Clause, LeaveClause, SkipClause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";
import { hereTarget, readPlace } from "./targets.ts";

const SKIP = "skip|sk|skp|skips|skipping|miss|missing|misses|omit|pass|passing";

/** "sk next 2 sts", "miss 1 ch", "sk3", "skip to next ch-1 sp", "sk ch-3". */
export function readSkip(reading: Reading): SkipClause | readonly SkipClause[] | null {
  const { cursor } = reading;
  const start = cursor.at;
  if (!cursor.accept(SKIP)) return null;
  cursor.accept("over");
  if (cursor.accept("to|until|up to?")) {
    const place = readPlace(reading, true);
    return place ? { kind: "skip", span: cursor.spanFrom(start), target: place.target, to: true } : null;
  }
  const end = skippedRowEnd(reading);
  if (end) return { kind: "skip", span: cursor.spanFrom(start), target: end };
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
  const first: SkipClause = { kind: "skip", span: cursor.spanFrom(start), target: place.target };
  const more = readSkippedToo(reading);
  return more.length > 0 ? [first, ...more] : first;
}

/** "skip next row" while working along row ends. */
function skippedRowEnd(reading: Reading): SkipClause["target"] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const from = cursor.at;
    cursor.accept("the");
    const ref = cursor.accept("next")
      ? "next"
      : cursor.accept("first")
        ? "first"
        : cursor.accept("last")
          ? "last"
          : null;
    const count = readAmount(reading);
    if ((!ref && !count) || !cursor.accept("row|rows")) return null;
    cursor.accept("end|ends");
    return {
      span: cursor.spanFrom(from),
      ref: ref ?? "next",
      what: { is: "row-end" },
      ...(count ? { count } : {}),
    };
  });
}

/** ", next 36 sts and next ch-2 sp": more that is skipped with the same word. */
function readSkippedToo(reading: Reading): SkipClause[] {
  const { cursor } = reading;
  const more: SkipClause[] = [];
  while (more.length < 6) {
    const next = cursor.attempt(() => {
      const from = cursor.at;
      if (!cursor.accept(", and?") && !cursor.accept("and|&")) return null;
      if (!cursor.fits("the? next|last|corner|first") && !cursor.isNumber()) return null;
      const place = readPlace(reading, true);
      if (!place || !(cursor.isBoundary() || cursor.fits("and|for"))) return null;
      // "sk 2, 3 dc in next st": what is worked is not skipped.
      if (
        place.target.ref === "next" &&
        !/^(,|and|&)?\s*(and )?(the )?(next|corner)/iu.test(reading.words(cursor.spanFrom(from)))
      )
        return null;
      return { kind: "skip", span: cursor.spanFrom(from), target: place.target } as SkipClause;
    });
    if (!next) break;
    more.push(next);
  }
  return more;
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
  cursor.accept("the|these|those|this|all");
  const these = /these|those/iu.test(cursor.wordsFrom(start));
  if (these && cursor.accept("unworked|free")) return { kind: "leave", span: cursor.spanFrom(start) };
  const rest = cursor.accept("rem|remaining|remainder|rest|other|balance");
  cursor.accept("of the?");
  cursor.accept("last|next|final");
  const before = readAmount(reading);
  const noun = readNoun(reading);
  if (cursor.accept("and")) {
    readAmount(reading);
    readNoun(reading);
  }
  cursor.accept("of the? row|rnd|round|body|sleeve|front|back|piece");
  cursor.accept("on hook");
  const unworked = cursor.accept("are? left? unworked|free|unattached|open|undone|unused|alone");
  const named = before !== null && noun !== null && cursor.isBoundary();
  if (!unworked && !(rest && noun) && !named) return null;
  cursor.accept("for the? neck|armhole|shoulder|armholes|opening|thumb|now|later|sleeve|back|front");
  return made<LeaveClause>({ kind: "leave", span: cursor.spanFrom(start), count: before ?? undefined });
}
