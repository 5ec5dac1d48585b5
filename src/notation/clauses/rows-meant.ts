import { stitchAt } from "../stitch-words.ts";
import type { Amount, Clause, RemarkClause, RepeatRowsClause, RowRange, RowsMeant, Until } from "../tree.ts";
import { readAmount, readMeasure, readOrdinal } from "./amounts.ts";
import { colourHere } from "./colours.ts";
import { readSide } from "./joins.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";

export const ROW = "row|rows|rnd|rnds|round|rounds|rd|rds";

/** "Rep Rows 3 and 4 6 times more", "Rep last 2 rows until ...", "As Row 2", "same as rnd 8", "Work Rows 3 and 4". */
export function readRepeatRows(reading: Reading): RepeatRowsClause | RemarkClause | null {
  return reading.cursor.attempt(() => repeatRows(reading));
}

const AS = [
  "the? same|exactly|identical as|like|to for|in?",
  "as|like for|in|on|per|with?",
  "work|worked|working|crochet|make same? as|like for|in?",
  "work in? the? same manner|way as",
];

function repeatRows(reading: Reading): RepeatRowsClause | RemarkClause | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("is|are") && cursor.accept("basically|worked");
  cursor.accept("then|now|continue|cont|continuing|keep") && cursor.accept("to|and|by|in|on");
  const repeat = cursor.accept("rep|repeat|repeating|rpt|reps|repeats|alternate|alternating|alt|alternately");
  const as = !repeat && cursor.acceptAny(AS);
  const work = !repeat && !as && cursor.accept("work|working|crochet|complete|follow|knit|continue|cont");
  // "then the 2nd and 3rd rows once": goes on from the rows called before.
  const goesOn =
    !repeat &&
    !as &&
    !work &&
    cursor.at > start &&
    reading.out[reading.out.length - 1]?.kind === "repeat-rows";
  if (!repeat && !as && !work && !goesOn && !(cursor.at > start && cursor.fits(ROW))) return null;
  cursor.accept("working|only|also|in|over");
  const carriesOn = !repeat && !as && !work && cursor.at > start && cursor.fits(ROW) > 0;
  if (work) cursor.accept("rep|repeat");
  if (repeat) cursor.accept("from");
  const rows = readRowsMeant(reading, as);
  if (!rows || ((work || carriesOn) && !worked(rows))) return null;
  cursor.accept("pattern|patt");
  cursor.accept("alternately");
  // "over rem 2 (3) shells": over all there is.
  cursor.attempt(() => {
    if (!cursor.accept("over|across|on the? rem|remaining|these|those")) return null;
    const left = readAmount(reading);
    return readNoun(reading) || left ? true : null;
  });
  let until = readUntil(reading) ?? undefined;
  let times = until ? undefined : (readRowTimes(reading) ?? undefined);
  if (!until) until = readUntil(reading) ?? undefined;
  if (!times && until) times = readRowTimes(reading) ?? undefined;
  if (!until) until = readEndingAlone(reading) ?? undefined;
  cursor.accept(
    "throughout the? sweater|piece|work|garment|body|front|back|sleeve|hat|scarf|blanket|pattern|rest",
  );
  const changed = readChange(reading, start);
  if (changed) return changed;
  return made<RepeatRowsClause>({ kind: "repeat-rows", span: cursor.spanFrom(start), rows, times, until });
}

const CHANGES =
  "working|work|worked|make|making|having|have|with|there|in|into|inc|increasing|dec|decreasing|skipping|omitting|omit|starting|beginning|begin|start|using|use|placing|place|replacing|replace|crochet";

/**
 * "as Row 2 but working 1 more dc between increases", "same as Rnd 2 except in sc": the row is worked otherwise than it stands, in a
 * way that its words do not spell out, so that it is not read. A colour, a join or a turn changes nothing that is counted, and is read by itself.
 */
