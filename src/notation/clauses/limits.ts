import type { Limit, Target } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readNoun } from "./nouns.ts";
import type { Reading } from "./reading.ts";

/** Reads a place; handed in by the reader of targets, which reads limits in turn. */
export type PlaceReader = (reading: Reading) => Target | null;

const OF_ROW =
  "of|of-the the? this|each|every? row|rows|rnd|rnds|round|rounds|ch|chain|side|edge|work|piece|foundation|sts|stitches|row's ch|chain?";

/** Words after "across" or "around" that make it a preposition: "across next 20 sts", "around post of next st". */
const GOVERNS = new Set([
  "next",
  "each",
  "every",
  "ea",
  "first",
  "1st",
  "last",
  "ch",
  "chain",
  "vertical",
  "upright",
  "stem",
  "bar",
  "stems",
  "center",
  "centre",
  "corner",
  "tch",
  "turning",
  "post",
  "posts",
  "same",
  "following",
  "foll",
  "rem",
  "remaining",
  "both",
  "of",
  "front",
  "back",
  "nx",
  "nxt",
  "all",
]);

/** "across", "to end", "around to last 4 sts", "until 20 sts rem", "to marked st"; null where nothing is limited. */
export function readLimit(reading: Reading, readPlace: PlaceReader): Limit | null {
  return reading.cursor.attempt(() => limit(reading, readPlace));
}

function limit(reading: Reading, readPlace: PlaceReader): Limit | null {
  const { cursor } = reading;
  const start = cursor.at;
  const word = wholeWord(reading);
  const part = partLimit(reading, readPlace, start);
  if (part) return part;
  if (!word) return null;
  return { at: "end", span: cursor.spanFrom(start), word };
}

function wholeWord(reading: Reading): "across" | "around" | "end" | null {
  const { cursor } = reading;
  const beginning = cursor.at;
  cursor.accept("all the? way") || cursor.accept("all") || cursor.accept("the? whole|entire way");
  const start = cursor.at;
  const word = cursor.key();
  // "along" is a limit only of itself; "5 dc along its 4 row ends" has its places behind it.
  if (word === "along" && !cursor.isBoundary(1) && !cursor.fits("the? row|rnd|round|chain|ch", 1)) {
    cursor.at = beginning;
    return null;
  }
  if (word === "across" || word === "around" || word === "round" || word === "along" || word === "accross") {
    const next = cursor.key(1);
    const afterThe = next === "the" || next === "your" ? cursor.key(2) : next;
    const row =
      /^(row|rnd|round|rounds|rows|chain|ch|foundation|entire|whole|edge|ring|circle|piece|work|top|yoke|body|neck|sts|stitches|hat|opening|wrist|slipper|outside|brim|cuff|neckline|armhole|hem|leg|sock|mitten|foot|ankle|bottom|blanket|square|sleeve)$/u.test(
        afterThe,
      );
    const ahead = cursor.token(1);
    // A number glued or spaced after "around" counts places unless a claim or a new step begins with it.
    const counts =
      ahead?.is === "number" &&
      !ahead.glued &&
      cursor.at + 2 <= cursor.limit &&
      !cursor.isBoundary(2) &&
      /^(st|sts|stitches|ch|chs|mesh|sc|dc|hdc|tr)$/u.test(cursor.key(2)) &&
      ahead.text.charAt(0) !== "(" &&
      ahead.text.charAt(0) !== "[";
    if (GOVERNS.has(afterThe) || (next === "the" && !row) || counts) {
      cursor.at = beginning;
      return null;
    }
    cursor.at += 1;
    if (row) {
      cursor.accept("the|your");
      cursor.accept("entire|whole|outside|bottom|foundation|neck|slipper|sleeve");
      cursor.accept(
        "row|rnd|round|rounds|rows|chain|ch|edge|ring|circle|piece|work|top|yoke|body|neck|sts|stitches|hat|opening|wrist|outside|brim|cuff|neckline|armhole|hem|leg|sock|mitten|foot|ankle|bottom|blanket|square|sleeve",
      );
      cursor.accept("edge|opening");
    }
    cursor.accept("to|till|until the? end");
    cursor.accept(OF_ROW);
    return word === "around" || word === "round" ? "around" : "across";
  }
  cursor.at = start;
  if (
    cursor.accept("to|till|until|til the? very? other|opposite? end|ends|beg|beginning|last") &&
    !cursor.isNumber()
  ) {
    const last = cursor.tokens[cursor.at - 1];
    if (last?.is === "word" && last.norm === "last") {
      cursor.at = beginning;
      return null;
    }
    if (cursor.accept("of|by the? row|rnd|round") || cursor.accept(OF_ROW) || !cursor.fits("of"))
      return "end";
    return "end";
  }
  cursor.at = beginning;
  if (cursor.accept("the? entire|whole row|rnd|round")) return "end";
  if (cursor.accept("for|to|in|on|the? rest|remainder of the? row|rnd|round|way")) return "end";
  cursor.at = beginning;
  if (cursor.accept("for|to|in|on the? rest|remainder of the? row|rnd|round|way")) return "end";
  cursor.at = beginning;
  return null;
}

