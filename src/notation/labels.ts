import type { LexContext } from "./context.ts";
import { beginsInstruction, signs } from "./evidence.ts";
import { lex } from "./lex.ts";
import { rowNumbers } from "./row-numbers.ts";
import { readColourTag, readSideTag, type SideFound } from "./side-tags.ts";
import type { Token } from "./token.ts";
import type { Amount, Label } from "./tree.ts";

/*
 * The label of a row: what stands before the instruction and says which row it is.
 *
 *   Row 7:   Rnds 2-5   6th row -   2D ROW-   R4-6:   Rows 8-19 (8-21, 8-25):   Row (17, 19, 21):   Row 2-?:   WS Round 4:
 *   8th and every alt row:   All even rows:   Next row (WS):   Next 6 (8, 8) rows:   Inc row:   Foundation:   Row 4 (cream):
 *   Row 6 ch 2, ...   Rnd 5 to Rnd 9 (5 rounds)   Round (right hand) 15:
 */

/** A label and where the instruction begins behind it. */
export interface LabelFound {
  readonly label: Label;
  /** First character behind the label, its separator and the space after it. */
  readonly to: number;
  /** The mark between label and instruction: ":" "." "-" and so on; "" where there is none. */
  readonly separator: string;
}

/** What the document says that decides what a label is. */
export interface LabelPlace extends LexContext {
  readonly colours: readonly string[];
  /** What "R4" and a bare "4." mean in this document. */
  readonly rounds: boolean;
}

/** A label is no longer than this; the words behind it are not looked at. */
const WINDOW = 180;

const ROWS = "rows?|rnds?|rounds?|rds?|rws?";
const HEAD = new RegExp(
  `(?:(?:rs|ws|right[ -]side|wrong[ -]side)[\\s,-]{1,3})?(?:${ROWS})\\b\\.?|(?:${ROWS}|r)(?=\\s?\\d)`,
  "iy",
);
const BRACKET_BEFORE_NUMBER = /\s?\(([a-z][a-z ,&-]{1,24})\)\s(?=\d)/iy;
const ORDINAL =
  /(?:the\s)?(?:\d{1,3}(?:\s?(?:st|nd|rd|th)|d)\b|(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth)\b)/iy;
