import { stitchAt } from "../stitch-words.ts";
import type { Clause, HookClause, MarkerClause } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import { readNoun } from "./nouns.ts";
import { made, type Reading } from "./reading.ts";
import { readPlace } from "./targets.ts";

const NAMES = new Set([
  "white",
  "cream",
  "black",
  "grey",
  "gray",
  "red",
  "blue",
  "green",
  "yellow",
  "pink",
  "orange",
  "purple",
  "brown",
  "beige",
  "navy",
  "teal",
  "lilac",
  "rose",
  "gold",
  "silver",
  "ivory",
  "turquoise",
  "lavender",
  "mint",
  "peach",
  "aqua",
  "coral",
  "tan",
  "ecru",
  "mustard",
  "burgundy",
  "charcoal",
  "natural",
  "mauve",
  "violet",
  "maroon",
  "olive",
  "rust",
  "denim",
  "plum",
  "wine",
  "sky",
  "lime",
]);
const CODES = new Set(["mc", "cc", "ca", "cb", "cc1", "cc2", "cc3", "cd", "ce"]);
const SHADES = new Set([
  "another",
  "main",
  "contrast",
  "contrasting",
  "first",
  "second",
  "third",
  "light",
  "dark",
  "pale",
  "bright",
  "new",
  "next",
  "other",
  "old",
  "deep",
  "medium",
  "navy",
  "nose",
  "body",
  "skin",
]);

/** Number of tokens a colour's name takes here, 0 where none stands. */
export function colourHere(reading: Reading, ahead = 0): number {
  const { cursor, context } = reading;
  const token = cursor.token(ahead);
  if (token?.is === "number" && token.ordinal)
    return cursor.fits("cc|mc|color|colour|yarn|shade", ahead + 1) > 0 ? 2 : 0;
  if (token?.is !== "word") return 0;
  // "C1": a colour by its number.
  const number = cursor.token(ahead + 1);
  if (token.text === "C" && number?.is === "number" && number.glued && number.values.length === 1) return 2;
  for (const colour of context.colours) {
    const parts = colour.toLowerCase().split(/\s+/u);
    if (parts.length > 1 && parts.every((part, index) => cursor.key(ahead + index) === part))
      return parts.length;
    if (parts.length === 1 && (/^\p{Lu}$/u.test(colour) ? token.text === colour : token.norm === parts[0]))
      return 1;
  }
  if (CODES.has(token.norm)) return 1;
  if (NAMES.has(token.norm)) return 1;
  if (SHADES.has(token.norm)) {
    if (cursor.fits("color|colour|yarn|shade|cc|mc", ahead + 1)) return 2;
    const inner = NAMES.has(cursor.key(ahead + 1));
    return inner ? 2 : 0;
  }
  // "drop Tangerine": a name that no list has, written as a name and standing where a yarn must.
  if (ahead === 0 && isLooseName(reading)) {
    const second = cursor.token(1);
    return second?.is === "word" &&
      /^\p{Lu}\p{Ll}{3,}$/u.test(second.text) &&
      !stitchAt(cursor, reading, 1, false) &&
      !/^(yarn|hook|color|colour|chain|make|work)/iu.test(second.text)
      ? 2
      : 1;
  }
  // A capital letter alone names a yarn: "with A". "A" at the head of a sentence is an article, so it needs an end after it.
  if (
    /^\p{Lu}$/u.test(token.text) &&
    (token.text !== "A" ||
      cursor.isBoundary(ahead + 1) ||
      cursor.fits("in|with|and|to|at|on|for|of", ahead + 1) > 0 ||
      isYarnA(reading, ahead))
  )
    return 1;
  return 0;
}

/** "With A sc in next 3 sts": a capital in the middle of words in small letters, right before a stitch. */
function isYarnA(reading: Reading, ahead: number): boolean {
  const { cursor } = reading;
  const before = cursor.tokens[cursor.at + ahead - 1];
  if (before?.is !== "word" || !/^[Ww]ith$|^[Uu]sing$/u.test(before.text)) return false;
  const stitch = stitchAt(cursor, reading, ahead + 1, false);
  return stitch !== null && stitch.code !== "sl st";
}

const NAMERS = new Set([
  "with",
  "using",
  "drop",
  "cut",
  "attach",
  "join",
  "to",
  "carry",
  "break",
  "rejoin",
  "pick",
  "colour",
  "color",
  "and",
]);

