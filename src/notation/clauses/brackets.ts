import { readTailOfLast } from "../claims.ts";
import { stitchAt } from "../stitch-words.ts";
import type { Clause, CountsAs, RepeatClause, Stop, Target } from "../tree.ts";
import { readAmount, readMeasure } from "./amounts.ts";
import { readBracketClaim } from "./bracket-claims.ts";
import { readCountsAs, readParts } from "./chains.ts";
import { readFacing, readSide } from "./joins.ts";
import { DEEPEST, type Reading } from "./reading.ts";
import { readEndAtInner, readStop } from "./repeats.ts";
import { settleAlone } from "./settle.ts";
import { readSizeOnlyBracket } from "./sizes-meant.ts";
import { readPlace } from "./targets.ts";

/*
 * Brackets do four jobs: repeat, group in one place, printed count, aside. What follows the closing one tells them apart;
 * what stands inside tells the rest.
 */

/** Reads one bracket with what belongs to it. Always reads something: what is not understood is a remark. */
export function readBracket(reading: Reading): readonly Clause[] {
  const { cursor } = reading;
  const open = cursor.at;
  const close = cursor.partner[open] ?? -1;
  if (close < 0 || close >= cursor.limit) {
    cursor.at += 1;
    return [];
  }
  if (reading.depth >= DEEPEST) return [remarkTo(reading, open, close)];
  return (
    readSides(reading, open, close) ??
    readCounting(reading, open, close) ??
    (readTailOfLast(reading, open, close) ? [] : null) ??
    readStandsFor(reading, open, close) ??
    readOften(reading, open, close) ??
    readRepeatOrGroup(reading, open, close) ??
    readBracketClaim(reading, open, close) ??
    readNamedBracket(reading, open, close) ??
    readNameAlone(reading, open, close) ??
    readSizeOnlyBracket(reading, open, close) ??
    readPlain(reading, open, close)
  );
}

function remarkTo(reading: Reading, open: number, close: number): Clause {
  const { cursor } = reading;
  cursor.at = close + 1;
  const span = cursor.spanFrom(open);
  return { kind: "remark", span, words: reading.words(span) };
}

/** "(RS)", "(right side facing)". */
function readSides(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const side = cursor.within(close, () => {
      const found = readFacing(reading) ?? readSide(reading);
      if (found) cursor.accept("row|facing|of work|rnd");
      return found && cursor.done ? found : null;
    });
    if (!side) return null;
    cursor.at = close + 1;
    return [{ kind: "facing", span: cursor.spanFrom(open), side }];
  });
}

/** "(counts as dc)" goes to the chain before it, or to the stitch worked past the skipped chains. */
function readCounting(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const found = cursor.within(close, () => {
      const counts = readCountsAs(reading);
      // "(stand for 1 tr in the joined dc)": where it stands is known.
      if (counts && cursor.accept("in|at|over the?")) while (cursor.isWord()) cursor.at += 1;
      return counts && cursor.done ? counts : null;
    });
    if (!found) {
      // "(this ch 3 becomes the first st of the next row)": of a row to come.
      cursor.at = open + 1;
      if (!cursor.accept("this|the|these ch|chs|chain|turning")) return null;
      cursor.accept("-|ch|chain");
      if (cursor.isNumber()) cursor.at += 1;
      cursor.accept("will");
      if (
        !cursor.accept("becomes|become|forms|makes|is|counts|be|count as? the? first st|stitch|dc|hdc|tr|one")
      )
        return null;
      if (!cursor.fits("of|in|for|on the? next|following")) return null;
      cursor.at = close + 1;
      return [{ kind: "aside", span: cursor.spanFrom(open) }];
    }
    cursor.at = close + 1;
    const counts: CountsAs = { ...found, span: cursor.spanFrom(open) };
    return attachCounting(reading, counts) ? [] : [{ kind: "aside", span: counts.span }];
  });
}

/**
 * "Ch 4 (dc + ch 1)", "ch 5 (tr, ch 1)": a chain right before its bracket is as long as what the bracket names, and stands for it; it
 * would be worked again otherwise.
 */
