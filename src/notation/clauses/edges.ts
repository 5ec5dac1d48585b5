import { stitchAt } from "../stitch-words.ts";
import type { AlongClause, Amount, Clause, LoopsClause } from "../tree.ts";
import { readAmount, readOrdinal } from "./amounts.ts";
import { readLoops } from "./loops.ts";
import { made, type Reading } from "./reading.ts";
import { ROW } from "./rows-meant.ts";

const ROW_ENDS = [
  "row|rows - end|ends|edge|edges",
  "row|rows end|ends|edge|edges|side|sides",
  "row-ends|row-end|rowends",
  "the? end|ends|side|sides|edge|edges of the? row|rows|rnds|dc-rows|each row|rows?",
  "raw|straight|short|long side|edge|edges of row|rows",
];
const FOUNDATION = [
  "the? opposite|other|bottom|unused|free|underside|remaining|lower|under side|sides|loops|loop|lps|edge of? the? foundation|base|beg|beginning|starting|original|initial|your? ch|chain|chs|chains|row|edge",
  "back|unused|free|bottom|remaining loop|loops|lps of the? foundation|base|beg|beginning|starting|original|initial|beg ch|chain|chs|chains|row",
  "the? opposite|other side of? the? ch|chain|work|foundation|base ch|chain?",
  "the? foundation|base|starting|beginning ch|chain|row|edge",
  "the? opposite|other side",
];
const FREE_LOOPS = [
  "the? free|unused|unworked|remaining|rem|leftover|exposed front|back? loop|loops|lp|lps",
  "the? remaining|unworked|free|skipped front|back loops|loop|lps",
];

/** "along row ends", "on other side of foundation ch", "in free loops of Rnd 3", "along neck edge", "all round". */
export function readAlong(reading: Reading): AlongClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept(
      "working|work|worked|continue|continuing|continue|now|rotate|crocheting|cont working|to? work?",
    );
    cursor.accept("now|back|evenly|again");
    const piece = cursor.attempt(() => {
      if (
        !cursor.accept(
          "on the? first|second|left|right|other|same|third? sleeve|body|back|front|square|piece|strip|motif",
        )
      )
        return null;
      return cursor.isBoundary() || cursor.fits("sk|skip|miss|sc|dc|hdc|tr|work|join") || cursor.isNumber()
        ? true
        : null;
    });
    if (piece)
      return {
        kind: "along",
        span: cursor.spanFrom(start),
        edge: "other",
        words: reading.words(cursor.spanFrom(start)),
      };
    const preposition =
      cursor.accept("along|across|down|up|around|round|in|into|on|over|through|at|from all?") && true;
    if (!preposition) return null;
    cursor.accept("along|across|around|the|to|into|each|both|all|in|on|down|up");
    cursor.accept(
      "entire|whole|outer|the|left|right|short|long|straight|back|inner|inside|first|second|your",
    );
    if (cursor.fits("front neck|neckline|armhole")) cursor.at += 1;
    cursor.accept("the|entire|whole|outer|left|right|short|long|straight|slanted|shaped|inner");
    const at = cursor.at;
    const climbs =
      /(?:^|\s)(?:up|down)\s/iu.test(`${cursor.wordsFrom(start)} `) &&
      cursor.fits("other|opposite side|edge") > 0 &&
      !cursor.fits("other|opposite side|edge of");
    if (climbs) cursor.at += 1;
    const edge = edgeWord(reading);
    if (!edge) return null;
    if ((edge === "free-loops" || edge === "foundation") && cursor.at === at) return null;
    const ofRow = readOfRow(reading);
    cursor.accept("edge|edges|opening|side");
    return made<AlongClause>({
      kind: "along",
      span: cursor.spanFrom(start),
      edge,
      ofRow: ofRow ?? undefined,
      words: reading.words(cursor.spanFrom(start)),
    });
  });
}

function readOfRow(reading: Reading): Amount | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    if (!cursor.accept("of|from|on the?")) return null;
    if (cursor.accept(ROW)) return readAmount(reading);
    const nth = readOrdinal(reading);
    return nth && cursor.accept(ROW) ? nth : null;
  });
}

