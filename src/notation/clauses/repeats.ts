import type { Amount, Clause, Stop } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readLimit } from "./limits.ts";
import type { Reading } from "./reading.ts";
import { readTarget } from "./targets.ts";

/** "rep from *" and its kin: what was named, and where it stops. */
export interface RepeatWords {
  readonly start: number;
  /** "from * to *", "between stars": the words name a pair. */
  readonly pair: boolean;
  /** The star, or null for "repeat to end". */
  readonly mark: string | null;
  /** "ending last rep at **", "from * to **". */
  readonly endsAtInner: boolean;
  readonly stop: Stop;
}

const STARS = ["*", "**", "#", '"'];

export function isStar(reading: Reading, ahead = 0): boolean {
  return STARS.slice(0, 3).some((mark) => reading.cursor.isMark(mark, ahead));
}

/** Reads "rep from * across", "repeat from * to * 8 times", "rep to end"; null where no repeat is called. */
export function readRepeatWords(reading: Reading): RepeatWords | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const counted = readCountedCall(reading, start);
    if (counted) return counted;
    cursor.accept("and|then");
    if (
      !cursor.accept("rep|repeat|repeating|rpt|reps|repeats|rept|cont|continue|repeated") &&
      !(isWorkBetween(reading) && cursor.accept("work|working"))
    )
      return null;
    cursor.accept("the? pattern|instructions|sequence|section|steps|directions|stitches|sts?");
    cursor.accept("rep|repeating");
    let mark: string | null = null;
    let pair = false;
    let inner = false;
    cursor.accept("what is?");
    if (cursor.accept("from|between|at|in|the|inside|within the? first|single|last?")) {
      // A line of the page may end between "from" and its star.
      if (cursor.isMark(".") && isStar(reading, 1)) cursor.at += 1;
      mark = readMark(reading);
      // "rep from another 7 times", "rep from to end": pages lose the star.
      if (!mark && /from$/iu.test(cursor.wordsFrom(start)) && stopsHere(reading)) mark = "*";
      else if (!mark) return null;
      else if (cursor.accept("to|and|through|until|-|/")) {
        const second = readMark(reading);
        if (second) {
          pair = second === mark;
          inner = !pair;
        } else cursor.at -= 1;
      } else if (isStar(reading)) {
        // "between **" or "between * *".
        cursor.at += 1;
        pair = true;
      }
      cursor.accept("s");
      if (mark === "**" && /between|within|inside/iu.test(cursor.wordsFrom(start))) pair = true;
    } else {
      mark = readMark(reading);
      if (mark && cursor.accept("to|and|-")) {
        const second = readMark(reading);
        pair = second === mark;
        if (!second) cursor.at -= 1;
      } else if (mark && isStar(reading)) {
        cursor.at += 1;
        pair = true;
      }
    }
    const stop = readStop(reading, pair);
    if (!mark) cursor.accept("the? following");
    if (!mark && !stop) return null;
    // "and continue across": goes on as before and repeats nothing.
    if (!mark && /^(?:and |then )*cont/iu.test(cursor.wordsFrom(start)) && stop?.by === "limit") return null;
    if (!mark && stop?.by === "limit" && stop.limit.at !== "end" && stop.limit.at !== "last") return null;
    const once = mark !== null && !inner && readOnceMoreToInner(reading, mark);
    const late = once || readEndAtInner(reading);
    return {
      start,
      pair,
      mark,
      endsAtInner: inner || late,
      stop: once && stop ? onceMore(stop) : (stop ?? { by: "unsaid", span: cursor.emptyHere() }),
    };
  });
}

/** "..., then from * to ** once more": the last turn of the repeat, which stops at the inner mark. */
function readOnceMoreToInner(reading: Reading, mark: string): boolean {
  const { cursor } = reading;
  const read = cursor.attempt(() => {
    cursor.accept(",|;|.");
    cursor.accept("then|and|, then? then?");
    cursor.accept("rep|repeat|rpt|work|working");
    if (!cursor.accept("from") || readMark(reading) !== mark || !cursor.accept("to|until|through"))
      return null;
    const inner = readMark(reading);
    if (inner === null || inner === mark) return null;
    cursor.accept("once|1 more|again?");
    cursor.accept("more|again|time");
    return true;
  });
  return read === true;
}

/** The stop of a repeat whose last turn is told apart. */
function onceMore(stop: Stop): Stop {
  if (stop.by !== "times") return stop;
  return {
    ...stop,
    times: { ...stop.times, values: stop.times.values.map((times) => (times === null ? null : times + 1)) },
  };
}

/** "work * to * across", "work from * to * 5 times": the verb of a call that names both stars. */
export function isWorkBetween(reading: Reading, ahead = 0): boolean {
  const { cursor } = reading;
  if (!cursor.fits("work|working", ahead)) return false;
  const star = ahead + (cursor.fits("from|between", ahead + 1) > 0 ? 2 : 1);
  return isStar(reading, star) && cursor.fits("to|and|through", star + 1) > 0 && isStar(reading, star + 2);
}

/** Whether words that end a repeat stand here. */
function stopsHere(reading: Reading): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  const stop = readStop(reading, false);
  cursor.at = start;
  return stop !== null && (stop.by === "times" || (stop.by === "limit" && stop.limit.at !== "count"));
}

