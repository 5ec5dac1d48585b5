import { breaksOff } from "./broken-off.ts";
import type { LexContext } from "./context.ts";
import { readCount } from "./count-braces.ts";
import { latinWord, plainText } from "./glyphs.ts";
import { readSizeList } from "./size-lists.ts";
import type { Token } from "./token.ts";
import { dottedWord, glueLength, normOf, spacedWord } from "./words.ts";

/*
 * Cuts a stretch of text into tokens with exact spans.
 *
 * A size list is one number token. "first" and "a" stay words; "1st", "2d", "second" are ordinal numbers, "twice" is a number
 * word of 2. "sc2tog", "2dctog", "dc3-tog", "2tog" are one word. "ch-2", "V-st", "sl-st", "ch-2-sp" are words, hyphen marks and
 * numbers, all glued. Dotted and spaced-out abbreviations ("s.c.", "s c", "s t s") are one word. The full stop of an abbreviation
 * belongs to its word ("sl. st", "rep. from"). Line breaks inside a sentence are no token; a break token stands only where a line
 * ends with a sentence, or where a blank line follows.
 */
export function lex(text: string, from: number, to: number, context: LexContext): Token[] {
  return new Lexer(text, from, to, context).run();
}

type Mark = Extract<Token, { is: "mark" }>["text"];

