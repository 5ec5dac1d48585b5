import type { Span } from "../../base/index.ts";
import { stitchAt } from "../stitch-words.ts";
import type { Clause, RepeatClause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readAside, readAtRowEnd, readStatement, readTalk, skipFiller } from "./asides.ts";
import { attachCounting, nameLast, nameOf, readBracket, readMade } from "./brackets.ts";
import { readChain, readCountsAs } from "./chains.ts";
import { readColour, readCornerMarks, readHook, readMarker } from "./colours.ts";
import { readAlong, readLoopState, readRotate } from "./edges.ts";
import { readGoesOn } from "./goes-on.ts";
import { readFacing, readFastenOff, readJoin, readJoinYarn, readMagicRing, readTurn } from "./joins.ts";
import { settleLists } from "./listed.ts";
import { readNamedRows, readRowInTurn } from "./named-rows.ts";
import { shortenLast } from "./omissions.ts";
import { readPlaceFirst } from "./place-first.ts";
import { readBareClaim, readIntroducedClaim, readRowClaim } from "./printed-counts.ts";
import type { ClauseReader, OpenMark, Reading } from "./reading.ts";
import { isSetUp, isStar, isWorkBetween, type RepeatWords, readRepeatWords, readStop } from "./repeats.ts";
import { readLateEnding, readRepeatRows, readUntilAlone } from "./rows-meant.ts";
import { readEven, readEvenly, readInPattern, readSchedule } from "./schedules.ts";
import { readAllAsPiece, readAsPiece, readFinishing, readHold, readSeam } from "./seams.ts";
import { settleAlone } from "./settle.ts";
import { readShares } from "./shares.ts";
import { readSizeOnly } from "./sizes-meant.ts";
import { readLeave, readSkip, readStartingPlace } from "./skips.ts";
import { STARTS as MOVEMENTS, readSpelledOut } from "./spelled-out.ts";
import { readAlternate, readLastWorked, readUnderstood, readWork } from "./work.ts";

const readFacingClause: ClauseReader = (reading) => {
  const start = reading.cursor.at;
  const side = readFacing(reading);
  return side ? { kind: "facing", span: reading.cursor.spanFrom(start), side } : null;
};

/** Order matters only where one form of words begins another: the longer form stands first. */
const READERS: readonly ClauseReader[] = [
  readSizeOnly,
  readGoesOn,
  readAtRowEnd,
  readLateEnding,
  readNamedRows,
  readRowInTurn,
  readRepeatRows,
  readSchedule,
  readEvenly,
  readAsPiece,
  readAllAsPiece,
  readEven,
  readPlaceFirst,
  readStartingPlace,
  readLastWorked,
  readMagicRing,
  readSpelledOut,
  readJoinYarn,
  readJoin,
  readFastenOff,
  readTurn,
  readHold,
  readSkip,
  readLeave,
  readCornerMarks,
  readMarker,
  readHook,
  readColour,
  readFacingClause,
  readLoopState,
  readChain,
  readAlternate,
  readWork,
  readAlong,
  readInPattern,
  readSeam,
  readFinishing,
  readRotate,
  readUntilAlone,
  readUnderstood,
  readAside,
];

/** Reads clauses up to the fence of the cursor. */
export function readSequence(reading: Reading): Clause[] {
  return new Sequence(reading).read();
}

class Sequence {
  private readonly out: Clause[] = [];
  private readonly marks: OpenMark[] = [];
  /** The last bracket that was read as plain steps: where its clauses stand in `out`. */
  private bracket: { readonly from: number; readonly to: number; readonly span: Span } | null = null;
  /** Bodies of star pairs already closed, by mark. */
  private readonly closed = new Map<string, readonly Clause[]>();

  constructor(private readonly reading: Reading) {}

  read(): Clause[] {
    const { reading, out } = this;
    const { cursor } = reading;
    reading.out = out;
    while (!cursor.done) {
      const before = cursor.at;
      this.step();
      reading.out = out;
      // Whatever a reader did, the reading goes on: one token at least is passed.
      if (cursor.at <= before) cursor.at = before + 1;
    }
    return settleLists(out);
  }

