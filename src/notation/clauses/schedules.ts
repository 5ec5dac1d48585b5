import { stitchAt } from "../stitch-words.ts";
import type {
  Amount,
  Beat,
  Clause,
  EvenClause,
  EvenlyClause,
  InPatternClause,
  ScheduleClause,
  Target,
} from "../tree.ts";
import { readAmount, readAmountOrArticle, readOrdinal } from "./amounts.ts";
import { readAlong } from "./edges.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";
import { ROW, readUntil } from "./rows-meant.ts";
import { readEachToLimit, readPlace } from "./targets.ts";

const INC = "inc|increase|increasing|incr|increased";
const DEC = "dec|decrease|decreasing|decr|decreased";

/** "inc 1 st each end of next row, then every 4th row 6 times", "dec 1 st at neck edge every row 5 times". */
export function readSchedule(reading: Reading): ScheduleClause | readonly ScheduleClause[] | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const together = acceptTogether(reading);
    cursor.accept("continue|cont|continuing to?") || cursor.accept("begin|start|beginning|then|and|also to?");
    cursor.accept("shape by");
    const bound = cursor.accept("bind|cast off");
    const change = cursor.accept(INC) ? "inc" : bound || cursor.accept(DEC) ? "dec" : null;
    if (!change) return null;
    if (bound && !cursor.isNumber()) return null;
    const by = readAmountOrArticle(reading) ?? { span: cursor.emptyHere(), values: [1] };
    const stitch = stitchAt(cursor, reading, 0, false);
    if (stitch) cursor.at += stitch.length;
    else cursor.accept("st|sts|stitch|stitches");
    // "—by working 2 sts in 1 st—": how it is done stands between dashes.
    if (cursor.isMark("-") && cursor.fits("by", 1)) {
      let end = 2;
      while (cursor.token(end) && !cursor.isMark("-", end)) end += 1;
      if (cursor.token(end)) cursor.at += end + 1;
    }
    const beats: Beat[] = [];
    let first: Amount | undefined;
    // The rows may be said before the edge: "dec 1 st every row at neck edge 5 times".
    const early = readBeat(reading);
    // "decrease 1 every 8 rows 4 times" says no edge: older patterns leave it to the piece.
    const where = readEdgeWord(reading) ?? (early ? "one-edge" : null);
    if (!where) return null;
    const atFirst = cursor.spanFrom(start);
    const second = readSecondEdge(reading);
    const behindEdge = cursor.at;
    const comma = cursor.isMark(",");
    cursor.accept("of|on|in|,");
    const ofRow = cursor.accept("of? the|this? row|rnd|round") || cursor.accept("row|rnd|round");
    const next = ofRow ? null : readFirstRow(reading);
    // "Dec 1 st at each end, sc across": the comma parts what is shaped from what is worked.
    if (comma && !ofRow && !next) cursor.at = behindEdge;
    if (next) first = next.first;
    if (early) beats.push(early.times ? early : { ...early, ...timesHere(reading) });
    if (next?.run) beats.push({ span: cursor.spanFrom(start), every: one(reading), times: next.run });
    for (let guard = 0; guard < 6; guard += 1) {
      const beat = cursor.attempt(() => {
        cursor.accept(",|;");
        cursor.accept("and|then|&|followed by?");
        cursor.accept("then|on|at|in|, on?");
        cursor.accept("on|in|at|the");
        return readBeat(reading);
      });
      if (!beat) break;
      beats.push(beat);
    }
    if (beats.length === 0 && !next) {
      const times = readTimes(reading);
      if (times) beats.push({ span: cursor.spanFrom(start), every: one(reading), times });
    }
    const until = readUntil(reading) ?? undefined;
    // "..., decreasing 1 st at neck edge": once, in the row that says so.
    const here = beats.length === 0 && !first && !until;
    if (here && !(cursor.isBoundary() || cursor.isOpener())) return null;
    // "Increase 1 at beginning of row.": the whole row; with steps behind it, a stitch of the row.
    const whole =
      ofRow &&
      where !== "each-end" &&
      !reading.out.some((clause) => clause.kind === "work") &&
      isRowsEnd(reading);
    if (here && ofRow && !whole && where !== "each-end") return null;
    const plain = whole || (where === "each-end" && by.span.to > by.span.from);
    if (here && !plain && !/(?:creasing|^decr?ease|^incr?ease)/iu.test(cursor.wordsFrom(start))) return null;
    if (here) beats.push({ span: cursor.spanFrom(start), every: one(reading), times: one(reading) });
    const late =
      together ||
      cursor.attempt(() => {
        cursor.accept(",|;");
        return acceptTogether(reading) && cursor.isBoundary() ? true : null;
      });
    const span = cursor.spanFrom(start);
    const schedule = made<ScheduleClause>({
      kind: "schedule",
      span: second ? atFirst : span,
      change,
      by,
      where,
      first,
      beats,
      until,
      together: late ? true : undefined,
    });
    if (!second) return schedule;
    return [
      schedule,
      { ...schedule, ...second, span: { from: second.by.span.from, to: span.to }, together: true },
    ];
  });
}