function readChange(reading: Reading, start: number): RemarkClause | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept(",|;");
    if (!cursor.accept("but|except|only") || cursor.isBoundary()) return null;
    cursor.accept("this time|now");
    if (!cursor.isNumber() && !cursor.fits(CHANGES)) return null;
    if (cursor.fits("with|in|using the|color|colour|yarn?") > 0 && colourHere(reading, 1) > 0) return null;
    while (!cursor.isBoundary() && !cursor.isOpener() && !cursor.isMark("-") && !cursor.isMark("="))
      cursor.at += 1;
    const span = cursor.spanFrom(start);
    return { kind: "remark", span, words: reading.words(span) };
  });
}

/** "Work Rows 3 and 4" works rows by number; "work 2 rows" does not name any. */
function worked(rows: RowsMeant): boolean {
  return rows.are === "numbered";
}

const ONE = { span: { from: 0, to: 0 }, values: [1] } as const;

/** "Rows 3 and 4", "Rnds 2-5", "last 2 rows", "2nd and 3rd rows", "this row", "pattern rows". `bare`: "3rd" alone after "as". */
export function readRowsMeant(reading: Reading, bare = false): RowsMeant | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("the|these|those|this|all");
    const demonstrative = cursor.at > start && !/^the$/iu.test(cursor.wordsFrom(start));
    if (cursor.accept("last|previous|prev|preceding|above|foregoing|prior|same")) {
      const count = readAmount(reading);
      cursor.accept("pattern|patt");
      if (!cursor.accept(ROW)) return null;
      return {
        are: "last",
        span: cursor.spanFrom(start),
        count: count ?? { ...ONE, span: cursor.spanFrom(start) },
      };
    }
    if (demonstrative) {
      const count = readAmount(reading);
      cursor.accept("pattern|patt|last");
      if (cursor.accept(ROW))
        return {
          are: "last",
          span: cursor.spanFrom(start),
          count: count ?? { ...ONE, span: cursor.spanFrom(start) },
        };
      return null;
    }
    if (cursor.accept(`pattern|patt|pat|stitch ${ROW}`) && !cursor.isNumber())
      return { are: "pattern", span: cursor.spanFrom(start) };
    if (cursor.accept("pattern|patt|pat") && (cursor.isBoundary() || cursor.fits("until|for|to")))
      return { are: "pattern", span: cursor.spanFrom(start) };
    // "rep row 3 times": the number is how often.
    if (
      cursor.fits("row|rnd|round") &&
      cursor.isNumber(1) &&
      cursor.fits("times|time", 2) &&
      (cursor.isBoundary(3) || cursor.fits("more", 3) > 0)
    ) {
      cursor.at += 1;
      return { are: "last", span: cursor.spanFrom(start), count: { ...ONE, span: cursor.spanFrom(start) } };
    }
    const list =
      cursor.accept(ROW) ||
      cursor.accept("r") ||
      (cursor.isMark("#") && cursor.isNumber(1) && cursor.accept("#"))
        ? readRowList(reading)
        : readOrdinalRows(reading, bare);
    if (!list) return null;
    const piece = readOfPiece(reading);
    return made<RowsMeant & { are: "numbered" }>({
      are: "numbered",
      span: cursor.spanFrom(start),
      list,
      piece: piece ?? undefined,
    });
  });
}

function readOfPiece(reading: Reading): string | null {
  const { cursor } = reading;
  return (
    cursor.attempt(() => {
      if (!cursor.accept("as for the?") && !cursor.accept("of|from|for the?")) return null;
      if (cursor.fits("pattern|patt|stitch")) {
        cursor.at += 1;
        return "";
      }
      const from = cursor.at;
      if (cursor.fits("a|an|total|each|every|all|both|next|another|about|approx|size|sizes|as")) return null;
      while (
        cursor.isWord() &&
        !cursor.fits("across|around|in|over|on|until|for|to|rep|and|ending|work|but|except|over|once|then")
      )
        cursor.at += 1;
      return cursor.at > from && cursor.at - from <= 4 ? cursor.wordsFrom(from) : null;
    }) || null
  );
}