  private step(): void {
    const { reading } = this;
    const { cursor } = reading;
    if (isStar(reading)) {
      this.star();
      return;
    }
    if (cursor.isOpener()) {
      const start = cursor.at;
      const movements = cursor.fits(MOVEMENTS, 1) ? readSpelledOut(reading) : null;
      if (movements) {
        this.push([movements as Clause]);
        return;
      }
      cursor.at = start;
      const from = this.out.length;
      const clauses = readBracket(reading);
      this.push(clauses);
      if (clauses.length > 0) this.bracket = { from, to: this.out.length, span: cursor.spanFrom(start) };
      return;
    }
    if (this.introducedClaim() || readRowClaim(reading) || this.made() || this.bareClaim() || this.counting())
      return;
    const token = cursor.token();
    if (token?.is === "mark") {
      cursor.at += 1;
      return;
    }
    const at = cursor.at;
    if (this.repeatBrackets()) return;
    cursor.at = at;
    const repeat = readRepeatWords(reading);
    if (repeat && this.repeat(repeat)) return;
    cursor.at = at;
    // The pattern's own stitches go before words of the trade that begin alike: "joined side sp".
    if (stitchAt(cursor, reading, 0, false)?.special) {
      const own = readWork(reading);
      if (own && cursor.at > at) {
        this.push(Array.isArray(own) ? (own as readonly Clause[]) : [own as Clause]);
        return;
      }
      cursor.at = at;
    }
    if (this.timesOver()) return;
    for (const read of READERS) {
      const start = cursor.at;
      const found = read(reading);
      if (found && cursor.at > start) {
        if (read === readColour && this.namesColourOfLast(found as Clause, start)) return;
        this.push(Array.isArray(found) ? (found as readonly Clause[]) : [found as Clause]);
        return;
      }
      cursor.at = start;
    }
    if (this.talk()) return;
    if (this.spreadAcross()) return;
    if (skipFiller(reading)) return;
    this.remark();
  }

  private push(clauses: readonly Clause[]): void {
    this.out.push(...clauses);
  }

  /** "Sc in next 3 sts with A,": a colour named right behind a stitch is what that stitch is made in, so it goes before. */
  private namesColourOfLast(found: Clause, start: number): boolean {
    const { cursor } = this.reading;
    const last = this.out.at(-1);
    const [word, before] = [cursor.tokens[start], cursor.tokens[start - 1]];
    if (found.kind !== "colour" || last?.kind !== "work" || before?.is === "mark" || !cursor.isBoundary())
      return false;
    if (word?.is !== "word" || !/^(?:with|using|in)$/u.test(word.norm)) return false;
    this.out.splice(-1, 1, found, last);
    return true;
  }

  private talk(): boolean {
    const found = readTalk(this.reading) ?? readStatement(this.reading);
    if (!found) return false;
    this.push([found]);
    return true;
  }

  /** What no reader knows, up to the next separator; an unknown stretch is one remark. */
  private remark(): void {
    const { cursor } = this.reading;
    const start = cursor.at;
    do cursor.at += 1;
    while (!cursor.isBoundary() && !cursor.isOpener() && !isStar(this.reading) && !cursor.fits("then|turn"));
    const span = cursor.spanFrom(start);
    this.push([{ kind: "remark", span, words: this.reading.words(span) }]);
  }

  /** A colon behind a count shares it out; that is read first. */
  private introducedClaim(): boolean {
    const shares = readShares(this.reading);
    if (shares) this.push([shares]);
    return shares !== null || readIntroducedClaim(this.reading);
  }

  private bareClaim(): boolean {
    const { reading } = this;
    // Within a star repeat that is still to be called nothing is counted.
    if (!reading.cursor.isNumber() || this.marks.some((open) => this.calledLater(open.mark))) return false;
    return readBareClaim(reading);
  }

  /** "- shell made": names what was just worked. */
  private made(): boolean {
    const { reading } = this;
    const { cursor } = reading;
    const done = cursor.attempt(() => {
      const start = cursor.at;
      if (!cursor.acceptMark("-", ",", "=")) return null;
      cursor.acceptMark("-");
      const from = cursor.at;
      if (!readMade(reading) || !(cursor.isBoundary() || isStar(reading))) return null;
      if (!nameLast(reading, nameOf(reading, from), cursor.spanFrom(start).to))
        this.push([{ kind: "aside", span: cursor.spanFrom(from) }]);
      return true;
    });
    return done === true;
  }