/** "dec 1 st at front and 2 at armhole every row": another edge, shaped in the same rows. */
function readSecondEdge(reading: Reading): Pick<ScheduleClause, "by" | "where"> | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    if (!cursor.accept("and|&")) return null;
    const by = readAmount(reading);
    if (!by) return null;
    cursor.accept("st|sts|sc|dc|hdc|stitch|stitches");
    const where = readEdgeWord(reading);
    return where ? { by, where } : null;
  });
}

/** Nothing but the turn stands behind. */
function isRowsEnd(reading: Reading): boolean {
  const { cursor } = reading;
  let ahead = 0;
  while (cursor.isBoundary(ahead) && cursor.token(ahead)) ahead += 1;
  return !cursor.token(ahead) || cursor.fits("turn|ch|chain|join|fasten", ahead) > 0;
}

function one(reading: Reading): Amount {
  return { span: reading.cursor.emptyHere(), values: [1] };
}

function timesHere(reading: Reading): { times?: Amount } {
  const times = readTimes(reading);
  return times ? { times } : {};
}

export function acceptTogether(reading: Reading): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("and");
  if (cursor.accept("at the? same time")) {
    cursor.accept(",|:|-");
    return true;
  }
  cursor.at = start;
  return false;
}

function readEdgeWord(reading: Reading): ScheduleClause["where"] | null {
  return reading.cursor.attempt(() => edgeWord(reading));
}

function edgeWord(reading: Reading): ScheduleClause["where"] | null {
  const { cursor } = reading;
  cursor.accept("at|on|in|to|for");
  cursor.accept("the");
  if (
    cursor.accept("each|both|either|ea|every end|ends|side|sides|edge|edges") ||
    cursor.accept("beg|beginning and|& end")
  ) {
    cursor.accept("of the? marker|markers|m?");
    return "each-end";
  }
  if (
    cursor.accept("each|every marker|m|marked") ||
    cursor.accept("either|both|each side|sides of marker|markers|m")
  )
    return "each-marker";
  if (
    cursor.accept("neck|neckline|front-neck side|edge|edges|end?") ||
    cursor.accept("front|centre|center neck? edge|end")
  )
    return "neck-edge";
  if (cursor.accept("armhole|arm|armholes|raglan|sleeve|side|shoulder edge|edges|end|hole"))
    return "armhole-edge";
  if (cursor.accept("neck")) return "neck-edge";
  if (cursor.accept("armhole|armholes")) return "armhole-edge";
  if (cursor.accept("top|bottom|front|lower|hand|shoulder edge|end|side?")) return "one-edge";
  if (cursor.accept("beg|beginning|start")) return "beginning";
  if (cursor.accept("one|1|other|inner|outer|same|this|that|shaped end|edge|side")) return "one-edge";
  if (cursor.accept("end|last")) return "end";
  return null;
}

