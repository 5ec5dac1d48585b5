import type { Span } from "../../base/index.ts";

import type { Limit, LoopWord, PlaceWord, Target } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readDeterminers, readTop } from "./determiners.ts";
import { readLimit } from "./limits.ts";
import { loopsAhead, readLoops, readLoopsAfter, startsWithLoops } from "./loops.ts";
import { readNoun, spaceAfterNumber } from "./nouns.ts";
import type { Draft } from "./place-draft.ts";
import { readTail } from "./place-tail.ts";
import { made, type Reading } from "./reading.ts";

/** A place, and what the words about it said about the stitch: round which post it is worked. */
export interface PlaceFound {
  readonly target: Target;
  readonly post?: "front" | "back" | "any";
}

const PREPOSITIONS =
  "in|into|on|onto|over|under|through|thru|around|round|inside|behind|across|between|at|along|to|within|upon|atop|beneath";

/** Words that may open a place where no preposition was written: "sc next 3 sts", "sc ea st". */
const BARE_OPENERS = new Set([
  "next",
  "nx",
  "nxt",
  "each",
  "ea",
  "every",
  "last",
  "first",
  "1st",
  "same",
  "all",
  "the",
  "rem",
  "remaining",
  "following",
  "foll",
  "evry",
  "both",
  "any",
]);

/** Reads a place with its preposition, if it has one. `bare`: a noun or number alone is a place too ("sk ch-3", "miss 2"). */
export function readPlace(reading: Reading, bare = false): PlaceFound | null {
  return reading.cursor.attempt(() => place(reading, bare));
}

/** A place alone, for limits and parts of places. */
export function readTarget(reading: Reading, bare = true): Target | null {
  return readPlace(reading, bare)?.target ?? null;
}

/** Every place up to the limit: "hdc across", "sc to last 3 sts". */
export function readEachToLimit(reading: Reading): Target | null {
  const { cursor } = reading;
  const start = cursor.at;
  const until = readLimit(reading, (inner) => readTarget(inner));
  if (!until) return null;
  const loops = loopsAhead(reading) ? readLoopsAfter(reading) : null;
  return {
    span: cursor.spanFrom(start),
    ref: "each",
    what: { is: "any" },
    until,
    ...(loops ? { loops } : {}),
  };
}

function place(reading: Reading, bare: boolean): PlaceFound | null {
  const { cursor } = reading;
  const start = cursor.at;
  const preposition = readPreposition(reading);
  const post = readPost(reading, preposition);
  if (
    preposition === null &&
    post === undefined &&
    !bare &&
    !BARE_OPENERS.has(cursor.key()) &&
    !isOrdinal(reading) &&
    !(cursor.isNumber() && cursor.fits("row|rows|rnd|rnds|round|rounds below|down|beneath", 1)) &&
    !startsWithLoops(reading)
  )
    return null;
  if (preposition === "between") return between(reading, start);
  const loops = readLoops(reading);
  if (loops) {
    cursor.accept("of|in|from|on");
  }
  const below = loops || preposition === "around" ? null : readRowsBelow(reading, start);
  if (below) return { target: below };
  const early = loops ? readLimit(reading, (inner) => readTarget(inner)) : null;
  if (early && loops)
    return {
      target: { span: cursor.spanFrom(start), ref: "each", what: { is: "any" }, loops, until: early },
      ...(post ? { post } : {}),
    };
  const core = readCore(reading, start);
  if (core) return found(core, loops, post);
  if (!loops) return null;
  const until = readLimit(reading, (inner) => readTarget(inner));
  return {
    target: made<Target>({
      span: cursor.spanFrom(start),
      ref: until ? "each" : "here",
      what: { is: "any" },
      loops,
      until: until ?? undefined,
      count: undefined,
      each: undefined,
      nth: undefined,
      from: undefined,
      and: undefined,
      of: undefined,
      rowsBelow: undefined,
      ofRow: undefined,
      aside: undefined,
    }),
    ...(post ? { post } : {}),
  };
}

