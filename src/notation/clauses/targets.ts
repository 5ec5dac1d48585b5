import type { Span } from "../../base/index.ts";
import { loopWordOf, stitchAt } from "../stitch-words.ts";
import type { Amount, LoopWord, PlaceWord, Target } from "../tree.ts";
import { readAmount, readOrdinal } from "./amounts.ts";
import { readLimit } from "./limits.ts";
import { type Noun, readNoun, spaceAfterNumber } from "./nouns.ts";
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
  "next", "nx", "nxt", "each", "ea", "every", "last", "first", "1st", "same", "all", "the", "rem", "remaining", "following", "foll", "evry", "both", "any",
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
  return until ? { span: cursor.spanFrom(start), ref: "each", what: { is: "any" }, until } : null;
}

function place(reading: Reading, bare: boolean): PlaceFound | null {
  const { cursor } = reading;
  const start = cursor.at;
  const preposition = readPreposition(reading);
  const post = readPost(reading, preposition);
  if (preposition === null && post === undefined && !bare && !BARE_OPENERS.has(cursor.key()) && !isOrdinal(reading) && !startsWithLoops(reading)) return null;
  if (preposition === "between") return between(reading, start);
  const loops = readLoops(reading);
  if (loops) {
    cursor.accept("of|in|from|on");
  }
  const core = readCore(reading, start);
  if (core) return found(core, loops, post);
  if (!loops) return null;
  const until = readLimit(reading, (inner) => readTarget(inner));
  return {
    target: made<Target>({
      span: cursor.spanFrom(start), ref: until ? "each" : "here", what: { is: "any" }, loops, until: until ?? undefined,
      count: undefined, each: undefined, nth: undefined, from: undefined, and: undefined, of: undefined, rowsBelow: undefined, ofRow: undefined, aside: undefined,
    }),
    ...(post ? { post } : {}),
  };
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
  if (cursor.tokens[cursor.at - 1]?.is === "word" && (cursor.tokens[cursor.at - 1] as { norm: string }).norm === "between") return "between";
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
    cursor.accept("only") ;
    cursor.accept("of");
    return side ?? "any";
  }
  cursor.at = start;
  return preposition === "around" || preposition === "round" ? "any" : undefined;
}

function startsWithLoops(reading: Reading): boolean {
  const { cursor } = reading;
  return loopWordOf(cursor.key()) !== null || cursor.fits("the? front|back|both|3rd|third loop|lp|loops|lps|bump|bumps|hump|humps|bar|ridge") > 0;
}

const LOOP_NOUN = "loop|loops|lp|lps|lop|lo|strand|strands|thread|threads|half|leg|legs";

/** "back loop only of", "both loops of", "the blo", "back bump"; null and no step where no loop is named. */
export function readLoops(reading: Reading): LoopWord | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept("only") ;
    cursor.accept("the");
    const word = cursor.isWord() ? loopWordOf(cursor.key()) : null;
    let loops: LoopWord | null = word;
    if (word) cursor.at += 1;
    else if (cursor.accept(`back|rear|bk|far ${LOOP_NOUN}`)) loops = "back";
    else if (cursor.accept(`front|near|fr ${LOOP_NOUN}`)) loops = "front";
    else if (cursor.accept(`both|2|two|entire ${LOOP_NOUN}`)) loops = "both";
    else if (cursor.accept(`3rd|third ${LOOP_NOUN}`)) loops = "third";
    else if (cursor.accept("back|bottom bump|bumps|hump|humps|ridge|bar|vein|nub")) loops = "back-bump";
    if (!loops) return null;
    cursor.accept("only|onl");
    return loops;
  });
}

interface Draft {
  ref: Target["ref"] | null;
  each: boolean;
  count?: Amount;
  nth?: Amount;
  noun: Noun | null;
  of?: Target;
  rowsBelow?: number;
  ofRow?: Amount;
  from?: "hook" | "start" | "end";
  loops?: LoopWord;
}

