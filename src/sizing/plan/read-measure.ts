import type { Span } from "../../base/index.ts";
import type { Expression } from "./expression.ts";
import { type NumberFound, nearestName, plainName, type Slip, WordCursor } from "./word-cursor.ts";

/** What the words may speak of. */
export interface Vocabulary {
  /** How many sizes there are: a list of numbers has so many, or one. */
  readonly sizes: number;
  /** Names of measures or counts, each with the name it stands for. */
  readonly names: ReadonlyMap<string, string>;
  /** Names of fabrics whose stitches and rows can be a measure. */
  readonly fabrics?: readonly string[];
  /** Whether words are about lengths, or about counts, where a number needs no unit. */
  readonly about: "lengths" | "counts";
}

/** The words read, or the first place at which that was not possible. */
export type MeasureRead =
  | { readonly expression: Expression; readonly slip: null }
  | { readonly expression: null; readonly slip: Slip };

const SHARES: readonly (readonly [words: RegExp, times: number])[] = [
  [/(?:an?\s+|one\s+)?half(?:\s+of)?\b/iy, 1 / 2],
  [/(?:an?\s+|one\s+)third\s+of\b/iy, 1 / 3],
  [/two\s+thirds\s+of\b/iy, 2 / 3],
  [/(?:an?\s+|one\s+)?quarter\s+of\b/iy, 1 / 4],
  [/three\s+quarters\s+of\b/iy, 3 / 4],
  [/(?:twice|double)(?:\s+of)?\b/iy, 2],
];
const PLUS = /(?:plus\b|\+|and\s+then\b|with\b)/iy;
const MINUS = /(?:minus\b|less\b|without\b|[−–]|-(?=\s|\d))/iy;
const LARGER = /(?:the\s+)?(?:larger|largest|greater|greatest|wider|widest|longer|longest)\s+of\b/iy;
const SMALLER = /(?:the\s+)?(?:smaller|smallest|lesser|least|narrower|narrowest|shorter|shortest)\s+of\b/iy;
const LEAST = /,?\s*(?:but\s+)?(?:at\s+least|not\s+(?:less|under)(?:\s+than)?)\b/iy;
const MOST = /,?\s*(?:but\s+)?(?:at\s+most|not\s+(?:more|over)(?:\s+than)?)\b/iy;
const PERCENT = /(?:%|per\s?cent)\s*(?:of\b)?/iy;
const TIMES = /(?:times|[x×])(?![a-z])/iy;
const OF = /of\b/iy;
const FOR_EVERY = /(?:for|to)\s+every\b/iy;
const FABRIC = /(stitch(?:es)?|sts?|rows?|rounds?|rnds?)\s+(?:in|of)\b/iy;
const COUNTING = /(?:stitch(?:es)?|sts?|rows?|rounds?|rnds?|repeats?)\b/iy;
/** Where a name that is not known ends. */
const NAME_END =
  /\s*(?:$|[,;()+−–]|\s-\s|\b(?:plus|minus|less|without|at\s+least|at\s+most|and|but|is|within)\b)/giy;

/**
 * Reads a measure said in words: "half of finished bust plus 2 cm", "the larger of hip and bust, at least 90 cm",
 * "3 rows in bump". Reading is by hand and nothing is ever run; deep brackets and odd words end in a slip.
 */
export function readMeasure(words: string, vocabulary: Vocabulary): MeasureRead {
  const reader = new MeasureReader(words, vocabulary);
  try {
    return { expression: reader.whole(), slip: null };
  } catch (fault) {
    if (fault instanceof Stumble) return { expression: null, slip: fault.slip };
    throw fault;
  }
}

const sorted = new WeakMap<
  ReadonlyMap<string, string>,
  readonly (readonly [words: string, name: string])[]
>();

/** The names of a vocabulary, sorted once for all the words that are read with it. */
function longestFirst(
  names: ReadonlyMap<string, string>,
): readonly (readonly [words: string, name: string])[] {
  let known = sorted.get(names);
  if (known === undefined) {
    known = [...names]
      .map(([words, name]) => [plainName(words), name] as const)
      .sort((a, b) => b[0].length - a[0].length);
    sorted.set(names, known);
  }
  return known;
}

/** Leaves the reading; never leaves this file. */
class Stumble extends Error {
  constructor(readonly slip: Slip) {
    super(slip.say);
  }
}

const DEEPEST = 20;

