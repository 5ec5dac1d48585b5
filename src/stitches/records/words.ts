/** What sort of thing an abbreviation stands for. */
export type AbbreviationKind =
  /** A stitch of the dictionary. */
  | "stitch"
  /** Something the maker does: increase, skip, place a marker. */
  | "act"
  /** Somewhere the hook goes, or a part of the work. */
  | "place"
  /** A yarn. */
  | "colour"
  /** A face of the work. */
  | "side"
  /** A plain word shortened. */
  | "word"
  /** A unit of measure. */
  | "unit"
  /** A sign: star, brackets. */
  | "mark";

export interface WordRecord {
  /** As usually printed; the first of several is the commonest. */
  readonly written: readonly string[];
  readonly kind: Exclude<AbbreviationKind, "stitch">;
  readonly term: string;
  readonly ukTerm?: string;
  /** In our own words, short enough for a pattern's list. */
  readonly meaning: string;
  readonly terms: "both" | "US" | "UK";
  /** Whether a pattern that uses it has to explain it. Units, signs and "st" need no explaining; common practice, no source. */
  readonly needsDefinition: boolean;
  /** "seen" in published lists, else from memory. */
  readonly status: "seen" | "memory";
}

type Row = readonly [
  written: string,
  kind: WordRecord["kind"],
  term: string,
  meaning: string,
  status: WordRecord["status"],
  more?: { readonly terms?: "US" | "UK"; readonly plain?: true; readonly ukTerm?: string },
];