const MARKS = new Set<string>([
  "*",
  "#",
  "(",
  ")",
  "[",
  "]",
  "{",
  "}",
  "<",
  ">",
  ",",
  ";",
  ":",
  ".",
  "-",
  "=",
  "+",
  "&",
  "/",
  '"',
  "?",
  "!",
]);
const WORD = /[\p{L}][\p{L}\p{M}']*/uy;
const ROW_WORDS = new Set(["row", "rows", "rnd", "rnds", "round", "rounds", "rd", "rds", "r"]);
const BETWEEN_ROWS = new Set(["and", "to", "thru", "through", "or", "until"]);
/** After the letters of a word: "2tog", "3-tog", "2tg" belong to it. */
const TOG = /-?\d{1,2}-?(?:tog|tg|together)(?![a-z])/iy;
/** A word that begins with a figure: "2tog", "2dctog", "3sctog". */
const FIGURE_TOG = /\d{1,2}-?(?:[fb]p)?(?:sc|hdc|dc|tr|dtr|htr|st|sts)?-?(?:tog|tg|together)(?![a-z])/iy;
/** What number words begin with. */
const NUMBER_LETTERS = new Set("zotfsentwhZOTFSENTWH");
const RANGE_AHEAD = /(\d{1,4}(?:\.\d)?)\s?-\s?(\d{1,4}(?:\.\d)?)\s{0,3}[([]\s*(?=\d{1,4}(?:\.\d)?\s?-\s?\d)/y;

class Lexer {
  private readonly plain: string;
  private readonly tokens: Token[] = [];
  private at = 0;
  private glued = false;

  constructor(
    private readonly text: string,
    private readonly from: number,
    to: number,
    private readonly context: LexContext,
  ) {
    this.plain = plainText(text.slice(from, to));
  }

  run(): Token[] {
    while (this.at < this.plain.length) {
      const glyph = this.plain[this.at] as string;
      if (glyph === " ") {
        this.at++;
        this.glued = false;
      } else if (glyph === "\n") this.lineBreak();
      else if (!this.token(glyph)) this.mark(glyph);
    }
    return this.tokens;
  }

  private token(glyph: string): boolean {
    if (glyph >= "0" && glyph <= "9")
      return this.sizeName() || this.range() || this.togWord() || this.number();
    if ("([{-½¼¾⅓⅔⅛⅜⅝⅞⅕⅙".includes(glyph)) return this.count(glyph) || this.number();
    return NUMBER_LETTERS.has(glyph) ? this.number() || this.word() : this.word();
  }

  private span(from: number, to: number): { from: number; to: number } {
    return { from: this.from + from, to: this.from + to };
  }

  private push(token: Token, to: number): true {
    this.tokens.push(token);
    this.at = to;
    this.glued = true;
    return true;
  }

  /** A break ends a sentence only where the line ends like one, or where a blank line follows. */
  private lineBreak(): void {
    const start = this.at;
    const before = this.plain[start - 1];
    while (this.plain[this.at] === "\n" || this.plain[this.at] === " ") this.at++;
    const blank =
      this.plain.slice(start + 1, this.at).includes("\n") &&
      !breaksOff(
        this.plain.slice(Math.max(0, start - 48), start).trimEnd(),
        this.plain.slice(this.at, this.at + 48),
      );
    this.glued = false;
    // The bullet of a step that stands on a line of its own.
    const bullet = /^[-•]\s/.test(this.plain.slice(this.at, this.at + 2));
    if (bullet) this.at += 2;
    if (
      this.tokens.length > 0 &&
      this.at < this.plain.length &&
      (blank || bullet || (before !== undefined && ".;:!?)]}".includes(before)))
    ) {
      this.tokens.push({ is: "break", span: this.span(start, start + 1) });
    }
  }

  private count(glyph: string): boolean {
    if (glyph !== "{" || !this.context.counts) return false;
    const found = readCount(this.plain, this.at, this.context.counts);
    if (!found) return false;
    const { to, values, words } = found;
    return this.push(
      {
        is: "number",
        span: this.span(this.at, to),
        text: this.raw(this.at, to),
        values,
        ordinal: false,
        word: false,
        glued: this.glued,
        count: words,
      },
      to,
    );
  }

  private raw(from: number, to: number): string {
    return this.text.slice(this.from + from, this.from + to);
  }

  /** Whether the numbers here are numbers of rows: "Rows 3, 5 and 7", "Rnds 2 to 4". */
  private afterRows(): boolean {
    for (let i = this.tokens.length - 1; i >= 0 && i > this.tokens.length - 40; i--) {
      const token = this.tokens[i] as Token;
      if (token.is === "word" && ROW_WORDS.has(token.norm)) return true;
      if (token.is === "break") return false;
      if (token.is === "word" && !BETWEEN_ROWS.has(token.norm)) return false;
      if (token.is === "mark" && !",-&+".includes(token.text)) return false;
    }
    return this.context.rowNumbers === true && this.tokens.length < 40;
  }

  /** "Rows 8-19 (8-21, 8-25)": a range for every size, read as two lists with the hyphen between. */
  private range(): boolean {
    RANGE_AHEAD.lastIndex = this.at;
    const found = RANGE_AHEAD.exec(this.plain);
    if (!found) return false;
    const starts = [Number(found[1])];
    const ends = [Number(found[2])];
    let to = RANGE_AHEAD.lastIndex;
    const item =
      /(\d{1,4}(?:\.\d)?)\s?-\s?(\d{1,4}(?:\.\d)?)\s*([,;:]\s*|[)\]}](?:\s{0,2}[([{]\s?(?=\d{1,4}(?:\.\d)?\s?-\s?\d))?)/y;
    for (let closed = false; !closed; ) {
      item.lastIndex = to;
      const next = item.exec(this.plain);
      if (!next || starts.length > 30) return false;
      starts.push(Number(next[1]));
      ends.push(Number(next[2]));
      to = item.lastIndex;
      // A second bracket of ranges goes on with the list.
      closed = /[)\]}]/.test(next[3] as string) && !/[([{]/.test(next[3] as string);
    }
    const hyphen = this.plain.indexOf("-", this.at);
    const firstEnd = this.at + (found[1] as string).length;
    const same = starts.every((start) => start === starts[0]);
    this.pushList(this.at, firstEnd, same ? [starts[0] as number] : starts);
    this.push(
      { is: "mark", span: this.span(hyphen, hyphen + 1), text: "-", glued: hyphen === firstEnd },
      hyphen + 1,
    );
    let second = hyphen + 1;
    while (this.plain[second] === " " || this.plain[second] === "\n") second++;
    this.glued = second === hyphen + 1;
    return this.pushList(second, to, ends);
  }

  private pushList(from: number, to: number, values: readonly (number | null)[]): true {
    return this.push(
      {
        is: "number",
        span: this.span(from, to),
        text: this.raw(from, to),
        values,
        ordinal: false,
        word: false,
        glued: this.glued,
      },
      to,
    );
  }

  private togWord(): boolean {
    FIGURE_TOG.lastIndex = this.at;
    const found = FIGURE_TOG.exec(this.plain);
    return found !== null && this.pushWord(this.at + found[0].length);
  }

  private number(): boolean {
    const found = readSizeList(this.plain, this.at, {
      sizes: this.context.sizes,
      afterRows: this.afterRows(),
    });
    if (!found) return false;
    const { to, values, ordinal, word, bracketed, unit, mend } = found;
    return this.push(
      {
        is: "number",
        span: this.span(this.at, to),
        text: this.raw(this.at, to),
        values,
        ordinal,
        word,
        glued: this.glued,
        ...(bracketed ? { bracketed } : {}),
        ...(unit ? { unit } : {}),
        ...(mend ? { mend: { span: this.span(mend.from, mend.to), text: mend.text } } : {}),
      },
      to,
    );
  }

  /** "4X", "2XL": a size of this pattern, as one word. */
  private sizeName(): boolean {
    const found = /^\dX{1,2}L?(?![a-z\d])/.exec(this.plain.slice(this.at, this.at + 5));
    if (!found || !this.context.sizeNames?.includes(found[0])) return false;
    return this.pushWord(this.at + found[0].length);
  }

  private word(): boolean {
    const joined = dottedWord(this.plain, this.at) ?? spacedWord(this.plain, this.at);
    if (joined) return this.pushWord(joined.to, joined.norm);
    WORD.lastIndex = this.at;
    const found = WORD.exec(this.plain);
    if (!found) return false;
    let to = this.at + found[0].length;
    if (/^x$/i.test(found[0]) && this.isTimes(to)) {
      return this.push({ is: "mark", span: this.span(this.at, to), text: "x", glued: this.glued }, to);
    }
    TOG.lastIndex = to;
    const tog = TOG.exec(this.plain);
    if (tog) to += tog[0].length;
    const norm = normOf(latinWord(this.plain.slice(this.at, to)));
    const dot = glueLength(this.plain, to, norm, this.atClauseStart());
    return this.pushWord(to + dot, norm);
  }

  private pushWord(to: number, norm = normOf(latinWord(this.plain.slice(this.at, to)))): true {
    return this.push(
      { is: "word", span: this.span(this.at, to), text: this.raw(this.at, to), norm, glued: this.glued },
      to,
    );
  }

  /** "x" is "times" beside a number or behind a closing bracket; elsewhere it is a letter. */
  private isTimes(to: number): boolean {
    const last = this.tokens.at(-1);
    if (last?.is === "number") return true;
    return /^ ?[\d([{]/.test(this.plain.slice(to, to + 2)) && (last?.is === "mark" || last === undefined);
  }

  private atClauseStart(): boolean {
    const last = this.tokens.at(-1);
    return last === undefined || last.is === "break" || last.is === "mark";
  }

  private mark(glyph: string): void {
    const next = this.plain[this.at + 1];
    const starts = this.at;
    if (glyph === "\\" && next !== undefined && MARKS.has(next)) {
      this.push(
        { is: "mark", span: this.span(starts, starts + 2), text: next as Mark, glued: this.glued },
        starts + 2,
      );
    } else if (glyph === "*" && next === "*") {
      this.push(
        { is: "mark", span: this.span(starts, starts + 2), text: "**", glued: this.glued },
        starts + 2,
      );
    } else if (glyph === "…" || (glyph === "." && next === ".")) {
      let to = starts;
      while (this.plain[to] === "." || this.plain[to] === "…") to++;
      this.push({ is: "mark", span: this.span(starts, to), text: "…", glued: this.glued }, to);
    } else if (glyph === "'" && next === "'") {
      this.push(
        { is: "mark", span: this.span(starts, starts + 2), text: '"', glued: this.glued },
        starts + 2,
      );
    } else {
      // A character outside the basic plane is two units and one mark.
      const wide = /[\ud800-\udbff]/.test(glyph) && next !== undefined ? 2 : 1;
      this.push(
        {
          is: "mark",
          span: this.span(starts, starts + wide),
          text: MARKS.has(glyph) ? (glyph as Mark) : "other",
          glued: this.glued,
        },
        starts + wide,
      );
    }
  }
}