/** How far numbers of rows can reach, counts in braces among them, with one word behind them, which tells whether they do. */
const NUMBERS =
  /(?:\{[a-z][^{}\n]{0,80}\}|[\d\s,;:&+()[\]{}/.½¼¾?#-]|(?<![a-z])(?:and|to|thru|through|till?|until|or|the|rows?|rnds?|rounds?|rds?|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|zero)(?![a-z])|(?<![a-z])r(?=\d)|(?<=\d\s?)(?:st|nd|rd|th|d)(?![a-z])){0,160}[a-z]{0,12}/iy;
const ROW_WORD = new RegExp(`\\s{0,3}\\(?(${ROWS})\\b(?:\\)(?=\\s?[:.-]))?`, "iy");
const NEXT = new RegExp(
  `(?:the\\s)?(next|following|last|final)\\b\\s{0,2}(?:((?:rs|ws|right[ -]side|wrong[ -]side|inc|dec)\\s)?(${ROWS})\\b)?`,
  "iy",
);
const NAMED = new RegExp(
  `((?:[A-Za-z][A-Za-z'/-]*\\.?[ ]){1,3}?)(${ROWS})(?=\\b|\\d)(?:\\.?\\s?(\\d{1,3})(?:\\s?-\\s?(\\d{1,3}))?(?!\\s?(?:rows|times|sts?\\b|[a-z]))\\b)?`,
  "iy",
);
const FOUNDATION =
  /(?:foundation|base|beginning|beg|starting|initial|set-?up|cast[ -]on)(?:\s(?:chain|ch))?\b(?=\s{0,3}(?:[:.,=(]|-))|chain(?=\s{0,2}:)/iy;
const EVERY = new RegExp(
  `(?:(?:for\\s)?(?:all|every|each|the)\\s)?((?:other|even|odd|alternate|remaining|rs|ws|right[ -]side|wrong[ -]side|even[ -]numbered|odd[ -]numbered|following)\\s)(${ROWS})\\b`,
  "iy",
);
const SEPARATOR = /\s{0,4}(?:\.\s?-{1,2}|:\s?-{1,2}|-{1,2}:?|\.{2,}|[:;.,=>]|\)(?=\s)|…)\s*/y;
/** Behind a label without a separator: "are the same as", "same as", "with 6 chains". */
const SAME =
  /\s{0,3}(?:(?:is|are)\s(?:basically\s)?(?:the\s)?same|same\b|as\b|repeat|rep\b|rpt\b|with\s\d|(?:until|through)\b)/iy;
const STATEMENT =
  /\s{0,3}(?:is|are|was|were|will|should|has|have|can|may|of|from|in(?! (?:back|front|both|each|every|next|the back|the front|bl|fl))|on|to|you|for|below|above|before|and|or|only|again|once|counts?|times?|total|long|high|more|end|ends|(?:begins?|starts?)\swith\b)\b/iy;
const OPEN_END =
  /\s{0,2}(?:-\s?\?|-\s?(?:last|end)(?:\srow)?\b|\+(?=\s?[:.])|(?:and\s)?(?:onwards?|up)\b|until\s(?:the\s)?[a-z ]{0,30}(?:length|long|end|size)[a-z ]{0,12}|(?:and|&)\s(?:all|every)\s(?:the\s)?(?:following|foll|subsequent|remaining|other)?\s?(?:rows?|rnds?|rounds?)\b)/iy;
const OPEN_ALT =
  /\s{0,2}(?:and|&)\s(?:then\s)?(?:(?:all|every|each|on)\s?)?(?:the\s)?(?:foll(?:owing)?\s)?(?:alt(?:ernate)?|other|second|2nd|even|odd)\.?\s?(?:foll(?:owing)?\s)?(?:numbered\s)?(rows?|rnds?|rounds?)?\b/iy;
const INCLUSIVE = /\s{0,2}(?:(?:incl(?:usive)?|only)\b\.?|of (?:the )?patt(?:ern)?\b(?=\s{0,2}[:.(-]))/iy;
const ASIDE = /\s{0,2}([([{])([^()[\]{}\n]{1,60})[)\]}]/y;

function at(pattern: RegExp, text: string, from: number): RegExpExecArray | null {
  pattern.lastIndex = from;
  return pattern.exec(text);
}

/**
 * The label that begins at `from`, or null where none does.
 *
 * @param text   the designer's own text; spans are offsets into it
 * @param plain  the same in plain glyphs
 */
export function readLabel(
  text: string,
  plain: string,
  from: number,
  to: number,
  place: LabelPlace,
): LabelFound | null {
  const end = Math.min(to, from + WINDOW);
  const reader = new LabelReader(text, plain, from, end, to, place);
  return reader.read();
}

/** Parts of a label as they are found. */
interface Parts {
  is: Label["is"];
  rows: Label["rows"];
  rounds: boolean;
  next?: Amount;
  open?: NonNullable<Label["open"]>;
  /** Beginning of the words that name the row, where a side tag stands before them. */
  wordsFrom?: number;
  /** End of the words that name the row. */
  wordsTo: number;
  to: number;
  /** Whether the words can be a label only with a separator behind them. */
  needsSeparator: boolean;
  side?: "RS" | "WS";
  colour?: string;
}

class LabelReader {
  constructor(
    private readonly text: string,
    private readonly plain: string,
    private readonly from: number,
    private readonly end: number,
    private readonly limit: number,
    private readonly place: LabelPlace,
  ) {}

  read(): LabelFound | null {
    const parts =
      this.next() ?? this.every() ?? this.numbered() ?? this.ordinal() ?? this.foundation() ?? this.named();
    if (!parts || parts.to > this.limit) return null;
    return this.finish(parts);
  }

  private isRounds(word: string): boolean {
    const norm = word.toLowerCase();
    return norm === "r"
      ? this.place.rounds
      : norm.startsWith("rn") || norm.startsWith("ro")
        ? norm !== "row" && norm !== "rows"
        : norm.startsWith("rd");
  }

  private tokens(from: number): Token[] {
    NUMBERS.lastIndex = from;
    const length = NUMBERS.exec(this.plain)?.[0].length ?? 0;
    return lex(this.text, from, Math.min(this.end, from + length), { ...this.place, rowNumbers: true });
  }

  /** "Row 7", "Rnds 2-5", "R4-6", "WS Round 4", "Round (right hand) 15", "Rnd 5 to Rnd 9". */
  private numbered(): Parts | null {
    const head = at(HEAD, this.plain, this.from);
    if (!head) return null;
    const word = (/(rows?|rnds?|rounds?|rds?|rws?|r)\.?$/i.exec(head[0]) as RegExpExecArray)[1] as string;
    let start = this.from + head[0].length;
    const aside = at(BRACKET_BEFORE_NUMBER, this.plain, start);
    const asideSide = aside ? readSideTag(this.plain, start, this.end) : null;
    if (aside) start += aside[0].length;
    const several = /s$/i.test(word);
    const found = rowNumbers(this.tokens(start), this.isRounds(word), false, several);
    if (!found) return null;
    const before = readSideTag(this.plain, this.from, this.from + head[0].length + 1);
    return this.opened({
      is: this.isRounds(word) ? "round" : "row",
      rows: found.rows,
      rounds: this.isRounds(word),
      wordsTo: found.to,
      to: found.to,
      needsSeparator: false,
      ...(before
        ? { side: before.side, wordsFrom: this.from + head[0].toLowerCase().lastIndexOf(word.toLowerCase()) }
        : {}),
      ...(asideSide ? { side: asideSide.side } : {}),
    });
  }

  /** "6th row", "2D ROW", "First Row", "7th to 15th rows incl", "1st and 2nd rows", "8th and every alt row". */
  private ordinal(): Parts | null {
    if (!at(ORDINAL, this.plain, this.from)) return null;
    const found = rowNumbers(this.tokens(this.from), false, true);
    if (!found) return null;
    const alternate = at(OPEN_ALT, this.plain, found.to);
    let to = found.to;
    let word = alternate?.[1];
    if (alternate) to += alternate[0].length;
    if (!word) {
      const row = at(ROW_WORD, this.plain, to);
      if (!row) return null;
      word = row[1] as string;
      to += row[0].length;
    }
    const rounds = this.isRounds(word);
    return this.opened({
      is: rounds ? "round" : "row",
      rows: found.rows,
      rounds,
      wordsTo: to,
      to,
      needsSeparator: true,
      ...(alternate ? { open: { step: 2 } } : {}),
    });
  }

  /** "Next row", "Next 6 (8, 8, 10) rows", "Following 2 rnds". */
  private next(): Parts | null {
    const head = at(NEXT, this.plain, this.from);
    if (!head) return null;
    let to = this.from + head[0].length;
    // "Last 2 rnds: ..." are the next to be worked; "last row" alone is a name.
    const named = /^(?:last|final)$/i.test(head[1] ?? "");
    if (head[3] !== undefined && named) return null;
    if (head[3] !== undefined) {
      // Only the word before "row" tells a side: "rows" ends in one, too.
      const tag = head[0].search(/\b(?:rs|ws|right|wrong)/i);
      const side = tag === -1 ? null : readSideTag(this.plain, this.from + tag, to);
      return {
        is: "next",
        rows: [],
        rounds: this.isRounds(head[3]),
        wordsTo: to,
        to,
        needsSeparator: true,
        ...(side ? { side: side.side } : {}),
      };
    }
    const number = this.tokens(to)[0];
    if (number?.is !== "number") return null;
    const row = at(ROW_WORD, this.plain, number.span.to);
    if (!row) return null;
    to = number.span.to + row[0].length;
    return {
      is: "next",
      rows: [],
      rounds: this.isRounds(row[1] as string),
      next: { span: number.span, values: number.values },
      wordsTo: to,
      to,
      needsSeparator: true,
    };
  }

  /** "All even rows", "Every other row", "Even rows", "WS rows". */
  private every(): Parts | null {
    const head = at(EVERY, this.plain, this.from);
    if (!head) return null;
    const to = this.from + head[0].length;
    const which = (head[1] as string).trim().toLowerCase();
    const plural = /s$/i.test(head[2] as string) || /^(?:all|every|each)/i.test(head[0]);
    if (!plural) return null;
    const parity = which.startsWith("even") ? "even" : which.startsWith("odd") ? "odd" : undefined;
    const step = /^(?:remaining|following)/.test(which) ? 1 : 2;
    const side = readSideTag(this.plain, this.from + head[0].toLowerCase().lastIndexOf(which), to);
    const rounds = this.isRounds(head[2] as string);
    return {
      is: rounds ? "round" : "row",
      rows: [],
      rounds,
      open: { step, ...(parity ? { parity } : {}) },
      wordsTo: to,
      to,
      needsSeparator: true,
      ...(side ? { side: side.side } : {}),
    };
  }

  /** "Foundation", "Foundation chain", "Base ch", "Set-up". */
  private foundation(): Parts | null {
    const head = at(FOUNDATION, this.plain, this.from);
    if (!head) return null;
    const to = this.from + head[0].length;
    // "Base: 25 cm" is a measurement.
    const behind = this.plain.slice(to, Math.min(this.limit, to + 60));
    if (
      /^\s{0,3}[:=-]\s?[\d(]/.test(behind) &&
      !/\bch/i.test(head[0]) &&
      signs(this.plain, to, Math.min(this.limit, to + 80)) === 0
    )
      return null;
    return { is: "foundation", rows: [], rounds: false, wordsTo: to, to, needsSeparator: true };
  }

  /** "Foundation row", "Inc row", "Set-up rnd 2", "Continuous Round", "Pick-up row (WS)". */
  private named(): Parts | null {
    const head = at(NAMED, this.plain, this.from);
    if (!head) return null;
    const name = (head[1] as string).trim().toLowerCase();
    if (NOT_NAMES.test(name)) return null;
    const to = this.from + head[0].length;
    const rounds = this.isRounds(head[2] as string);
    const isFoundation = /^(?:foundation|base|beginning|starting|initial|set-?up|setup)\b/.test(name);
    const number = head[3];
    const rows =
      number === undefined ? [] : [range(this.from + head[0].lastIndexOf(number), number, head[4])];
    return { is: isFoundation ? "foundation" : "named", rows, rounds, wordsTo: to, to, needsSeparator: true };
  }

  private opened(parts: Parts): Parts {
    const alternate = at(OPEN_ALT, this.plain, parts.to);
    if (alternate && parts.open === undefined) {
      const parity = /even/i.test(alternate[0]) ? "even" : /odd/i.test(alternate[0]) ? "odd" : undefined;
      const to = parts.to + alternate[0].length;
      return { ...parts, open: { step: 2, ...(parity ? { parity } : {}) }, wordsTo: to, to };
    }
    const open = at(OPEN_END, this.plain, parts.to);
    if (!open) return parts;
    const to = parts.to + open[0].length;
    return { ...parts, open: { step: 1 }, wordsTo: to, to };
  }

  /** Tags and separator behind the words, and whether all this is a label at all. */
  private finish(parts: Parts): LabelFound | null {
    let { to, side, colour } = parts;
    let { wordsTo } = parts;
    let tagsTo = wordsTo;
    const sided = (found: SideFound) => {
      side = found.side;
      to = found.to;
      tagsTo = to;
    };
    for (let more = true; more; ) {
      more = false;
      const inclusive = at(INCLUSIVE, this.plain, to);
      if (inclusive) {
        to += inclusive[0].length;
        more = true;
      }
      const tag = readSideTag(this.plain, to, this.end);
      if (tag) {
        sided(tag);
        more = true;
        continue;
      }
      const shade = colour === undefined ? readColourTag(this.plain, to, this.end, this.place.colours) : null;
      if (shade) {
        colour = this.text.slice(shade.from, shade.until);
        to = shade.to;
        tagsTo = to;
        more = true;
        continue;
      }
      const aside = at(ASIDE, this.plain, to);
      if (
        aside &&
        /^\s*\d.*\bfor\b/i.test(aside[2] as string) &&
        this.plain.startsWith(":", to + aside[0].length)
      ) {
        // "Rows 4-13 (4-16 for Medium):" keeps its words, which say more than the numbers read.
        to += aside[0].length;
        wordsTo = to;
        tagsTo = to;
        more = true;
      } else if (aside && this.isAsideInLabel(aside[2] as string, to + aside[0].length)) {
        to += aside[0].length;
        tagsTo = to;
        more = true;
      }
    }
    to = this.emphasis(to);
    const mark = at(SEPARATOR, this.plain, to);
    const separator = mark ? mark[0].trim() : "";
    if (mark) to = this.emphasis(Math.min(this.limit, to + mark[0].length));
    const behind = readSideTag(this.plain, to, this.end);
    if (behind && side === undefined) {
      side = behind.side;
      to = behind.to;
      const second = at(SEPARATOR, this.plain, to);
      if (second) to = Math.min(this.limit, to + second[0].length);
    }
    const shade =
      mark && colour === undefined ? readColourTag(this.plain, to, this.end, this.place.colours, true) : null;
    if (shade) {
      colour = this.text.slice(shade.from, shade.until);
      to = shade.to;
    }
    while (to < this.limit && (this.plain[to] === " " || this.plain[to] === "\n")) to++;
    if (!this.stands(parts, separator, to, side !== undefined)) return null;
    const label: Label = {
      span: { from: this.from, to: tagsTo },
      is: parts.is,
      words: this.text
        .slice(parts.wordsFrom ?? this.from, wordsTo)
        .replace(/\s+/g, " ")
        .trim(),
      rows: parts.rows,
      rounds: parts.rounds,
      ...(parts.next ? { next: parts.next } : {}),
      ...(parts.open ? { open: parts.open } : {}),
      ...(side ? { side } : {}),
      ...(colour !== undefined ? { colour } : {}),
    };
    return { label, to, separator };
  }

  /** Behind the closing marks of emphasis where the label stands between such marks: "**Row 1:** ...". */
  private emphasis(to: number): number {
    for (const mark of ["**", "__", "*"]) {
      if (!this.plain.startsWith(mark, this.from - mark.length)) continue;
      return this.plain.startsWith(mark, to) ? to + mark.length : to;
    }
    return to;
  }

  /** A bracket behind the number that is a remark on the row ("(increase row)", "(5 rounds)"), and not its instruction. */
  private isAsideInLabel(words: string, to: number): boolean {
    if (/^\s*\d/.test(words) && !/^\s*\d+\s(?:rows?|rounds?|rnds?)\s*$/i.test(words)) return false;
    if (
      at(SEPARATOR, this.plain, to)?.[0]
        .trim()
        .match(/^[:.-]/)
    )
      return (
        signs(words, 0, words.length) === 0 || /\b(?:row|rnd|round|rounds|rows|only|side)\b/i.test(words)
      );
    return /^\s*(?:\d+\s)?(?:rows?|rounds?|rnds?)\s*$|\b(?:row|rnd|round)\s*$/i.test(words);
  }

  /** A colon makes a label; weaker marks need an instruction behind them. */
  private stands(parts: Parts, separator: string, to: number, sided: boolean): boolean {
    const rest = this.plain.slice(to, Math.min(this.limit, to + 60));
    if (/[:>]/.test(separator) || (separator !== "" && rest.trim() === "" && parts.rows.length > 0))
      return true;
    if (rest.trim() === "") return !parts.needsSeparator || parts.is !== "named";
    const same = at(SAME, this.plain, to) !== null;
    const follows =
      same ||
      beginsInstruction(this.plain, to, this.limit) ||
      signs(this.plain, to, Math.min(this.limit, to + 120)) >= 2;
    if (separator !== "" && separator !== ",")
      return follows || (separator.startsWith("-") && parts.rows.length > 0);
    if (parts.needsSeparator && separator === "" && !sided && parts.is !== "row" && parts.is !== "round")
      return false;
    if (same) return true;
    if (at(STATEMENT, this.plain, to)) return false;
    return follows && signs(this.plain, to, Math.min(this.limit, to + 120)) >= 1;
  }
}

/** Words that stand before "row" without naming one. */
const NOT_NAMES =
  /^(?:rep|repeat|rpt|follow|do|don't|join|turn|work|make|begin|start|continue|cont|finish|fasten|skip|place|mark|count|number|all|of|in|to|the|this|that|each|every|last (?=.)|end|ending|same as|as|work|on|at|all|from|until|after|before|previous|prev|another|for|one|two|three|per|first$|a|an|next$|these|those|both|any|with|along|across|by|and|or|then|sts|st|working|more|turn|ch|is|are|was|row|rows|rnd|round|number of|your|my|our|you)\b|\b(?:of|the|each|every|in|this|that|on|per|from|for|at|to|and|previous|is|are|are|by|with|rep|repeat|across|next|total|your|more)$/;

function range(from: number, first: string, last: string | undefined): Label["rows"][number] {
  const start: Amount = { span: { from, to: from + first.length }, values: [Number(first)] };
  return { from: start, to: last === undefined ? start : { span: start.span, values: [Number(last)] } };
}