/** "next row", "4th row", "next 3 rows", "next and every foll 4th row". */
function readFirstRow(reading: Reading): { first?: Amount; run?: Amount } | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("of|on|in|for");
    if (cursor.fits("each|both of? the? next|following")) cursor.accept("each|both of?");
    cursor.accept("the");
    if (cursor.accept("next|this|following|foll")) {
      const run = readAmount(reading);
      if (cursor.accept(`rs|ws? ${ROW}`))
        return run ? { run } : { first: { span: cursor.spanFrom(cursor.at - 1), values: [1] } };
      return cursor.fits("and|&") ? { first: { span: cursor.spanFrom(cursor.at - 1), values: [1] } } : null;
    }
    if (cursor.fits("every|each|alt|alternate")) return null;
    const nth = readOrdinal(reading);
    if (nth && (cursor.accept(ROW) || cursor.fits("and|&"))) return { first: nth };
    return null;
  });
}

/** "every 4th row 6 times", "every other row", "alternate rows 3 times", "every row", "each foll 6th row". */
function readBeat(reading: Reading): Beat | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    cursor.accept("on|in|at|of");
    const every = cursor.accept("every|each|ea|evry|all") || cursor.accept("the? foll|following|next");
    cursor.accept("foll|following|next");
    if (cursor.fits("end|side|edge|marker|ends|both")) return null;
    let step: Amount | null = null;
    if (cursor.accept("other|alt|alternate|second|alternating"))
      step = { span: cursor.spanFrom(cursor.at - 1), values: [2] };
    else if (every) {
      step =
        readOrdinal(reading) ?? (cursor.isNumber() && !cursor.fits("times", 1) ? readAmount(reading) : null);
      cursor.accept("foll|following");
      if (cursor.accept("alt|alternate|other")) step = { span: cursor.spanFrom(cursor.at - 1), values: [2] };
      cursor.accept("thereafter|after");
    }
    if (!step && !every) return null;
    cursor.accept("rs|ws|right|wrong side?");
    const row = cursor.accept(ROW);
    if (!row && !step) return null;
    if (!row && !cursor.isNumber()) return null;
    cursor.accept("thereafter");
    const times = readTimes(reading);
    return made<Beat>({
      span: cursor.spanFrom(start),
      every: step ?? { span: cursor.spanFrom(start), values: [1] },
      times: times ?? undefined,
    });
  });
}

/** "6 times", "3 (4, 4) more times", "twice", "once more". */
export function readTimes(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept(",");
    cursor.accept("for|a|another");
    cursor.accept("total of");
    const token = cursor.token();
    const amount = readAmount(reading);
    if (!amount || token?.is !== "number") return null;
    cursor.accept("more|further");
    const said = cursor.accept("times|time|x") || (token.word && /^(once|twice|thrice)$/iu.test(token.text));
    cursor.accept("more|in all|total|altogether|only");
    return said ? amount : null;
  });
}