/** "3 and 4", "2-5", "3, 5 and 7", "2 to 5", "2 through 5". */
export function readRowList(reading: Reading): RowRange[] | null {
  const { cursor } = reading;
  const list: RowRange[] = [];
  cursor.accept("#|number|no|numbers");
  for (let guard = 0; guard < 24; guard += 1) {
    const range = cursor.attempt(() => readRange(reading));
    if (!range) break;
    list.push(...range);
    const before = cursor.at;
    if (!(cursor.accept(", and|&?") || cursor.accept("and|&|+|or|then"))) break;
    cursor.accept(ROW);
    cursor.accept("#");
    if (
      !cursor.isNumber() ||
      cursor.fits("times|x|more|time", 1) ||
      (cursor.token() as { word?: boolean }).word
    ) {
      cursor.at = before;
      break;
    }
  }
  return list.length > 0 ? list : null;
}

function readRange(reading: Reading): RowRange[] | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is !== "number" || token.word) return null;
  cursor.at += 1;
  const from: Amount = { span: token.span, values: token.values };
  // The reader of size lists takes "2-5" for two sizes; after "Rows" it is a range, and longer lists of figures are single rows.
  const listed = token.values.length > 1 && !/[([]/u.test(token.text);
  if (listed && token.text.includes("-") && token.values.length === 2) {
    return [
      {
        from: { span: token.span, values: [token.values[0] ?? null] },
        to: { span: token.span, values: [token.values[1] ?? null] },
      },
    ];
  }
  if (listed && token.text.includes(",")) {
    return token.values.map((value) => ({
      from: { span: token.span, values: [value] },
      to: { span: token.span, values: [value] },
    }));
  }
  // "Rep Row 2, (40, 44, 48)": the bracket is the count of every size, which the lexer took for more of the list.
  const { sizes } = reading.context;
  if (token.values.length === sizes + 1 && sizes > 1 && /^\d+,\s*[([]/u.test(token.text)) {
    const comma = token.text.search(/[([]/u);
    const span = { from: token.span.from + comma, to: token.span.to };
    const amount = { span, values: token.values.slice(1) };
    reading.claims.push({ span, parts: [{ span, amount, kind: "any", words: token.text.slice(comma) }] });
    const row = {
      span: { from: token.span.from, to: token.span.from + token.text.indexOf(",") },
      values: token.values.slice(0, 1),
    };
    return [{ from: row, to: row }];
  }
  const start = cursor.at;
  if (cursor.accept("to|thru|through|till|-|up-to")) {
    cursor.accept(`${ROW}|.|-`);
    cursor.accept("-|.");
    const to = cursor.isNumber() && !(cursor.token() as { word?: boolean }).word ? readAmount(reading) : null;
    // "Rep Row 6 - 145 dc": the number behind the dash is a count.
    const counted = cursor.fits("st|sts|stitches") > 0 || stitchAt(cursor, reading, 0, false) !== null;
    if (to && !counted) {
      cursor.accept("incl|inclusive|including");
      return [{ from, to }];
    }
    cursor.at = start;
  }
  return [{ from, to: from }];
}

/** "2nd and 3rd rows", "the 3rd row", and after "as" "3rd" alone. */
function readOrdinalRows(reading: Reading, bare: boolean): RowRange[] | null {
  const { cursor } = reading;
  const list: RowRange[] = [];
  for (let guard = 0; guard < 12; guard += 1) {
    const row = readOrdinal(reading);
    if (!row) break;
    if (cursor.accept("to|thru|through|-")) {
      const to = readOrdinal(reading);
      if (!to) return null;
      list.push({ from: row, to });
    } else list.push({ from: row, to: row });
    const before = cursor.at;
    if (!cursor.accept(",|and|& and? the?")) break;
    const next = cursor.token();
    if (!(next?.is === "number" && next.ordinal) && !cursor.fits("first")) {
      cursor.at = before;
      break;
    }
  }
  // "2nd, 3rd and 4th armhole rows".
  if (list.length > 0 && cursor.isWord() && cursor.fits(ROW, 1) && !cursor.fits("and|or")) cursor.at += 1;
  const named = cursor.accept(ROW);
  cursor.accept("incl|inclusive");
  return list.length > 0 && (named || (bare && cursor.isBoundary())) ? list : null;
}

/** "6 times more", "once more", "twice", "for 6 times", "4 (5, 5, 6) more times", "x 3". */
function readRowTimes(reading: Reading): Amount | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept(",|:");
    cursor.accept("for|a|another|an");
    cursor.accept("a|another|additional|total|further");
    cursor.accept("total|of");
    cursor.accept("of|further|additional|another");
    const crossed = cursor.accept("x");
    const token = cursor.token();
    const amount = readAmount(reading);
    if (!amount || token?.is !== "number") return null;
    cursor.accept("more|additional|further|other");
    const times =
      cursor.accept("times|time|x|repeats|repetitions") ||
      (token.word && /^(once|twice|thrice)$/iu.test(token.text));
    cursor.accept("more|in total|all?") || cursor.accept("altogether|total|again|over");
    if (!times && !crossed) return null;
    return amount;
  });
}

const MEASURES = [
  "piece|work|it|sleeve|back|front|body|yoke|panel|total|length|garment|cuff|hat|sock|foot|leg|scarf|band|ribbing|section|desired|strip|rectangle|this|your|whole|same|entire length|piece|work|sleeve|body? measures|is|reaches|equals|measure|measured",
  "measures|measure",
  "it|piece|work measures",
];
const FROM_BEG = [
  "from the? beg|beginning|start|cast-on|foundation|commencement|bottom|lower|first edge|row|ch|chain?",
  "in total|all|length",
  "overall|altogether|total|long",
];
const FROM_OTHER = ["from|above|past|after|below|beyond|along|across|deep|down|up"];

/** "until piece measures 28 cm [from beg]", "for 10 rows", "until 20 sts rem", "until 26 rows are done", "until desired length". */
export function readUntil(reading: Reading): Until | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(",");
    const until = cursor.accept("until|till|til|untill|to") || false;
    const forWord = !until && cursor.accept("for|over");
    if (!until && !forWord) return null;
    const body = until ? untilWhat(reading) : forWhat(reading);
    if (!body) return null;
    cursor.accept("or desired length|size") ||
      cursor.accept("or to? the? desired|required length") ||
      cursor.accept("or length|as desired|required|needed?");
    const ending = readEnding(reading);
    return made<Until>({
      span: cursor.spanFrom(start),
      measure: body.measure,
      from: body.from,
      rows: body.rows,
      more: body.more ? true : undefined,
      stitches: body.stitches,
      endingSide: ending?.side,
      endingRow: ending?.row ?? body.endingRow,
    });
  });
}