class MeasureReader {
  private readonly cursor: WordCursor;
  /** Longest first, so that "back neck sts" is not read as "back". */
  private readonly names: readonly (readonly [words: string, name: string])[];
  private depth = 0;

  constructor(
    private readonly words: string,
    private readonly vocabulary: Vocabulary,
  ) {
    this.cursor = new WordCursor(words);
    this.names = longestFirst(vocabulary.names);
  }

  whole(): Expression {
    const { cursor } = this;
    if (cursor.done) return this.stumble(0, this.words.length, "Nothing stands here.");
    const found = this.bounded();
    if (!cursor.done)
      return this.stumble(cursor.at, this.words.length, "These words are not understood here.");
    return found;
  }

  /** A sum with its bounds: "..., at least 20 cm, at most 30 cm". */
  private bounded(): Expression {
    let found = this.sum();
    for (;;) {
      const is = this.cursor.take(LEAST) ? "larger" : this.cursor.take(MOST) ? "smaller" : null;
      if (is === null) return found;
      const bound = this.sum();
      found = { is, span: { from: found.span.from, to: bound.span.to }, of: [found, bound] };
    }
  }

  private sum(): Expression {
    const { cursor } = this;
    const from = cursor.at;
    const terms: { sign: 1 | -1; what: Expression }[] = [];
    let sign: 1 | -1 = cursor.take(MINUS) ? -1 : 1;
    for (;;) {
      terms.push({ sign, what: this.term() });
      if (cursor.take(PLUS)) sign = 1;
      else if (cursor.take(MINUS)) sign = -1;
      else break;
    }
    const [only] = terms;
    return terms.length === 1 && only?.sign === 1
      ? only.what
      : { is: "sum", span: this.spanFrom(from), terms };
  }

  private term(): Expression {
    if (++this.depth > DEEPEST)
      return this.stumble(this.cursor.at, this.words.length, "These words are nested too deeply.");
    const found = this.name() ?? this.share() ?? this.oneOfSeveral() ?? this.bracket() ?? this.number();
    this.depth--;
    return found ?? this.unknown();
  }

  private name(): Expression | null {
    const { cursor } = this;
    cursor.space();
    const start = cursor.at;
    const article = /the\s+/iy;
    article.lastIndex = start;
    const skipped = article.exec(this.words)?.[0].length ?? 0;
    for (const lead of skipped > 0 ? [0, skipped] : [0]) {
      const from = start + lead;
      for (const [words, name] of this.names) {
        const to = this.matchName(words, from);
        if (to === null) continue;
        cursor.at = to;
        return { is: "name", span: { from, to }, name };
      }
    }
    return null;
  }

  /** End of a known name that stands at `from`, however it is spaced or capitalised. */
  private matchName(name: string, from: number): number | null {
    let at = from;
    for (const letter of name) {
      const here = this.words[at];
      if (here === undefined) return null;
      if (letter === " ") {
        if (!/[\s_-]/.test(here)) return null;
        while (/[\s_-]/.test(this.words[at] ?? "")) at++;
      } else if (here.toLowerCase() === letter) at++;
      else return null;
    }
    return /[\p{L}\d]/u.test(this.words[at] ?? "") ? null : at;
  }

  private share(): Expression | null {
    const { cursor } = this;
    cursor.space();
    const from = cursor.at;
    for (const [pattern, times] of SHARES) {
      if (!cursor.take(pattern)) continue;
      const what = this.term();
      return { is: "times", span: this.spanFrom(from), times, what };
    }
    return null;
  }

  private oneOfSeveral(): Expression | null {
    const { cursor } = this;
    cursor.space();
    const from = cursor.at;
    const is = cursor.take(LARGER) ? "larger" : cursor.take(SMALLER) ? "smaller" : null;
    if (is === null) return null;
    const of = [this.sum()];
    while (cursor.take(/,?\s*and\b|,/iy)) of.push(this.sum());
    if (of.length < 2)
      return this.stumble(from, cursor.at, `"${is} of" is followed by two measures with "and".`);
    return { is, span: this.spanFrom(from), of };
  }