/** "1 long sc 2 rnds below": straight down from where the hook is. */
function readRowsBelow(reading: Reading, start: number): Target | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const rows = readAmount(reading)?.values[0];
    if (!rows || !cursor.accept("row|rows|rnd|rnds|round|rounds below|down|beneath")) return null;
    return { span: cursor.spanFrom(start), ref: "next", what: { is: "any" }, rowsBelow: rows };
  });
}

function isOrdinal(reading: Reading): boolean {
  const token = reading.cursor.token();
  return token?.is === "number" && token.ordinal;
}

function found(target: Target, loops: LoopWord | null, post: PlaceFound["post"]): PlaceFound {
  return { target: loops ? { ...target, loops } : target, ...(post ? { post } : {}) };
}

function readPreposition(reading: Reading): string | null {
  const { cursor } = reading;
  if (cursor.accept("worked|working|made|going|all")) {
    if (!cursor.fits(PREPOSITIONS)) {
      cursor.at -= 1;
      return null;
    }
  }
  const key = cursor.key();
  if (!cursor.accept(PREPOSITIONS)) return null;
  cursor.accept("in|to|into|between") || cursor.accept("around");
  if (cursor.accept("the? sp|space|spaces|loop|gap between")) return "between";
  if (
    cursor.tokens[cursor.at - 1]?.is === "word" &&
    (cursor.tokens[cursor.at - 1] as { norm: string }).norm === "between"
  )
    return "between";
  return key;
}

/** "around front post of", "around the vertical bar of", "around". */
function readPost(reading: Reading, preposition: string | null): PlaceFound["post"] {
  const { cursor } = reading;
  const start = cursor.at;
  if (cursor.accept("from|in front around")) return "front";
  if (cursor.accept("from|in back around")) return "back";
  cursor.accept("the");
  const side = cursor.accept("front") ? "front" : cursor.accept("back") ? "back" : null;
  if (cursor.accept("post|posts|stem|stems|upright|bar") || cursor.accept("vertical bar|post")) {
    cursor.accept("only");
    cursor.accept("of");
    return side ?? "any";
  }
  cursor.at = start;
  return preposition === "around" || preposition === "round" ? "any" : undefined;
}

function readCore(reading: Reading, start: number): Target | null {
  const { cursor } = reading;
  const draft: Draft = { ref: null, each: false, noun: null };
  readTop(reading, draft);
  readDeterminers(reading, draft);
  draft.noun ??= readNoun(reading);
  // "sc in each row across": along the side, the row ends are the places.
  if (!draft.noun && draft.each && cursor.fits("row|rows across|along|around|up|down")) {
    cursor.at += 1;
    draft.noun = { what: { is: "row-end" }, plural: true };
  }
  if (!draft.noun && draft.ref === null && !draft.each && !draft.count && !draft.nth) return null;
  if (!draft.noun && draft.count && draft.ref === null && !draft.each && !numberMayStand(reading))
    return null;
  if (!draft.noun && (draft.ref !== null || draft.count) && looksForeign(reading)) return null;
  if (
    draft.underside &&
    (!draft.noun ||
      draft.noun.what.is === "chain" ||
      draft.noun.what.is === "any" ||
      draft.noun.what.is === "foundation")
  ) {
    draft.noun = { what: { is: "foundation" }, plural: true };
  }
  if (draft.noun?.every) draft.each = true;
  readTail(reading, draft);
  bareChainIsTurning(reading, draft);
  const ofEach = takeNumberOfOwner(draft);
  let and: readonly PlaceWord[] =
    draft.each || draft.ref === "each" || draft.ref === "every-other" ? readFurtherKinds(reading) : [];
  if (and.length > 0) readTail(reading, draft);
  const limited =
    draft.each ||
    draft.ref === "each" ||
    draft.ref === "every-other" ||
    draft.ref === "here" ||
    draft.ref === null;
  const until =
    limited && !draft.count
      ? readLimit(reading, (inner) => readTarget(inner))
      : draft.ref === "next" && !draft.count && !draft.of
        ? readLimitAtEnd(reading)
        : readIdleLimit(reading);
  // "hdc in the sts across", "hdc in next hdc across": with the way to go said, every place on it is meant.
  if (
    until?.at === "end" &&
    !draft.count &&
    !draft.of &&
    (draft.ref === "next" || draft.ref === null) &&
    takesMany(draft)
  )
    draft.ref = "each";
  // "hdc in each of the following chains": several with no number are all there are.
  if (!until && draft.each && draft.ref === "next" && !draft.count && !draft.of && draft.noun?.plural)
    draft.ref = "each";
  if (until?.at === "end" && and.length === 0) and = readIncluded(reading);
  if (until && !draft.loops && loopsAhead(reading)) draft.loops = readLoopsAfter(reading) as LoopWord;
  const ref = settleRef(draft);
  const target = {
    span: cursor.spanFrom(start),
    ref,
    count: draft.count,
    each: draft.each && ref !== "each" ? true : undefined,
    nth: ref === "nth" ? draft.nth : undefined,
    from: draft.from,
    what: draft.noun?.what ?? { is: "any" },
    and: and.length > 0 ? and : undefined,
    of: draft.of,
    until: ref === "each" || ref === "every-other" ? (until ?? ofEach ?? undefined) : undefined,
    rowsBelow: draft.rowsBelow,
    ofRow: draft.ofRow,
    loops: draft.loops,
    aside: undefined,
  };
  return made<Target>(target as never);
}

