import type { Span } from "../base/index.ts";
import { answerSpan } from "./answers.ts";
import { beginsPiece } from "./beginnings.ts";
import type { Block } from "./blocks.ts";
import { joinBlocks } from "./blocks.ts";
import { countsAsLists } from "./count-braces.ts";
import {
  beginsInstruction,
  isCountOnly,
  isInstruction,
  isRowEnd,
  isRowTotal,
  signs,
  talk,
} from "./evidence.ts";
import { type BareNumbers, bareNumbers, findLabels, type LabelAt } from "./find-labels.ts";
import { blockHeading, type HeadingStyle, runInHeading } from "./headings.ts";
import type { LabelPlace } from "./labels.ts";
import { definesStitch, isEntry, isGauge, isRule, isSizeClause } from "./line-kinds.ts";
import type { Line } from "./lines.ts";
import { readOrders, rowEnd } from "./orders.ts";
import { capitalsAhead, cutBeforeCapitals, type Part, trimmed } from "./run-together.ts";
import { namesPart, namesPiece, type Section, sectionHeader } from "./section-words.ts";
import { readSizePrefix } from "./size-prefix.ts";
import type { Label, OtherLine } from "./tree.ts";

/*
 * Cuts a text into headings, rows, other instructions, and everything that is none of these. What decides is evidence:
 * a label, a stitch word with a number, a chain. Where a line stands only breaks ties.
 */

/** A stretch of the text and what it is. Units are in order and do not overlap; between them there is white space only. */
export type Unit =
  | { readonly kind: "other"; readonly is: OtherLine["is"]; from: number; to: number }
  | {
      readonly kind: "heading";
      from: number;
      to: number;
      readonly nameFrom: number;
      readonly nameTo: number;
      readonly style: HeadingStyle;
      readonly finishing: boolean;
    }
  | {
      readonly kind: "row";
      from: number;
      to: number;
      readonly label: Label;
      readonly body: number;
      readonly sizes: readonly number[];
    }
  | { readonly kind: "order"; from: number; to: number; readonly sizes: readonly number[] }
  | { readonly kind: "answer"; from: number; to: number };

export interface DocumentPlace extends LabelPlace {
  readonly sizeNames: readonly string[];
  /** The words that set the size run, where a line does. */
  readonly sizesSpan: Span | null;
}

export interface Cut {
  readonly units: readonly Unit[];
  readonly flat: string;
}

/**
 * @param text   the designer's own text
 * @param plain  the same in plain glyphs
 * @param lines  its lines from `begin` on, what stands before being front matter
 */
export function cutDocument(text: string, plain: string, lines: readonly Line[], place: DocumentPlace): Cut {
  const { blocks, flat: joined } = joinBlocks(plain, lines);
  const flat = place.counts ? countsAsLists(joined) : joined;
  const cutter = new Cutter(text, flat, blocks, place, bareNumbers(flat, blocks));
  return { units: cutter.run(), flat };
}

/** Sections whose short lines are entries of a list, and whose sentences are no instructions. */
const LISTS = new Set<Section>(["abbreviations", "materials", "sizes", "gauge"]);

class Cutter {
  private readonly units: Unit[] = [];
  private section: Section | null = null;
  /** Rows or orders have been met: from here on sentences of instruction are instructions. */
  private started = false;
  private sizes: readonly number[] = [];
  private readonly sizesLast: boolean;
  /** The number that the next row would have where rows are told by a number alone. */
  private bareNext: number | null = null;

  constructor(
    private readonly text: string,
    private readonly flat: string,
    private readonly blocks: readonly Block[],
    private readonly place: DocumentPlace,
    private readonly bare: BareNumbers,
  ) {
    // Where a text says "All sizes" again, size words hold until then; else until the next blank line.
    this.sizesLast = /(?:^|\n)\W{0,4}(?:for )?all (?:other )?sizes/i.test(flat);
  }

  run(): Unit[] {
    this.blocks.forEach((block, i) => {
      for (const part of cutBeforeCapitals(this.flat, block)) this.block(part, i);
    });
    return this.units;
  }

  private words(from: number, to: number, most = 400): string {
    return this.flat.slice(from, Math.min(to, from + most));
  }

  private other(is: OtherLine["is"], from: number, to: number): void {
    if (to > from) this.units.push({ kind: "other", is, from, to });
  }

  /** The last unit, if more can be added to it. */
  private open(): Extract<Unit, { kind: "row" | "order" }> | null {
    const last = this.units.at(-1);
    return last?.kind === "row" || last?.kind === "order" ? last : null;
  }

