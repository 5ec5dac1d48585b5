import type { Clause, GroupClause } from "../tree.ts";
import { readChain } from "./chains.ts";
import type { Reading } from "./reading.ts";
import { readStop } from "./repeats.ts";
import { readPlace } from "./targets.ts";
import { readWork } from "./work.ts";

/** "in next sp make dc, ch 3 and dc", "in corner sp work (2 dc, ch 2, 2 dc)": the place stands before the stitches. */
export function readPlaceFirst(reading: Reading): GroupClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("and|then");
    if (!cursor.fits("in|into|over|under|around|between|through")) return null;
    const place = readPlace(reading);
    if (!place) return null;
    cursor.accept(",|:");
    cursor.accept("make|work|do|crochet|working|making|place|put");
    const verb = cursor.at;
    cursor.accept(":");
    const close = cursor.isOpener() ? (cursor.partner[cursor.at] ?? -1) : -1;
    if (close > 0) {
      cursor.at += 1;
      const inner = reading.inside(close);
      if (inner.length === 0) return null;
      cursor.at = close + 1;
      const stop = readStop(reading, false, true);
      const open = cursor.tokens[close]?.span ?? place.target.span;
      const body: Clause[] = stop
        ? [
            {
              kind: "repeat",
              span: { from: inner[0]?.span.from ?? open.from, to: stop.span.to },
              body: inner,
              stop,
              style: "bracket",
            },
          ]
        : [...inner];
      // "(dc, ch 2) 3 times and dc": what goes into the same place after the repeat.
      const last = cursor.attempt(() => {
        cursor.accept(",|;");
        if (!cursor.accept("and|&|+")) return null;
        const more = readItems(reading);
        return more.length > 0 && !cursor.fits("in|into") ? more : null;
      });
      if (last) body.push(...last);
      return { kind: "group", span: cursor.spanFrom(start), body, target: place.target };
    }
    const before = cursor.tokens[verb - 1];
    const said =
      before?.is === "word" && /^(make|work|do|crochet|working|making|place|put)$/u.test(before.norm);
    if (!said) return afterComma(reading, start, place.target);
    const body = readItems(reading);
    return body.length > 0
      ? { kind: "group", span: cursor.spanFrom(start), body, target: place.target }
      : null;
  });
}

/** "In the ch-3 sp, ch 4, 2 tr, ch 3, 3 tr.": a whole sentence of bare stitches behind its place and a comma. */
function afterComma(reading: Reading, start: number, target: GroupClause["target"]): GroupClause | null {
  const { cursor } = reading;
  const comma = cursor.tokens[cursor.at - 1];
  if (
    comma?.is !== "mark" ||
    comma.text !== "," ||
    !target.what.is.match(/^(space|ring|corner|marked|stitch)$/u)
  )
    return null;
  const before = reading.lastStitch;
  const body: Clause[] = [];
  while (body.length < 12) {
    const more = readItems(reading);
    if (more.length === 0) break;
    body.push(...more);
    if (!cursor.fits(",|and|&")) break;
    cursor.accept(",");
    cursor.accept("and|&");
  }
  const works = body.some((clause) => clause.kind === "work");
  const ended = cursor.done || cursor.isMark(".") || cursor.isMark(";");
  if (works && ended) return { kind: "group", span: cursor.spanFrom(start), body, target };
  // A number alone must not stand for a stitch that was only tried.
  reading.lastStitch = before;
  return null;
}

/** "dc, ch 3 and dc": bare stitches and chains; "and" brings the last, and a chain alone does not end the list. */
function readItems(reading: Reading): Clause[] {
  const { cursor } = reading;
  const items: Clause[] = [];
  let end = cursor.at;
  let kept = 0;
  for (let guard = 0; guard < 12; guard += 1) {
    const last = cursor.accept("and|&") || (cursor.accept(", and|&?") && lastWas(reading, "and"));
    const from = cursor.at;
    cursor.accept("+");
    const item = cursor.attempt(() => readChain(reading)) ?? cursor.attempt(() => readWork(reading));
    if (!item) break;
    const list = Array.isArray(item) ? (item as readonly Clause[]) : [item as Clause];
    const only = list[0] as Clause;
    if (
      list.length !== 1 ||
      (only.kind === "work" && only.target.ref !== "here") ||
      (only.kind !== "work" && only.kind !== "chain")
    ) {
      cursor.at = from;
      break;
    }
    items.push(only);
    if (only.kind === "work") {
      end = cursor.at;
      kept = items.length;
    }
    if (last) break;
    if (!cursor.fits(",|and|&|+")) break;
  }
  cursor.at = end;
  return items.slice(0, kept);
}

function lastWas(reading: Reading, word: string): boolean {
  const token = reading.cursor.tokens[reading.cursor.at - 1];
  return token?.is === "word" && token.norm === word;
}
