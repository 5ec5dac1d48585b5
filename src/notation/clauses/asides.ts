import { stitchAt } from "../stitch-words.ts";
import type { AsideClause, Clause } from "../tree.ts";
import { readMeasure } from "./amounts.ts";
import { PLACE_WORDS } from "./joins.ts";
import { made, type Reading } from "./reading.ts";
import { readRowsDone } from "./rows-done.ts";

/** Whole phrases that change nothing. Each is stepped over as it stands. */
const PHRASES: readonly string[] = [
  "loosely|carefully|firmly|gently|neatly|snugly|tightly|again|only|optional|also|now|well|always|please|simply|usually|exactly|approximately|alternately|finally|first|lastly",
  "no|without turning? ch|chain|chs|chaining",
  "do not|n't skip|miss the? first|any st|stitch|sts|stitches|dc|sc|hdc|tr|gap|gaps|sp|sps|space|spaces",
  "do not|n't cut|break|fasten|end|finish|tighten|count|stretch|carry|skip|miss off|yarn|thread|too|the|any|off|tightly|over? yarn|off|sts|st|tight|stitches|any?",
  "do|don't|dont|not fasten|finish|break|cut|end off|yarn|thread|the yarn?",
  "without cutting|breaking|fastening yarn|off|thread",
  "you|we|they are|will|should|'re now? be? working|worked|work in the? rounds|rnds|rows|round",
  "now working|work|worked in the? rounds|rnds|round|rows",
  "work|working|worked|continue in the? rounds|rnds|round|rows",
  "see|refer|follow|as per|as|like to|in|at|shown|per? the? chart|photo|photos|picture|pictures|diagram|video|note|notes|special|schematic|page|figure|above|below|stitch|instructions|fig|link|tutorial|guide|abbreviations stitches|notes|chart|below|above|guide|stitch?",
  "as shown|pictured|seen|above|below|follows|desired|needed|established|usual|before|directed|described|instructed|required|necessary|stated|instructions in? the? photo|picture|chart|above|below?",
  "using|use|with a|the? tapestry|yarn|darning|sewing|blunt needle",
  "right|wrong side|sides of? the? work? facing|out|up|row|rows|rnd|round|together?",
  "rs|ws facing|row|out|side|rnd|together|up?",
  "this is|will|counts|forms|completes|becomes|makes|creates|ends|will|should",
  "mark|marks this|that|the|as|rs|right? row|side|rs|right? as? right|rs? side?",
  "end of row|rnd|round|pattern|part|section|repeat|shaping|increases|yoke",
  "leaving|leave a? long|short|small|enough tail|end|yarn",
  "if|when necessary|needed|desired|required|you|worn|working",
  "at|on|from the? same|this|each|that|wrong|right|beg|beginning|end|other|both time|point|end|side|ends|sides|of row|rnd",
  "in this|the|same|usual|following|all|each row|way|manner|rows|rnds|rounds|rnd|round|sizes|size",
  "for all|both sizes|size|ages",
  "for this|the|each|every row|rnd|round|size|rest|hem|cuff|side",
  "beg|beginning|starting|start on|with|at the|a? same? next|ws|rs|row|rnd|wrong|right side|row|rnd|round?",
  "first|second|third|next|last row|rnd|round|side|sleeve|half|repeat|motif|shoulder|part completed|complete|done|made",
  "at|on|from the? end|beg|beginning|start of every|each|all|alternate row|rnd|round|rows|rounds",
  "for|to the? pattern|patt|pat st|stitch?",
  "no sts|stitches increased|decreased",
  "without twisting it|the|ch|chain?",
  "with the? long|short|right|wrong|underarm|foundation|neck edge|side|chain|edge uppermost|up|facing",
  "in the? same|usual way|manner",
  "through both|all|two|the layers|thicknesses|halves|sides",
  "drop|pick up? the|dropped? yarn|thread",
  "pause",
  "with an|a? invisible|needle|duplicate|clean join|finish|st|fasten-off?",
  "to|and form|make a|the? circle|ring",
  "with|having the? last|final st|stitch|one being|is|a a|an? sc|dc|hdc|tr|st?",
  "of|in|from the? previous|prev|prior|preceding row|rnd|round",
  "make? a slip|slip-knot knot",
  "to measure about|approx|approximately?",
  "including|inclusive|incl|counting the? turning|beg|starting? ch|chain|tch",
  "for|to-begin the? rib|ribbing|pattern|patt part|section?",
  "held double|doubled|together|triple",
  "throughout",
  "with two|2|one|1|three|3|double strands|strand of? yarn? held? together? throughout?",
  "using|with 2|two|1|one strands|strand of? yarn?",
  "all sizes|ages",
  "add number? for? base|foundation|turning? chain|ch",
  "and so on|forth all? around|across?",
  "for a|an|one|the|each first|next|last? shell|fan|cluster|picot|popcorn|bobble|puff|scallop|leaf|petal",
  "etc",
  "etcetera",
  "i.e|e.g|eg|ie|nb|note|tip|hint",
  "have fun|enjoy",
  "yarn over|yoh",
  "remove|insert|drop hook|loop from|last? loop|hook?",
  "check|measure|checking your|the|gauge? gauge|tension|measurements|length",
  "to form|make|create|shape|complete|begin|finish|start the|a|an|next|last|final? last|next|final? loop|sp|ch-sp|lp|corner|armhole|armholes|underarm|underarms|point|point|shell|opening|thumb|buttonhole|neck|body|sleeve|row|cuff|brim|hat|crown|hem|rnd|round|toe|heel|strap|yoke|shoulder|shoulders|neckline|sleeves|cap|front|back|sides|wrist|waist|top|bottom|first|second",
  "in|as before|established",
  "pull|pulling tight|tightly|ring|closed|snug|to|tail|the|up tight|tightly|close|closed|ring|center|centre|tail|to? close|tighten|closed?",
  "tighten|close|closing ring|the|loop|circle|up ring|circle|hole|loop?",
  "being|taking careful|care not|to work|twist|tighten|keep not|too|to|the|chain|tight|stretch|twist|ch? chain|tightly|ch|the? chain|ch?",
  "making|being|make|be sure|careful|certain not|to|that|you not|do|have|work|twist|the|keep? twist|chain|the? chain|ch|sts|work?",
  "end|ending|ends|finishing at|on the? other|left|right|neck|armhole|sleeve|front|side|same|outer|inner edge|side|end|seam|front|sleeve|armhole edge|side|end?",
  "do|does not",
  "hereafter",
  "all|every|each rows|rnds|rounds",
  "to join|close the? rnd|round|circle",
  "to finish|complete|close|begin|start|join",
  "work|cont|continue|continuing|proceed as foll|fol|follows|following|below",
  "as foll|fol",
  "here and throughout|after",
  "throughout",
  "to correspond",
  "ending|end to correspond|match",
];