/** Spellings stand before the first comma each. Source: published abbreviation lists, and memory where a row says so. */
const ROWS: readonly Row[] = [
  ["alt", "word", "alternate", "every other one", "seen"],
  ["approx", "word", "approximately", "about; a figure that may vary", "seen", { plain: true }],
  ["beg", "word", "begin, beginning", "where a row, round or repeat starts", "seen"],
  ["bet, btw", "place", "between", "work in the space between two stitches", "seen"],
  ["BLO, BL, BLP", "place", "back loop only", "put the hook under only the loop farther from you", "seen"],
  ["FLO, FL, FLP", "place", "front loop only", "put the hook under only the loop nearer to you", "seen"],
  [
    "BP, BPO",
    "place",
    "back post",
    "put the hook in from behind, round the upright of the stitch, and out behind",
    "memory",
  ],
  [
    "FP",
    "place",
    "front post",
    "put the hook in from the front, round the upright, and out in front",
    "memory",
  ],
  ["tbl", "place", "through back loop", "same as back loop only", "memory"],
  [
    "3rd lp",
    "place",
    "third loop",
    "the loop behind the top of a half double, below the back loop",
    "memory",
    { ukTerm: "third loop" },
  ],
  [
    "ch-",
    "place",
    "chain made before",
    "with a number: a chain already worked, or the space under it",
    "memory",
  ],
  ["ch-sp, ch sp", "place", "chain space", "the gap under a chain", "seen"],
  ["lp", "place", "loop", "a strand on the hook or at the top of a stitch", "seen"],
  ["sp", "place", "space", "a gap to work into", "seen"],
  ["st, st(s)", "place", "stitch", "one stitch", "seen", { plain: true }],
  ["tch, t-ch", "place", "turning chain", "the chain that lifts the start of a row", "seen"],
  ["tc", "place", "turning chain", "the chain that lifts the start of a row", "memory", { terms: "US" }],
  ["m, mkr", "place", "marker", "a clip or thread that marks a place", "memory"],
  ["hk", "word", "hook", "the hook", "memory"],
  ["CA", "colour", "color A", "the yarn so lettered in the materials list", "memory", { ukTerm: "colour A" }],
  ["CB", "colour", "color B", "the yarn so lettered in the materials list", "memory", { ukTerm: "colour B" }],
  ["CC", "colour", "contrasting color", "the second yarn", "seen", { ukTerm: "contrasting colour" }],
  ["MC", "colour", "main color", "the first yarn", "seen", { ukTerm: "main colour" }],
  ["col", "colour", "color", "a yarn of one color", "memory", { ukTerm: "colour" }],
  ["MR, mag ring", "place", "magic ring", "an adjustable loop to start a round", "memory"],
  ["MC", "place", "magic circle", "an adjustable loop to start a round", "memory"],
  ["RS", "side", "right side", "the face meant to be seen", "seen"],
  ["WS", "side", "wrong side", "the face meant to be hidden", "seen"],
  ["cont", "word", "continue", "go on in the same way", "seen"],
  ["dec", "act", "decrease", "make fewer stitches", "seen"],
  ["inc", "act", "increase", "make more stitches", "seen"],
  ["sk", "act", "skip", "leave a stitch unworked", "seen", { ukTerm: "miss" }],
  ["pm", "act", "place marker", "put a marker here", "memory"],
  ["sm, sl m", "act", "slip marker", "move the marker up", "memory"],
  ["rm", "act", "remove marker", "take the marker out", "memory"],
  ["yo", "act", "yarn over", "lay the yarn over the hook", "seen"],
  ["yoh, woh", "act", "yarn over hook", "same as yarn over", "seen"],
  ["yrh", "act", "yarn round hook", "lay the yarn round the hook", "seen", { terms: "UK" }],
  ["tog", "act", "together", "as one", "seen"],
  ["jn", "act", "join", "join with a slip stitch unless told otherwise", "memory"],
  ["FO", "act", "fasten off", "cut the yarn and draw its end through the last loop", "memory"],
  ["foll", "word", "following", "the one after", "memory"],
  ["pat, patt", "word", "pattern", "the stitch pattern in use", "seen"],
  ["prev", "word", "previous", "the one before", "seen"],
  ["rem", "word", "remain, remaining", "what is left", "seen"],
  ["rep, rpt", "word", "repeat", "do it again", "seen"],
  ["rnd", "word", "round", "one turn of work in the round", "seen"],
  ["ea", "word", "each", "every one", "memory"],
  ["nxt, nx", "word", "next", "the one that comes now", "memory"],
  ["opp", "word", "opposite", "on the other side", "memory"],
  ["RH", "word", "right hand", "on the right as worn or held", "memory"],
  ["LH", "word", "left hand", "on the left as worn or held", "memory"],
  ["meas", "word", "measures", "is so long or wide", "memory"],
  ["incl", "word", "including", "counted with the rest", "memory", { plain: true }],
  ["no", "word", "number", "a number", "memory", { plain: true }],
  ["DK", "word", "double knitting", "a yarn of the third class", "memory", { plain: true }],
  ["in", "unit", "inch", "2.54 cm", "memory", { plain: true }],
  ["cm", "unit", "centimeter", "a hundredth of a meter", "memory", { plain: true, ukTerm: "centimetre" }],
  ["mm", "unit", "millimeter", "a tenth of a centimeter", "memory", { plain: true, ukTerm: "millimetre" }],
  ["m", "unit", "meter", "39.37 in", "memory", { plain: true, ukTerm: "metre" }],
  ["yd", "unit", "yard", "0.914 m", "memory", { plain: true }],
  ["g, gm", "unit", "gram", "a thousandth of a kilogram", "memory", { plain: true }],
  ["oz", "unit", "ounce", "28.35 g", "memory", { plain: true }],
  ["*", "mark", "repeat mark", "do again what follows the star, as told", "memory", { plain: true }],
  [
    "[ ]",
    "mark",
    "square brackets",
    "do the bracketed part the number of times given, or all in one place",
    "memory",
    { plain: true },
  ],
  [
    "( )",
    "mark",
    "round brackets",
    "either extra sizes and counts, or a group worked in one place",
    "memory",
    { plain: true },
  ],
];

/** Everything that is shortened in patterns and is not a stitch. */
export const WORDS: readonly WordRecord[] = ROWS.map(([written, kind, term, meaning, status, more]) => ({
  written: written.split(", "),
  kind,
  term,
  meaning,
  terms: more?.terms ?? "both",
  needsDefinition: more?.plain !== true,
  status,
  ...(more?.ukTerm === undefined ? {} : { ukTerm: more.ukTerm }),
}));
