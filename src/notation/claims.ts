import { readAmount } from "./clauses/amounts.ts";
import { readNoun, spaceAfterNumber } from "./clauses/nouns.ts";
import { made, type Reading } from "./clauses/reading.ts";
import { stitchAt } from "./stitch-words.ts";
import type { Amount, Claim, ClaimPart } from "./tree.ts";

/*
 * Counts printed for a row, in every dress: "(24 sts)", "- 24 sts", ": 24 sc", "[24]", "24 sc.", "Total 24", "you will have 24",
 * "= 24 sts", "{24}", "<24>", before or after the turn.
 */

const INTROS = [
  "for? a? grand? total of?",
  "you|there will|should|'ll now|then? have|be a? total? of?",
  "you|there now|then have|are a? total? of?",
  "you|there have|are a? total? of?",
  "you'll have",
  "there'll be",
  "giving|makes|making|leaving|gives|equals|having|leaves you? a? total? of?",
  "now|should have|has|be",
  "total sts|stitches|st|stitch count|number? of?|:|= :|=?",
  "total no|number of sts|stitches",
  "st|sts|stitch|stitches count is|=|:|-?",
  "so|and you|there have|are|will have?",
  "with|to|until a total of",
  "rem|remaining",
  "counts as",
  "counts",
  "stitch|st count|total",
  "to have|make",
  "should have",
  "count|total",
];

const UNIT_WORDS = new Set([
  "repeat",
  "repeats",
  "rep",
  "reps",
  "block",
  "blocks",
  "point",
  "points",
  "mesh",
  "meshes",
  "pattern",
  "patterns",
  "motif",
  "motifs",
  "square",
  "squares",
  "wave",
  "waves",
  "rib",
  "ribs",
  "group",
  "groups",
  "section",
  "sections",
  "petal",
  "petals",
  "scallop",
  "scallops",
  "unit",
  "units",
  "row",
  "rows",
  "ridge",
  "ridges",
  "increase",
  "increases",
  "bump",
  "bumps",
  "hole",
  "holes",
  "eyelet",
  "eyelets",
  "loop",
  "loops",
  "lp",
  "lps",
  "post",
  "posts",
  "leaf",
  "leaves",
  "corner",
  "corners",
  "round",
  "rounds",
  "rnds",
]);

const CHANGES: Readonly<Record<string, "inc" | "dec">> = {
  inc: "inc",
  increased: "inc",
  increase: "inc",
  incd: "inc",
  added: "inc",
  incs: "inc",
  increases: "inc",
  fewer: "dec",
  less: "dec",
  dec: "dec",
  decreased: "dec",
  decd: "dec",
  decrease: "dec",
  decs: "dec",
  decreases: "dec",
};

/** A claim that begins here and fills the step; null where the words are no claim. `strict`: a noun or an introduction is needed. */
export function readClaim(reading: Reading, strict: boolean): Claim | null {
  return reading.cursor.attempt(() => claim(reading, strict));
}

function claim(reading: Reading, strict: boolean): Claim | null {
  const { cursor } = reading;
  const start = cursor.at;
  const introduced = cursor.acceptAny(INTROS);
  cursor.accept(":|=|-|about|of");
  let change: Claim["change"];
  const leading = CHANGES[cursor.key()];
  if (leading && cursor.isNumber(1)) {
    change = leading;
    cursor.at += 1;
  }
  const parts: ClaimPart[] = [];
  let includesChain = false;
  let countsChains: Claim["countsChains"];
  let excludes: Claim["excludes"];
  let eachSide = false;
  let ofRow: Amount | undefined;
  let nouns = 0;
  // Where the separator before the last part stands.
  let resume = start;
  for (let guard = 0; guard < 12; guard += 1) {
    const part = readPart(reading, !strict);
    if (part === "chain-included") includesChain = true;
    else if (part) {
      parts.push(part.part);
      if (part.noun) nouns += 1;
    } else if (parts.length === 0) return null;
    const tail = readTail(reading);
    // "19 groups on each side, 300 dc": what is said of one side is a count apart from the rest.
    if (part && part !== "chain-included" && parts.length > 1 && (tail.eachSide === true) !== eachSide) {
      parts.pop();
      cursor.at = resume;
      break;
    }
    // "9 shells, 4 hdc at beg, 4 hdc at end": parts of what is counted already.
    if (tail.portion && part && part !== "chain-included") {
      if (parts.length > 1) parts.pop();
      else eachSide = true;
    }
    if (tail.change) change = tail.change;
    if (tail.includesChain) includesChain = true;
    if (tail.countsChains) countsChains = tail.countsChains;
    if (tail.excludes) excludes = tail.excludes;
    if (tail.eachSide) eachSide = true;
    if (tail.ofRow) ofRow = tail.ofRow;
    if (!part && !tail.any) break;
    const before = cursor.at;
    resume = before;
    cursor.accept(",|and|&|+|;|plus|with|/ and|&|plus?");
    if (!cursor.isNumber() && !tailAhead(reading)) {
      cursor.at = before;
      break;
    }
    // "24 sts, 2 sc in next": the next number belongs to another step.
    const next = cursor.at;
    const more = readPart(reading, !strict);
    const closes =
      more !== null &&
      (cursor.isBoundary() ||
        cursor.fits("and|&|+|-|–|turn|join|made|inc|incl|total|plus|each|on|at|in|for|rem|with|/") > 0);
    cursor.at = next;
    if (!closes && !tailAhead(reading)) {
      cursor.at = before;
      break;
    }
  }
  if (parts.length === 0) return null;
  if (strict && nouns === 0 && !introduced && !change) return null;
  return made<Claim>({
    span: cursor.spanFrom(start),
    parts,
    change,
    ofRow,
    index: undefined,
    includesChain: includesChain || undefined,
    countsChains,
    excludes,
    eachSide: eachSide || undefined,
  });
}