interface What {
  measure?: Until["measure"];
  from?: Until["from"];
  rows?: Amount;
  more?: boolean;
  stitches?: Amount;
  endingRow?: Amount;
}

function untilWhat(reading: Reading): What | null {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("the|your|this|you|there|whole");
  const named = cursor.acceptAny(MEASURES) || acceptSubject(reading);
  cursor.accept("approximately|approx|about|a|have|a|are|is|reach|total");
  cursor.accept("length|total|width|of|approximately|approx|about");
  cursor.accept("of|total|approximately|about");
  const measure = readMeasure(reading);
  if (measure) {
    let from: Until["from"];
    if (cursor.acceptAny(FROM_BEG)) from = "beginning";
    else if (cursor.acceptAny(FROM_OTHER)) {
      from = "other";
      while (!cursor.isBoundary() && !cursor.isOpener() && !cursor.fits("ending|end|or|and|turn|-|="))
        cursor.at += 1;
    }
    cursor.acceptAny(FROM_BEG);
    if (cursor.accept("of the? armhole|armholes|neck|sleeve|shaping|yoke|raglan|body|work|piece shaping?"))
      from = "other";
    return from ? { measure, from } : { measure };
  }
  cursor.at = start;
  if (cursor.accept(ROW)) {
    const row = readAmount(reading);
    if (row) return { endingRow: row };
  }
  cursor.at = start;
  cursor.accept("there are|is|remain") ||
    cursor.accept("you have a? total? of?") ||
    cursor.accept("you have|reach") ||
    cursor.accept("a total of") ||
    cursor.accept("only");
  cursor.accept("a total of") || cursor.accept("a");
  const amount = readAmount(reading);
  if (amount) {
    const more = cursor.accept("more");
    cursor.accept("total");
    if (cursor.accept(`${ROW}`)) {
      if (!cursor.accept("of pattern|patt|pat") && cursor.accept("of")) readNoun(reading);
      cursor.accept("in all|total|length? have|are been? done|worked|completed|made|complete|finished") ||
        cursor.accept("have|are|has|is been? done|worked|completed|made|complete|finished") ||
        cursor.accept("from the? beg|beginning|start") ||
        cursor.accept("in all|total") ||
        cursor.accept("total|altogether|done|worked");
      cursor.accept("have|are|has|is been? done|worked|completed|made|complete|finished") ||
        cursor.accept("done|worked|completed|made|complete|finished");
      acceptPurpose(reading);
      return { rows: amount, more };
    }
    const noun = readNoun(reading);
    cursor.accept("are|is|have? been?");
    cursor.accept("rem|remain|remains|remaining|left|worked|made|done|on in? the? row|all|hook|rnd|round?") ||
      cursor.accept("in all|total") ||
      cursor.accept("rem|remain|remains|remaining|left|total|long");
    if (noun || cursor.isBoundary()) return { stitches: amount };
    return null;
  }
  cursor.at = start;
  cursor.accept("the|your|it|you");
  if (
    named ||
    cursor.fits(
      "desired|required|length|piece|same|match|long|it|work|you|row|rows|end|sleeve|fits|reach|have|preferred|wanted|armhole|armholes|chosen|big|as|reaches",
    )
  ) {
    // A length told by something else than a number: it stops nothing that can be counted.
    while (
      (!cursor.isBoundary() || cursor.isMark("#")) &&
      !cursor.isOpener() &&
      !cursor.fits("ending") &&
      !cursor.isMark("-")
    )
      cursor.at += 1;
    return cursor.at > start ? { from: "other" } : null;
  }
  return null;
}

