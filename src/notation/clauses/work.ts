import { joinSpans } from "../../base/index.ts";
import { stitchAt } from "../stitch-words.ts";
import type { Amount, Clause, GroupClause, LoopWord, Target, WorkClause } from "../tree.ts";
import { readAmount, readAmountOrArticle, singleValue } from "./amounts.ts";
import { readLoops } from "./loops.ts";
import { made, type Reading } from "./reading.ts";
import { hereTarget, type PlaceFound, readEachToLimit, readPlace } from "./targets.ts";

const VERBS = "work|make|do|crochet|place|put|working|making|worked";

/** "sc in next 5 sts", "31 hdc", "2 dc in last st", "hdc across", "sc 12", "dc 3 times in next st", "dec over next 2 sts". */
export function readWork(reading: Reading): Clause | readonly Clause[] | null {
  const { cursor } = reading;
  const start = cursor.at;
  const fabric = readFabric(reading);
  if (fabric) return fabric;
  cursor.accept("continue|continuing|cont|begin|keep");
  cursor.accept(VERBS) && cursor.accept("only|another|out?");
  const item = readItem(reading, start) ?? readSlipOver(reading, start);
  if (!item) return null;
  const joined = readJoinedItems(reading, item, start);
  if (joined) return joined;
  return finish(reading, item, start);
}

/** "and working in dc, inc 6 dc evenly": what the row is made of, said before what is done. */
function readFabric(reading: Reading): Clause | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    if (!cursor.accept("working in|with")) return null;
    const stitch = stitchAt(cursor, reading, 0, false);
    if (!stitch || stitch.code === "ch") return null;
    const from = cursor.at;
    cursor.at += stitch.length;
    if (!cursor.isMark(",") || cursor.fits(", turn|join|ch", 0)) return null;
    reading.lastStitch = { code: stitch.code, span: cursor.spanFrom(from) };
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}

interface Item {
  readonly code: string;
  readonly stitchSpan: WorkClause["stitchSpan"];
  readonly count?: Amount;
  readonly loops?: LoopWord;
  readonly start: number;
}

/** Count, stitch and loop words, without a place. */
function readItem(reading: Reading, start: number): Item | null {
  const { cursor } = reading;
  const loopsBefore = readLoopsBefore(reading);
  const whole = cursor.isNumber() ? stitchAt(cursor, reading, 0, true) : null;
  let count: Amount | null = null;
  let stitch = whole;
  if (!stitch) {
    const before = cursor.at;
    count = readAmountOrArticle(reading);
    if (count) {
      cursor.accept("-");
      // "1. sc": a stop behind the number at the head of a step, as old leaflets print it.
      const head = cursor.tokens[before - 1];
      if (
        cursor.isMark(".") &&
        (!head || head.is === "mark" || (head.is === "word" && head.text.endsWith("."))) &&
        stitchAt(cursor, reading, 1, false)
      )
        cursor.at += 1;
      const together = readTogether(reading, count, start);
      if (together) return together;
      cursor.accept("x|more|of|regular|additional|complete|full|standard|normal|separate|individual");
    }
    stitch = stitchAt(cursor, reading, 0, count !== null);
    if (!stitch) {
      cursor.at = before;
      return null;
    }
  }
  if (stitch.code === "ch") return null;
  const from = cursor.at;
  cursor.at += stitch.length;
  const stitchSpan = cursor.spanFrom(from);
  cursor.accept("st|sts|stitch|stitches");
  const shaped = readShaper(reading, stitch.code, count);
  const loopsAfter = cursor.attempt(() => {
    const loops = readLoops(reading);
    return loops && !cursor.fits("of") ? loops : null;
  });
  const after = count ? null : readCountAfter(reading);
  const loops = stitch.loops ?? loopsAfter ?? loopsBefore ?? undefined;
  return made<Item>({
    code: shaped ?? stitch.code,
    stitchSpan: shaped ? cursor.spanFrom(from) : stitchSpan,
    count: count ?? after ?? undefined,
    loops,
    start,
  });
}