/** A capitalised word in the middle of a sentence after "with", "drop", "attach" that is no word of the craft. */
function isLooseName(reading: Reading): boolean {
  const { cursor } = reading;
  const token = cursor.token();
  const before = cursor.tokens[cursor.at - 1];
  if (token?.is !== "word" || before?.is !== "word" || !NAMERS.has(before.norm)) return false;
  if (!/^\p{Lu}\p{Ll}{3,}$/u.test(token.text) || (before.norm === "and" && !/^\p{Ll}/u.test(before.text)))
    return false;
  if (
    /^(right|wrong|yarn|color|colour|back|front|sleeve|next|first|last|round|row|magic|single|double|half|treble|slip|same|each|every|top|main|size|both|work|chain|this|that|your|join|ring|loop|marker|left|body|neck|hook|turn)/iu.test(
      token.text,
    )
  )
    return false;
  return stitchAt(cursor, reading, 0, false) === null;
}

/** "With seaside, ch 71": a yarn whose name no list has, alone between "with" and a comma. */
function readUnlisted(reading: Reading): string | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is !== "word" || token.norm.length < 4 || !cursor.isMark(",", 1)) return null;
  if (
    !cursor.isNumber(2) &&
    !cursor.fits("ch|chain|work|sc|dc|hdc|make|and|join|row|rnd|beginning|fsc|fdc", 2)
  )
    return null;
  if (
    stitchAt(cursor, reading, 0, false) ||
    /^(care|yarn|hook|both|needle|work|marker|facing|thread|double)/u.test(token.norm)
  )
    return null;
  cursor.at += 1;
  return token.text;
}

/** A yarn's name, stepped over: "A", "MC", "yarn B", "color 2", "pale blue". */
export function readColourName(reading: Reading): string | null {
  const { cursor } = reading;
  const start = cursor.at;
  if (colourHere(reading) === 0) cursor.accept("the|a|an");
  const worded = cursor.accept("yarn|color|colour|col|shade|thread");
  const length = colourHere(reading);
  if (length > 0) {
    const from = cursor.at;
    cursor.at += length;
    const name = cursor.wordsFrom(from);
    cursor.accept("yarn|color|colour|thread|shade");
    return name;
  }
  if (worded && cursor.isNumber()) {
    const from = cursor.at;
    cursor.at += 1;
    return cursor.wordsFrom(from);
  }
  cursor.at = start;
  return null;
}

const CHANGES = [
  "and",
  "cut|break",
  "change|switch|changing|switching|swap yarn|color|colour|yarns to",
  "changing|change|changes|switch|switching|changed over? to|into|back?",
  "change|switch|changing|swap|alternate|alternating color|colour|colors|colours|yarn|yarns? to?",
  "switching|changing|pick|picking up",
  "with|using|use|in",
  "drop|dropping",
  "carry|carrying",
];

/** "changing to B in last sc", "change to B", "with A", "using cream". */
export function readColour(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const drop = cursor.fits("drop|dropping|carry|carrying|cut|break") > 0;
    if (
      !cursor.acceptAny(CHANGES) &&
      !(
        cursor.fits("color|colour|yarn") &&
        cursor.isWord(1) &&
        (cursor.isBoundary(2) || cursor.fits("and", 2) > 0)
      )
    )
      return null;
    const changed = cursor.at;
    cursor.accept("to|back to?");
    const colour =
      readColourName(reading) ?? (/^with$/iu.test(cursor.wordsFrom(start)) ? readUnlisted(reading) : null);
    if (!colour) {
      const token = cursor.tokens[start];
      const said = token?.is === "word" && /^(chang|switch)/u.test(token.norm);
      cursor.at = changed;
      if (said && cursor.fits("color|colour|yarn|in|at|as|every|each|on|,|.")) {
        cursor.accept("color|colour|colors|yarn");
        skipPlace(reading);
        return { kind: "aside", span: cursor.spanFrom(start) };
      }
      return said && cursor.done ? { kind: "aside", span: cursor.spanFrom(start) } : null;
    }
    cursor.accept("yarn|color|colour");
    cursor.accept("and larger|smaller hook");
    skipPlace(reading);
    if (drop) {
      while (cursor.accept("and|,") && readColourName(reading)) {
        /* "cut A and B" */
      }
      return { kind: "aside", span: cursor.spanFrom(start) };
    }
    return { kind: "colour", span: cursor.spanFrom(start), colour };
  });
}

/** "in last sc", "at end of row", "on last yo of last st": when the change is made moves no stitch. */
function skipPlace(reading: Reading): void {
  const { cursor } = reading;
  cursor.attempt(() => {
    if (
      !cursor.accept("in|at|on|during|when|as|over the? last|final|end|yo|yoh|pull|next|loop|same|each|every")
    )
      return null;
    while (
      !cursor.isBoundary() &&
      !cursor.fits("turn|ch|join|rep|repeat|and") &&
      !cursor.isOpener() &&
      !cursor.isMark("-")
    )
      cursor.at += 1;
    return true;
  });
}