/** Words that join steps and say nothing themselves. */
const FILLERS = new Set([
  "then",
  "and",
  "now",
  "next",
  "also",
  "work",
  "make",
  "working",
  "making",
  "do",
  "continue",
  "cont",
  "continuing",
  "begin",
  "start",
  "starting",
  "beginning",
  "you",
  "will",
  "should",
  "just",
  "by",
  "so",
  "that",
  "there",
  "thus",
  "still",
  "again",
  "crochet",
  "to",
  "with",
  "in",
  "more",
  "only",
  "but",
  "the",
  "a",
  "at",
  "all",
  "of",
  "for",
  "as",
  "once",
  "from",
  "place",
  "here",
  "simply",
  "end",
  "ending",
  "finish",
  "it",
  "them",
  "row",
  "rnd",
  "round",
  "worked",
  "proceed",
  "pattern",
  "patt",
  "instructions",
  "instead",
  "first",
  "repeat",
  "st",
  "sts",
]);

/** Fillers that only count as nothing beside other words; left alone at a step's end they would hide something. */
const WEAK = new Set([
  "to",
  "with",
  "in",
  "the",
  "a",
  "at",
  "all",
  "of",
  "for",
  "as",
  "by",
  "from",
  "end",
  "ending",
  "row",
  "rnd",
  "round",
  "place",
  "it",
  "them",
  "first",
  "repeat",
  "finish",
  "pattern",
  "patt",
  "instructions",
  "st",
  "sts",
  "more",
  "so",
  "that",
  "there",
  "beginning",
  "starting",
]);