/**
 * "In ch-1 sp of each V-st", "in the space of next 4 shells": as many places as there are of what they belong to. Gives how far
 * they go, where that is said.
 */
function takeNumberOfOwner(draft: Draft): Limit | null {
  const { of } = draft;
  if (!of || draft.each || draft.count || (draft.ref !== null && draft.ref !== "next")) return null;
  if (draft.noun?.what.is !== "space") return null;
  if (of.ref !== "each" && of.ref !== "every-other" && !of.count) return null;
  if (of.count) draft.count = of.count;
  draft.ref = of.ref;
  draft.of = made<Target>({
    ...of,
    ref: "any",
    count: undefined,
    each: undefined,
    until: undefined,
  } as never);
  return of.until ?? null;
}

/** "across, including the ch-1 sps": said behind the way to go. */
function readIncluded(reading: Reading): readonly PlaceWord[] {
  const { cursor } = reading;
  const found = cursor.attempt(() => {
    cursor.accept(",");
    if (!cursor.accept("including|incl|inclusive of? all? each? the?")) return null;
    const noun = readNoun(reading);
    return noun?.what.is === "space" ? [noun.what] : null;
  });
  return found ?? [];
}

/** "3rd of 3 ch", "3rd ch of ch-4": a chain named by its length and not as a space is the one the row began with. */
function bareChainIsTurning(reading: Reading, draft: Draft): void {
  const of = draft.of;
  if (of?.what.is !== "space" || of.what.chains === undefined || of.what.corner || draft.ref !== "nth")
    return;
  const words = reading.words(of.span);
  if (/sp|loop|lp|arch/iu.test(words)) return;
  draft.of = { ...of, ref: "any", what: { is: "turning-chain", chains: of.what.chains } };
  if (!draft.noun || draft.noun.what.is === "any") draft.noun = { what: { is: "chain" }, plural: false };
}

/** "across" or "around" as the last word of the step. */
function readLimitAtEnd(reading: Reading): Limit | null {
  const { cursor } = reading;
  if (!cursor.fits("across|around") || !cursor.isBoundary(1)) return null;
  return readLimit(reading, (inner) => readTarget(inner));
}

/** Kinds of place an edge has many of. */
function takesMany(draft: Draft): boolean {
  const is = draft.noun?.what.is ?? "any";
  return is === "any" || is === "stitch" || is === "chain";
}

/** "sc in next 3 sts across": the limit after a number says nothing more. */
function readIdleLimit(reading: Reading): null {
  const { cursor } = reading;
  if (cursor.fits("across|around") && cursor.isBoundary(1)) cursor.at += 1;
  return null;
}

/** "in 14": a number with no noun is a count of places only where the step ends there. */
function numberMayStand(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.isBoundary() ||
    !cursor.isWord() ||
    cursor.fits("and|then|turn|ch|join|across|around|to|skip|sk|until|ending|rep|repeat") > 0
  );
}