  /** ", counts as first dc," after a chain. */
  private counting(): boolean {
    const { reading } = this;
    const { cursor } = reading;
    if (!cursor.isWord() && !cursor.isMark("=")) return false;
    if (
      !cursor.fits(
        "we|counts|count|counting|which|acts|acting|this|does|do|not|doesn't|to|=|in|turning|will|ch|beg|the|is|for|don't|serves|equals|and|counted|first|t",
      )
    )
      return false;
    if (
      !this.out.some(
        (clause) => clause.kind === "chain" || (clause.kind === "work" && clause.target.from === "hook"),
      )
    )
      return false;
    const done = cursor.attempt(() => {
      if (
        cursor.fits("in|for|to|is|the|this|and") &&
        !cursor.fits("in place|lieu") &&
        !cursor.fits("to count") &&
        !cursor.fits("for first|1st") &&
        !cursor.fits("this|the|and|to counts|will|ch|chain|turning|beg|beginning|counts|count")
      )
        return null;
      if (cursor.fits("ch|beg|first") && !cursor.fits("ch|beg|first ch|-|counts|does|not")) return null;
      const counts = readCountsAs(reading);
      if (!counts || !(cursor.isBoundary() || cursor.fits("turn|and|now|*|1|(|skip|sk|work|in"))) return null;
      return attachCounting(reading, counts) ? true : null;
    });
    return done === true;
  }

  /* ----------------------------------------------------------- repeats */

  private star(): void {
    const { reading, out, marks } = this;
    const { cursor } = reading;
    const token = cursor.token();
    const mark = token?.is === "mark" ? token.text : "*";
    const span = token?.span ?? { from: 0, to: 0 };
    cursor.at += 1;
    const index = marks.findLastIndex((open) => open.mark === mark);
    const open = marks[index];
    if (open) {
      if (open.index === out.length) return;
      this.closePair(open, index);
      return;
    }
    const outer = marks[marks.length - 1];
    if (mark === "**" && outer?.mark === "*" && outer.inner === undefined) {
      outer.inner = out.length;
      // A `**` used as a closing star: the repeat is called straight after it.
      return;
    }
    marks.push({ mark, index: out.length, span });
  }

  /** Takes what stands from a place on off the end; a mark that stood in it is lost with it. */
  private cut(to: number): void {
    const { out, marks } = this;
    if (to < out.length) out.length = to;
    const lost = marks.findIndex((mark) => mark.index > out.length);
    if (lost !== -1) marks.splice(lost);
    for (const mark of marks) if (mark.inner !== undefined && mark.inner > out.length) delete mark.inner;
  }

  private closePair(open: OpenMark, index: number): void {
    const { reading, out } = this;
    const { cursor } = reading;
    const at = cursor.at;
    this.marks.splice(index);
    const called = cursor.attempt(() => {
      while (cursor.acceptMark(",", ";", ".", "-", ":")) {
        /* between the star and the call */
      }
      const words = readRepeatWords(reading);
      if (words) return words.mark === null || words.mark === open.mark || words.pair ? words : null;
      cursor.at = at;
      const stop = readStop(reading, true, true);
      return stop
        ? ({
            start: at,
            pair: true,
            mark: open.mark,
            endsAtInner: false,
            stop: total(stop),
          } satisfies RepeatWords)
        : null;
    });
    const body = out.slice(open.index);
    if (called) {
      this.cut(open.index);
      this.pushRepeat(body, { ...called, pair: true, stop: pairStop(called.stop) }, open, "star-pair");
      return;
    }
    this.closed.set(open.mark, body);
    if (this.calledLater(open.mark)) return;
    this.cut(open.index);
    this.pushRepeat(
      body,
      {
        start: at,
        pair: true,
        mark: open.mark,
        endsAtInner: false,
        stop: { by: "unsaid", span: cursor.emptyHere() },
      },
      open,
      "star-pair",
    );
  }