/** "for the main panel": what the rows are for, to the end of the step. */
function acceptPurpose(reading: Reading): void {
  const { cursor } = reading;
  cursor.attempt(() => {
    if (!cursor.accept("for|on|of|in the|your|this|each|a|first|second|one")) return null;
    for (let words = 0; words < 5 && cursor.isWord() && !cursor.isBoundary(); words += 1) cursor.at += 1;
    return cursor.isBoundary() ? true : null;
  });
}

/** "yoke section measures", "the front and back panels reach": what is measured, in a few words, and the verb. */
function acceptSubject(reading: Reading): boolean {
  const { cursor } = reading;
  for (let words = 1; words <= 6 && cursor.isWord(words - 1); words += 1) {
    if (
      !cursor.fits("measures|measure|reaches|reach|measuring|equals|equal|matches|match|covers|fits", words)
    )
      continue;
    cursor.at += words + 1;
    return true;
  }
  return false;
}

function forWhat(reading: Reading): What | null {
  const { cursor } = reading;
  cursor.accept("the|a|an|another|about|approximately|approx|next|all");
  const total = cursor.accept("total of") || cursor.accept("total");
  if (!total) cursor.accept("next|additional|rem|remaining");
  cursor.accept("of");
  const measure = readMeasure(reading);
  if (measure) {
    cursor.acceptAny(FROM_BEG) || cursor.accept("more|or so");
    return { measure };
  }
  const rows = readAmount(reading);
  if (!rows) return null;
  const further = cursor.accept("more|further|additional");
  let inAll = total || cursor.accept("total");
  cursor.accept("consecutive|following|pattern");
  if (!cursor.accept(ROW)) return null;
  inAll = cursor.accept("in all|total") || cursor.accept("total") || inAll;
  cursor.accept("more") || cursor.accept("in? pattern|patt");
  return inAll && !further ? { rows } : { rows, more: true };
}