function partLimit(reading: Reading, readPlace: PlaceReader, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("in|into all") || cursor.accept("all");
    if (cursor.accept("but the? last|final") || cursor.accept("except the? last|final")) {
      cursor.at -= 1;
      return lastLimit(reading, start);
    }
    cursor.accept("up");
    if (!cursor.accept("to|until|till|before|til|reaching")) return null;
    cursor.accept("you") && (cursor.accept("get|come to") || cursor.accept("reach"));
    return (
      beforeLimit(reading, readPlace, start) ??
      lastLimit(reading, start) ??
      countLimit(reading, start) ??
      withinLimit(reading, start) ??
      placeLimit(reading, readPlace, start)
    );
  });
}

function lastLimit(reading: Reading, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("the");
    if (!cursor.accept("last|final|lst")) return null;
    const here = cursor.at;
    const count = readAmount(reading);
    const noun = readNoun(reading);
    if (!count && !noun && !cursor.isBoundary()) return null;
    cursor.accept("of the? row|rnd|round|side|edge") ||
      cursor.accept("before the? marker|end|turning ch|chain?") ||
      cursor.accept("on row|left");
    cursor.accept("remain|rem|remaining|left");
    return {
      at: "last",
      span: cursor.spanFrom(start),
      count: count ?? {
        span: { from: cursor.tokens[here - 1]?.span.to ?? 0, to: cursor.tokens[here - 1]?.span.to ?? 0 },
        values: [1],
      },
      what: noun?.what ?? { is: "any" },
    };
  });
}

const REMAIN = "are|is? rem|remain|remains|remaining|left|unworked";

function countLimit(reading: Reading, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("there are|is|remain|remains") ||
      cursor.accept("you? have|reach|only? made?") ||
      cursor.accept("only");
    const have = cursor.at > start + 1;
    cursor.accept("a total of");
    const count = readAmount(reading);
    if (!count) return null;
    readNoun(reading);
    const remain = cursor.accept(REMAIN) || cursor.accept("before the? end|marker");
    if (remain) return { at: "count", span: cursor.spanFrom(start), count, remain: true };
    cursor.accept("in all|total") || cursor.accept("on your? hook|row");
    return have || cursor.accept("are|have been? made|worked|done|completed")
      ? { at: "count", span: cursor.spanFrom(start), count, remain: false }
      : null;
  });
}

/** "within 1 sc of marked sc", "1 st before marker", "last sc before next marked sc": a place, and how many are left before it. */
function beforeLimit(reading: Reading, readPlace: PlaceReader, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.accept("within");
    cursor.accept("the");
    const last = cursor.accept("last");
    const here = cursor.at;
    const count = readAmount(reading);
    if (!count && !last) return null;
    readNoun(reading);
    const before = cursor.accept("before");
    if (!before && !cursor.accept("of|from")) return null;
    const named = cursor.fits("the? next|marked|marker|markers|m|corner|each|first");
    const behind = before ? cursor.fits("the? ch|chain|sp|space|center|centre|middle|turning|tch") : 0;
    if (!named && !behind) return null;
    const place = readPlace(reading);
    if (!place) return null;
    const at = cursor.tokens[here - 1]?.span.to ?? 0;
    return {
      at: "place",
      span: cursor.spanFrom(start),
      place,
      before: count ?? { span: { from: at, to: at }, values: [1] },
    };
  });
}

function withinLimit(reading: Reading, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    if (cursor.accept("within the? last")) {
      const rest = readAmount(reading);
      if (rest) {
        const what = readNoun(reading);
        return { at: "last", span: cursor.spanFrom(start), count: rest, what: what?.what ?? { is: "any" } };
      }
    }
    cursor.accept("within");
    const count = readAmount(reading);
    if (!count) return null;
    const noun = readNoun(reading);
    if (
      !cursor.accept("of|from|before the? end|marker|corner of? row|rnd|round?") &&
      !cursor.accept("of|from|before the? end|marker")
    )
      return null;
    return { at: "last", span: cursor.spanFrom(start), count, what: noun?.what ?? { is: "any" } };
  });
}

function placeLimit(reading: Reading, readPlace: PlaceReader, start: number): Limit | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    // "dc in first sc to join": what it is done for.
    if (cursor.fits("join|close") && (cursor.isBoundary(1) || cursor.fits("rnd|round|the|and", 1)))
      return null;
    if (
      !cursor.fits(
        "the? next|marked|marker|corner|turning|tch|first|1st|st|ch|center|centre|last|m|join|joining|beg",
      ) &&
      !(cursor.isWord() && cursor.fits("sp|space", 1))
    )
      return null;
    const place = readPlace(reading);
    return place ? { at: "place", span: cursor.spanFrom(start), place } : null;
  });
}