function readStandsFor(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor, out } = reading;
  const last = out.at(-1);
  if (last?.kind !== "chain" || last.countsAs || last.count.values.length !== 1) return null;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const found = cursor.within(close, () => {
      const parts = readParts(reading);
      return cursor.done ? parts : null;
    });
    if (found?.length !== 2) return null;
    cursor.at = close + 1;
    if (cursor.fits("in|into|x|to|across|around") || cursor.isNumber()) return null;
    const [stitch, chain] = found as [string, string];
    const beside = /^ch (\d+)$/u.exec(chain);
    const high = CHAINS_HIGH[stitch];
    if (!beside || high === undefined || high + Number(beside[1]) !== last.count.values[0]) return null;
    const countsAs = { span: cursor.spanFrom(open), parts: found, throughout: false };
    out[out.length - 1] = { ...last, span: { from: last.span.from, to: countsAs.span.to }, countsAs };
    return [];
  });
}

/** Chains that stand as high as a stitch. */
const CHAINS_HIGH: Readonly<Record<string, number>> = { sc: 1, hdc: 2, dc: 3, tr: 4, dtr: 5 };

/** "dc in each st (x4)": how many of them; goes to the stitches before it. */
function readOften(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor, out } = reading;
  const last = out[out.length - 1];
  if (last?.kind !== "work" || last.target.ref !== "each" || last.target.count || last.target.until)
    return null;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const count = cursor.within(close, () => {
      const crossed = cursor.accept("x");
      const amount = readAmount(reading);
      return amount && (crossed || cursor.accept("times|x")) && cursor.done ? amount : null;
    });
    if (!count) return null;
    cursor.at = close + 1;
    const span = { from: last.span.from, to: cursor.spanFrom(open).to };
    out[out.length - 1] = { ...last, span, target: { ...last.target, ref: "next", each: true, count } };
    return [];
  });
}

/** Gives the meaning of a chain to the clause it speaks of; false where there is none near. */
export function attachCounting(reading: Reading, counts: CountsAs): boolean {
  const { out } = reading;
  for (let back = out.length - 1; back >= 0 && back >= out.length - 4; back -= 1) {
    const clause = out[back] as Clause;
    if (clause.kind === "chain") {
      out[back] = {
        ...clause,
        countsAs: counts,
        span: { from: clause.span.from, to: back === out.length - 1 ? counts.span.to : clause.span.to },
      };
      return true;
    }
    if (clause.kind === "work" && clause.target.from === "hook") {
      out[back] = { ...clause, skippedCountsAs: counts };
      return true;
    }
    if (clause.kind === "skip") {
      out[back] = { ...clause, target: chainsSkipped(clause.target), countsAs: counts };
      return true;
    }
    if (clause.kind !== "turn" && clause.kind !== "aside" && clause.kind !== "work") return false;
  }
  return false;
}

/** "miss 3ch (counts as tr)": chains that count are chains of the foundation, one by one, and no space. */
function chainsSkipped(target: Target): Target {
  if (target.what.is !== "space" || target.what.chains === undefined || target.ref !== "next") return target;
  const count = { span: target.span, values: [target.what.chains] };
  return { ...target, count, what: { is: "chain" } };
}

function readRepeatOrGroup(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  const claims = reading.claims.length;
  const found = cursor.attempt(() => {
    cursor.at = close + 1;
    const stop = stopAfter(reading);
    const afterStop = cursor.at;
    cursor.accept("all|each|worked|made|both");
    const place = cursor.attempt(() => (cursor.fits("to") ? null : readPlace(reading)));
    // "(20 sts) at the end of round 12": a count, and then where.
    if (
      place?.target.what.is === "row-end" &&
      cursor.tokens[close + 1]?.is === "word" &&
      (cursor.tokens[close + 1] as { norm: string }).norm === "at"
    )
      return null;
    if (!place) cursor.at = afterStop;
    if (!stop && !place) return null;
    const end = cursor.at;
    cursor.at = open + 1;
    const before = reading.inRepeat;
    reading.inRepeat = stop?.by === "times";
    const body = reading.inside(close);
    reading.inRepeat = before;
    if (body.length === 0) return null;
    cursor.at = close + 1;
    const inner: RepeatClause | null = stop
      ? {
          kind: "repeat",
          span: { from: cursor.spanFrom(open).from, to: Math.max(stop.span.to, cursor.spanFrom(open).to) },
          body: settleAlone(body),
          stop,
          style: "bracket",
        }
      : null;
    cursor.at = end;
    readEndAtInner(reading);
    const span = cursor.spanFrom(open);
    if (place)
      return [{ kind: "group", span, body: inner ? [inner] : body, target: place.target }] satisfies Clause[];
    return [{ ...(inner as RepeatClause), span: { from: span.from, to: span.to } }] satisfies Clause[];
  });
  if (!found) reading.claims.length = claims;
  return found;
}