/** "for lower edge", "at heel", "Beginning at neck edge": only words that tell a person where, to the end of the step. */
function readWhereabouts(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("beginning|beg|starting|start|now|work");
    if (!cursor.accept("for|at|on|to|from|along|near|across|around|down|up|toward|towards|in|of|above|over"))
      return null;
    const from = cursor.at;
    while (cursor.isWord() && PLACE_WORDS.has(cursor.key()) && cursor.at - from < 8) cursor.at += 1;
    if (cursor.at > from && partOfRow(reading, start)) return { kind: "leave", span: cursor.spanFrom(start) };
    if (
      cursor.at === from ||
      !(
        cursor.isBoundary() ||
        cursor.isOpener() ||
        cursor.isMark("-") ||
        (cursor.fits("ch|chain") > 0 && cursor.isNumber(1)) ||
        cursor.fits("make|work|crochet") > 0 ||
        cursor.fits("with|using mc|cc|yarn|color|colour|main")
      )
    )
      return null;
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}

/** "sc in next 7 sc for instep, ch 1, turn": so many are for that part, and the rest is left. */
function partOfRow(reading: Reading, start: number): boolean {
  const { cursor } = reading;
  const last = reading.out.at(-1);
  if (last?.kind !== "work" || !last.target.count || cursor.tokens[start] === undefined) return false;
  const word = cursor.tokens[start];
  if (word?.is !== "word" || word.norm !== "for") return false;
  let ahead = cursor.isMark(",") ? 1 : 0;
  if (cursor.fits("ch|chain", ahead) && cursor.isNumber(ahead + 1)) ahead += 2;
  if (cursor.isMark(",", ahead) || cursor.fits("and", ahead)) ahead += 1;
  return ahead > 0 && cursor.fits("turn", ahead) > 0;
}

/** No sentence of talk is longer, in tokens. */
const LONGEST_TALK = 90;

/** How sentences begin that talk to the maker and order no stitch. */
const TALKERS = new Set(
  "you we i this that it these those there if when while once your my our here remember note tip hint be make don't dont try fold put use lay pin decide determine see read please now then so because after before as keep take pull wear enjoy leave set hold slide smooth place continue continuing follow check measure feel adjust simply finished finish secure insert bring count add both like since although unless until again tie wrap flip flatten gather thread fit give let look do alternate rejoice congratulations yay well done time".split(
    " ",
  ),
);

/** A word that orders a stitch or changes the work: a sentence that holds one is more than talk. */
const ORDERS = new Set(
  "ch chain chains turn join rep repeat skip sk miss sl ss slip inc dec increase decrease increasing decreasing yo turning row rows rnd rnds round rounds stitch stitches st sts sp sps loop loops every each space spaces corner corners ring marker between".split(
    " ",
  ),
);

/** What "this" is said to do where a sentence tells what comes of the work. */
const OUTCOMES =
  "pulls|keeps|creates|gives|prevents|helps|makes|forms|ensures|allows|closes|hides|leaves|brings|puts|lets|avoids|looks|constitutes|constitute|establishes";

