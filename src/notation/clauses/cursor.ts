import type { Span } from "../../base/index.ts";
import type { Token } from "../token.ts";
import { meantWord } from "./slips.ts";

type Slot = { readonly words: ReadonlySet<string>; readonly optional: boolean };

const patterns = new Map<string, readonly Slot[]>();

/** "rep|repeat from the? *": words in a row, alternatives by a bar, a question mark where one may be missing. */
function slotsOf(pattern: string): readonly Slot[] {
  const known = patterns.get(pattern);
  if (known) return known;
  const slots = pattern.split(" ").map((part) => {
    const optional = part.length > 1 && part.endsWith("?");
    return { words: new Set((optional ? part.slice(0, -1) : part).split("|")), optional };
  });
  patterns.set(pattern, slots);
  return slots;
}

const OPENERS = new Set(["(", "[", "{", "<"]);
const CLOSERS = new Set([")", "]", "}", ">"]);

/**
 * Walks the tokens of one row. A stretch may be fenced off so that nothing inside reads past it; brackets are paired
 * beforehand, whatever their shapes, so that a wrong closing bracket still closes.
 */
export class Cursor {
  readonly tokens: readonly Token[];
  /** Index of the token that closes the bracket opened here, or that opened the one closed here; -1 where it has no partner. */
  readonly partner: readonly number[];
  /** How many brackets stand open before each token. */
  readonly depth: readonly number[];
  at = 0;
  limit: number;

  constructor(tokens: readonly Token[]) {
    this.tokens = tidy(tokens);
    this.limit = this.tokens.length;
    const partner = new Array<number>(this.tokens.length).fill(-1);
    const depth = new Array<number>(this.tokens.length).fill(0);
    const open: number[] = [];
    this.tokens.forEach((token, index) => {
      if (token.is === "mark" && CLOSERS.has(token.text)) {
        const opener = open.pop();
        if (opener !== undefined) {
          partner[opener] = index;
          partner[index] = opener;
        }
      }
      depth[index] = open.length;
      if (token.is === "mark" && OPENERS.has(token.text)) open.push(index);
    });
    this.partner = partner;
    this.depth = depth;
  }

  get done(): boolean {
    return this.at >= this.limit;
  }

  token(ahead = 0): Token | undefined {
    const index = this.at + ahead;
    return index >= 0 && index < this.limit ? this.tokens[index] : undefined;
  }

  /** What a token is compared by: a word's bare form, a mark, or a number's own text in lower case. */
  key(ahead = 0): string {
    const token = this.token(ahead);
    if (!token) return "";
    if (token.is === "word") return token.norm;
    return token.is === "break" ? "" : token.text.toLowerCase();
  }

  isMark(text: string, ahead = 0): boolean {
    const token = this.token(ahead);
    return token?.is === "mark" && token.text === text;
  }

  isNumber(ahead = 0): boolean {
    return this.token(ahead)?.is === "number";
  }

  isWord(ahead = 0): boolean {
    return this.token(ahead)?.is === "word";
  }

  isOpener(ahead = 0): boolean {
    const token = this.token(ahead);
    return token?.is === "mark" && OPENERS.has(token.text) && (this.partner[this.at + ahead] ?? -1) >= 0;
  }

  isCloser(ahead = 0): boolean {
    const token = this.token(ahead);
    return token?.is === "mark" && CLOSERS.has(token.text);
  }

  /** A mark that parts one step from the next, or the end. */
  isBoundary(ahead = 0): boolean {
    const token = this.token(ahead);
    if (!token) return true;
    return token.is === "mark" && (",;.:!?…".includes(token.text) || CLOSERS.has(token.text));
  }

  /** Number of tokens the pattern takes from here, 0 where it does not fit. */
  fits(pattern: string, ahead = 0): number {
    let here = ahead;
    for (const slot of slotsOf(pattern)) {
      let at = here;
      // A hyphen between the words of a phrase says nothing: "right-side".
      if (at > ahead && this.isMark("-", at) && !slot.words.has("-")) at += 1;
      if (this.token(at) && slot.words.has(this.key(at))) here = at + 1;
      else if (!slot.optional) return 0;
    }
    return here - ahead;
  }

