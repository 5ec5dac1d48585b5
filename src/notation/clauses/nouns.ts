import { stitchAt } from "../stitch-words.ts";
import type { PlaceWord } from "../tree.ts";
import type { Reading } from "./reading.ts";

/** A word for a kind of place, and whether it was said of several. */
export interface Noun {
  readonly what: PlaceWord;
  readonly plural: boolean;
  /** The words bring their own end: "end of each dc row" needs no "each" before it. */
  readonly every?: boolean;
}

const STITCH = new Set(["st", "sts", "stitch", "stitches", "stich", "sttich", "stiches", "stitche"]);
const CHAIN = new Set(["ch", "chs", "chain", "chains", "chain-stitch"]);
const SPACE = new Set([
  "sp",
  "sps",
  "space",
  "spaces",
  "spc",
  "spcs",
  "loop",
  "loops",
  "lp",
  "lps",
  "arch",
  "arches",
  "arc",
  "arcs",
  "hole",
  "holes",
  "gap",
  "gaps",
]);
/** Nouns of texture that patterns use as places of their own. */
const UNITS = new Set([
  "group",
  "groups",
  "grp",
  "gr",
  "mesh",
  "meshes",
  "block",
  "blocks",
  "bar",
  "bars",
  "point",
  "points",
  "rib",
  "ribs",
  "wave",
  "motif",
  "square",
  "leaf",
  "petal",
  "petals",
  "scallop",
  "scallops",
]);

/** "st", "ch", "ch-2 sp", "corner", "shell", "free loops", "end of each row"; null where no place is named. */
export function readNoun(reading: Reading): Noun | null {
  return reading.cursor.attempt(() => noun(reading));
}

function plain(what: PlaceWord, plural = false): Noun {
  return { what, plural };
}

function noun(reading: Reading): Noun | null {
  const { cursor } = reading;
  const named = namedSpace(reading);
  if (named) return named;
  if (cursor.isWord() && cursor.fits("row end|ends", 1) && !cursor.fits("the|of|each|in|a|next|last|first")) {
    cursor.at += 3;
    return plain({ is: "row-end" }, true);
  }
  const special = specialPlace(reading);
  if (special) return special;
  const key = cursor.key();
  if (STITCH.has(key)) {
    cursor.at += 1;
    if (cursor.accept("with|holding the? stitch? marker|markers|m") || cursor.accept("marked")) {
      readMarkerName(reading);
      return plain({ is: "marked" });
    }
    // "st s": a plural that fell apart.
    const apart = key === "st" && cursor.isWord() && cursor.token()?.is === "word" && cursor.key() === "s";
    if (apart) cursor.at += 1;
    return plain({ is: "any" }, apart || key.endsWith("s"));
  }
  if (CHAIN.has(key)) return chainNoun(reading);
  if (SPACE.has(key)) {
    cursor.at += 1;
    if (cursor.fits("between")) return null;
    return plain({ is: "space" }, key.endsWith("s"));
  }
  const stitch = stitchAt(cursor, reading, 0, true);
  if (stitch) {
    cursor.at += stitch.length;
    if (SPACE.has(cursor.key()) && cursor.key().startsWith("sp")) {
      const plural = cursor.key().endsWith("s");
      cursor.at += 1;
      return plain({ is: "space" }, plural);
    }
    if (cursor.accept("-? group|groups|grp")) return plain({ is: "stitch", code: "group" });
    const before = cursor.tokens[cursor.at - 1];
    const plural = before?.is === "word" && before.norm.endsWith("s") && before.norm !== "ss";
    if (stitch.code === "ch") return plain({ is: "chain" }, plural);
    return plain({ is: "stitch", code: stitch.code }, plural);
  }
  if (UNITS.has(key)) {
    cursor.at += 1;
    return plain({ is: "stitch", code: singular(key) }, key.endsWith("s"));
  }
  return null;
}

/** "point sp", "joined side sp": a space with a name of its own. */
function namedSpace(reading: Reading): Noun | null {
  const { cursor } = reading;
  for (let words = 1; words <= 2; words += 1) {
    if (
      !cursor.isWord(words - 1) ||
      NO_NAME.has(cursor.key(words - 1)) ||
      stitchAt(cursor, reading, words - 1, false)
    )
      return null;
    const space = cursor.key(words);
    if (!/^(sp|sps|space|spaces)$/u.test(space)) continue;
    const from = cursor.at;
    cursor.at += words;
    const name = cursor.wordsFrom(from).toLowerCase();
    cursor.at += 1;
    return cursor.fits("between") ? null : plain({ is: "space", name }, space.endsWith("s"));
  }
  return null;
}

/** Words before "sp" that are no name of it. */
const NO_NAME = new Set(
  "the a an of in into each every next last first same and or ch chs chain chains corner this that any center centre following nx nxt all both rem remaining new single loop loops dc sc hdc tr beg beginning turning free open empty magic ring tch to from at on under over large small big little middle 1st previous prev top st sts skip sk unworked skipped foll".split(
    " ",
  ),
);