  private block(block: Part, index: number): void {
    const { start, end } = block;
    const words = this.words(start, end);
    if (block.apart && !this.sizesLast) this.sizes = [];
    const { sizesSpan } = this.place;
    if (
      sizesSpan &&
      sizesSpan.from < end &&
      sizesSpan.to > start &&
      !this.holdsInstruction(start, end) &&
      end - start < 400
    ) {
      this.other("sizes", start, end);
      // Measurements follow; they belong to the sizes.
      if (!this.started) this.section = "sizes";
      return;
    }
    if (isRule(words) && end - start < 200) {
      this.other("prose", start, end);
      return;
    }
    if (this.started && answerSpan(this.flat, start, end)?.from === start) {
      this.units.push({ kind: "answer", from: start, to: end });
      return;
    }
    if (block.runTogether) {
      this.capitalsAhead(block, index);
      return;
    }
    if (this.header(block, words, index)) return;
    this.content(start, end, block, index);
  }

  /** The block begins with such a heading. */
  private capitalsAhead(block: Block, index: number): void {
    const rest = block.start + capitalsAhead(this.flat, block);
    const name = trimmed(this.flat, block.start, rest);
    const header = sectionHeader(this.words(name.from, name.to));
    if (header?.section === "pattern") this.other("heading", name.from, name.to);
    else this.heading(name.from, name.to, name.from, name.to, "capitals", header?.section === "finishing");
    this.section = null;
    this.started = true;
    this.content(rest, block.end, block, index);
  }