/** "work 2 tog", "3 sts together": a decrease in the stitch of the row. */
function readTogether(reading: Reading, count: Amount, start: number): Item | null {
  const { cursor } = reading;
  const many = singleValue(count);
  if (many !== 2 && many !== 3) return null;
  const from = cursor.at;
  cursor.accept("st|sts|stitch|stitches");
  if (!cursor.accept("tog|together")) {
    cursor.at = from;
    return null;
  }
  const code = many === 2 ? "dec" : `${reading.lastStitch?.code ?? "sc"}3tog`;
  return { code, stitchSpan: cursor.spanFrom(start), start };
}

/** "Slip 11 stitches", "slip across next 4 sts": slip stitches by their verb. */
function readSlipOver(reading: Reading, start: number): Item | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const from = cursor.at;
    if (!cursor.accept("slip|sl")) return null;
    const stitchSpan = cursor.spanFrom(from);
    if (cursor.fits("over|across|into|in|along|to")) return { code: "sl st", stitchSpan, start };
    const count = readAmount(reading);
    if (!count || !cursor.accept("st|sts|stitches|sc|dc|hdc")) return null;
    return { code: "sl st", stitchSpan, count, start };
  });
}

function readLoopsBefore(reading: Reading): LoopWord | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("in|through|thru");
    const loops = readLoops(reading);
    if (!loops) return null;
    cursor.accept("of each st?");
    cursor.accept(",|:|-");
    if (!stitchAt(cursor, reading, 0, true) && !cursor.isNumber() && !cursor.fits(VERBS)) return null;
    cursor.accept(VERBS);
    return loops;
  });
}

/** "inc 1 sc", "dec 1": the one stitch gained or lost is what the word means. "2 dc tog": a decrease. */
function readShaper(reading: Reading, code: string, count: Amount | null): string | null {
  const { cursor } = reading;
  if (code === "inc" || code === "dec") {
    const one = cursor.token();
    if (
      one?.is === "number" &&
      one.values.length === 1 &&
      one.values[0] === 1 &&
      !cursor.fits("times|x", 1)
    ) {
      cursor.at += 1;
      cursor.accept("st|sts|stitch");
    }
    const stitch = stitchAt(cursor, reading, 0, false);
    if (stitch && ["sc", "hdc", "dc", "tr"].includes(stitch.code)) {
      cursor.at += stitch.length;
      cursor.accept("st|sts|stitch");
      return code === "inc" ? `${stitch.code}-inc` : `${stitch.code}2tog`;
    }
    return code;
  }
  const times = singleValue(count ?? undefined);
  if (times && times > 1 && cursor.accept("tog|together")) return `${code}${times}tog`;
  return null;
}

/** "sc 12", "dc 3 times", "ch3": a number after the stitch that is no place of its own. */
function readCountAfter(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("-|x");
    const amount = readAmount(reading);
    if (!amount) return null;
    if (cursor.accept("x|times|time") || cursor.accept("more times|time")) return amount;
    // "hdc 3rd", "dc 2 together" and counts of another stitch are not this one's.
    if (cursor.isBoundary() || !cursor.isWord()) return amount;
    if (
      cursor.fits(
        "in|into|across|around|to|and|then|turn|blo|flo|on|over|along|evenly|even|next|each|ending|rep|repeat|through|sk|skip|miss|join|work|ch|st|sts|stitches|with|at|more",
      )
    ) {
      if (cursor.fits("st|sts|stitches|more")) cursor.at += 1;
      return amount;
    }
    return stitchAt(cursor, reading, 0, false) ? null : amount;
  });
}

const PLACES_ONE = new Set(["next", "same", "first", "last", "nth", "each", "every-other", "any", "center"]);