  /** Whether "repeat from * to *" comes later in the row, so that the pair is worked once where it stands. */
  private calledLater(mark: string): boolean {
    const { cursor } = this.reading;
    // A call that stands further off than this belongs to no star that a maker still remembers.
    for (let ahead = 0; ahead < 400 && cursor.token(ahead); ahead += 1) {
      if (
        (cursor.fits("rep|repeat|rpt|repeating", ahead) || isWorkBetween(this.reading, ahead)) &&
        (cursor.isMark(mark, ahead + 1) ||
          (cursor.fits("from|between|what|the", ahead + 1) &&
            (cursor.isMark(mark, ahead + 2) || cursor.isMark(mark, ahead + 3))))
      )
        return true;
      if (cursor.isMark(mark, ahead)) return false;
    }
    return false;
  }

  private repeat(words: RepeatWords): boolean {
    const { out, marks } = this;
    const index =
      words.mark === null
        ? marks.length - 1
        : marks.findLastIndex(
            (open) => open.mark === words.mark || (words.mark === '"' && open.mark === "*"),
          );
    const open = marks[index];
    if (open) {
      marks.splice(index);
      const body = out.slice(open.index);
      if (body.length === 0) return false;
      this.cut(open.index);
      this.pushRepeat(body, words, open, "star");
      return true;
    }
    const inner = marks.find((mark) => mark.inner !== undefined);
    if (words.mark === "**" && inner?.inner !== undefined && inner.inner < out.length) {
      const body = out.slice(inner.inner);
      this.cut(inner.inner);
      this.pushRepeat(body, words, { ...inner, index: inner.inner }, "star");
      return true;
    }
    const closed = words.mark === null ? undefined : this.closed.get(words.mark);
    if (closed) {
      const span = this.reading.cursor.spanFrom(words.start);
      this.push([{ kind: "repeat", span, body: closed, stop: words.stop, style: "star-pair" }]);
      return true;
    }
    return this.bareRepeat(words);
  }

  /** "work the increase rnd once and the even rnd 3 times, 8 times over": the rows named before, all together. */
  private timesOver(): boolean {
    const { reading, out } = this;
    const { cursor } = reading;
    if (!cursor.isNumber() || !cursor.fits("times over", 1)) return false;
    let from = out.length;
    while (from > 0 && out[from - 1]?.kind === "repeat-rows") from -= 1;
    const first = out[from];
    if (!first) return false;
    const start = cursor.at;
    const stop = readStop(reading, true, true);
    if (!stop) return false;
    const body = out.splice(from);
    this.push([
      {
        kind: "repeat",
        span: { from: first.span.from, to: cursor.spanFrom(start).to },
        body,
        stop: total(stop),
        style: "bare",
      },
    ]);
    return true;
  }

  /** "dc, ch 2 across": the steps before go on to the end, with no word for a repeat. */
  private spreadAcross(): boolean {
    const { reading, out } = this;
    const { cursor } = reading;
    const last = out[out.length - 1];
    if (
      !cursor.fits("across|around") ||
      !(cursor.isBoundary(1) || cursor.isOpener(1) || cursor.isMark("-", 1) || cursor.isMark("=", 1)) ||
      !last ||
      (last.kind !== "chain" && last.kind !== "skip" && !(isPlaced(last) && this.behindComma()))
    )
      return false;
    const start = cursor.at;
    const stop = readStop(reading, false);
    if (stop && this.bareRepeat({ start, pair: false, mark: null, endsAtInner: false, stop })) return true;
    cursor.at = start;
    return false;
  }

  /** "2 dc in next st, dc in next 4 sts, across": parted from the step before, the word is of all of them. */
  private behindComma(): boolean {
    return this.reading.cursor.isMark(",", -1);
  }