/** "dec 6 sts evenly", "work 48 sc evenly along edge", "sc evenly around", "inc evenly to 84 sts". */
export function readEvenly(reading: Reading): EvenlyClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const early = cursor.accept("evenly");
    cursor.accept(
      "work|working|make|space|spacing|crochet|pick|distribute|place evenly? up? a? row|rnd|round of",
    ) || cursor.accept("work|working|make|crochet|place|space|distribute|pick up?");
    const evenlyFirst = early || cursor.accept("evenly");
    cursor.accept("spaced|distribute");
    const change = cursor.accept(INC) ? "inc" : cursor.accept(DEC) ? "dec" : "make";
    let evenly = evenlyFirst || cursor.accept("evenly");
    if (change !== "make") cursor.accept("by");
    let count = readAmount(reading);
    const found = stitchAt(cursor, reading, 0, false);
    let stitch: string | undefined;
    if (found && found.code !== "ch") {
      stitch = found.code;
      cursor.at += found.length;
      if (stitch === "inc" || stitch === "dec") return null;
      count ??= readAmount(reading);
    } else cursor.accept("st|sts|stitch|stitches|more|times");
    if (change !== "make") cursor.accept("times");
    evenly = evenly || cursor.accept("evenly|even|equally");
    cursor.accept("spaced|spaces|spacing|distributed");
    let total: Amount | undefined;
    const readTotal = () =>
      cursor.attempt(() => {
        cursor.accept(",|-|=");
        if (!cursor.accept("to|for|until|having a? total? of?")) return null;
        cursor.accept("a|there total|are of?");
        const wanted = readAmount(reading);
        if (!wanted) return null;
        readNoun(reading);
        total = wanted;
        return true;
      });
    readTotal();
    const along = readAlong(reading) ?? undefined;
    // "sc along neck edge": an edge that has no stitches of its own is spread over evenly, said or not.
    if (
      along &&
      (stitch || count) &&
      /^(along|across|around|up|down|over)/iu.test(along.words) &&
      !["foundation", "free-loops", "row-ends", "other"].includes(along.edge)
    )
      evenly = true;
    const late = cursor.accept("evenly|spaced evenly?");
    evenly = evenly || late;
    if (!evenly) return null;
    if (!stitch && !count && change === "make") return null;
    cursor.accept("spaced");
    const place = along ? null : readEachToLimit(reading);
    if (!along && !place) cursor.attempt(() => readPlace(reading));
    if (!total) readTotal();
    return made<EvenlyClause>({
      kind: "evenly",
      span: cursor.spanFrom(start),
      change,
      stitch,
      count: count ?? undefined,
      total,
      along,
    });
  });
}

const STRAIGHT = [
  "even|straight|evenly|plain",
  "without shaping|increasing|inc|decreasing|dec|further or? increasing|decreasing|shaping?",
  "without inc|increasing or dec|decreasing",
  "with no inc|increases|increase|shaping or? dec|decreases?",
];
const PATTERN = [
  "in|the main|established|stitch|same? pattern|patt|pat|patts st|sts|stitch?",
  "in|the|est|established|as pattern|patt|pat|patts|st|stitch pattern|patt|pat?",
  "in|the pattern|patt|pat|patts|design",
  "pattern|patt|pat st|stitch? as? set|established|before|est|correct?",
  "as set|established|before",
  "in est|established|set pattern|patt|pat",
];
const KEEPING = [
  "keep|keeping|maintain|maintaining|continuing|cont|continue|work|working to|in? the|in|your? est|established|main|st|stitch? pattern|patt|pat|patts|continuity as? in? correct|set|est|established|straight?",
  "keeping to? patt|pattern|pat correct|as-set",
];