type PartFound = { readonly part: ClaimPart; readonly noun: boolean } | "chain-included" | null;

/** Words that cannot be what a pattern counts by. */
const NO_UNIT = new Set(
  "and in into times time more turn join ch chain rep repeat from for to at on each every inc dec increased decreased made total incl including not rem remain remaining left x of with or inches inch cm mm yo skip sk all around across this that the you will so far now plus ins".split(
    " ",
  ),
);

function readPart(reading: Reading, loose: boolean): PartFound {
  const { cursor } = reading;
  return cursor.attempt<Exclude<PartFound, null>>(() => {
    const start = cursor.at;
    const counted = cursor.isNumber() ? stitchAt(cursor, reading, 0, true) : null;
    void counted;
    const amount = readAmount(reading);
    if (!amount) return null;
    cursor.accept("x|-");
    cursor.accept("x|total|more|complete|full|extra|of|individual|new|pattern");
    cursor.accept("back|front|sleeve|body|fancy|finished|actual|base|foundation");
    // "17 tr + 3 ch": the chain that begins the row.
    if (
      cursor.fits("ch|chs|chain") &&
      (cursor.isBoundary(1) || cursor.fits("sts", 1)) &&
      reading.cursor.tokens[start - 1]?.is === "mark" &&
      (reading.cursor.tokens[start - 1] as { text: string }).text === "+"
    ) {
      cursor.at += 1;
      return "chain-included";
    }
    // "2 ch-14 (16) sps", "1 ch 6 [7] loop": a space whose chain differs by size.
    const hyphen = cursor.fits("ch|chain -") > 0 ? 1 : 0;
    const graded = cursor.token(1 + hyphen);
    if (
      hyphen === 1 &&
      graded?.is === "number" &&
      graded.values.length > 1 &&
      cursor.fits("sp|sps|space|spaces|loop|loops|lp|lps", 3)
    ) {
      cursor.at += 4;
      return {
        part: { span: cursor.spanFrom(start), amount, kind: "ch-sp", words: cursor.wordsFrom(start) },
        noun: true,
      };
    }
    if (
      cursor.fits("ch|chain") &&
      cursor.isNumber(1) &&
      cursor.fits("sp|sps|space|spaces|loop|loops|lp|lps", 2)
    ) {
      const length = cursor.token(1);
      cursor.at += 3;
      const one =
        length?.is === "number" && length.values.length === 1 ? (length.values[0] ?? undefined) : undefined;
      return {
        part: made<ClaimPart>({
          span: cursor.spanFrom(start),
          amount,
          kind: "ch-sp",
          chains: one,
          words: cursor.wordsFrom(start),
        }),
        noun: true,
      };
    }
    const chains = spaceAfterNumber(reading);
    const noun = chains ?? readNoun(reading);
    if (noun) {
      const what = noun.what;
      const words = cursor.wordsFrom(start);
      const span = cursor.spanFrom(start);
      cursor.accept("st|sts|stitch|stitches");
      // "9 shells of 5 dc": what each is made of.
      if (cursor.accept("of") && readAmount(reading)) readNoun(reading);
      const kind =
        what.is === "any"
          ? "any"
          : what.is === "stitch"
            ? what.code
            : what.is === "space"
              ? "ch-sp"
              : what.is === "chain"
                ? "ch"
                : what.is;
      const unit = what.is === "stitch" && UNIT_WORDS.has(what.code) ? "unit" : kind;
      return {
        part: made<ClaimPart>({
          span,
          amount,
          kind: unit,
          chains: what.is === "space" ? what.chains : undefined,
          words,
        }),
        noun: true,
      };
    }
    // "20 armhole rows": one word before what is counted.
    if (cursor.isWord() && !NO_UNIT.has(cursor.key()) && cursor.isWord(1) && UNIT_WORDS.has(cursor.key(1))) {
      cursor.at += 2;
      return {
        part: { span: cursor.spanFrom(start), amount, kind: "unit", words: cursor.wordsFrom(start) },
        noun: true,
      };
    }
    if (cursor.isWord() && UNIT_WORDS.has(cursor.key())) {
      cursor.at += 1;
      return {
        part: { span: cursor.spanFrom(start), amount, kind: "unit", words: cursor.wordsFrom(start) },
        noun: true,
      };
    }
    // "(12 spokes and 12 open spaces)": what the pattern counts by, where nothing but a count can stand.
    if (loose && cursor.isWord() && !NO_UNIT.has(cursor.key())) {
      let words = 0;
      while (words < 3 && cursor.isWord(words) && !NO_UNIT.has(cursor.key(words))) words += 1;
      if (cursor.isBoundary(words) || cursor.fits("and|,|increased|decreased|made|inc|dec", words) > 0) {
        cursor.at += words;
        return {
          part: { span: cursor.spanFrom(start), amount, kind: "unit", words: cursor.wordsFrom(start) },
          noun: true,
        };
      }
    }
    return {
      part: { span: cursor.spanFrom(start), amount, kind: "any", words: cursor.wordsFrom(start) },
      noun: false,
    };
  }) as PartFound;
}