  /** Steps over the pattern; false, and no step, where it does not fit. */
  accept(pattern: string): boolean {
    const length = this.fits(pattern);
    this.at += length;
    return length > 0;
  }

  acceptAny(list: readonly string[]): boolean {
    return list.some((pattern) => this.accept(pattern));
  }

  /** The first of the marks that stands here is stepped over. */
  acceptMark(...texts: string[]): boolean {
    const token = this.token();
    if (token?.is !== "mark" || !texts.includes(token.text)) return false;
    this.at += 1;
    return true;
  }

  /** From the token at `start` to the last one stepped over. */
  spanFrom(start: number): Span {
    if (this.at <= start) return this.emptyHere();
    const first = this.tokens[start] ?? this.tokens[this.tokens.length - 1];
    const last = this.tokens[Math.max(start, this.at - 1)] ?? first;
    if (!first || !last) return { from: 0, to: 0 };
    return { from: first.span.from, to: Math.max(first.span.to, last.span.to) };
  }

  /** An empty span just after the last token stepped over. */
  emptyHere(): Span {
    const before = this.tokens[this.at - 1];
    const next = this.tokens[this.at];
    const at = before ? before.span.to : (next?.span.from ?? 0);
    return { from: at, to: at };
  }

  /** The words from `start` to here, blanks set to one. */
  wordsFrom(start: number): string {
    let words = "";
    for (const token of this.tokens.slice(start, Math.max(start, this.at))) {
      if (token.is === "break") continue;
      words += words !== "" && !token.glued ? ` ${token.text}` : token.text;
    }
    return words;
  }

  /** Reads with a fence at `limit`; the old fence comes back whatever happens. */
  within<T>(limit: number, read: () => T): T {
    const before = this.limit;
    this.limit = Math.min(before, limit);
    try {
      return read();
    } finally {
      this.limit = before;
    }
  }

  /** Reads and, where nothing came of it, goes back. */
  attempt<T>(read: () => T | null): T | null {
    const start = this.at;
    const found = read();
    if (found === null) this.at = start;
    return found;
  }
}

/** A break parts steps as a full stop does, and has no width. Common slips of the pen are read as what was meant. */
function tidy(tokens: readonly Token[]): Token[] {
  return tokens
    .filter(
      (_, index) => !isGivenShort(tokens, index) && !(index < 3 && index !== 1 && beginsWithShort(tokens)),
    )
    .filter(
      (token, index) => !isAbbreviationStop(token, tokens[index - 1], tokens[index + 1], tokens[index - 2]),
    )
    .filter((token, index, kept) => !joinsPlace(token, kept[index - 1], kept[index + 1]))
    .filter((token, index, kept) => !isRoughly(token, kept[index + 1], kept[index + 2]))
    .map((token) => {
      if (token.is === "break")
        return { is: "mark", span: { from: token.span.from, to: token.span.from }, text: ".", glued: false };
      if (token.is !== "word") return token;
      const norm = meantWord(token.norm);
      return norm === token.norm ? token : { ...token, norm };
    });
}

const PLACE_PARTS = new Set("corner ch chain edge side center centre picot end".split(" "));
const PLACES = new Set("sp sps space spaces loop loops lp lps ring arch arches".split(" "));

/** The hyphen of "corner-sp" and "ch-loop", which says nothing. */
function joinsPlace(token: Token, before: Token | undefined, after: Token | undefined): boolean {
  return (
    token.is === "mark" &&
    token.text === "-" &&
    before?.is === "word" &&
    after?.is === "word" &&
    PLACE_PARTS.has(before.norm) &&
    PLACES.has(after.norm)
  );
}