const SKIPPABLE =
  "the|this|that|these|those|your|its|a|an|available|single|plain|actual|empty|open|new|made|existing|very|individual|prev-row|original|resulting|corresponding|turned|adjacent|just-made|whole|working";

function readCore(reading: Reading, start: number): Target | null {
  const { cursor } = reading;
  const draft: Draft = { ref: null, each: false, noun: null };
  readTop(reading, draft);
  readDeterminers(reading, draft);
  draft.noun ??= readNoun(reading);
  if (!draft.noun && draft.ref === null && !draft.each && !draft.count && !draft.nth) return null;
  if (!draft.noun && draft.count && draft.ref === null && !draft.each && !numberMayStand(reading)) return null;
  if (!draft.noun && draft.ref !== null && looksForeign(reading)) return null;
  if (draft.noun?.every) draft.each = true;
  readTail(reading, draft);
  bareChainIsTurning(reading, draft);
  const and = draft.each || draft.ref === "each" || draft.ref === "every-other" ? readFurtherKinds(reading) : [];
  if (and.length > 0) readTail(reading, draft);
  const limited = draft.each || draft.ref === "each" || draft.ref === "every-other" || draft.ref === "here" || draft.ref === null;
  const until = limited && !draft.count ? readLimit(reading, (inner) => readTarget(inner)) : readIdleLimit(reading);
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
    until: ref === "each" || ref === "every-other" ? (until ?? undefined) : undefined,
    rowsBelow: draft.rowsBelow,
    ofRow: draft.ofRow,
    loops: draft.loops,
    aside: undefined,
  };
  return made<Target>(target as never);
}

/** "3rd of 3 ch", "3rd ch of ch-4": a chain named by its length and not as a space is the one the row began with. */
function bareChainIsTurning(reading: Reading, draft: Draft): void {
  const of = draft.of;
  if (of?.what.is !== "space" || of.what.chains === undefined || of.what.corner || draft.ref !== "nth") return;
  const words = reading.words(of.span);
  if (/sp|loop|lp|arch/iu.test(words)) return;
  draft.of = { ...of, ref: "any", what: { is: "turning-chain", chains: of.what.chains } };
  if (!draft.noun || draft.noun.what.is === "any") draft.noun = { what: { is: "chain" }, plural: false };
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
  return cursor.isBoundary() || !cursor.isWord() || cursor.fits("and|then|turn|ch|join|across|around|to|skip|sk|until|ending|rep|repeat") > 0;
}

/** "in the next row", "in next round": no place to work into. */
function looksForeign(reading: Reading): boolean {
  return reading.cursor.fits("row|rows|rnd|rnds|round|rounds|section|part|step|piece|size|time|times|color|colour|shade|few|several|size|cm|in|inch|inches|repeat|way|side|photo") > 0;
}

/** "top of", "base of", "center of", "end of": a part of the place that follows. */
function readTop(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  if (cursor.accept("the? very? top|tops|tip|head of the? beg|beginning|starting|turning|turn|first|initial|starting? ch|chain|chs")) {
    const chains = readLooseNumber(reading);
    cursor.accept("st|sts|stitch|at? beg|beginning?");
    draft.noun = { what: chains === null ? { is: "turning-chain" } : { is: "turning-chain", chains }, plural: false };
    return;
  }
  const start = cursor.at;
  if (cursor.accept("the? top|tops|tip|head of? the?")) {
    if (cursor.accept("ch|chain|chs|chains")) {
      cursor.accept("st|sts");
      const chains = readLooseNumber(reading);
      cursor.accept("st|sts");
      draft.noun = { what: chains === null ? { is: "turning-chain" } : { is: "turning-chain", chains }, plural: false };
      return;
    }
    const number = cursor.token();
    if (number?.is === "number" && number.values.length === 1 && !number.ordinal) {
      const step = cursor.isMark("-", 1) ? 2 : 1;
      if (/^(ch|chs|chain|chains)$/u.test(cursor.key(step))) {
        cursor.at += step + 1;
        cursor.accept("st|sts");
        draft.noun = { what: { is: "turning-chain", chains: number.values[0] ?? 1 }, plural: false };
        return;
      }
    }
    if (cursor.isBoundary()) cursor.at = start;
    return;
  }
  if (cursor.accept("the? base of the? same? beg|beginning|turning|starting? ch|chain|chs|tch|t-ch|st|stitch|dc|last?")) {
    readLooseNumber(reading);
    cursor.accept("st");
    draft.noun = { what: { is: "base" }, plural: false };
    draft.ref = "same";
    return;
  }
  if (cursor.accept("the? center|centre|middle|mid of the?")) {
    draft.ref = "center";
    draft.of = readTarget(reading) ?? undefined as never;
    if (!draft.of) delete (draft as { of?: Target }).of;
    draft.noun = { what: { is: "any" }, plural: false };
  }
}