/** Talk: a whole sentence without a figure, a stitch or an order, that begins as talk does. */
export function readTalk(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.isWord() || !TALKERS.has(cursor.key())) return null;
    // What the designer did says nothing to do.
    if (cursor.accept("i|my|mine|i've|i'm")) {
      while (!cursor.isBoundary() && !cursor.isOpener() && cursor.at - start < LONGEST_TALK) cursor.at += 1;
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    // What a maker may do is no order: "You can place a marker at the end of the row".
    if (cursor.fits("you|we can|may|might|could")) {
      while (!cursor.done && !cursor.fits(".|!|?") && cursor.at - start < LONGEST_TALK) cursor.at += 1;
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    // "This keeps the edge from gaping when you join": what comes of the work orders nothing.
    if (cursor.fits(`this|that|these|it ${OUTCOMES}`)) {
      while (!cursor.done && !cursor.fits(".|!|?") && cursor.at - start < LONGEST_TALK) cursor.at += 1;
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    const handling =
      cursor.fits(
        "fold|put|lay|pin|sew|stuff|place|flip|flatten|tie|gather|hold|overlap|embroider|draw|thread|try|press|insert",
      ) > 0;
    let words = 0;
    while (!cursor.done && !cursor.fits(".|;|!|?|:") && !cursor.isOpener()) {
      // "flatten the wing and work 6 sc": the order begins behind the handling.
      if (handling && words > 1 && cursor.fits("and|, and? work|sc|dc|hdc|join|ch|sl|make|crochet")) break;
      if (words > LONGEST_TALK) return null;
      const token = cursor.token();
      if (token?.is === "number" && !token.word) return null;
      if (token?.is === "mark" && (token.text === "*" || token.text === "**")) return null;
      if (
        token?.is === "word" &&
        ((ORDERS.has(token.norm) &&
          !(handling && /^(row|rows|round|rounds|rnd|all|every|turn|slip)$/u.test(token.norm))) ||
          stitchAt(cursor, reading, 0, false))
      )
        return null;
      cursor.at += 1;
      words += 1;
    }
    return words >= 3 ? { kind: "aside", span: cursor.spanFrom(start) } : null;
  });
}

/** "last row", "Row 9", "9th round". */
function acceptOneRow(reading: Reading): boolean {
  const { cursor } = reading;
  if (cursor.accept("last|final row|rnd|round")) return true;
  if (
    cursor.fits("row|rnd|round|rd")
      ? cursor.isNumber(1)
      : cursor.isNumber() && cursor.fits("row|rnd|round", 1)
  ) {
    cursor.at += 2;
    return true;
  }
  return false;
}

/**
 * "At the end of Row 9, do not turn", "at end of last row, fasten off": speaks of one row of several. Where it says only how that row
 * is left it is an aside; where it works anything, it is for another row than this clause list and stays a remark.
 */
export function readAtRowEnd(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.accept("at|on the? end of")) return null;
    cursor.accept("the");
    if (!acceptOneRow(reading) || cursor.isOpener() || cursor.isMark("-")) return null;
    cursor.accept(",|:");
    const from = cursor.at;
    let works = false;
    // How that row ends, with a join or without its chain, makes no stitch of any other.
    const ends =
      cursor.fits("do|don't|only not|n't? ch|chain|turn|join|fasten|break") ||
      cursor.fits("join|change|switch|cut|fasten|drop");
    while (!cursor.done && !cursor.fits(".|;")) {
      const token = cursor.token();
      if (cursor.at - from > LONGEST_TALK) return null;
      if (
        token?.is === "number" ||
        (token?.is === "word" &&
          stitchAt(cursor, reading, 0, false) &&
          !/^(sl|ss|slst|slip)$/u.test(token.norm))
      )
        works = true;
      cursor.at += 1;
    }
    const span = cursor.spanFrom(start);
    if (cursor.at === from || !works || (ends && !reading.words(span).includes(",")))
      return { kind: "aside", span };
    return { kind: "remark", span, words: reading.words(span) };
  });
}