/** "in the next row", "in next round": no place to work into. */
function looksForeign(reading: Reading): boolean {
  return (
    reading.cursor.fits(
      "layer|layers|thicknesses|row|rows|rnd|rnds|round|rounds|section|part|step|piece|size|time|times|color|colour|shade|few|several|size|cm|in|inch|inches|repeat|way|side|photo",
    ) > 0
  );
}

/** "each sc and ch-1 sp across": kinds taken alike. A new "in" or "next" begins another place instead. */
function readFurtherKinds(reading: Reading): PlaceWord[] {
  const { cursor } = reading;
  const kinds: PlaceWord[] = [];
  while (kinds.length < 4) {
    const kind = cursor.attempt(() => {
      if (!cursor.accept("and|&|+|or|/ in? each|every|the?")) return null;
      if (cursor.isNumber()) {
        const space = spaceAfterNumber(reading);
        return space && mayFollow(reading) ? space.what : null;
      }
      const noun = readNoun(reading);
      return noun && mayFollow(reading) ? noun.what : null;
    });
    if (!kind) return kinds;
    kinds.push(kind);
  }
  return kinds;
}

/** A further kind ends the place: "and dc in next" is a new step. */
function mayFollow(reading: Reading): boolean {
  const { cursor } = reading;
  return (
    cursor.isBoundary() ||
    cursor.fits(
      "across|around|to|and|&|turn|of|until|on|along|all|ending|for|join|-|–|=|*|**|(|[|{|evenly|from|until|rep|repeat|working|only",
    ) > 0
  );
}

function settleRef(draft: Draft): Target["ref"] {
  const { ref, each, count, noun } = draft;
  if (ref === "every-other") return ref;
  if (ref !== null) return ref;
  if (each) return count ? "next" : "each";
  if (count) return "next";
  switch (noun?.what.is) {
    case "ring":
    case "turning-chain":
    case "marked":
      return "any";
    case "base":
    case "join":
      return "same";
    case "foundation":
    case "free-loop":
      return noun.plural ? "each" : "next";
    default:
      return "next";
  }
}

function between(reading: Reading, start: number): PlaceFound | null {
  const { cursor } = reading;
  cursor.accept("the");
  const each = cursor.accept("each|every|all");
  const ref = cursor.accept("next")
    ? "next"
    : cursor.accept("last")
      ? "last"
      : cursor.accept("first")
        ? "first"
        : cursor.accept("same")
          ? "same"
          : null;
  readAmount(reading);
  cursor.accept("skipped|unworked|worked");
  const noun = readNoun(reading);
  if (!noun && !ref && !each) return null;
  let atHook = false;
  if (cursor.accept("and the? 2nd|second|next to last")) readNoun(reading);
  else if (
    cursor.accept("made|worked and the? next|following") ||
    cursor.accept("and the? next|following first?")
  ) {
    // "between last skipped sc and next sc": where the hook is.
    atHook = ref === "last" || ref === "same";
    readNoun(reading);
  } else if (cursor.accept("and the? first|last")) readNoun(reading);
  const stands =
    noun?.what.is === "stitch" && standsAsOne(noun.what.code, reading) ? noun.what.code : undefined;
  cursor.accept("of|from the? previous|prev|last row|rnd|round");
  const until = each || !ref ? readLimit(reading, (inner) => readTarget(inner)) : readIdleLimit(reading);
  const target: Target = made<Target>({
    span: cursor.spanFrom(start),
    ref: each || until ? "each" : atHook ? "same" : (ref ?? "next"),
    what: stands === undefined ? { is: "between" } : { is: "between", code: stands },
    until: until ?? undefined,
    count: undefined,
    each: undefined,
    nth: undefined,
    from: undefined,
    and: undefined,
    of: undefined,
    rowsBelow: undefined,
    ofRow: undefined,
    loops: undefined,
    aside: undefined,
  });
  return { target };
}

/** Several stitches under one name: gaps lie between one and the next, and not inside. */
function standsAsOne(code: string, reading: Reading): boolean {
  return reading.specials.has(code) || GROUPED.test(code);
}

const GROUPED = /group|shell|cluster|fan|puff|popcorn|bobble|v-stitch|block|picot|tog$/u;

/** No place was said. */
export function hereTarget(span: Span): Target {
  return { span: { from: span.to, to: span.to }, ref: "here", what: { is: "any" } };
}
