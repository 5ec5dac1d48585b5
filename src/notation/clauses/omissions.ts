import { stitchAt } from "../stitch-words.ts";
import type { Clause, RepeatClause, WorkClause } from "../tree.ts";
import { readAmount, singleValue } from "./amounts.ts";
import type { Reading } from "./reading.ts";

/**
 * "omitting last ch 2", "omit 3 dc at end of last rep", "ending without the final skip": the last time round lacks what stands at the
 * end of the unit. Null, with the cursor where it was, where the words name nothing that the unit ends with.
 */
export function shortenLast(reading: Reading, repeat: RepeatClause): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept(",|;|.|:");
    cursor.accept("but|and|,");
    if (
      !cursor.accept("omit|omitting|omits|leaving-out|minus") &&
      !cursor.accept("leave|leaving out|off") &&
      !cursor.accept("end|ending without")
    )
      return null;
    cursor.accept("the|a");
    const last = cursor.accept("last|final");
    let body: readonly Clause[] | null = null;
    let whole = repeat.body;
    for (let guard = 0; guard < 3; guard += 1) {
      const cut = readOmitted(reading, body ?? whole);
      if (!cut) break;
      if (body === null) whole = cut.whole;
      body = cut.kept;
      if (!cursor.accept("and|& the? last|final?")) break;
    }
    if (!body || body.length === 0) return null;
    const said = cursor.accept("at|on|in|of|from the? end of?");
    cursor.accept("of|on|in");
    cursor.accept("the");
    const where =
      cursor.accept("last|final rep|repeat|repetition|time") || cursor.accept("row|rnd|round|end");
    if (!last && !where && !said) return null;
    if (!cursor.isBoundary() && !cursor.fits("and|turn|join|then|[|(|-|=")) return null;
    const span = { from: repeat.span.from, to: cursor.spanFrom(cursor.at - 1).to };
    return [{ ...repeat, span, body: whole, endBefore: body.length }];
  });
}

/** One thing left out, as the end of a list of clauses: what is kept, and the list with a step cut in two where only a part goes. */
function readOmitted(
  reading: Reading,
  clauses: readonly Clause[],
): { readonly kept: readonly Clause[]; readonly whole: readonly Clause[] } | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const end = clauses.at(-1);
    if (!end) return null;
    const kept = clauses.slice(0, -1);
    if (cursor.accept("skip|sk|miss")) {
      readAmount(reading);
      cursor.accept("st|sts|sc|dc|hdc|ch|stitch|stitches");
      return end.kind === "skip" ? { kept, whole: clauses } : null;
    }
    const before = cursor.isNumber() ? readAmount(reading) : null;
    if (cursor.accept("ch|chain|chs")) {
      cursor.accept("-");
      const many = singleValue(before ?? (cursor.isNumber() ? readAmount(reading) : null) ?? undefined);
      cursor.accept("sp|space|sts|st");
      // "ch 2, sk 2": which of the two comes first makes no difference.
      const chain = end.kind === "skip" ? kept.at(-1) : end;
      if (chain?.kind !== "chain" || (many !== null && singleValue(chain.count) !== many)) return null;
      const without = end === chain ? kept : [...kept.slice(0, -1), end];
      return { kept: without, whole: end === chain ? clauses : [...without, chain] };
    }
    const stitch = stitchAt(cursor, reading, 0, false);
    const named = stitch?.code ?? (cursor.fits("st|sts|stitch|stitches") ? null : undefined);
    if (named === undefined) return null;
    cursor.at += stitch?.length ?? 1;
    const many = singleValue(before ?? undefined) ?? 1;
    if (end.kind === "group") return end.named === named ? { kept, whole: clauses } : null;
    if (end.kind !== "work" || (named !== null && end.stitch !== named)) return null;
    return cutWork(end, kept, many, clauses);
  });
}

/** "sc in next 7" without its last 3 is "sc in next 4". */
function cutWork(
  end: WorkClause,
  kept: readonly Clause[],
  many: number,
  clauses: readonly Clause[],
): { readonly kept: readonly Clause[]; readonly whole: readonly Clause[] } | null {
  const { count } = end.target;
  const places = singleValue(count);
  if (!count || places === null)
    return singleValue(end.count) === many || (many === 1 && !end.count) ? { kept, whole: clauses } : null;
  if (places === many) return { kept, whole: clauses };
  if (places < many || end.count) return null;
  const at = { from: end.span.to, to: end.span.to };
  const first: WorkClause = {
    ...end,
    target: { ...end.target, count: { ...count, values: [places - many] } },
  };
  const rest: WorkClause = {
    ...end,
    span: at,
    target: { ...end.target, count: { ...count, values: [many] } },
  };
  return { kept: [...kept, first], whole: [...kept, first, rest] };
}