interface Tail {
  any: boolean;
  change?: "inc" | "dec";
  includesChain?: boolean;
  countsChains?: Claim["countsChains"];
  excludes?: Claim["excludes"];
  eachSide?: boolean;
  ofRow?: Amount;
  portion?: boolean;
}

function tailAhead(reading: Reading): boolean {
  return (
    reading.cursor.fits(
      "incl|including|includes|not|excluding|excl|each|on|inc|dec|made|total|counting|at|rem|inc'd|increased|decreased|without|does",
    ) > 0
  );
}

const INCLUDES =
  "incl|including|includes|counting|counts|inclusive the|of|as? turning|beg|beginning|first|starting|t? ch|chain|tch|chs|ch-3|st|loop";
const EXCLUDES =
  "not|excluding|excl|without|excludes|minus including|counting|incl|count|counted|include? the|any? turning|beg|beginning|starting|first|t? ch|chain|tch|chs|chains|sl|slip|ss|slst|loop|loops|skipped";

/** "Counting each ch-1 as a st", "incl ch-1 sps", "counting chs as sts": chains between stitches are in the number. */
function readChainsIncluded(reading: Reading): number | "all" | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    if (!cursor.accept("incl|including|includes|counting|with")) return null;
    cursor.accept("of") && cursor.accept("the");
    const each = cursor.accept("each|every|all|ea of? the?");
    cursor.accept("the");
    const several = cursor.fits("chs|chains") > 0;
    if (!cursor.accept("ch|chain|chs|chains")) return null;
    cursor.accept("-");
    const amount = readAmount(reading);
    const space = cursor.accept("-? sp|sps|space|spaces|st|sts|loop|loops");
    if (!each && !several && !space) return null;
    if (cursor.accept("as")) {
      cursor.accept("a|one|1");
      readNoun(reading);
    }
    return amount?.values.length === 1 ? (amount.values[0] ?? "all") : "all";
  });
}

/** "(Counting turning ch as 1 dc)": a bracket that only says what the number before it holds; it is added to that claim. */
export function readTailOfLast(reading: Reading, open: number, close: number): boolean {
  const { cursor } = reading;
  const last = reading.claims.at(-1);
  if (!last || last.index !== undefined) return false;
  const found = cursor.attempt(() => {
    cursor.at = open + 1;
    return cursor.within(close, () => {
      if (!cursor.fits("incl|including|includes|counting|not|excl|excluding|without")) return null;
      const tail = readTail(reading);
      return tail.any && cursor.done ? tail : null;
    });
  });
  if (!found) return false;
  const { any: _, ...says } = found;
  reading.claims[reading.claims.length - 1] = made<Claim>({ ...last, ...says } as never);
  cursor.at = close + 1;
  return true;
}