/** "work even for 6 rows", "work straight until ...", "cont in patt until ...", "work 3 rows even", "sc in each st for 10 rows". */
export function readEven(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    let inPattern = false;
    const startRow = readStartRow(reading) ?? undefined;
    if (cursor.acceptAny(KEEPING)) {
      inPattern = /patt?|pat\b/iu.test(cursor.wordsFrom(start));
      cursor.accept("throughout|correct|and|,");
      cursor.accept("throughout|,");
    }
    const verb = cursor.accept(
      "work|working|continue|cont|continuing|proceed|crochet|worked|keep|keeping|knit|now|go on?",
    );
    if (!verb) cursor.accept("make|do");
    cursor.accept("to work|working|crochet|be?") || cursor.accept("work|working|on|to");
    const worked = verb ? null : stitchedRows(reading);
    if (worked)
      return made<EvenClause>({
        kind: "even",
        span: cursor.spanFrom(start),
        rows: worked.rows,
        until: undefined,
        inPattern,
        stitch: worked.stitch,
      });
    let straight = cursor.acceptAny(STRAIGHT);
    let pattern = cursor.acceptAny(PATTERN);
    straight = cursor.acceptAny(STRAIGHT) || straight;
    const rowsFirst = readRowCount(reading);
    straight = cursor.acceptAny(STRAIGHT) || straight;
    const plain = cursor.acceptAny(PATTERN);
    const named = plain || !(rowsFirst !== null || verb) ? null : readNamedPattern(reading);
    pattern = plain || named !== null || pattern;
    let stitch: string | undefined;
    if (rowsFirst || straight) {
      cursor.accept("in|of");
      // "7 rows of 30 sc in circles": how many there are is said as well.
      const counted = cursor.isNumber() ? stitchAt(cursor, reading, 1, false) : null;
      if (counted && counted.code !== "ch") cursor.at += 1;
      const found = stitchAt(cursor, reading, 0, false);
      if (found && found.code !== "ch") {
        stitch = found.code;
        cursor.at += found.length;
        cursor.accept("in|in-the circles|rounds|circle|round");
        cursor.accept("in each|every st|sc|dc|hdc|stitch");
      }
    }
    // "patt over first 20 sts", "patt to end": a stretch of one row, and no rows.
    inPattern = inPattern || pattern;
    if (inPattern && !straight && !rowsFirst && beginsStretch(reading)) return null;
    // "Make 4 more rows", "12 rows", "1 row single crochet": a step of its own.
    const bare =
      rowsFirst !== null &&
      (stitch !== undefined || cursor.isBoundary()) &&
      isStep(reading, start) &&
      reading.depth === 0;
    if (!straight && !inPattern && !(rowsFirst && verb) && !bare) return null;
    if (!straight && !rowsFirst && inPattern && !cursor.fits("until|till|for|over|,|.|to") && !cursor.done)
      return null;
    if (
      cursor.accept("on|over|across the|these|all|rem|remaining|those|this|last|next|first? rem|remaining?")
    ) {
      readAmount(reading);
      cursor.accept("rem|remaining");
      readNoun(reading);
    }
    const until = readUntil(reading) ?? undefined;
    const rows = rowsFirst ?? (until?.more && !until.measure ? until.rows : undefined);
    pattern = cursor.acceptAny(PATTERN) || pattern;
    if (!rows && !until && cursor.fits("to|across|around|row")) return null;
    return made<EvenClause>({
      kind: "even",
      span: cursor.spanFrom(start),
      rows: rows ?? undefined,
      until,
      inPattern: inPattern || pattern,
      pattern: named ?? undefined,
      startRow,
      stitch,
    });
  });
}

/** Whether the words from here on begin a step. */
function isStep(reading: Reading, start: number): boolean {
  const before = reading.cursor.tokens[start - 1];
  return before === undefined || (before.is === "mark" && ".;,:".includes(before.text));
}

/** "work 70 stitches": in whatever the pattern is. */
function countedStitches(reading: Reading): Target | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const start = cursor.at;
    cursor.accept("next|first|rem|remaining");
    const count = readAmount(reading);
    if (
      !count ||
      !cursor.accept("st|sts|stitch|stitches") ||
      cursor.fits("in|into|evenly|tog|together|on|along")
    )
      return null;
    return { span: cursor.spanFrom(start), ref: "next", count, what: { is: "any" } };
  });
}

/** "sc 2 more rounds", "dc for 3 rows". */
function stitchedRows(reading: Reading): { rows: Amount; stitch: string } | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const found = stitchAt(cursor, reading, 0, false);
    if (!found || found.code === "ch" || found.code === "inc" || found.code === "dec") return null;
    cursor.at += found.length;
    const rows = readRowCount(reading);
    return rows && !cursor.fits("below|down|beneath") ? { rows, stitch: found.code } : null;
  });
}