function readLooseNumber(reading: Reading): number | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("-");
  const token = cursor.token();
  if (token?.is === "number" && token.values.length === 1 && !token.ordinal) {
    cursor.at += 1;
    return token.values[0] ?? null;
  }
  cursor.at = start;
  return null;
}

function readDeterminers(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  if (draft.noun) return;
  for (let guard = 0; guard < 12; guard += 1) {
    if (cursor.accept("each and every") || cursor.accept("each|every|all")) {
      if (cursor.accept("other|alt|alternate|second|2nd|alternating")) draft.ref = "every-other";
      else draft.each = true;
      cursor.accept("of");
      if (cursor.accept("the")) cursor.accept("of");
      continue;
    }
    if (cursor.accept("ea|evry|ev")) {
      cursor.accept("of the?");
      draft.each = true;
      continue;
    }
    if (cursor.accept("both")) {
      draft.each = true;
      draft.count = { span: cursor.spanFrom(cursor.at - 1), values: [2] };
      continue;
    }
    if (cursor.accept("next|nx|nxt|following|foll|fol|nex")) {
      draft.ref ??= "next";
      cursor.accept("available|following|consecutive");
      continue;
    }
    if (cursor.accept("alternate|alt")) {
      draft.ref = "every-other";
      continue;
    }
    if (cursor.fits("last|final|end") && !cursor.fits("end|ends of")) {
      cursor.at += 1;
      draft.ref = "last";
      continue;
    }
    if (cursor.accept("same|previous|prev|preceding")) {
      draft.ref = "same";
      continue;
    }
    if (cursor.accept("any")) {
      draft.ref = "any";
      continue;
    }
    if (cursor.accept("center|centre|middle|mid|central")) {
      if (cursor.fits("ring|of")) {
        cursor.at -= 1;
        draft.noun = readNoun(reading);
        if (!draft.noun) {
          cursor.at += 1;
          draft.ref = "center";
        }
        return;
      }
      draft.ref = "center";
      const group = stitchesOfGroup(reading);
      if (group) {
        draft.noun = group;
        return;
      }
      continue;
    }
    if (cursor.fits("rem|remaining|remainder|rest") && !cursor.fits("rem|remaining front|back? loop|loops|lp|lps")) {
      cursor.at += 1;
      cursor.accept("of the?");
      if (!draft.ref) draft.each = true;
      continue;
    }
    if (cursor.accept("skipped|missed|unworked|unused") && !cursor.fits("front|back? loop|loops|lp|lps")) {
      const noun = readNoun(reading);
      draft.noun = {
        what: noun?.what.is === "stitch" ? { is: "skipped", code: noun.what.code } : { is: "skipped" },
        plural: noun?.plural ?? false,
      };
      return;
    }
    if (cursor.isNumber() && cursor.fits("to|from the? last|end", 1) && (cursor.token() as { ordinal: boolean }).ordinal) {
      draft.nth = readOrdinal(reading) as Amount;
      draft.ref = "nth";
      draft.from = "end";
      cursor.accept("to|from the? last|end");
      continue;
    }
    const ordinal = cursor.fits("first") || (cursor.token()?.is === "number" && (cursor.token() as { ordinal: boolean }).ordinal) ? readOrdinal(reading) : null;
    if (ordinal) {
      if (ordinal.values.length === 1 && ordinal.values[0] === 1) draft.ref = "first";
      else {
        draft.ref = "nth";
        draft.nth = ordinal;
        // "3rd or 4th": the first is taken.
        if (cursor.accept("or") && cursor.isNumber()) readOrdinal(reading);
      }
      continue;
    }
    if (cursor.isNumber()) {
      const compound = spaceAfterNumber(reading) ?? groupOfStitches(reading);
      if (compound) {
        draft.noun = compound;
        return;
      }
      if (draft.count) return;
      const count = readAmount(reading);
      if (!count) return;
      draft.count = count;
      // "next 3-sts": a hyphen that says nothing.
      if (cursor.isMark("-") && cursor.isWord(1)) cursor.at += 1;
      cursor.accept("more|further|additional|consecutive");
      continue;
    }
    if (cursor.accept(SKIPPABLE)) continue;
    return;
  }
}