/** "6 times", "x 9", "twice", "*6", "across", "Repeat 6 times". */
function stopAfter(reading: Reading): Stop | null {
  const { cursor } = reading;
  if (
    cursor.isMark("*") &&
    cursor.isNumber(1) &&
    (cursor.isBoundary(2) ||
      cursor.fits("times|time|x|-|=", 2) > 0 ||
      cursor.isOpener(2) ||
      cursor.isMark("*", 2))
  ) {
    cursor.at += 1;
    const start = cursor.at - 1;
    const times = readAmount(reading);
    cursor.accept("times|time|x");
    return times ? { by: "times", span: cursor.spanFrom(start), times, counting: "total" } : null;
  }
  const plain = readStop(reading, false, true);
  if (plain) return plain;
  return cursor.attempt(() => {
    cursor.accept(",|.|;");
    cursor.accept("and");
    if (!cursor.accept("rep|repeat|repeated|rpt")) return null;
    if (cursor.accept("from|between|instructions|what")) return null;
    cursor.accept("this|these|the|in? sequence|pattern|brackets|parentheses|section|bracket?");
    return (
      readStop(reading, true, true) ??
      (cursor.isBoundary() ? ({ by: "unsaid", span: cursor.emptyHere() } satisfies Stop) : null)
    );
  });
}

/** "(V-st made)", "(first shell made)", "(dec made)". */
function readNamedBracket(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const named = cursor.within(close, () => readMade(reading) && cursor.done);
    if (!named) return null;
    const words = nameOf(reading, open + 1);
    cursor.at = close + 1;
    return nameLast(reading, words, cursor.spanFrom(open).to)
      ? []
      : [{ kind: "aside", span: cursor.spanFrom(open) }];
  });
}

/** "Ch 3, sl st in 3rd ch from hook (picot)": the name of what was just made, where that cannot be one more stitch. */
function readNameAlone(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor, out } = reading;
  const [before, last] = out.slice(-2);
  const picot =
    last?.kind === "work" &&
    (last.stitch === "sl st" || last.stitch === "sc") &&
    (last.target.from === "hook" || last.target.ref === "same") &&
    before?.kind === "chain";
  if (!picot) return null;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const stitch = cursor.within(close, () => stitchAt(cursor, reading, 0, false));
    if (!stitch?.code.includes("picot") || open + 1 + stitch.length !== close) return null;
    cursor.at = close + 1;
    return nameLast(reading, stitch.code, cursor.spanFrom(open).to) ? [] : null;
  });
}

/** Steps over "shell made", "first V-st formed"; false where the words are none. */
export function readMade(reading: Reading): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  for (let words = 0; words < 7 && (cursor.isWord() || cursor.isNumber() || cursor.isMark("-")); words += 1) {
    if (words > 0 && cursor.accept("made|formed|completed|created|complete|worked|done")) return true;
    if (cursor.fits("in|into|turn|across|around|to")) break;
    cursor.at += 1;
  }
  cursor.at = start;
  return false;
}

/** The name given by "first V-st made" from a token on: a stitch of the dictionary by its code, else the words. */
export function nameOf(reading: Reading, from: number): string {
  const { cursor } = reading;
  const words = cursor
    .wordsFrom(from)
    .toLowerCase()
    .replace(/\s+(made|formed|completed|created|complete|worked|done)$/u, "")
    .replace(/^(a|an|the|first|1st|1|one|beginning|beg) /u, "")
    .trim();
  const start = cursor.fits("a|an|the|first|1st|one|beginning|beg", from - cursor.at) ? from + 1 : from;
  const stitch = stitchAt(cursor, reading, start - cursor.at, false);
  return stitch && start + stitch.length === cursor.at - 1 ? stitch.code : words;
}

/** Gives a name to the stitch or group just read. */
export function nameLast(reading: Reading, name: string, to: number): boolean {
  const { out } = reading;
  const last = out[out.length - 1];
  if (!last || (last.kind !== "work" && last.kind !== "group")) return false;
  out[out.length - 1] = { ...last, named: name, span: { from: last.span.from, to } };
  return true;
}

/** "(see notes)", "(or ch 40)", "(about 11 inches)": what begins like this orders nothing. */
const TALK_HEADS =
  "see|or|no|the|this|these|that|we|i|e|note|tip|hint|photo|pic|about|approx|approximately|optional|my|mine|refer|roughly|adjust|adapt|which|because|don't|remember|think|usually|count|not|if|when";