/** "incl ch 2", "not counting sl sts", "inc", "each side", "at end of Row 10", "rem", "made", "in each rnd". */
function readTail(reading: Reading): Tail {
  const { cursor } = reading;
  const tail: Tail = { any: false };
  for (let guard = 0; guard < 6; guard += 1) {
    const start = cursor.at;
    cursor.accept(",");
    const from = cursor.at;
    if (cursor.accept(EXCLUDES)) {
      const words = cursor.wordsFrom(from).toLowerCase();
      tail.excludes = /\b(sl|slip|ss|slst)\b/u.test(words)
        ? "sl st"
        : /turning|beg|starting|first|tch|\bt\b/u.test(words)
          ? "turning-chain"
          : "chain";
      cursor.accept("st|sts|stitch|stitches|-");
      readAmount(reading);
      cursor.accept("sp|sps|spaces|as a? st");
      tail.any = true;
      continue;
    }
    const chains = readChainsIncluded(reading);
    if (chains !== null) {
      tail.countsChains = chains;
      tail.any = true;
      continue;
    }
    if (cursor.accept(INCLUDES)) {
      cursor.accept("ch|chain|-");
      cursor.accept("-");
      readAmount(reading);
      cursor.accept("sp|sps|space|spaces");
      if (cursor.accept("as|for")) {
        readAmount(reading) ?? cursor.accept("a|one");
        readNoun(reading);
      }
      tail.includesChain = true;
      tail.any = true;
      continue;
    }
    if (cursor.accept("incl|including|includes")) {
      const amount = readAmount(reading);
      const noun = amount || cursor.isWord() ? readNoun(reading) : null;
      cursor.accept("-");
      if (noun || amount) {
        tail.includesChain = true;
        tail.any = true;
        continue;
      }
    }
    const key = cursor.key();
    if (CHANGES[key] && (!cursor.isNumber(1) || cursor.isMark("-", 1))) {
      tail.change = CHANGES[key] as "inc" | "dec";
      cursor.at += 1;
      cursor.accept("'d|d");
      tail.any = true;
      continue;
    }
    if (
      cursor.accept(
        "on|at|for|in the? left|right|first|second|front|back|neck|shoulder|armhole|sleeve|body|yoke|half",
      )
    ) {
      cursor.accept("front|back|neck|shoulder|armhole|sleeve|body|yoke|half|edge|side");
      // "26 sc for back of neck", "12 sc on front of left shoulder".
      cursor.accept("of the? left|right? front|back|neck|shoulder|armhole|sleeve|body|yoke");
      tail.any = true;
      continue;
    }
    if (cursor.accept("on|at|for each|both|either short|long|front|back|lower|upper side|edge|end")) {
      tail.eachSide = true;
      tail.any = true;
      continue;
    }
    if (
      !cursor.fits("on each|both") &&
      cursor.accept("along|on|down|up the|this|that? left|right|other|long|short? side|edge|front|neck")
    ) {
      tail.any = true;
      continue;
    }
    if (
      cursor.accept(
        "on|at|for|in each|both|ea|either side|end|sleeve|front|shoulder|half|edge|sides|ends|panel|strap",
      ) ||
      cursor.accept("each|per side|end|sleeve|front|shoulder|half")
    ) {
      cursor.accept("of the? row|rnd|round|piece");
      if (cursor.accept("of the? center|centre|middle|corner?"))
        spaceAfterNumber(reading) ?? readNoun(reading);
      tail.eachSide = true;
      tail.any = true;
      continue;
    }
    if (
      cursor.accept("at|by the? end|beginning|beg of? the? these|this? row|rnd|round|rows|rnds") ||
      cursor.accept("at|after|by|on? the? end|completion of? the? row|rnd|round|rows|rnds") ||
      cursor.accept("after|at|on row|rnd|round|rows")
    ) {
      const row = readAmount(reading);
      if (row) tail.ofRow = row;
      tail.any = true;
      continue;
    }
    if (cursor.accept("at|near the? beg|beginning|start|end|middle|center|centre")) {
      tail.portion = true;
      tail.any = true;
      continue;
    }
    if (
      cursor.accept(
        "rem|remain|remaining|remains|left|made|total|altogether|worked|around|across|now|completed|formed|long|each|in-total|inall|only",
      ) ||
      cursor.accept("so far") ||
      cursor.accept("and|+ ch|chs|chains") ||
      cursor.accept("at|on both|each ends|end|sides|side of the? row|rnd|round?") ||
      cursor.accept("in all|total|each|every|this|the row|rnd|round|rows?") ||
      cursor.accept("for|this|per this|each|the? row|rnd|round") ||
      cursor.accept("on this|the|your|each? row|rnd|round|hook|needle") ||
      cursor.accept("have|has|were|are been? made|worked|left|added")
    ) {
      tail.any = true;
      continue;
    }
    cursor.at = start;
    return tail;
  }
  return tail;
}