/** "center dc of 5-dc group" keeps its noun; "center shell sp" too. Here only "center st of". */
function stitchesOfGroup(_reading: Reading): Noun | null {
  return null;
}

/** "5-dc group", "3 dc cluster": a place made of several stitches. */
function groupOfStitches(reading: Reading): Noun | null {
  const { cursor } = reading;
  const stitch = stitchAt(cursor, reading, 0, true);
  if (!stitch) return null;
  cursor.at += stitch.length;
  cursor.accept("st|sts|group|groups");
  return { what: { is: "stitch", code: stitch.code }, plural: false };
}

const ROW_WORD = "row|rows|rnd|rnds|round|rounds|rd|r";

/** What may follow the noun: "of next shell", "from hook", "2 rows below", "as join". */
function readTail(reading: Reading, draft: Draft): void {
  const { cursor } = reading;
  for (let guard = 0; guard < 8; guard += 1) {
    if (cursor.accept("from|to your|the? hook|hk|hook's|needle") || cursor.accept("of|on|off hook|hk")) draft.from = "hook";
    else if (cursor.accept("on|in|of the? foundation|base|starting? ch|chain") && (cursor.isBoundary() || cursor.fits("and|then|rep|sc|dc|hdc"))) continue;
    else if (cursor.accept("from the? end|marker") || cursor.accept("before the? end")) draft.from = "end";
    else if (cursor.accept("from the? beg|beginning|start")) draft.from = "start";
    else if (readBelow(reading, draft)) continue;
    else if (
      draft.ref === "same" &&
      cursor.accept("as|where|with|of the? last|first|prev|previous|beg|beginning|turning|starting|joining|sl|slip|ss|join|joined|ch|chain|chs|tch|st|sts|sc|dc|hdc|tr|joining|base|before?")
    ) {
      readLooseNumber(reading);
      cursor.accept("slip|sl? st|stitch|sc|dc|hdc|tr|ch|chain|ss|slst");
      readLooseNumber(reading);
      cursor.accept("was|were? made|worked|joined|placed|join?");
    } else if (draft.ref === "same" && cursor.accept("as|where")) {
      const stitch = stitchAt(cursor, reading);
      if (stitch) cursor.at += stitch.length;
    } else if (cursor.accept("at the? base of the? beg|beginning|turning? ch|chain|tch|st|row")) {
      readLooseNumber(reading);
      draft.ref = "same";
      draft.noun = { what: { is: "base" }, plural: false };
    } else if (cursor.accept("at|from the? beg|beginning|start|end of the? row|rnd|round|prev|previous|last row|rnd|round?")) continue;
    else if (cursor.accept("with|holding the? stitch? marker|m")) draft.noun = { what: { is: "marked" }, plural: false };
    else if (!draft.of && cursor.fits("of|on|from|in")) {
      const of = readOf(reading);
      if (!of) return;
      draft.of = of;
    } else if (cursor.accept("made|formed by|with the? turning|beg|beginning? ch|chain|loop") || cursor.accept("just|first? made|worked|formed|created|below")) continue;
    else if (cursor.accept("only") || cursor.accept("of? the? same? prev|previous|row|rnd|round's? row|rnd|round")) continue;
    else if (!draft.loops && loopsAhead(reading)) draft.loops = readLoopsAfter(reading) as LoopWord;
    else return;
  }
}