/** "1 hdc + 1 ch in each sc", "sc and hdc in next st": several stitches said before one place. */
function readJoinedItems(reading: Reading, first: Item, start: number): GroupClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const body: Clause[] = [bare(first, cursor.spanFrom(start))];
    while (body.length < 8) {
      const more = cursor.attempt(() => {
        if (!cursor.accept("+|&|and|plus")) return null;
        const from = cursor.at;
        const chain = chainItem(reading);
        if (chain) return chain;
        const item = readItem(reading, from);
        return item ? bare(item, cursor.spanFrom(from)) : null;
      });
      if (!more) break;
      body.push(more);
    }
    if (body.length < 2) return null;
    cursor.accept("all|both");
    const place = readPlace(reading);
    if (!place || !PLACES_ONE.has(place.target.ref)) return null;
    const several = singleValue(place.target.count);
    if (place.target.count && several !== 1 && !place.target.each) return null;
    return { kind: "group", span: cursor.spanFrom(start), body, target: place.target };
  });
}

function chainItem(reading: Reading): Clause | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const from = cursor.at;
    if (cursor.accept("ch|chain")) {
      cursor.accept("-");
      const count = readAmount(reading);
      if (!count || cursor.fits("- sp|space") || cursor.fits("sp|space")) return null;
      return { kind: "chain", span: cursor.spanFrom(from), count };
    }
    const count = readAmount(reading);
    cursor.accept("-");
    if (!count || !cursor.accept("ch|chs|chain|chains") || cursor.fits("-? sp|space")) return null;
    return { kind: "chain", span: cursor.spanFrom(from), count };
  });
}

function bare(item: Item, span: WorkClause["span"]): WorkClause {
  return made<WorkClause>({
    kind: "work",
    span,
    stitch: item.code,
    stitchSpan: item.stitchSpan,
    count: item.count,
    target: hereTarget(span),
    loops: item.loops,
    colour: undefined,
    named: undefined,
  });
}

function finish(reading: Reading, item: Item, start: number): readonly Clause[] {
  const { cursor } = reading;
  reading.lastStitch = { code: item.code, span: item.stitchSpan };
  skipGloss(reading, item.code);
  const place = overBoth(reading, item.code, readWhere(reading));
  const before = cursor.spanFrom(start);
  const after = item.count ? null : readTimesAfter(reading, place?.target);
  const count = item.count ?? (place?.target.count ? null : after) ?? undefined;
  const span = place?.target.count ? before : cursor.spanFrom(start);
  const work = made<WorkClause>({
    kind: "work",
    span,
    stitch: postOf(item.code, place?.post),
    stitchSpan: item.stitchSpan,
    count,
    target: place?.target ?? hereTarget(span),
    loops: item.loops,
    colour: undefined,
    named: undefined,
  });
  // "sc in next 5 sts twice": the step is worked twice, not two in each.
  if (after && place?.target.count) {
    const whole = cursor.spanFrom(start);
    return [
      {
        kind: "repeat",
        span: whole,
        body: [work],
        stop: { by: "times", span: after.span, times: after, counting: "total" },
        style: "bracket",
      },
    ];
  }
  return [work, ...readFurtherPlaces(reading, work, place !== null)];
}

/** "dec over same st and next st": both places of one decrease. */
function overBoth(reading: Reading, code: string, place: PlaceFound | null): PlaceFound | null {
  const { cursor } = reading;
  const { target } = place ?? {};
  if (!target || target.count || target.each || !/^dec$|2tog$|^invdec$/u.test(code)) return place;
  if (!["same", "next", "first", "last"].includes(target.ref)) return place;
  const start = cursor.at;
  if (!cursor.accept("and|& the?")) return place;
  const second = readPlace(reading, true)?.target;
  if (!second || second.count || !["next", "last", "any", "nth", "first"].includes(second.ref)) {
    cursor.at = start;
    return place;
  }
  const span = { from: target.span.from, to: second.span.to };
  return { target: { ...target, span, ...(target.ref === "last" ? { ref: "next" } : {}) } };
}

/**
 * What stands in brackets between a stitch and its place: "shell (see Special Stitches) in next sp", "treble crochet (trc) in next dc",
 * "3 dc, ch 1, 3 dc (shell) in next sp".
 */