/** "in Texture pattern", "of rib patt", "Stripe Patt": the name of a pattern, "" where the word stands alone. */
function readNamedPattern(reading: Reading): string | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("in|of the?");
    const from = cursor.at;
    for (let words = 0; words <= 3; words += 1) {
      if (cursor.fits("pattern|patt|pat|patts|rib|ribbing|mesh", words)) {
        cursor.at += words;
        // A rib or a mesh is its own name; "pattern" is none.
        const named = cursor.fits("rib|ribbing|mesh") ? 1 : 0;
        cursor.at += named;
        const name = cursor.wordsFrom(from).toLowerCase();
        cursor.at += 1 - named;
        cursor.accept("st|stitch");
        return name;
      }
      if (!cursor.isWord(words) || (words > 0 && stitchAt(cursor, reading, words, false))) break;
    }
    return null;
  });
}

/** "beginning with Row 4," before the rows of a pattern; "beg with a RS row" says no number. */
function readStartRow(reading: Reading): Amount | null {
  const { cursor } = reading;
  const start = cursor.at;
  const found = cursor.attempt(() => {
    if (!cursor.accept("beg|beginning|begin|starting|start with|at|on a|the?")) return null;
    if (cursor.accept(`rs|ws|right|wrong side? ${ROW}`)) return { span: cursor.emptyHere(), values: [] };
    if (!cursor.accept(ROW)) return null;
    return readAmount(reading);
  });
  if (found) {
    cursor.accept(",");
    cursor.accept("and");
  }
  if (found && found.values.length === 0) return null;
  if (!found) cursor.at = start;
  return found;
}

/** "3 rows", "for 6 more rows", "another 4 rnds". */
function readRowCount(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("for|a|another|the|next");
    cursor.accept("next|another|further|total-of");
    const amount = readAmount(reading);
    if (!amount) return null;
    cursor.accept("more|further|additional|pattern|patt|other");
    if (!cursor.accept(ROW) || cursor.isNumber()) return null;
    cursor.accept("more|further");
    return amount;
  });
}

/** "... over first 20 sts", "... to end": behind "in patt". */
function beginsStretch({ cursor }: Reading): boolean {
  if (cursor.fits("to the? end") && (cursor.isBoundary(2) || cursor.isBoundary(3))) return true;
  const ahead =
    cursor.fits("over|across the? first|next|last|rem|remaining|following") || cursor.fits("to the? last");
  return ahead > 0 && cursor.isNumber(ahead);
}

/** "work in patt to last 6 sts", "patt across next 20 sts", "cont in patt across", "work across first 44 sts". */
export function readInPattern(reading: Reading): InPatternClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const verb = cursor.accept("work|working|continue|cont|continuing|crochet|keep|keeping");
    cursor.accept("to work|working") || cursor.accept("even|straight|working|work");
    let pattern = cursor.acceptAny(PATTERN);
    if (!verb && !pattern) return null;
    const each = readEachToLimit(reading);
    const counted = each || pattern ? null : countedStitches(reading);
    const place: Target | null = each ?? counted ?? cursor.attempt(() => readPlace(reading))?.target ?? null;
    pattern = cursor.acceptAny(PATTERN) || pattern;
    if (!place) {
      if (!pattern) return null;
      cursor.accept("row|rnd|round");
      const span = cursor.spanFrom(start);
      return {
        kind: "in-pattern",
        span,
        target: { span: { from: span.to, to: span.to }, ref: "each", what: { is: "any" } },
      };
    }
    if (
      !pattern &&
      !(place.ref === "each" || place.ref === "first" || place.ref === "next" || place.ref === "last")
    )
      return null;
    if (!pattern && place.ref !== "each" && !place.count) return null;
    if (!pattern && place.what.is === "ring") return null;
    return { kind: "in-pattern", span: cursor.spanFrom(start), target: place };
  });
}