  private bracket(): Expression | null {
    const { cursor } = this;
    cursor.space();
    if (this.words[cursor.at] !== "(") return null;
    const from = cursor.at++;
    const found = this.bounded();
    if (!cursor.take(/\)/y)) return this.stumble(from, from + 1, "This bracket is never closed.");
    return found;
  }

  /** Whatever begins with a number: a length, a list of lengths, a share, stitches of a fabric, a count. */
  private number(): Expression | null {
    const { cursor } = this;
    cursor.space();
    const from = cursor.at;
    const comma = cursor.commaBetweenDigits();
    if (comma)
      return this.stumble(
        comma.from,
        comma.to,
        "A comma between digits can part two numbers or a decimal. Write a point for a decimal, a space between two numbers.",
      );
    const numbers = cursor.numbers();
    const [first] = numbers;
    if (first === undefined) return null;
    if (numbers.length === 1) {
      const share = this.shareBy(first, from);
      if (share) return share;
    }
    const unit = cursor.unit();
    const { about } = this.vocabulary;
    if (unit !== null && about === "lengths") {
      const span = this.spanFrom(from);
      return { is: "length", span, cm: this.perSize(numbers, span).map((n) => n * unit) };
    }
    if (about === "counts") {
      if (unit !== null)
        return this.stumble(
          from,
          cursor.at,
          "A length cannot stand among counts. Say it in stitches or rows.",
        );
      cursor.take(COUNTING);
      const span = this.spanFrom(from);
      return { is: "number", span, value: this.perSize(numbers, span) };
    }
    return (
      this.inFabric(numbers, from) ?? this.stumble(from, cursor.at, "The unit is missing: cm, in or mm.")
    );
  }

  /** "85 % of", "3 times", "¾ of", "3 for every 4 of". */
  private shareBy(first: NumberFound, from: number): Expression | null {
    const { cursor } = this;
    let times: number | null = null;
    if (cursor.take(PERCENT)) times = first.value / 100;
    else if (cursor.take(FOR_EVERY)) {
      const every = cursor.number();
      if (every === null || every.value === 0)
        return this.stumble(
          from,
          cursor.at,
          '"for every" is followed by a number, as in "3 for every 4 front rows".',
        );
      cursor.take(OF);
      times = first.value / every.value;
    } else if (cursor.take(TIMES) || cursor.take(OF)) times = first.value;
    if (times === null) return null;
    const what = this.term();
    return { is: "times", span: this.spanFrom(from), times, what };
  }

  private inFabric(numbers: readonly NumberFound[], from: number): Expression | null {
    const { cursor } = this;
    const found = cursor.take(FABRIC);
    if (!found) return null;
    const of = /^ro|^rn/i.test(found[1] as string) ? "rows" : "stitches";
    cursor.space();
    const start = cursor.at;
    const known = [...(this.vocabulary.fabrics ?? [])].sort((a, b) => b.length - a.length);
    for (const fabric of known) {
      const to = this.matchName(plainName(fabric), start);
      if (to === null) continue;
      cursor.at = to;
      const span = this.spanFrom(from);
      return { is: "fabric", span, count: this.perSize(numbers, span), of, fabric };
    }
    return this.strange(start, known, "fabric");
  }

  private perSize(numbers: readonly NumberFound[], span: Span): number[] {
    const has = numbers.length;
    const { sizes } = this.vocabulary;
    if (has !== 1 && has !== sizes)
      throw new Stumble({
        span,
        say: `${has} numbers stand here, and there are ${sizes} sizes.`,
        about: { is: "sizes", has },
      });
    return numbers.map(({ value }) => value);
  }

  private unknown(): Expression {
    this.cursor.space();
    const { at } = this.cursor;
    if (at >= this.words.length)
      return this.stumble(Math.max(0, at - 1), at, "The words end where a measure should follow.");
    return this.strange(at, [...this.vocabulary.names.keys()], "name");
  }

  private strange(from: number, known: readonly string[], what: "name" | "fabric"): never {
    NAME_END.lastIndex = from;
    let to = this.words.length;
    for (let at = from + 1; at <= this.words.length; at++) {
      NAME_END.lastIndex = at;
      if (NAME_END.test(this.words)) {
        to = at;
        break;
      }
    }
    const words = this.words.slice(from, to).trim();
    throw new Stumble({
      span: { from, to: Math.min(this.words.length, from + Math.max(1, words.length)) },
      say: `There is no ${what} "${words}".`,
      about: { is: "name", words, near: nearestName(words, known) },
    });
  }

  private spanFrom(from: number): Span {
    return { from, to: this.cursor.at };
  }

  private stumble(from: number, to: number, say: string): never {
    throw new Stumble({ span: { from, to: Math.max(to, from) }, say });
  }
}