function edgeWord(reading: Reading): AlongClause["edge"] | null {
  const { cursor } = reading;
  if (cursor.acceptAny(ROW_ENDS)) return "row-ends";
  if (cursor.acceptAny(FOUNDATION)) return "foundation";
  if (cursor.acceptAny(FREE_LOOPS)) return "free-loops";
  const start = cursor.at;
  if (cursor.accept("neck|neckline|neck-edge edge|edges|opening|line|side?")) return "neck";
  if (cursor.accept("armhole|armholes|arm|sleeve edge|edges|opening|openings|hole|holes")) return "armhole";
  if (cursor.accept("armhole|armholes")) return "armhole";
  if (cursor.accept("front|fronts edge|edges|opening|openings|side")) return "front";
  if (cursor.accept("center|centre front edge|edges?")) return "front";
  if (
    cursor.accept("side|sides|long|short|vertical edge|edges|side|sides?") &&
    !cursor.fits("seam|bar|post|strand")
  ) {
    cursor.accept(
      "of the? piece|work|panel|rectangle|back|front|band|ribbing|blanket|body|fabric|waistband|collar|cuff|strip|brim|bag|scarf|belt|strap",
    );
    return "side";
  }
  cursor.at = start;
  if (cursor.accept("bottom|lower|hem edge|edges?")) return "hem";
  if (cursor.accept("opening|openings")) return "opening";
  if (
    cursor.accept(
      "top|upper|outside|outer|raw|straight|curved|cuff|wrist|ankle|last|thumb|heel|remaining edge|edges|opening|hole|side",
    )
  )
    return "other";
  if (cursor.accept("edge|edges|garment|outside|perimeter|piece|entire")) {
    cursor.accept("edge|of the? blanket|piece|garment|work");
    return "all-round";
  }
  return null;
}

/** "working in back loops only", "work in front loop throughout": a state, not a place. */
export function readLoopState(reading: Reading): LoopsClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const onward =
      cursor.accept("from now|here on|onwards?") || cursor.accept("from this? row|rnd|round? on|onwards");
    if (onward) {
      cursor.accept(",");
      cursor.accept("work|working|always");
      const stitch = stitchAt(cursor, reading, 0, false);
      if (stitch) cursor.at += stitch.length;
    }
    cursor.accept("now|and");
    if (
      cursor.accept("pick|picking|taking|take up? only?") ||
      cursor.accept("hereafter|always pick|take up? only?")
    ) {
      const taken = readLoops(reading);
      if (!taken) return null;
      cursor.accept("of|in each|every|all? st|sts|stitch|sc|dc|hdc");
      return cursor.isBoundary() ? { kind: "loops", span: cursor.spanFrom(start), loops: taken } : null;
    }
    cursor.accept("this|all row|rows|rnd|round|stitches|sts is|are|this? worked?");
    const verb = cursor.accept("work|working|worked|crochet|crocheting");
    cursor.accept("all|entire|this|each|every sts|row|rnd|round|stitch|st|stitches");
    const preposition = cursor.accept("in|into|through|thru|on|under|from");
    const loops = readLoops(reading);
    if (!loops || !(verb || preposition || cursor.isBoundary())) return null;
    if (cursor.fits("of|in|next|each")) {
      if (
        !cursor.accept("of|in sts|stitches only?") &&
        !cursor.accept("of|in the? foundation|starting|beginning|base? ch|chain|chs|chains") &&
        !cursor.accept(
          "of|in each|every|all|ea st|sts|stitch|row|sts|ch|chs|chain|sc|dc|hdc across|around?",
        ) &&
        !cursor.accept("of|in the? previous|prev|last? row|rnd|round")
      )
        return null;
    }
    const throughout =
      onward ||
      cursor.accept("throughout the? pattern|piece|entire?") ||
      cursor.accept("on|in|for each|every|all row|rows|rnd|rounds|rnds|sts") ||
      cursor.accept("for the? rest|remainder of the? pattern|piece|hat");
    cursor.accept("for|on|of this|the entire|whole? row|rnd|round|only?") ||
      cursor.accept("across|around|only");
    if (!cursor.isBoundary() && !cursor.fits("and|work|to|for|,|-|from|sc|dc|hdc|ch|*|(|[|1|2")) return null;
    return made<LoopsClause>({
      kind: "loops",
      span: cursor.spanFrom(start),
      loops,
      throughout: throughout ? true : undefined,
    });
  });
}

/** "rotate the piece to work down the other side": a turn of the work that is no turn of the row. */
export function readRotate(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (!cursor.accept("rotate|pivot")) return null;
    cursor.accept("the|your? work|piece|hat");
    cursor.accept("90|180 degrees|deg|other?");
    cursor.accept("clockwise|counterclockwise");
    return { kind: "aside", span: cursor.spanFrom(start) };
  });
}
