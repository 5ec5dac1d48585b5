import type { Span } from "../../base/index.ts";
import { readClaim } from "../claims.ts";
import type { Clause, RepeatClause } from "../tree.ts";
import { readAside, readAtRowEnd, readTalk, skipFiller } from "./asides.ts";
import { attachCounting, nameLast, nameOf, readBracket, readMade } from "./brackets.ts";
import { readChain, readCountsAs } from "./chains.ts";
import { readColour, readHook, readMarker } from "./colours.ts";
import { readAlong, readLoopState, readRotate } from "./edges.ts";
import { readFacing, readFastenOff, readJoin, readJoinYarn, readMagicRing, readTurn } from "./joins.ts";
import { readPlaceFirst } from "./place-first.ts";
import type { ClauseReader, OpenMark, Reading } from "./reading.ts";
import { isSetUp, isStar, readRepeatWords, readStop, type RepeatWords } from "./repeats.ts";
import { readLateEnding, readRepeatRows, readUntilAlone } from "./rows-meant.ts";
import { readEven, readEvenly, readInPattern, readSchedule } from "./schedules.ts";
import { readAsPiece, readFinishing, readHold, readSeam } from "./seams.ts";
import { settleLists } from "./listed.ts";
import { settleAlone } from "./settle.ts";
import { readSizeOnly } from "./sizes-meant.ts";
import { readLeave, readSkip, readStartingPlace } from "./skips.ts";
import { readSpelledOut, STARTS as MOVEMENTS } from "./spelled-out.ts";
import { readLastWorked, readUnderstood, readWork } from "./work.ts";

const readFacingClause: ClauseReader = (reading) => {
  const start = reading.cursor.at;
  const side = readFacing(reading);
  return side ? { kind: "facing", span: reading.cursor.spanFrom(start), side } : null;
};