function skipGloss(reading: Reading, code: string): void {
  const { cursor } = reading;
  const close = cursor.partner[cursor.at] ?? -1;
  if (!cursor.isOpener() || close < 0 || close >= cursor.limit) return;
  if (cursor.fits("see|refer|pattern|note", 1)) {
    cursor.at = close + 1;
    return;
  }
  const named = stitchAt(cursor, reading, 1, true);
  if (!named || cursor.at + 1 + named.length !== close) return;
  const placed = cursor.fits("in|into|over|around|across|to", close - cursor.at + 1) > 0;
  if (named.code === code || (placed && reading.out.length > 0)) cursor.at = close + 1;
}

/** "in next st", "across", "over next 2 sts", nothing. */
export function readWhere(reading: Reading): PlaceFound | null {
  const { cursor } = reading;
  cursor.accept("evenly|loosely");
  const each = readEachToLimit(reading);
  if (each) {
    return { target: each };
  }
  return readPlace(reading);
}

/** "sc in next st twice": said after the place. */
function readTimesAfter(reading: Reading, target: Target | undefined): Amount | null {
  const { cursor } = reading;
  if (!target || target.ref === "each") return null;
  return cursor.attempt(() => {
    const token = cursor.token();
    const amount = readAmount(reading);
    if (!amount || token?.is !== "number") return null;
    return (token.word && /^(twice|thrice)$/iu.test(token.text)) || cursor.accept("times") ? amount : null;
  });
}

/** A post stitch said by its place: "dc around the front post of next st". */
function postOf(code: string, post: PlaceFound["post"]): string {
  if (!post || !["sc", "hdc", "dc", "tr", "dtr", "trtr"].includes(code)) return code;
  return `${post === "back" ? "bp" : "fp"}${code}`;
}

/** "and in each ch across", "and in last st": the same stitch at another place. */
function readFurtherPlaces(reading: Reading, first: WorkClause, placed: boolean): WorkClause[] {
  const { cursor } = reading;
  const more: WorkClause[] = [];
  while (placed && more.length < 6) {
    const next = cursor.attempt(() => {
      const from = cursor.at;
      cursor.accept(",");
      const and = cursor.accept("and|then|&");
      cursor.accept("then|also|1|one");
      if (and) {
        const rest = readEachToLimit(reading);
        if (rest) return { place: { target: rest } as PlaceFound, span: cursor.spanFrom(from) };
      }
      const prepositioned = cursor.fits("in|into|over|around|on|under|through|to") > 0;
      const comma = cursor.at > from && !and;
      if (cursor.fits("to join|close|finish")) return null;
      // "2 sc in next st, around": the word is of all steps before it.
      if (comma && cursor.fits("around|across") && cursor.isBoundary(1)) return null;
      // "in next dc and chain 1 space": over both, by name.
      const space =
        and &&
        first.stitch === "sl st" &&
        cursor.fits("ch|chain") > 0 &&
        cursor.fits("sp|space", cursor.isMark("-", 1) ? 3 : 2) > 0;
      if (!prepositioned && !space && !(and && cursor.fits("the? next|each|every|last|first|ea|same|nx|nxt")))
        return null;
      if (comma && !prepositioned) return null;
      const limit = readEachToLimit(reading);
      const place = limit ? { target: limit } : readPlace(reading, space);
      if (!place || cursor.fits("make|work|, make|work")) return null;
      return { place, span: cursor.spanFrom(from) };
    });
    if (!next) break;
    more.push(
      made<WorkClause>({
        kind: "work",
        span: next.span,
        stitch: postOf(first.stitch, next.place.post),
        stitchSpan: first.stitchSpan,
        count: first.count,
        target: next.place.target,
        loops: first.loops,
        colour: undefined,
        named: undefined,
      }),
    );
  }
  return more;
}