  /** "repeat from ( to ) once more", "rep between [ ] 3 times": the bracket read before is worked again. */
  private repeatBrackets(): boolean {
    const { reading, out, bracket } = this;
    const { cursor } = reading;
    if (!bracket || bracket.to > out.length) return false;
    const start = cursor.at;
    if (!cursor.accept("rep|repeat|repeating|rpt")) return false;
    cursor.accept("from|between|what is? in|inside?") || cursor.accept("from|between|in|inside|within|what");
    const named = cursor.accept("the? brackets|parentheses|parenthesis|parens|bracket");
    if (!named) {
      if (!cursor.acceptMark("(", "[", "{")) return false;
      cursor.accept("to|and|-|…");
      if (!cursor.acceptMark(")", "]", "}")) return false;
    }
    const stop = readStop(reading, true) ?? ({ by: "unsaid", span: cursor.emptyHere() } as const);
    const body = out.splice(bracket.from, bracket.to - bracket.from);
    const after = out.splice(bracket.from);
    const span = { from: bracket.span.from, to: cursor.spanFrom(start).to };
    this.push([
      {
        kind: "repeat",
        span: after.length > 0 ? { from: bracket.span.from, to: bracket.span.to } : span,
        body: settleAlone(body),
        stop,
        style: "bracket",
      },
      ...after,
    ]);
    this.bracket = null;
    return true;
  }

  private pushRepeat(
    body: readonly Clause[],
    words: RepeatWords,
    open: OpenMark,
    style: RepeatClause["style"],
  ): void {
    const { reading } = this;
    const { cursor } = reading;
    const span: Span = { from: open.span.from, to: Math.max(cursor.spanFrom(words.start).to, open.span.to) };
    const inner = open.inner === undefined ? undefined : open.inner - open.index;
    const halved = words.endsAtInner && inner !== undefined && inner > 0 && inner < body.length;
    const head = settleLists(halved ? body.slice(0, inner) : body);
    const settled = settleAlone(halved ? [...head, ...settleLists(body.slice(inner))] : head);
    const endBefore = halved ? head.length : undefined;
    const repeat: RepeatClause = {
      kind: "repeat",
      span,
      body: settled,
      stop: words.stop,
      style,
      ...(endBefore === undefined ? {} : { endBefore }),
    };
    const replaced =
      endBefore === undefined ? (this.endOfLast(repeat) ?? shortenLast(reading, repeat)) : null;
    this.push(replaced ?? [repeat]);
  }

  /** "end last rep with dc in tch": the last time round ends otherwise. How much it replaces is not said. */
  private endOfLast(repeat: RepeatClause): readonly Clause[] | null {
    const { reading } = this;
    const { cursor } = reading;
    return cursor.attempt(() => {
      cursor.accept(",|;|.");
      const omitted = this.omitsAtLast(repeat);
      if (omitted) return omitted;
      const last = cursor.accept("ending|end|finishing|finish the? last rep|repeat with|in|by");
      if (!last && !cursor.accept("ending|end with?")) return null;
      const start = cursor.at;
      for (const read of [readChain, readWork, readSkip]) {
        cursor.at = start;
        const found = read(reading);
        if (!found) continue;
        const tail = Array.isArray(found) ? (found as readonly Clause[]) : [found as Clause];
        const span = { from: repeat.span.from, to: cursor.spanFrom(start).to };
        const options: (readonly Clause[])[] = [];
        for (const kept of [1, 2]) {
          const endBefore = repeat.body.length - kept;
          if (endBefore > 0) options.push([{ ...repeat, endBefore }, ...tail]);
        }
        if (last) {
          options.push([repeat, ...tail]);
          return [{ kind: "choice", span, form: "end-of-last-repeat", options }] satisfies Clause[];
        }
        // "..., 1 dc in each of next 2 dc; rep from *, ending 1 dc in each of last 2 dc" may say again how the last time ends.
        if (!saysAgain(repeat.body.at(-1), tail[0]) || !options[0]) return null;
        return [
          { kind: "choice", span, form: "ending-of-repeat", options: [[repeat, ...tail], options[0]] },
        ] satisfies Clause[];
      }
      return null;
    });
  }