/** Order matters only where one form of words begins another: the longer form stands first. */
const READERS: readonly ClauseReader[] = [
  readSizeOnly,
  readAtRowEnd,
  readLateEnding,
  readRepeatRows,
  readSchedule,
  readEvenly,
  readAsPiece,
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
  readMarker,
  readHook,
  readColour,
  readFacingClause,
  readLoopState,
  readChain,
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
    if (isStar(reading)) return this.star();
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
    if (this.introducedClaim() || this.made() || this.bareClaim() || this.counting()) return;
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
    for (const read of READERS) {
      const start = cursor.at;
      const found = read(reading);
      if (found && cursor.at > start) {
        this.push(Array.isArray(found) ? (found as readonly Clause[]) : [found as Clause]);
        return;
      }
      cursor.at = start;
    }
    if (this.talk()) return;
    if (skipFiller(reading)) return;
    this.remark();
  }

  private push(clauses: readonly Clause[]): void {
    this.out.push(...clauses);
  }

  private talk(): boolean {
    const found = readTalk(this.reading);
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

  /* ------------------------------------------------------------ claims */

  /** "- 24 sts", "= 24", ": 24 sc", "total 24", "you will have 24". */
  private introducedClaim(): boolean {
    const { reading } = this;
    const { cursor } = reading;
    if (reading.depth > 0 && !this.insideSizes()) return false;
    const found = cursor.attempt(() => {
      const start = cursor.at;
      const mark = cursor.isMark("-") || cursor.isMark("=") || cursor.isMark(":") || cursor.isMark("…") || cursor.isMark(".");
      while (mark && (cursor.isMark("-") || cursor.isMark("=") || cursor.isMark(":") || cursor.isMark("…") || cursor.isMark("."))) cursor.at += 1;
      const words = cursor.fits("total|you|for|giving|there|makes|now|st|stitch|sts|leaving|making|having|with|count|so|should|rem|and|counts|equals|gives|increase|decrease|inc|dec") > 0;
      if (!mark && !words) return null;
      const strong = cursor.tokens[start];
      const equals = strong?.is === "mark" && strong.text === "=";
      const dot = strong?.is === "mark" && strong.text === "." && !cursor.fits("total|you|there|st|stitch|now");
      if (dot) return null;
      if (mark && !words && !this.worked()) return null;
      if (cursor.isOpener()) return null;
      const claim = readClaim(reading, !mark || (!equals && !this.worked()));
      if (!claim) return null;
      if (words && !mark && claim.parts.length > 0 && /^(inc|dec|increase|decrease|with|and|for)/iu.test(cursor.wordsFrom(start)) && !/^(for|with|and) (a )?total/iu.test(cursor.wordsFrom(start))) return null;
      if (!this.claimMayEnd()) return null;
      return { ...claim, span: cursor.spanFrom(start) };
    });
    if (!found) return false;
    reading.claims.push(found);
    return true;
  }

  private insideSizes(): boolean {
    return false;
  }

  /** A count is followed by the end of the row, of its sentence, or by what ends a row. */
  private claimMayEnd(): boolean {
    const { cursor } = this.reading;
    return cursor.isBoundary() || cursor.fits("turn|join|and turn|fasten|sl|tum|-|ss|do|for|change|changing|=|end|total|slip|now|rep|on|remain") > 0 || endsWithTurningChain(this.reading) || cursor.isOpener();
  }

  private worked(): boolean {
    return this.out.some((clause) => !["chain", "turn", "aside", "facing", "colour", "loops", "hook", "along"].includes(clause.kind));
  }

  /** "24 sc." after a turn, a join or a row that is worked to its end; "(24)" which is one number token. */
  private bareClaim(): boolean {
    const { reading } = this;
    const { cursor } = reading;
    if (reading.depth > 0 || !cursor.isNumber()) return false;
    // Within a star repeat that is still to be called nothing is counted.
    if (this.marks.some((open) => this.calledLater(open.mark))) return false;
    const token = cursor.token();
    const found = cursor.attempt(() => {
      const bracketed = token?.is === "number" && /^[([{<]/u.test(token.text);
      const before = cursor.tokens[cursor.at - 1];
      const sentence = before?.is === "mark" && ".;,:".includes(before.text);
      const noun = cursor.fits("st|sts|stitches|mesh|meshes|blocks", 1) > 0;
      if (!bracketed && !((sentence || noun) && (this.covered() || (noun && this.worked())))) return null;
      if (bracketed && !this.out.some((clause) => clause.kind !== "aside")) return null;
      const claim = readClaim(reading, !bracketed);
      if (!claim || !cursor.isBoundary()) return null;
      // "2 sc, ..." after a covered row is a count only if no work follows.
      const at = cursor.at;
      while (!cursor.done && cursor.isBoundary()) cursor.at += 1;
      const tail = cursor.done || cursor.fits("turn|join|fasten|do|end|total|break|cut|tum|rep|sl|ss|now") > 0 || endsWithTurningChain(reading) || cursor.isOpener() || isStar(reading);
      cursor.at = at;
      return tail ? claim : null;
    });
    if (!found) return false;
    reading.claims.push(found);
    return true;
  }

  /** Whether what was read so far covers the row: nothing is left for more stitches. */
  private covered(): boolean {
    const last = this.lastMeant();
    if (!last) return false;
    if (["turn", "join", "fasten-off", "repeat-rows", "even", "evenly", "do-not-turn", "do-not-join", "leave", "schedule"].includes(last.kind)) return true;
    if (last.kind === "repeat") {
      if (last.stop.by === "limit") return last.stop.limit.at === "end";
      // After "6 times" a comma goes on with the row, a full stop may end it.
      const before = this.reading.cursor.tokens[this.reading.cursor.at - 1];
      return last.stop.by === "times" && before?.is === "mark" && before.text !== ",";
    }
    if (last.kind === "work" || last.kind === "group") return (last.target.ref === "each" || last.target.ref === "last" || last.target.what.is === "turning-chain") && this.worked();
    return false;
  }

  private lastMeant(): Clause | undefined {
    for (let at = this.out.length - 1; at >= 0; at -= 1) {
      const clause = this.out[at];
      if (clause && clause.kind !== "aside") return clause;
    }
    return undefined;
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
      if (!nameLast(reading, nameOf(cursor.wordsFrom(from)), cursor.spanFrom(start).to)) this.push([{ kind: "aside", span: cursor.spanFrom(from) }]);
      return true;
    });
    return done === true;
  }

  /** ", counts as first dc," after a chain. */
  private counting(): boolean {
    const { reading } = this;
    const { cursor } = reading;
    if (!cursor.isWord() && !cursor.isMark("=")) return false;
    if (!cursor.fits("counts|count|counting|which|acts|acting|this|does|do|not|doesn't|to|=|in|turning|will|ch|beg|the|is|for|don't|serves|equals|and|counted|first|t")) return false;
    if (!this.out.some((clause) => clause.kind === "chain" || (clause.kind === "work" && clause.target.from === "hook"))) return false;
    const done = cursor.attempt(() => {
      if (cursor.fits("in|for|to|is|the|this|and") && !cursor.fits("in place|lieu") && !cursor.fits("to count") && !cursor.fits("for first|1st") && !cursor.fits("this|the|and|to counts|will|ch|chain|turning|beg|beginning|counts|count")) return null;
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
      return stop ? ({ start: at, pair: true, mark: open.mark, endsAtInner: false, stop: total(stop) } satisfies RepeatWords) : null;
    });
    const body = out.slice(open.index);
    if (called) {
      out.length = open.index;
      this.pushRepeat(body, { ...called, pair: true }, open, "star-pair");
      return;
    }
    this.closed.set(open.mark, body);
    if (this.calledLater(open.mark)) return;
    out.length = open.index;
    this.pushRepeat(body, { start: at, pair: true, mark: open.mark, endsAtInner: false, stop: { by: "unsaid", span: cursor.emptyHere() } }, open, "star-pair");
  }

  /** Whether "repeat from * to *" comes later in the row, so that the pair is worked once where it stands. */
  private calledLater(mark: string): boolean {
    const { cursor } = this.reading;
    for (let ahead = 0; cursor.token(ahead); ahead += 1) {
      if (cursor.fits("rep|repeat|rpt|repeating", ahead) && (cursor.isMark(mark, ahead + 1) || (cursor.fits("from|between|what|the", ahead + 1) && (cursor.isMark(mark, ahead + 2) || cursor.isMark(mark, ahead + 3))))) return true;
      if (cursor.isMark(mark, ahead)) return false;
    }
    return false;
  }

  private repeat(words: RepeatWords): boolean {
    const { out, marks } = this;
    const index = words.mark === null ? marks.length - 1 : marks.findLastIndex((open) => open.mark === words.mark || (words.mark === '"' && open.mark === "*"));
    const open = marks[index];
    if (open) {
      marks.splice(index);
      const body = out.slice(open.index);
      if (body.length === 0) return false;
      out.length = open.index;
      this.pushRepeat(body, words, open, "star");
      return true;
    }
    const inner = marks.find((mark) => mark.inner !== undefined);
    if (words.mark === "**" && inner?.inner !== undefined) {
      const body = out.slice(inner.inner);
      out.length = inner.inner;
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
    this.push([{ kind: "repeat", span: after.length > 0 ? { from: bracket.span.from, to: bracket.span.to } : span, body: settleAlone(body), stop, style: "bracket" }, ...after]);
    this.bracket = null;
    return true;
  }

  private pushRepeat(body: readonly Clause[], words: RepeatWords, open: OpenMark, style: RepeatClause["style"]): void {
    const { reading } = this;
    const { cursor } = reading;
    const span: Span = { from: open.span.from, to: Math.max(cursor.spanFrom(words.start).to, open.span.to) };
    const inner = open.inner === undefined ? undefined : open.inner - open.index;
    const halved = words.endsAtInner && inner !== undefined && inner > 0 && inner < body.length;
    const head = settleLists(halved ? body.slice(0, inner) : body);
    const settled = settleAlone(halved ? [...head, ...settleLists(body.slice(inner))] : head);
    const endBefore = halved ? head.length : undefined;
    const repeat: RepeatClause = {
      kind: "repeat", span, body: settled, stop: words.stop, style, ...(endBefore === undefined ? {} : { endBefore }),
    };
    const replaced = endBefore === undefined ? this.endOfLast(repeat) : null;
    this.push(replaced ?? [repeat]);
  }

  /** "end last rep with dc in tch": the last time round ends otherwise. How much it replaces is not said. */
  private endOfLast(repeat: RepeatClause): readonly Clause[] | null {
    const { reading } = this;
    const { cursor } = reading;
    return cursor.attempt(() => {
      cursor.accept(",|;|.");
      if (!cursor.accept("ending|end|finishing|finish the? last rep|repeat with|in|by")) return null;
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
        options.push([repeat, ...tail]);
        return [{ kind: "choice", span, form: "end-of-last-repeat", options }] satisfies Clause[];
      }
      return null;
    });
  }

  /** "rep from *" with no star, "repeat to end": the unit is what stands since the row was set up. */
  private bareRepeat(words: RepeatWords): boolean {
    const { reading, out } = this;
    const { cursor } = reading;
    // "Repeat all around: *ch 1, dc in next 3 sts*": the unit is still to come.
    if (words.mark === null && (isStar(reading) || (cursor.isMark(":") && (isStar(reading, 1) || cursor.isOpener(1))))) {
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
    const span = (from: number): Span => ({ from: (out[from] as Clause).span.from, to: reading.cursor.spanFrom(words.start).to });
    const build = (from: number): RepeatClause => ({
      kind: "repeat", span: span(from), body: settleAlone(settleLists(out.slice(from))), stop: words.stop, style: "bare",
    });
    if (words.mark !== null) reading.forgiven.push({ span: reading.cursor.spanFrom(words.start), words: "no star stands before this repeat" });
    let opening = first;
    while (opening < out.length - 1 && isOpening(out[opening] as Clause)) opening += 1;
    if (opening > first) {
      const whole = build(first);
      const options: (readonly Clause[])[] = [[...out.slice(first, opening), build(opening)], [whole]];
      out.length = first;
      this.push([{ kind: "choice", span: whole.span, form: "bare-repeat-unit", options }]);
      return true;
    }
    const whole = build(first);
    out.length = first;
    this.push([whole]);
    return true;
  }
}

/** "ch 1, turn" and nothing more: the row is over. */
function endsWithTurningChain(reading: Reading): boolean {
  const { cursor } = reading;
  let ahead = 0;
  if (cursor.fits("and", ahead)) ahead += 1;
  if (cursor.isNumber(ahead) && cursor.fits("ch|chain", ahead + 1)) ahead += 2;
  else if (cursor.fits("ch|chain", ahead)) {
    ahead += 1;
    if (cursor.isMark("-", ahead)) ahead += 1;
    if (cursor.isNumber(ahead)) ahead += 1;
  } else return false;
  while (cursor.fits(",|.|;|and|to", ahead)) ahead += 1;
  return cursor.fits("turn|tum", ahead) > 0 || cursor.token(ahead) === undefined;
}

/** Work at the start of a row that is more likely its edge than its repeat: "sc in first st". */
function isOpening(clause: Clause): boolean {
  if (clause.kind === "chain") return true;
  return (clause.kind === "work" || clause.kind === "skip") && (clause.target.ref === "first" || clause.target.ref === "same" || clause.target.from === "hook");
}

function total(stop: RepeatWords["stop"]): RepeatWords["stop"] {
  return stop.by === "times" && stop.counting === "either-extra" ? { ...stop, counting: "total" } : stop;
}