  /** "MATERIALS", "Gauge: 14 sts = 10 cm", "## Notes", "FINISHING": a heading of the head or the end of a pattern. */
  private header(block: Block, words: string, index: number): boolean {
    const found = sectionHeader(words);
    if (!found) return false;
    const { section } = found;
    const tail =
      /^\s?(?:\([^()]{1,40}\)\s?|,?\s?(?:us|uk|american|british)(?:\sterms)?(?=\s?(?:[:.-]|$)))?(?:[:.]|-{1,2}:?|=)?\s*(?=[*_]*)/.exec(
        words.slice(found.length),
      ) as RegExpExecArray;
    const bracket = /^\s?\([^()]{1,40}\)\s?[:.]?\s*$/.exec(words.slice(found.length));
    const restFrom = bracket ? block.end : Math.min(block.end, block.start + found.length + tail[0].length);
    const rest = this.words(restFrom, block.end).trim();
    const marked =
      (section === "sizes" && /^sizes?\s+[\dXSML(]/i.test(words)) ||
      (section === "gauge" && /^(?:GAUGE|TENSION)\s\d/.test(words)) ||
      /[:.=-]/.test(tail[0]) ||
      block.hashes > 0 ||
      block.bold;
    if (rest !== "" && !marked) return false;
    // Among the rows, words such as "Length" or "Colour" with an instruction behind them are no headings of lists.
    if (
      this.started &&
      rest !== "" &&
      section !== "note" &&
      section !== "gauge" &&
      section !== "finishing" &&
      section !== "pattern" &&
      this.holdsInstruction(restFrom, block.end)
    )
      return false;
    if (section === "definitions" && rest !== "" && /^to\b/i.test(words) && this.started) return false;
    this.section = section;
    if (section === "finishing") {
      this.heading(
        block.start,
        Math.min(restFrom, block.end),
        block.start,
        block.start + found.length,
        styleOf(block, words.slice(0, found.length)),
        true,
      );
      this.started = true;
      if (rest !== "") this.content(restFrom, block.end, block, index);
      return true;
    }
    if (rest === "") {
      this.other("heading", block.start, block.end);
      return true;
    }
    if (section === "pattern") {
      this.other("heading", block.start, restFrom);
      this.content(restFrom, block.end, block, index);
      return true;
    }
    if (section === "definitions") {
      this.other("heading", block.start, restFrom);
      this.content(restFrom, block.end, block, index);
      return true;
    }
    if (section === "note") {
      // A note run into its line ends with it.
      this.other("note", block.start, block.end);
      if (this.started) this.section = null;
      return true;
    }
    if (this.labels(restFrom, block.end).length > 0) {
      this.other("heading", block.start, restFrom);
      this.content(restFrom, block.end, block, index);
      return true;
    }
    this.other(section, block.start, block.end);
    return true;
  }

  private holdsInstruction(from: number, to: number): boolean {
    return isInstruction(this.flat, from, to) || this.labels(from, to).length > 0;
  }

  /** Labels of the stretches of one block are asked for more than once. */
  private readonly known = new Map<string, LabelAt[]>();

  private labels(from: number, to: number): LabelAt[] {
    const key = `${from} ${to} ${this.section} ${this.bareNext}`;
    const known = this.known.get(key);
    if (known) return known;
    if (this.known.size > 24) this.known.clear();
    const labels = this.readLabels(from, to);
    this.known.set(key, labels);
    return labels;
  }

  private readLabels(from: number, to: number): LabelAt[] {
    const bare =
      this.section === "note" || (this.section !== null && LISTS.has(this.section))
        ? { used: false, inline: false }
        : this.bare;
    const labels = findLabels(
      this.text,
      this.flat,
      from,
      to,
      this.place,
      this.bareNext === null ? bare : { ...bare, next: this.bareNext },
    );
    // Among materials and measurements a row has stitches in it.
    return this.section !== null && LISTS.has(this.section)
      ? labels.filter(
          (label) =>
            signs(this.flat, label.to, to) > 0 && !/^[\d(½¼¾][^;]{0,40}=/.test(this.words(label.to, to)),
        )
      : labels;
  }

  private rowAt(at: number, to: number): boolean {
    const labels = this.labels(at, Math.min(to, at + 200));
    return labels[0] !== undefined && labels[0].at - at < 4;
  }

  private content(begin: number, to: number, block: Block, index: number): void {
    const listed = this.bare.used
      ? null
      : /^(?:step\s\d{1,2}[.:)]?|\d{1,2}[.)])\s{1,3}(?=[A-Za-z([*])(?!(?:rows?|rnds?|rounds?)\s?:)/i.exec(
          this.words(begin, to, 16),
        );
    const from = begin + (listed?.[0].length ?? 0);
    const prefix = readSizePrefix(this.flat, from, to, this.place.sizeNames);
    if (
      prefix &&
      (this.started || this.section === null || this.section === "pattern" || this.rowAt(prefix.to, to)) &&
      this.isPrefix(prefix.to, to)
    ) {
      if (prefix.to >= to) {
        this.sizes = prefix.sizes;
        this.other("sizes", from, to);
        return;
      }
      const kept = this.sizes;
      this.sizes = prefix.sizes;
      this.other("sizes", from, prefix.to);
      this.content(prefix.to, to, block, index);
      this.sizes = kept;
      return;
    }
    if (this.started && isSizeClause(this.words(from, to))) {
      // Words on sizes that name none of this run are left to the reader of clauses, which says so.
      this.units.push({ kind: "order", from, to, sizes: this.sizes });
      return;
    }
    const runIn = runInHeading(this.flat, from, to, (at) => this.rowAt(at, to));
    if (runIn && !this.rowAt(from, to) && this.isPieceHeading(runIn.to, from, runIn.rest, to)) {
      this.heading(from, runIn.rest, from, runIn.to, runIn.style, false);
      this.section = this.section === "finishing" ? "finishing" : null;
      this.started = true;
      this.content(runIn.rest, to, block, index);
      return;
    }
    const labels = this.labels(from, to);
    if (labels.length === 0) {
      this.unlabelled(from, to, block, index);
      return;
    }
    const first = labels[0] as LabelAt;
    const firstFrom = first.name?.from ?? first.at;
    if (firstFrom > from) {
      const lead = trimmed(this.flat, from, firstFrom);
      if (/^[\d.)\s*([-]*$/.test(this.words(lead.from, lead.to))) this.other("prose", lead.from, lead.to);
      else
        this.unlabelled(
          lead.from,
          /[,]$/.test(this.words(lead.from, lead.to)) ? lead.to - 1 : lead.to,
          { ...block, start: lead.from, end: lead.to },
          index,
          true,
        );
    }
    this.started = true;
    if (this.section !== "finishing") this.section = null;
    if (this.bare.used) {
      const last = labels.at(-1) as LabelAt;
      if (/^\d/.test(last.label.words)) this.bareNext = Number(last.label.rows.at(-1)?.to.values[0]) + 1;
    }
    labels.forEach((label, i) => {
      if (label.name)
        this.heading(label.name.from, label.name.to, label.name.from, label.name.to, "run-in", false);
      const next = labels[i + 1];
      this.row(label, next?.name?.from ?? next?.at ?? to);
    });
  }

  /** A run-in heading of the head of a pattern is the name of a stitch ("Shell: 5 dc in next st") unless it names a piece. */
  private isPieceHeading(nameTo: number, from: number, rest: number, to: number): boolean {
    const name = this.words(from, nameTo);
    if (this.started && this.section !== "definitions") return true;
    if (this.rowAt(rest, to)) return true;
    if (this.section === "definitions" && !namesPiece(name)) return false;
    if (beginsPiece(this.words(rest, to))) return true;
    if (this.section === "definitions" || this.section === "abbreviations" || this.section === "note")
      return false;
    return namesPiece(name) || namesPart(name);
  }

  private isPrefix(rest: number, to: number): boolean {
    if (/\b(?:you|there)\b[^.]{0,24}\d/i.test(this.words(rest, to, 60)) && this.started) return true;
    return rest >= to || this.holdsInstruction(rest, to) || beginsInstruction(this.flat, rest, to);
  }

  private row(label: LabelAt, until: number): void {
    const { to } = trimmed(this.flat, label.at, until);
    const end = Math.max(label.to, rowEnd(this.flat, Math.min(label.to, to), to));
    this.units.push({
      kind: "row",
      from: label.at,
      to: Math.min(end, to),
      label: label.label,
      body: Math.min(label.to, to),
      sizes: this.sizesInLabel(label) ?? this.sizes,
    });
    if (end < to) this.sentences(end, to);
  }

  /** "Row 12 (sizes M and L only)". */
  private sizesInLabel(label: LabelAt): readonly number[] | null {
    const bracket = /[([]([^()[\]]{1,60})[)\]]/.exec(this.flat.slice(label.at, label.to));
    if (!bracket) return null;
    const from = label.at + bracket.index + 1;
    const to = from + (bracket[1] as string).length;
    const found = readSizePrefix(this.flat, from, to, this.place.sizeNames);
    return found && found.to >= to ? found.sizes : null;
  }

  /** A block, or the lead of one, in which no row begins. */
  private unlabelled(from: number, to: number, block: Block, index: number, lead = false): void {
    const open = this.open();
    if (open && [isCountOnly, isRowEnd, isRowTotal].some((test) => test(this.flat, from, to))) {
      open.to = to;
      return;
    }
    // "Row 2:" alone on its line: what follows is the row.
    if (open?.kind === "row" && open.body >= open.to && !this.headingOf(block, index)) {
      this.units[this.units.length - 1] = { ...open, body: from };
      const grown = this.open() as Extract<Unit, { kind: "row" }>;
      grown.to = Math.max(open.to, rowEnd(this.flat, from, to));
      if (grown.to < to) this.sentences(grown.to, to);
      return;
    }
    const words = this.words(from, to);
    const listing = this.section !== null && LISTS.has(this.section);
    if (this.isTitle(block, index)) {
      this.other("title", from, to);
      return;
    }
    const heading = this.headingOf(block, index, lead);
    if (heading && !(listing && isEntry(words) && !/:$/.test(words))) {
      this.heading(from, to, from, Math.min(heading.to, to), heading.style, false);
      if (this.section !== "finishing") this.section = null;
      this.started = this.started || this.follows(index);
      this.sizes = [];
      return;
    }
    if (definesStitch(this.flat, from, to, this.section, this.started)) {
      this.other("definition", from, to);
      return;
    }
    const begins = beginsPiece(words) && isInstruction(this.flat, from, to);
    if (this.section !== null && this.section !== "finishing" && this.section !== "pattern") {
      const stranded =
        begins &&
        (this.section === "definitions" || (this.section === "note" && this.follows(index))) &&
        /^[\s*]{0,2}(?:ch|chain)\s?\d{2,}[^.;]{0,40}(?:[.;]|$)/i.test(words);
      const leaves =
        stranded ||
        (begins &&
          !(this.section === "gauge" && /\d\s?(?:sts?|sc|dc|hdc|tr|rows?)\s?=/.test(words)) &&
          this.section !== "note" &&
          this.section !== "definitions" &&
          !/\bcounts?\b/i.test(words.slice(0, 60)));
      const apartNote =
        begins &&
        this.section === "note" &&
        block.apart &&
        !/\bcounts?\b|\bat (?:the )?(?:beg|start)/i.test(words.slice(0, 120));
      if (!leaves && !apartNote && !lead) {
        const is = this.section === "definitions" ? "definition" : this.section;
        this.other(is, from, to);
        return;
      }
      this.section = null;
    }
    if (!this.started && this.section === null && isGauge(words)) {
      this.other("gauge", from, to);
      return;
    }
    this.sentences(from, to, index);
  }

  /** The first line of a text is its title, unless it names a piece and rows follow at once. */
  private isTitle(block: Block, index: number): boolean {
    if (
      this.units.length > 2 ||
      this.units.some((unit) => unit.kind !== "other" || unit.is === "title" || unit.is === "heading")
    )
      return false;
    if (this.section !== null || sectionHeader(this.words(block.start, block.end))) return false;
    const { sizesSpan } = this.place;
    if (sizesSpan && sizesSpan.from <= block.end && sizesSpan.to >= block.start) return false;
    const words = this.words(block.start, block.end);
    if (
      words.length > 100 ||
      /[.:;,]$/.test(words) ||
      signs(this.flat, block.start, block.end) > 0 ||
      words.split(/\s+/).length > 12
    )
      return false;
    if (!/^["'(]?[\p{Lu}\d]/u.test(words)) return false;
    if (block.hashes === 1 && this.blocks.some((other, i) => i !== index && other.hashes === 1)) return false;
    if (block.hashes > 1) return false;
    return !(
      this.follows(index) &&
      (namesPiece(words) || namesPart(words)) &&
      words.split(/\s+/).length <= 3
    );
  }

  private headingOf(block: Block, index: number, lead = false) {
    return blockHeading(
      this.flat,
      block,
      lead || this.follows(index),
      this.section !== null && LISTS.has(this.section),
    );
  }

  /** Whether the next block holds a row or begins as instructions do. */
  private follows(index: number): boolean {
    for (let i = index + 1; i < Math.min(index + 3, this.blocks.length); i++) {
      const next = this.blocks[i] as Block;
      if (this.labels(next.start, Math.min(next.end, next.start + 400)).length > 0) return true;
      if (isInstruction(this.flat, next.start, Math.min(next.end, next.start + 160))) return true;
      // A second heading may stand between.
      if (next.end - next.start > 50 || /[.]$/.test(this.words(next.start, next.end))) return false;
    }
    return false;
  }

  private heading(
    from: number,
    to: number,
    nameFrom: number,
    nameTo: number,
    style: HeadingStyle,
    finishing: boolean,
  ): void {
    const end = trimmed(this.flat, from, to).to;
    this.units.push({ kind: "heading", from, to: Math.max(end, nameTo), nameFrom, nameTo, style, finishing });
  }

  private sentences(from: number, to: number, index = -1): void {
    const answer = this.started ? answerSpan(this.flat, from, to) : null;
    if (answer) {
      if (answer.from > from) this.sentences(from, answer.from, index);
      this.units.push({ kind: "answer", ...answer });
      if (/[\p{L}\p{N}]/u.test(this.flat.slice(answer.to, to))) this.sentences(answer.to, to, index);
      return;
    }
    for (const stretch of readOrders(this.flat, from, to)) {
      const open = this.open();
      if (stretch.is === "tail" && open && (open.to <= stretch.from || open.from < stretch.from)) {
        open.to = stretch.to;
        continue;
      }
      if (stretch.is === "tail" && this.started && /\d/.test(this.words(stretch.from, stretch.to))) {
        // A count that stands apart from any row says how many there are now.
        this.units.push({ kind: "order", from: stretch.from, to: stretch.to, sizes: this.sizes });
        continue;
      }
      if (stretch.is === "tail" && !open && beginsPiece(this.words(stretch.from, stretch.to))) {
        this.started = true;
        this.units.push({ kind: "order", from: stretch.from, to: stretch.to, sizes: this.sizes });
        continue;
      }
      if (stretch.is === "order" && (this.started || this.begins(stretch.from, stretch.to, index))) {
        this.started = true;
        this.units.push({ kind: "order", from: stretch.from, to: stretch.to, sizes: this.sizes });
        continue;
      }
      const is = stretch.is === "note" ? "note" : this.section === "finishing" ? "finishing" : "prose";
      const last = this.units.at(-1);
      if (last?.kind === "other" && last.is === is && last.to >= from && last.from >= from)
        last.to = stretch.to;
      else this.other(is, stretch.from, stretch.to);
    }
  }

  /** Before the first row: whether an order is the beginning of the work and not talk about it. */
  private begins(from: number, to: number, index: number): boolean {
    const words = this.words(from, to);
    if (beginsPiece(words) && !/\bcounts?\b|\bthroughout\b/i.test(words)) return true;
    if (this.section === "pattern") return isInstruction(this.flat, from, to);
    if (!beginsInstruction(this.flat, from, to) || talk(this.flat, from, to) > 0) return false;
    return (
      signs(this.flat, from, to) >= 2 &&
      index >= 0 &&
      this.follows(index) &&
      !/\bcounts?\b|\bthroughout\b|\bpattern\b/i.test(words)
    );
  }
}

function styleOf(block: Block, words: string): HeadingStyle {
  if (block.hashes > 0) return { hashes: block.hashes };
  return words === words.toUpperCase() ? "capitals" : block.bold ? "bold" : "title";
}