const MARK_VERBS =
  "place|put|pm|insert|add|attach|hang|mark|marking|placing|move|moving|remove|removing|replace|slip|use|carry";

/** "pm in next st", "move marker up", "remove marker", "mark first st". */
export function readMarker(reading: Reading): MarkerClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    const verb = cursor.key();
    if (!cursor.accept(MARK_VERBS)) return null;
    // "and move it up each rnd": the marker spoken of before.
    if (
      /^(?:mov|carry|rais|bring)/u.test(verb) &&
      cursor.accept("it|them|this up|along|on|with|to|each|every|as")
    ) {
      while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
      return { kind: "marker", span: cursor.spanFrom(start), action: "move", target: null };
    }
    const marks = verb === "pm" || verb === "mark" || verb === "marking";
    cursor.accept("and replace");
    cursor.accept("a|an|the|your|another|one|stitch|st");
    cursor.accept("stitch|st|contrasting|removable|second|locking|yarn");
    cursor.accept("stitch|st");
    const noun = cursor.accept("marker|markers|m|sm|pm|mkr|markers'");
    if (!noun && !marks) return null;
    let name: string | undefined;
    const token = cursor.token();
    if (noun && token?.is === "word" && /^\p{Lu}$/u.test(token.text)) {
      name = token.text;
      cursor.at += 1;
    }
    if (!noun && cursor.fits("as|rs|right|front|this|that|the? right|row|rnd")) return null;
    const moved = verb.startsWith("mov") && cursor.fits("up|on|with|along|as");
    if (!moved) cursor.accept("up");
    const place = moved ? null : readPlace(reading, marks && !noun);
    if (!place && marks && !noun && verb !== "pm") return null;
    const action =
      verb.startsWith("mov") || verb === "slip" || verb === "carry"
        ? "move"
        : verb.startsWith("remov")
          ? "remove"
          : "place";
    if ((!place && !cursor.fits("and")) || cursor.fits("on|where|to mark|indicate|as|for|up|each|on|at")) {
      while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
    }
    return made<MarkerClause>({
      kind: "marker",
      span: cursor.spanFrom(start),
      action,
      name,
      target: place?.target ?? null,
    });
  });
}

/**
 * "From each end count 32 dc and mark the last of them", "mark 10 htr at each end": a marked place so far from either end of the edge.
 */
export function readCornerMarks(reading: Reading): readonly MarkerClause[] | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    let ends = cursor.accept("from each|both|either end|ends");
    const verb = cursor.accept("count") || cursor.accept("mark");
    if (!verb) return null;
    const count = readAmount(reading);
    const noun = count ? readNoun(reading) : null;
    if (!count || !noun) return null;
    ends = cursor.accept("from|at each|both|either end|ends") || ends;
    if (!ends) return null;
    while (!cursor.isBoundary() && !cursor.isOpener()) cursor.at += 1;
    const span = cursor.spanFrom(start);
    const half = { from: span.to, to: span.to };
    const target = { span: count.span, ref: "nth", nth: count, what: noun.what } as const;
    return [
      { kind: "marker", span, action: "place", target: { ...target, from: "start" } },
      { kind: "marker", span: half, action: "place", target: { ...target, from: "end" } },
    ];
  });
}

/** "Change to 4 mm hook", "with larger hook", "using 5 mm hook". */
export function readHook(reading: Reading): HookClause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("and");
    cursor.accept("change|changing|switch|switching|go|return|returning down|up|back?");
    cursor.accept("with|using|use|to|and|on");
    const named = cursor.accept("hook size|no");
    cursor.accept("a|an|the|your|size");
    cursor.accept("size|us|crochet");
    cursor.accept("no|number|nr|#");
    cursor.accept("larger|smaller|bigger|main|same");
    let mm: HookClause["mm"] = null;
    const amount = readAmount(reading);
    if (amount) {
      cursor.accept("-");
      if (cursor.accept("mm")) mm = amount;
    } else if (cursor.fits("f|g|h|i|j|k|e|d|c|b|l|m|n")) {
      cursor.at += 1;
      cursor.accept("-|/");
      readAmount(reading);
      cursor.accept("/");
      const size = readAmount(reading);
      if (cursor.accept("mm")) mm = size;
    }
    if (cursor.isOpener() && cursor.fits("us|size|uk|g|h|i|j|k|f|e", 1)) {
      cursor.at = (cursor.partner[cursor.at] ?? cursor.at) + 1;
    }
    cursor.accept("size|mm");
    cursor.accept("crochet");
    if (!cursor.accept("hook|hooks|hk") && !(named && amount)) return null;
    if (cursor.at === start + 1) return null;
    const span = cursor.spanFrom(start);
    return { kind: "hook", span, mm, words: reading.words(span) };
  });
}