/** "approximately 12 rows": the number is what can be worked. */
function isRoughly(token: Token, number: Token | undefined, noun: Token | undefined): boolean {
  return (
    token.is === "word" &&
    /^(?:approximately|approx|roughly|about)$/u.test(token.norm) &&
    number?.is === "number" &&
    noun?.is === "word" &&
    /^(?:rows?|rnds?|rounds?|times)$/u.test(noun.norm)
  );
}

/** Words of the trade and the abbreviations that patterns give behind them in brackets: "chain (ch) 5". */
const SHORT: Readonly<Record<string, string>> = {
  chain: "ch",
  chains: "ch|chs",
  crochet: "sc|dc|hdc|tr|htr|dtr",
  stitch: "st|sl st|ss|slst|sl",
  stitches: "sts|st|sl sts",
  space: "sp",
  spaces: "sps|sp",
  loop: "lp",
  loops: "lps|lp",
  repeat: "rep|rpt",
  beginning: "beg",
  skip: "sk",
  together: "tog",
  increase: "inc",
  decrease: "dec",
  round: "rnd",
};

/** One of the tokens of "(ch)" behind "chain": the bracket only gives the abbreviation. */
function isGivenShort(tokens: readonly Token[], index: number): boolean {
  for (let open = index; open >= Math.max(0, index - 3); open -= 1) {
    const opener = tokens[open];
    if (opener?.is !== "mark" || !OPENERS.has(opener.text)) continue;
    const full = tokens[open - 1];
    const known = full?.is === "word" ? SHORT[full.norm] : undefined;
    if (known === undefined) continue;
    let close = open + 1;
    while (close <= open + 2 && tokens[close]?.is === "word") close += 1;
    const closer = tokens[close];
    if (closer?.is !== "mark" || !CLOSERS.has(closer.text) || index > close) continue;
    const words = tokens
      .slice(open + 1, close)
      .map((token) => (token.is === "word" ? token.norm : ""))
      .join(" ");
    if (words !== "" && known.split("|").includes(words)) return true;
  }
  return false;
}

/** "(ch) 8" at the head, behind a label that said the word. */
function beginsWithShort(tokens: readonly Token[]): boolean {
  const [opener, word, closer, number] = tokens;
  return (
    opener?.is === "mark" &&
    OPENERS.has(opener.text) &&
    word?.is === "word" &&
    word.norm === "ch" &&
    closer?.is === "mark" &&
    CLOSERS.has(closer.text) &&
    number?.is === "number"
  );
}

/** Units and words so often cut short that a stop behind them, with the step going on in small letters or figures, ends nothing. */
const DOTTED = new Set(["ins", "in", "ch", "beg", "incl", "alt", "foll", "approx", "no"]);
/** "Rep rnd. 3": cut short behind a word that calls a round by its number. */
const ROUNDS = new Set(["rnd", "rnds", "rd", "rds"]);

function calls(word: Token | undefined): boolean {
  return (
    word?.is === "word" && /^(?:rep|repeat|rpt|as|work|of|and|from|in|through|to|like|for)$/u.test(word.norm)
  );
}

/** Of those, the ones a figure belongs to: "No. 9 hook", "approx. 16 cm". */
const BRINGS_FIGURE = new Set(["approx", "no"]);

function isAbbreviationStop(
  token: Token,
  before: Token | undefined,
  after: Token | undefined,
  ahead: Token | undefined,
): boolean {
  if (
    token.is !== "mark" ||
    token.text !== "." ||
    before?.is !== "word" ||
    !(DOTTED.has(before.norm) || ROUNDS.has(before.norm)) ||
    !token.glued
  )
    return false;
  if (after?.is === "number" && BRINGS_FIGURE.has(before.norm)) return true;
  if (ROUNDS.has(before.norm)) return after?.is === "number" && !after.ordinal && calls(ahead);
  if (after?.is === "number") return after.glued && before.norm === "ch";
  if (after?.is !== "word" || before.norm === "ch") return false;
  return after.text.charAt(0) !== after.text.charAt(0).toUpperCase();
}