function loopsAhead(reading: Reading): boolean {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    const loops = readLoopsAfter(reading);
    cursor.at = start;
    return loops ? true : null;
  }) === true;
}

/** "sc in next 3 sts in back loops only", "dc across blo". */
function readLoopsAfter(reading: Reading): LoopWord | null {
  const { cursor } = reading;
  cursor.accept("working|worked? in|into|through|thru|using");
  const loops = readLoops(reading);
  if (!loops || cursor.fits("of")) return null;
  return loops;
}

function readBelow(reading: Reading, draft: Draft): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("of|in|on|from|into the?") || cursor.accept("the");
  const amount = readAmount(reading);
  if (amount && cursor.accept(`${ROW_WORD} below|down|before|earlier|back|lower|previously|prev|beneath`)) {
    draft.rowsBelow = amount.values[0] ?? 1;
    return true;
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD} before the? last|previous|prev`)) {
    draft.rowsBelow = 2;
    return true;
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD}`)) {
    const row = readAmount(reading);
    if (row) {
      draft.ofRow = row;
      return true;
    }
  }
  cursor.at = start;
  if (cursor.accept(`of|in|on|from|for each|every|this ${ROW_WORD}`)) return true;
  if (cursor.accept(`of|in|on|from|into the? previous|prev|prior|preceding|last|foregoing|first|foundation? ${ROW_WORD}`)) return true;
  if (cursor.accept(`of|in|on|from|into the? ${ROW_WORD} below|beneath|before|above?`) && !cursor.isNumber()) return true;
  cursor.at = start;
  if (cursor.accept("of|in|on|from|into the?")) {
    const row = readOrdinal(reading);
    if (row && cursor.accept(ROW_WORD)) {
      draft.ofRow = row;
      return true;
    }
  }
  cursor.at = start;
  return false;
}

function readOf(reading: Reading): Target | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const word = cursor.key();
    cursor.at += 1;
    if (word !== "of" && !cursor.fits("the? next|previous|same|each|first|last|beg|turning|tch|foundation|ch|base|center|corner|shell|cluster|opposite|other|free|unworked|ring")) return null;
    if (cursor.fits("the? work|piece|yarn|hook|row|round|rnd")) return null;
    if (word !== "of" && cursor.fits("the? next|each|first|last|corner|center|ch|same")) return null;
    return readTarget(reading);
  });
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
  return cursor.isBoundary() || cursor.fits("across|around|to|and|&|turn|of|until|on|along|all|ending|for|join|-|–|=|*|**|(|[|{|evenly|from|until|rep|repeat|working|only") > 0;
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
  const ref = cursor.accept("next") ? "next" : cursor.accept("last") ? "last" : cursor.accept("first") ? "first" : cursor.accept("same") ? "same" : null;
  readAmount(reading);
  const noun = readNoun(reading);
  if (!noun && !ref && !each) return null;
  if (cursor.accept("and the? next|following? first|last?")) readNoun(reading);
  const until = each || !ref ? readLimit(reading, (inner) => readTarget(inner)) : readIdleLimit(reading);
  const target: Target = made<Target>({
    span: cursor.spanFrom(start), ref: each || until ? "each" : (ref ?? "next"), what: { is: "between" }, until: until ?? undefined,
    count: undefined, each: undefined, nth: undefined, from: undefined, and: undefined, of: undefined, rowsBelow: undefined, ofRow: undefined, loops: undefined, aside: undefined,
  });
  return { target };
}

/** No place was said. */
export function hereTarget(span: Span): Target {
  return { span: { from: span.to, to: span.to }, ref: "here", what: { is: "any" } };
}