function singular(word: string): string {
  if (word === "grp" || word === "gr") return "group";
  if (word === "meshes") return "mesh";
  return word.endsWith("s") ? word.slice(0, -1) : word;
}

function readMarkerName(reading: Reading): string | undefined {
  const token = reading.cursor.token();
  if (token?.is === "word" && /^[A-Z]$/u.test(token.text)) {
    reading.cursor.at += 1;
    return token.text;
  }
  return undefined;
}

const RINGS = [
  "magic|adjustable|adj|sliding|magical|center|centre? ring|circle|loop|rg",
  "ring|rnd-ring|circle",
  "ch|chain ring|circle",
  "mr|mc",
  "center|centre of the? ring|circle|loop|rnd|round",
];
const TURNING = [
  "turning|turn|turned|t ch|chain|chs|chains|ch-3",
  "tch|tchs|turnch|tc-ch",
  "beg|beginning|starting|start|initial|begin|beginning-of-row|opening ch|chain",
];
const FREE_LOOPS = [
  "the? free|unused|unworked|remaining|rem|leftover|skipped|exposed front|back? loop|loops|lp|lps",
  "free|unused|unworked|remaining|rem front|back loop|loops|lp|lps",
];
const ROW_ENDS = [
  "end|ends|side|sides|edge|edges of the? each|every|ea? row|rows|rnd",
  "row|rows - end|ends",
  "row|rows end|ends|side|sides|edge|edges",
  "row-end|row-ends|rowends",
];
const FOUNDATION = [
  "the? opposite|other|bottom|unused|free|underside|remaining side|loops|lps|edge? of? the? foundation|base|beginning|beg|starting|original|initial ch|chain|chs|chains",
  "foundation|base|original|commencing ch|chain|chs|chains|st|sts|stitches",
  "foundation|base row|rnd|round?",
];

function specialPlace(reading: Reading): Noun | null {
  const { cursor } = reading;
  if (
    (cursor.fits("center|centre|magic|adjustable|adj|sliding|magical|ring|circle|mr|mc") ||
      cursor.fits("ch|chain ring|circle")) &&
    cursor.acceptAny(RINGS)
  ) {
    return plain({ is: "ring" });
  }
  const start = cursor.at;
  if (cursor.acceptAny(FOUNDATION)) return plain({ is: "foundation" });
  if (cursor.acceptAny(TURNING)) return plain(made(chainsAfter(reading)));
  const early = cursor.attempt(() => {
    if (!cursor.accept("ch|chain")) return null;
    const chains = readChainLength(reading);
    return cursor.accept("at|from the? very? beg|beginning|start of? the? previous|prev|last? row|rnd|round?")
      ? made(chains)
      : null;
  });
  if (early) return plain(early);
  if (cursor.fits("beg|beginning") && cursor.isBoundary(1)) {
    cursor.at += 1;
    return plain({ is: "turning-chain" });
  }
  if (cursor.accept("previous|prev|last rows|rnds|rounds|row|rnd|round ch|chain"))
    return plain(made(readChainLength(reading)));
  if (cursor.acceptAny(FREE_LOOPS)) return plain({ is: "free-loop" }, true);
  if (cursor.accept("end|ends|side|sides|edge|edges of the? each|every|ea?") && endOfRow(reading)) {
    return {
      what: { is: "row-end" },
      plural: true,
      every: cursor.tokens
        .slice(start, cursor.at)
        .some((token) => token.is === "word" && /^(each|every|ea)$/u.test(token.norm)),
    };
  }
  cursor.at = start;
  if (cursor.acceptAny(ROW_ENDS)) {
    const every = cursor.wordsFrom(start).toLowerCase();
    return {
      what: { is: "row-end" },
      plural: true,
      every: every.includes("each") || every.includes("every"),
    };
  }
  if (cursor.accept("corner")) return cornerNoun(reading);
  if (cursor.accept("stitch? marker|markers|m|sm|pm")) {
    const name = readMarkerName(reading);
    return plain(name === undefined ? { is: "marked" } : { is: "marked", name });
  }
  if (cursor.accept("marked st|sts|stitch|stitches|ch|sp|place|sc|dc|hdc|tr?"))
    return plain({ is: "marked" });
  if (cursor.accept("joining|join sl|slip? st|stitch|ss|slst?")) return plain({ is: "join" });
  if (cursor.accept("place|spot")) return plain({ is: "base" });
  return null;
}

function made(chains: number | undefined): PlaceWord {
  return chains === undefined ? { is: "turning-chain" } : { is: "turning-chain", chains };
}

/** "beg ch-3": the number after a turning chain. */
function chainsAfter(reading: Reading): number | undefined {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("-");
  const token = cursor.token();
  const glued = token?.is === "number" && (token.glued || cursor.at > start);
  if (
    token?.is === "number" &&
    token.values.length === 1 &&
    !token.ordinal &&
    (glued || cursor.isBoundary(1))
  ) {
    cursor.at += 1;
    return token.values[0] ?? undefined;
  }
  cursor.at = start;
  return undefined;
}