/** "work 6 times total from *": the number before the star. */
function readCountedCall(reading: Reading, start: number): RepeatWords | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    if (!cursor.accept("work|complete|do|make")) return null;
    const times = readAmount(reading);
    if (!times || !cursor.accept("times")) return null;
    const total = cursor.accept("in? total|all");
    const more = !total && cursor.accept("more");
    if (!cursor.accept("from")) return null;
    // A star lost at the end of a line is still the one star there is.
    const mark = readMark(reading) ?? (cursor.isBoundary() ? "*" : null);
    if (!mark) return null;
    const counting = total ? "total" : more ? "extra" : "either-total";
    return {
      start,
      pair: false,
      mark,
      endsAtInner: false,
      stop: { by: "times", span: cursor.spanFrom(start), times, counting },
    };
  });
}

function readMark(reading: Reading): string | null {
  const { cursor } = reading;
  for (const mark of STARS) if (cursor.acceptMark(mark)) return mark;
  if (cursor.accept("asterisk|asterisks|star|stars|astrisk")) return "*";
  const start = cursor.at;
  if (cursor.isOpener() && isStar(reading, 1) && cursor.isCloser(2)) {
    cursor.at += 3;
    return "*";
  }
  cursor.at = start;
  return null;
}

/** "ending last rep at **", "end at **", "to **". */
export function readEndAtInner(reading: Reading): boolean {
  return (
    reading.cursor.attempt(() => {
      const { cursor } = reading;
      cursor.accept(",|;|.");
      cursor.accept("and|but");
      if (!cursor.accept("ending|end|ends|stop|stopping|finishing|finish|omit")) return null;
      cursor.accept("the? last|final rep|repeat|time|pattern?") || cursor.accept("each");
      cursor.accept("at|on|with|after|before");
      cursor.accept("the");
      return cursor.acceptMark("**", "#") || cursor.acceptMark("*") ? true : null;
    }) === true
  );
}

/** "across", "to last 4 sts", "3 more times", "twice", "x 9", "a total of 6 times"; null where no stop is said. */
export function readStop(reading: Reading, pair: boolean, bracket = false): Stop | null {
  const { cursor } = reading;
  const start = cursor.at;
  const times = readTimesStop(reading, pair, bracket);
  if (times) {
    // "x 12 times to the end of the round": the limit only says it again.
    readLimit(reading, (inner) => readTarget(inner));
    return times;
  }
  cursor.at = start;
  if (bracket && !cursor.fits("across|around|to|until|round|all|accross|till|rep|repeat")) return null;
  const limit = cursor.attempt(() => {
    cursor.accept(",");
    cursor.accept("rep|repeat");
    cursor.accept("evenly");
    return readLimit(reading, (inner) => readTarget(inner));
  });
  if (limit) return { by: "limit", span: cursor.spanFrom(start), limit };
  cursor.at = start;
  return null;
}

function readTimesStop(reading: Reading, pair: boolean, bracket: boolean): Stop | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(",");
    cursor.accept("for|until");
    let total = cursor.accept("a total of") || cursor.accept("total of") || cursor.accept("in total|all");
    let extra =
      cursor.accept("an|a additional|further") ||
      cursor.accept("another additional?") ||
      cursor.accept("additional|an");
    cursor.accept("additional");
    const crossed = cursor.accept("x");
    const token = cursor.token();
    if (
      bracket &&
      token?.is === "number" &&
      token.word &&
      !crossed &&
      !/^(once|twice|thrice)$/iu.test(token.text) &&
      !cursor.fits("times|time|more|x", 1)
    )
      return null;
    const times: Amount | null = readAmount(reading);
    if (!times || token?.is !== "number") return null;
    const only = token.word && /^(once|twice|thrice)$/iu.test(token.text);
    extra = cursor.accept("more|additional|further|other") || extra;
    const said = cursor.accept("times|time|x|xs|repeats") || only || crossed;
    cursor.accept("over");
    extra = cursor.accept("more|again|extra|further") || extra;
    total = cursor.accept("in all|total") || cursor.accept("total|altogether|all-together") || total;
    if (!said && !(extra && !bracket) && !(!bracket && (cursor.isBoundary() || cursor.fits("and|then|-|="))))
      return null;
    if (bracket && cursor.fits("in|into")) {
      // "(dc, ch 1) 3 times in next sp": the place is read by whoever reads the bracket.
    }
    const inAll = readInAll(reading);
    if (inAll) return { by: "times", span: cursor.spanFrom(start), times: inAll, counting: "total" };
    const counting = total
      ? "total"
      : extra
        ? "extra"
        : bracket
          ? "total"
          : pair
            ? "either-total"
            : "either-extra";
    return { by: "times", span: cursor.spanFrom(start), times, counting };
  });
}

/** "5 times (6 in total)": how often it is done with the first time. */
function readInAll(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const close = cursor.partner[cursor.at] ?? -1;
    if (!cursor.isOpener() || close < 0 || close >= cursor.limit) return null;
    cursor.at += 1;
    const times = readAmount(reading);
    if (
      !times ||
      !(cursor.accept("times|time? in all|total") || cursor.accept("times|time? altogether|total"))
    )
      return null;
    if (cursor.at !== close) return null;
    cursor.at = close + 1;
    return times;
  });
}

/** Clauses that set up a row before its stitches: they are in no repeat that has lost its star. */
export function isSetUp(clause: Clause): boolean {
  return [
    "chain",
    "turn",
    "aside",
    "colour",
    "loops",
    "facing",
    "marker",
    "join-yarn",
    "hook",
    "join",
    "do-not-turn",
    "do-not-join",
    "along",
    "fasten-off",
  ].includes(clause.kind);
}