function readPlain(reading: Reading, open: number, close: number): readonly Clause[] {
  const { cursor } = reading;
  const claims = reading.claims.length;
  cursor.at = open + 1;
  if (
    (cursor.fits(TALK_HEADS) ||
      cursor.fits("to|how decrease|dec|increase|inc|to|make :|,|decrease|increase|dec|inc?") ||
      cursor.fits("always? counts|count|counting as part|half of") ||
      (reading.out.at(-1)?.kind === "chain" && cursor.fits("inclusive|including|incl|includes"))) &&
    (!cursor.fits("if|when") || cursor.fits("when you")) &&
    !(
      cursor.fits("not|no|this|these|that|we|the") &&
      hasFigure(reading, close) &&
      !cursor.fits("the top|one|last|first|foot|side")
    )
  ) {
    cursor.at = close + 1;
    return [{ kind: "aside", span: cursor.spanFrom(open) }];
  }
  // "[32in]": the same length in another unit.
  const measure = cursor.within(close, () => readMeasure(reading) !== null && cursor.done);
  if (measure) {
    cursor.at = close + 1;
    return [{ kind: "aside", span: cursor.spanFrom(open) }];
  }
  cursor.at = open + 1;
  const explained = readExplained(reading, open, close);
  if (explained) return explained;
  cursor.at = open + 1;
  const body = reading.inside(close);
  cursor.at = close + 1;
  const span = cursor.spanFrom(open);
  const unread = body.some((clause) => clause.kind === "remark");
  const workable = body.some((clause) => clause.kind !== "remark" && clause.kind !== "aside");
  if (!workable || (unread && isTalk(reading, open, close))) {
    reading.claims.length = claims;
    // Words in brackets that name neither stitch nor number are talk; others may decide something and are said to be unread.
    if (!unread || isTalk(reading, open, close)) return [{ kind: "aside", span }];
    return [{ kind: "remark", span, words: reading.words(span) }];
  }
  const bare = body.every(
    (clause) => clause.kind === "chain" || (clause.kind === "work" && clause.target.ref === "here"),
  );
  const stitches = body.filter((clause) => clause.kind === "work").length;
  if (bare && stitches >= 2) {
    const next = { span: { from: span.to, to: span.to }, ref: "next", what: { is: "any" } } as const;
    return [
      {
        kind: "choice",
        span,
        form: "bracket-group-or-sequence",
        options: [body, [{ kind: "group", span, body, target: next }]],
      },
    ];
  }
  return body;
}

/** "shell in next st (2 dc, ch 2, 2 dc)": the bracket says again what the named stitch is made of. */
function readExplained(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor, out } = reading;
  const last = out[out.length - 1];
  const before = cursor.tokens[open - 1];
  if (last?.kind !== "work" || last.target.ref === "here" || !before || before.span.to !== last.span.to)
    return null;
  if (
    !/^(v-stitch|shell|fan|cluster|puff|bobble|popcorn|picot|inc|dec|y-stitch)$|-(shell|cluster|puff|bobble|popcorn|v-stitch)$/u.test(
      last.stitch,
    ) &&
    !isSpecial(reading, last.stitch)
  )
    return null;
  const claims = reading.claims.length;
  cursor.at = open + 1;
  const body = reading.inside(close);
  reading.claims.length = claims;
  cursor.at = close + 1;
  const bare =
    body.length > 0 &&
    body.every(
      (clause) =>
        clause.kind === "chain" ||
        (clause.kind === "work" && (clause.target.ref === "here" || clause.target.ref === "same")),
    );
  return bare ? [{ kind: "aside", span: cursor.spanFrom(open) }] : null;
}

function isSpecial(reading: Reading, code: string): boolean {
  for (const name of reading.specials.values()) if (name === code) return true;
  return false;
}

function hasFigure(reading: Reading, close: number): boolean {
  const { cursor } = reading;
  for (let at = cursor.at; at < close; at += 1) {
    const token = cursor.tokens[at];
    if (token?.is === "number" && !token.word) return true;
  }
  return false;
}

/** No stitch is worked by these words: prose without a number and without the name of a stitch. */
function isTalk(reading: Reading, open: number, close: number): boolean {
  const { cursor } = reading;
  for (let at = open + 1; at < close; at += 1) {
    const token = cursor.tokens[at];
    if (token?.is === "number" && !token.word) return false;
    if (token?.is === "mark" && (token.text === "*" || token.text === "**")) return false;
    if (token?.is === "word" && stitchAt(cursor, reading, at - cursor.at, false)) return false;
  }
  return true;
}