/** Aside to the end of the step: care to be taken, tails to be left, another way to do it, where the hook passes. */
function readToBoundary(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("and|but|by|then");
    if (
      cursor.accept("which|whose|where") ||
      cursor.accept("keeping|keep on with|in") ||
      cursor.accept("keeping|keep to row|rows|rnd|rnds|the")
    ) {
      while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    if (readKeeping(reading)) return { kind: "aside", span: cursor.spanFrom(start) };
    const care =
      cursor.accept("being|be|taking|take|making|make very? careful|care|sure|certain") ||
      cursor.accept("very? careful|carefully not|to");
    const tail =
      !care &&
      cursor.accept("leave|leaving|with a|an|enough|about|approx? very? long|short|small|enough?") &&
      tailAhead(reading);
    const other =
      !care &&
      !tail &&
      cursor.at === start &&
      (cursor.accept(
        "or up|for|to|enough|use|until|any|more|less|as|desired|length|size|try|you|work|ch|if",
      ) ||
        cursor.accept("working|worked|work behind|in-front|around") ||
        cursor.accept("working|worked? in front of") ||
        cursor.accept("using|with stitch|st? markers|pins"));
    if (!care && !tail && !other) return null;
    while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}

/** "Keeping armhole edge straight", "keep the other side even": an edge that is left as it is. */
function readKeeping(reading: Reading): boolean {
  const { cursor } = reading;
  const start = cursor.at;
  if (!cursor.accept("keep|keeping")) return false;
  for (let words = 0; words < 5 && cursor.isWord(); words += 1) {
    if (cursor.accept("straight|even|uniform|flat|plain|level|unshaped|correct|same")) return true;
    if (stitchAt(cursor, reading, 0, false)) break;
    cursor.at += 1;
  }
  cursor.at = start;
  return false;
}

/** "30" for sewing", "long tail": yarn is what is left, and no stitches. */
function tailAhead(reading: Reading): boolean {
  const { cursor } = reading;
  for (let ahead = 0; ahead < 6; ahead += 1) {
    if (cursor.isBoundary(ahead)) return false;
    if (cursor.fits("tail|end|yarn|inch|inches|cm|ends|tails|length", ahead) || cursor.isMark('"', ahead))
      return true;
    if (cursor.fits("st|sts|stitch|stitches|ch|chs|chains|unworked|sc|dc|hdc|tr", ahead)) return false;
  }
  return false;
}

/** "to create a firm edge", "so that it lies flat": what a step is for, told without a stitch, a place or a figure. */
function readPurpose(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const told =
      cursor.accept(
        "in? order? to create|form|make|give|get|keep|prevent|avoid|ensure|hide|secure|help|allow|produce|add",
      ) ||
      cursor.accept("so that? it|this|they|the|your|you|there") ||
      cursor.accept("omitting|omit the? turning|t|beg ch|chain|chains|tch");
    if (!told) return null;
    const omits = /^omit/iu.test(cursor.wordsFrom(start));
    while (!cursor.isBoundary() && !cursor.isOpener()) {
      const token = cursor.token();
      if (!omits && (token?.is === "number" || (token?.is === "mark" && token.text !== "-"))) return null;
      if (!omits && token?.is === "word" && (ORDERS.has(token.norm) || stitchAt(cursor, reading, 0, false)))
        return null;
      cursor.at += 1;
    }
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}

/** "to measure about 10 inches", "(approx 4 cm)": a check on what was made. */
function readCheck(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("piece|work|it|this|rectangle|strip|hat will|should? now?");
    const said =
      cursor.accept("measure|measures about|approx|approximately?") ||
      cursor.accept("to measure|reach about|approx|approximately?") ||
      cursor.accept("measuring|about|approx|approximately|roughly");
    const measure = said ? readMeasure(reading) : null;
    if (!measure) return null;
    cursor.accept("wide|long|deep|tall|across|in|from length|width|beg?");
    return cursor.isBoundary() || cursor.fits("or|and|,")
      ? { kind: "aside", span: cursor.spanFrom(start) }
      : null;
  });
}