function readChainLength(reading: Reading): number | undefined {
  const { cursor } = reading;
  const start = cursor.at;
  cursor.accept("-");
  const token = cursor.token();
  if (token?.is === "number" && token.values.length === 1 && !token.ordinal) {
    cursor.at += 1;
    return token.values[0] ?? undefined;
  }
  cursor.at = start;
  return undefined;
}

function endOfRow(reading: Reading): boolean {
  const { cursor } = reading;
  const stitch = stitchAt(cursor, reading, 0, false);
  if (stitch) cursor.at += stitch.length;
  return cursor.accept("row|rows|rnd|round") || (stitch !== null && stitch.code !== "ch");
}

function cornerNoun(reading: Reading): Noun {
  const { cursor } = reading;
  if (
    cursor.accept("foundation|base ch|chain|st") ||
    cursor.accept("st|stitch") ||
    cursor.accept("group|grp|shell|cluster|increase|inc")
  )
    return plain({ is: "corner" });
  const inner = cursor.attempt(() => {
    const found =
      CHAIN.has(cursor.key()) || SPACE.has(cursor.key()) || cursor.isNumber()
        ? (spaceAfterNumber(reading) ?? readNoun(reading))
        : null;
    return found && (found.what.is === "space" || found.what.is === "chain") ? found : null;
  });
  if (inner?.what.is === "space") return plain({ ...inner.what, corner: true }, inner.plural);
  if (inner) return plain({ is: "corner" });
  const stitch = stitchAt(cursor, reading, 0, false);
  if (stitch) {
    cursor.at += stitch.length;
    return plain({ is: "corner" });
  }
  return plain({ is: "corner" });
}

/** "ch", "ch-2 sp", "chain 2 space", "ch sp", "ch-3". */
function chainNoun(reading: Reading): Noun {
  const { cursor } = reading;
  const plural = cursor.key().endsWith("s");
  cursor.at += 1;
  const afterWord = cursor.at;
  cursor.accept("-");
  const token = cursor.token();
  if (token && SPACE.has(cursor.key())) {
    const many = cursor.key().endsWith("s");
    cursor.at += 1;
    return plain({ is: "space" }, many);
  }
  if (token?.is === "number" && !token.ordinal && token.values.length === 1) {
    const hyphen = cursor.at > afterWord;
    const chains = token.values[0] ?? 1;
    const step = cursor.isMark("-", 1) && SPACE.has(cursor.key(2)) ? 2 : 1;
    if (SPACE.has(cursor.key(step))) {
      const many = cursor.key(step).endsWith("s");
      cursor.at += step + 1;
      return plain({ is: "space", chains }, many);
    }
    if (cursor.key(1) === "picot" || cursor.key(1) === "picots") {
      cursor.at += 2;
      return plain({ is: "stitch", code: "picot" });
    }
    if (
      hyphen ||
      token.glued ||
      cursor.isBoundary(1) ||
      cursor.isOpener(1) ||
      cursor.fits("of|for|to|-|=|and|turn|around|across|[", 1)
    ) {
      cursor.at += 1;
      return plain({ is: "space", chains });
    }
  }
  cursor.at = afterWord;
  cursor.accept("st|sts|stitch|stitches");
  return plain({ is: "chain" }, plural);
}

/**
 * "3-ch sp", "2ch-sp", "5-ch loop", "3ch": a number that belongs to the place. A number apart from a plural ("4 ch sps") counts
 * places and is not taken here.
 */
export function spaceAfterNumber(reading: Reading): Noun | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    const number = cursor.token();
    if (number?.is !== "number" || number.ordinal || number.values.length !== 1) return null;
    const chains = number.values[0] ?? 1;
    cursor.at += 1;
    const bound =
      cursor.isMark("-") || (cursor.token()?.is === "word" && (cursor.token() as { glued: boolean }).glued);
    cursor.accept("-");
    if (!CHAIN.has(cursor.key())) {
      // "5-dc group", "3-dc cluster": how many stitches it is made of says nothing about where it is.
      if (!bound || cursor.isMark("-", -1) === false) return null;
      const stitch = stitchAt(cursor, reading, 0, false);
      if (!stitch) return null;
      cursor.at += stitch.length;
      cursor.accept("-");
      if (
        cursor.accept(
          "group|groups|grp|gr|shell|shells|fan|fans|cluster|clusters|cl|bobble|puff|popcorn|block|blocks",
        )
      ) {
        return plain({ is: "stitch", code: singular(cursor.key(-1) === "" ? "group" : keyBefore(reading)) });
      }
      return null;
    }
    const plural = cursor.key().endsWith("s");
    cursor.at += 1;
    cursor.accept("-");
    if (SPACE.has(cursor.key())) {
      const many = cursor.key().endsWith("s");
      if (many && !bound) return null;
      cursor.at += 1;
      return plain({ is: "space", chains }, many);
    }
    // "each of next 9chs" counts chains; a space is named by one length.
    if (plural) return null;
    return bound && !cursor.key().startsWith("st") ? plain({ is: "space", chains }) : null;
  });
}

function keyBefore(reading: Reading): string {
  const token = reading.cursor.tokens[reading.cursor.at - 1];
  return token?.is === "word" ? token.norm : "group";
}