/** "working last dc into turning ch", "placing final dc in top of ch 3": the last one of the row, by its place. */
export function readLastWorked(reading: Reading): Clause | null {
  const last = lastWorked(reading);
  const repeat = reading.out.at(-1);
  if (last?.kind !== "work" || repeat?.kind !== "repeat" || repeat.stop.by === "times") return last;
  const end = repeat.body.at(-1);
  if (end?.kind !== "work" || end.stitch !== last.stitch || end.count || end.target.count) return last;
  // "rep from * across, working last dc in top of tch": it is the last that the repeat makes, and not one more.
  reading.out.pop();
  const span = { from: repeat.span.from, to: last.span.to };
  return { kind: "choice", span, form: "last-of-repeat", options: [[repeat], [repeat, last]] };
}

function lastWorked(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.accept("working|placing|making|work|with|having the? last|final")) return null;
    cursor.accept("one|1|st|stitch");
    const stitch = stitchAt(cursor, reading, 0, false);
    if (!stitch) {
      return cursor.accept("being|is a|an? st|stitch?") ? null : null;
    }
    const from = cursor.at;
    cursor.at += stitch.length;
    const stitchSpan = cursor.spanFrom(from);
    cursor.accept("worked|made|placed");
    const place = readPlace(reading);
    if (!place) return null;
    return made<WorkClause>({
      kind: "work",
      span: cursor.spanFrom(start),
      stitch: stitch.code,
      stitchSpan,
      count: undefined,
      target: place.target,
      loops: undefined,
      colour: undefined,
      named: undefined,
      skippedCountsAs: undefined,
    });
  });
}

/** "sc/dc alternately to end": one of each in turn as far as is said. */
export function readAlternate(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(VERBS);
    const early = cursor.accept("alternate|alternating|alternately");
    const body: WorkClause[] = [];
    for (let guard = 0; guard < 2; guard += 1) {
      const from = cursor.at;
      const stitch = stitchAt(cursor, reading, 0, false);
      if (!stitch || stitch.code === "ch") return null;
      cursor.at += stitch.length;
      const span = cursor.spanFrom(from);
      body.push({
        kind: "work",
        span,
        stitch: stitch.code,
        stitchSpan: span,
        target: { ...hereTarget(span), ref: "next" },
      });
      if (guard === 0 && !cursor.accept("/|and|&")) return null;
    }
    if (!early && !cursor.accept("alternately|alternating|alternate")) return null;
    const until = readEachToLimit(reading)?.until;
    if (!until) return null;
    const stop = { by: "limit", span: until.span, limit: until } as const;
    return { kind: "repeat", span: cursor.spanFrom(start), body, stop, style: "bare" };
  });
}

/** "2 in next", "in next 5", "5": the stitch is the one said before. */
export function readUnderstood(reading: Reading): Clause | null {
  const { cursor } = reading;
  const start = cursor.at;
  const token = cursor.token();
  const count = readAmount(reading);
  const before = cursor.at;
  if (
    !count &&
    !cursor.fits(
      "in|into|over|under|around|on|through|thru the? next|each|every|ea|last|first|same|rem|remaining|nx|nxt|following|both|all|center|corner|1st",
    )
  )
    return null;
  const place = readPlace(reading) ?? (count ? null : undefined);
  if (place === undefined) return null;
  if (!place && !cursor.isBoundary()) return null;
  // "from row 3": a number behind other words of its step is no count of stitches.
  const ahead = cursor.tokens[start - 1];
  if (!place && ahead && !(ahead.is === "mark" || (ahead.is === "word" && /^(and|then)$/u.test(ahead.norm))))
    return null;
  if (!place && before === cursor.at && token?.is === "number" && token.text.startsWith("(")) return null;
  const target = place?.target ?? hereTarget(cursor.spanFrom(start));
  const span = cursor.spanFrom(start);
  const last = reading.lastStitch;
  if (!last) return count ? { kind: "understood", span, count, target } : null;
  return made<WorkClause>({
    kind: "work",
    span,
    stitch: postOf(last.code, place?.post),
    stitchSpan: joinSpans(last.span, last.span),
    count: count ?? undefined,
    target,
    loops: undefined,
    colour: undefined,
    named: undefined,
  });
}