/** "The sleeve has 46 rnds", "these 2 marked dc are the corners", "20 sts stay free": a statement about the work, no order. */
export function readStatement(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const before = cursor.tokens[start - 1];
    // Only a step of its own is a statement.
    if (before && !(before.is === "mark" && ".;:,".includes(before.text))) return null;
    cursor.accept("and");
    if (!cursor.fits("the|these|those|there|they|each|both|all|you|it|on|with|between") && !cursor.isNumber())
      return null;
    let verb = -1;
    for (let ahead = 0; ahead < 26 && !cursor.isBoundary(ahead); ahead += 1) {
      if (cursor.isOpener(ahead)) {
        // "The last 2 rows (Rows 4 and 5) form the pattern": a bracket in the middle of it is part of it.
        ahead = (cursor.partner[cursor.at + ahead] ?? 0) - cursor.at;
        if (ahead <= 0) return null;
        continue;
      }
      if (cursor.fits("turn|join|rep|repeat|sk|skip|ch|work|make|sew", ahead) && ahead === 0) return null;
      if (
        verb < 0 &&
        ahead > 0 &&
        cursor.fits(
          "are|is|has|have|stay|stays|form|forms|lie|lies|mark|marks|become|becomes|constitute|constitutes|complete|completes|establish",
          ahead,
        )
      )
        verb = ahead;
    }
    if (verb < 0) return null;
    if (cursor.fits("are|is now? worked|made|decreased|increased|repeated|skipped", verb)) return null;
    const verbAt = cursor.at + verb;
    while (!cursor.isBoundary() && (!cursor.isOpener() || cursor.at < verbAt))
      cursor.at = cursor.isOpener() ? (cursor.partner[cursor.at] ?? cursor.at) + 1 : cursor.at + 1;
    return made<AsideClause>({
      kind: "aside",
      span: cursor.spanFrom(start),
      rowsDone: readRowsDone(reading, start) ?? undefined,
    });
  });
}

/** Words read and meaning nothing for the work: one phrase of the table, to the end of its step where the step has no more. */
export function readAside(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const where =
      readWhereabouts(reading) ?? readPurpose(reading) ?? readToBoundary(reading) ?? readCheck(reading);
    if (where) return where;
    // "Next row, work 70 sts": the label of a step told in a sentence.
    if (
      cursor.accept("next|following|last|first|second|third|final row|rnd|round|time") &&
      (cursor.isBoundary() || cursor.isMark("-") || cursor.fits("work|sc|dc|hdc|ch|slip|sl|*|skip"))
    ) {
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    cursor.at = start;
    // "Now repeat the following: *ch 1, 3 dc in sp*": the marks say what is repeated.
    if (
      cursor.accept("rep|repeat|repeats|rpt the? following? steps|pattern|sequence? all? around|across?") &&
      (cursor.isMark(":") || cursor.isMark(",")) &&
      (cursor.isMark("*", 1) || cursor.isMark("**", 1))
    )
      return { kind: "aside", span: cursor.spanFrom(start) };
    cursor.at = start;
    // "Video at 3:20", "Photo 4": where a thing is shown.
    if (cursor.accept("video|videos|photo|photos|picture|pictures|image|images|fig|tutorial")) {
      cursor.accept("time|tutorial|link|at|on|of|no|number|below|above|here");
      while (cursor.isNumber() || (cursor.isMark(":") && cursor.isNumber(1)) || cursor.isMark("#"))
        cursor.at += 1;
      if (cursor.isBoundary() || cursor.isOpener() || cursor.done)
        return { kind: "aside", span: cursor.spanFrom(start) };
    }
    cursor.at = start;
    for (const phrase of PHRASES) {
      if (cursor.accept(phrase)) return { kind: "aside", span: cursor.spanFrom(start) };
    }
    return null;
  });
}

/** Steps over one word that joins steps: "then", "and", "work". Weak ones only where more follows in the same step. */
export function skipFiller(reading: Reading): boolean {
  const { cursor } = reading;
  const key = cursor.key();
  if (!cursor.isWord() || !FILLERS.has(key)) return false;
  if (WEAK.has(key) && cursor.isBoundary(1)) return false;
  cursor.at += 1;
  return true;
}