/** ", ending with a WS row", "end Row 5", "ending on row 4 of pattern", "end on right side". */
function readEnding(reading: Reading): { side?: "RS" | "WS"; row?: Amount } | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept(",|;|.|-");
    cursor.accept("and");
    if (!cursor.accept("ending|end|ends|finishing|finish|having last? worked?")) return null;
    cursor.accept("with|on|after|by|at|having");
    cursor.accept("working|completed|worked");
    cursor.accept("a|an|the|same");
    const side = readSide(reading);
    if (side) {
      cursor.accept(ROW);
      cursor.accept("facing|completed|for next row?");
      return { side };
    }
    const ordinal = readOrdinal(reading);
    // "ending with 2nd or 4th row": either will do, so neither narrows how many there are.
    if (ordinal && cursor.accept("or")) {
      if (!readOrdinal(reading) || !cursor.accept(ROW)) return null;
      cursor.accept("of the? pattern|patt|pat|rep|repeat");
      return {};
    }
    if (ordinal && cursor.isWord() && cursor.fits(ROW, 1)) cursor.at += 1;
    if (ordinal && cursor.accept(ROW)) {
      cursor.accept("of the? pattern|patt|pat|rep|repeat");
      return { row: ordinal };
    }
    if (ordinal) return null;
    cursor.accept("pattern|patt");
    if (cursor.accept(ROW)) {
      const row = readAmount(reading);
      if (!row) return null;
      cursor.accept("of the? pattern|patt|pat|rep|repeat");
      return { row };
    }
    return null;
  });
}

/** "Rep last 2 rows, ending with a WS row": an end without a measure. */
function readEndingAlone(reading: Reading): Until | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const ending = readEnding(reading);
    return ending
      ? made<Until>({
          span: cursor.spanFrom(start),
          measure: undefined,
          from: undefined,
          rows: undefined,
          stitches: undefined,
          endingSide: ending.side,
          endingRow: ending.row,
        })
      : null;
  });
}

/** "until piece measures 28 cm" after a row that is worked on and on. */
export function readUntilAlone(reading: Reading): Clause | null {
  const { cursor } = reading;
  if (!cursor.fits("until|till|untill") && !(cursor.fits("for") && cursor.isNumber(1) && cursor.fits(ROW, 2)))
    return null;
  const last = reading.out[reading.out.length - 1];
  const until = readUntil(reading);
  if (!until) return null;
  if (last && (last.kind === "repeat-rows" || last.kind === "even") && !last.until) {
    reading.out.pop();
    return { ...last, span: { from: last.span.from, to: until.span.to }, until };
  }
  return { kind: "even", span: until.span, inPattern: true, until };
}

/** "..., ending with a WS row" after a clause that was read before: joins it. */
export function readLateEnding(reading: Reading): Clause | null {
  const { cursor } = reading;
  const last = reading.out[reading.out.length - 1];
  return cursor.attempt(() => {
    const until = readEndingAlone(reading);
    if (!until) return null;
    if (last && (last.kind === "even" || last.kind === "repeat-rows")) {
      reading.out.pop();
      const whole = { from: last.span.from, to: until.span.to };
      return { ...last, span: whole, until: { ...until, ...last.until, ...ending(until) } };
    }
    return { kind: "aside", span: until.span };
  });
}

function ending(until: Until): Partial<Until> {
  return {
    ...(until.endingSide ? { endingSide: until.endingSide } : {}),
    ...(until.endingRow ? { endingRow: until.endingRow } : {}),
  };
}