  /** "omitting 3 dc at end of last rep": the last time round makes so many fewer of its last stitches. */
  private omitsAtLast(repeat: RepeatClause): readonly Clause[] | null {
    const { reading } = this;
    const { cursor } = reading;
    return cursor.attempt(() => {
      if (!cursor.accept("omitting|omit|leaving-out|less the? last?")) return null;
      const count = readAmount(reading);
      const omitted = stitchAt(cursor, reading, 0, false);
      if (!count || !omitted) return null;
      cursor.at += omitted.length;
      if (!cursor.accept("at|on|from|in the? end? of|on|at? the? last|final rep|repeat|time")) return null;
      const last = repeat.body.at(-1);
      if (last?.kind !== "work" || last.stitch !== omitted.code || !last.target.count) return null;
      const fewer = count.values.map((value) => value ?? 0);
      const all = last.target.count;
      const kept = all.values.map((value, at) => (value ?? 0) - (fewer[at] ?? fewer[0] ?? 0));
      if (kept.some((value) => value <= 0)) return null;
      const part = (values: readonly number[]): Clause => ({
        ...last,
        target: { ...last.target, count: { ...all, values } },
      });
      const body = [...repeat.body.slice(0, -1), part(kept), part(fewer)];
      return [{ ...repeat, body, endBefore: body.length - 1 }];
    });
  }

  /** "rep from *" with no star, "repeat to end": the unit is what stands since the row was set up. */
  private bareRepeat(words: RepeatWords): boolean {
    const { reading, out } = this;
    const { cursor } = reading;
    // "Repeat all around: *ch 1, dc in next 3 sts*": the unit is still to come.
    if (
      words.mark === null &&
      (isStar(reading) || (cursor.isMark(":") && (isStar(reading, 1) || cursor.isOpener(1))))
    ) {
      this.push([{ kind: "aside", span: cursor.spanFrom(words.start) }]);
      return true;
    }
    let first = 0;
    out.forEach((clause, index) => {
      if (isSetUp(clause) && index === first) first = index + 1;
    });
    // A unit already repeated ends before this one begins.
    out.forEach((clause, index) => {
      if (clause.kind === "repeat" && index < out.length - 1) first = Math.max(first, index + 1);
    });
    const last = out[out.length - 1];
    if (first >= out.length || !last) return false;
    const span = (from: number): Span => ({
      from: (out[from] as Clause).span.from,
      to: reading.cursor.spanFrom(words.start).to,
    });
    const build = (from: number): RepeatClause => ({
      kind: "repeat",
      span: span(from),
      body: settleAlone(settleLists(out.slice(from))),
      stop: words.stop,
      style: "bare",
    });
    if (words.mark !== null)
      reading.forgiven.push({
        span: reading.cursor.spanFrom(words.start),
        words: "no star stands before this repeat",
      });
    let opening = first;
    while (opening < out.length - 1 && isOpening(out[opening] as Clause)) opening += 1;
    if (opening > first) {
      const whole = build(first);
      const options: (readonly Clause[])[] = [[...out.slice(first, opening), build(opening)], [whole]];
      this.cut(first);
      this.push([{ kind: "choice", span: whole.span, form: "bare-repeat-unit", options }]);
      return true;
    }
    const whole = build(first);
    this.cut(first);
    this.push([whole]);
    return true;
  }
}

/** Work at the start of a row that is more likely its edge than its repeat: "sc in first st". */
function isOpening(clause: Clause): boolean {
  if (clause.kind === "chain") return true;
  return (
    (clause.kind === "work" || clause.kind === "skip") &&
    (clause.target.ref === "first" || clause.target.ref === "same" || clause.target.from === "hook")
  );
}

/** Whether the end of a row makes the same stitches as the end of its repeat, in its last places. */
function saysAgain(repeated: Clause | undefined, ending: Clause | undefined): boolean {
  return (
    repeated?.kind === "work" &&
    ending?.kind === "work" &&
    repeated.stitch === ending.stitch &&
    ending.target.ref === "last" &&
    (repeated.target.count?.values[0] ?? 1) === (ending.target.count?.values[0] ?? 1)
  );
}

/** A stitch in places by number, which an end of the row cannot belong to. */
function isPlaced(clause: Clause): boolean {
  return clause.kind === "work" && clause.target.ref === "next";
}

/** After a star pair "3 times" is more often all of them than so many more. */
function pairStop(stop: RepeatWords["stop"]): RepeatWords["stop"] {
  return stop.by === "times" && stop.counting === "either-extra"
    ? { ...stop, counting: "either-total" }
    : stop;
}

function total(stop: RepeatWords["stop"]): RepeatWords["stop"] {
  return stop.by === "times" && stop.counting === "either-extra" ? { ...stop, counting: "total" } : stop;
}
