import { breaksOff } from "./broken-off.ts";
import { beginsInstruction, signs } from "./evidence.ts";
import { type Line, wrapWidth } from "./lines.ts";
import { isSectionHeader } from "./section-words.ts";

/*
 * Lines that a typist or a page broke in mid-sentence, joined again. A block is what stands together: one row, one paragraph,
 * one entry of a list.
 */

/** One or several lines. `start` and `end` as in Line; the marks are those of the first line. */
export interface Block extends Line {
  /** Blank lines stand before it. */
  readonly apart: boolean;
}

export interface Blocks {
  readonly blocks: readonly Block[];
  /** The plain text with the line breaks inside blocks made spaces: as long as the text, so that offsets hold. */
  readonly flat: string;
}

const ROW_LABEL =
  /^(?:(?:rs|ws)\s)?(?:(?:rows?|rnds?|rounds?|rds?)\s{0,3}[(#]?\s?\d|r\d{1,3}\s?(?:[-:.]|\()|(?:\d{1,3}(?:st|nd|rd|th|d)|first|second|third)\s(?:and\s\S+\s)?(?:rows?|rnds?|rounds?)\b\s?(?:[:.(]|-)|(?:next|foundation|inc|dec|increase|decrease|set-?up)\s(?:\d+\s)?(?:rows?|rnds?|rounds?)\b|(?:sizes?\s.{1,30}\sonly)|(?:all )?(?:even|odd)\s(?:rows|rnds|rounds)\s?:)/i;
const LIST_NUMBER = /^\d{1,3}\s?(?:[.):>]|-\s?\d{1,3}\s?[.):>]|\s-\s)\s?\D/;
const ENTRY = /^[\w()/*' -]{1,18}\s?(?:=|:|\s-\s)\s?\S/;
/** "rnd(s) = round(s)" begins an entry whatever stands before. */
const EQUATION = /^[\w()/*'-]{1,10}(?:\s[\w()]{1,8})?\s?=\s?\D/;
/** A line that ends so cannot be whole. */
const OPEN_END =
  /(?:\b(?:in|into|of|from|to|the|and|each|ea|next|with|a|an|for|at|rep|repeat|skip|sk|until|or|as|by|on|ending|beg|same|turning|every|between|work|make|through|over|draw|pull|this|these|last|first|row|rows|rnd|round|changes?|total)|[,([{*+=&/])$/i;
const CLOSED_END = /[.:;!?)\]}>"…]$/;

export function joinBlocks(plain: string, lines: readonly Line[]): Blocks {
  const width = wrapWidth(lines);
  const blocks: Block[] = [];
  const flat: string[] = [];
  let kept = 0;
  let apart = false;
  let previous: Line | null = null;
  for (const line of lines) {
    if (line.blank) {
      apart = true;
      continue;
    }
    const last = blocks.at(-1);
    const goesOn =
      last &&
      previous &&
      (apart
        ? goesOnBelow(plain, last, line)
        : joins(plain, previous, line, width) ||
          isStepBelow(plain, last, line) ||
          leavesStarOpen(plain, last, line));
    if (last && previous && goesOn) {
      blocks[blocks.length - 1] = { ...last, to: line.to, end: line.end, bold: last.bold && line.bold };
      flat.push(plain.slice(kept, previous.to), " ".repeat(line.from - previous.to));
      kept = line.from;
    } else blocks.push({ ...line, apart });
    apart = false;
    previous = line;
  }
  flat.push(plain.slice(kept));
  return { blocks, flat: flat.join("") };
}

/** A label and nothing else. */
const LABEL_ALONE = /^(?:rows?|rnds?|rounds?|rds?)\s?\d[\d\s&,-]{0,10}(?:\([^()]{1,12}\))?\s?[:.-]?$/i;

/** Pages with an empty line behind every line, or in the middle of a sentence: the block before breaks off and this line goes on. */
function goesOnBelow(plain: string, block: Block, line: Line): boolean {
  if (line.hashes > 0 || block.hashes > 0 || line.bullet || line.bold || block.bold) return false;
  if (block.end - block.start < 12 || isSectionHeader(plain.slice(block.start, block.start + 60)))
    return false;
  const tail = plain.slice(Math.max(block.start, block.end - 40), block.end);
  const head = plain.slice(line.start, Math.min(line.end, line.start + 80));
  if (ROW_LABEL.test(head) || LIST_NUMBER.test(head) || isSectionHeader(head) || EQUATION.test(head))
    return false;
  return breaksOff(tail, head) && signs(plain, block.start, block.end) > 0;
}

/** "Row 1" alone on its line, and each step of it on a line of its own below. */
function isStepBelow(plain: string, block: Block, line: Line): boolean {
  if (line.hashes > 0 || line.bold) return false;
  const star = /^\s*\*/.test(plain.slice(line.from, line.start));
  // A star that the lines below call, "repeat from *", is no bullet.
  if (star && !/\bfrom\s\*/i.test(plain.slice(line.start, line.start + 800).split("\n\n")[0] as string))
    return false;
  const first = plain.slice(block.start, Math.min(block.end, block.start + 60)).split("\n")[0] as string;
  if (!LABEL_ALONE.test(first.trim())) return false;
  const head = plain.slice(line.start, Math.min(line.end, line.start + 80));
  if (ROW_LABEL.test(head) || isSectionHeader(head) || isCapitals(head)) return false;
  if (block.end - block.start <= first.length + 1) return beginsInstruction(plain, line.start, line.end);
  return (
    /^[a-z\d(*[]/.test(head) ||
    (beginsInstruction(plain, line.start, line.end) && signs(plain, line.start, line.end) > 0)
  );
}

/** "3rd row: ... *Ch 1. Skip next st." with the call of the star on the line below: the row has not ended. */
function leavesStarOpen(plain: string, block: Block, line: Line): boolean {
  if (line.hashes > 0 || line.bullet || line.bold) return false;
  const row = plain.slice(block.start, block.end);
  const star = row.search(/(?<!\*)\*(?!\*)/);
  if (
    star < 0 ||
    !ROW_LABEL.test(row) ||
    /\brep(?:eat)?s?\b|\brpt\b|\bwork (?:from )?\*/i.test(row.slice(star))
  )
    return false;
  if (row.slice(star + 1).search(/(?<!\*)\*(?!\*)/) >= 0) return false;
  const head = plain.slice(line.start, Math.min(line.end, line.start + 80));
  if (ROW_LABEL.test(head) || LIST_NUMBER.test(head) || isSectionHeader(head) || isCapitals(head))
    return false;
  // The call has to come: a star that nothing calls was a slip, and the row ended.
  return /\brep(?:eat)?\b[^.;]{0,12}\*|\brpt\b[^.;]{0,12}\*|\bfrom \*/i.test(
    plain.slice(line.start, line.start + 400),
  );
}

/** Whether the line goes on with the sentence of the line before. */
function joins(plain: string, before: Line, line: Line, width: number): boolean {
  const tail = plain.slice(Math.max(before.start, before.end - 40), before.end);
  // "rep from / * ending with": the star that is meant stands at the head of the next line, and is no bullet.
  if (/\b(?:from|between|to)$/i.test(tail) && /^\s*\*\s/.test(plain.slice(line.from, line.start)))
    return true;
  if (line.hashes > 0 || before.hashes > 0 || line.bullet || line.bold || before.bold) return false;
  const head = plain.slice(line.start, Math.min(line.end, line.start + 80));
  if (/^[-=_*~#]{3,}$/.test(head) || /^[-=_*~#]{3,}$/.test(tail)) return false;
  const start = plain.slice(before.start, Math.min(before.end, before.start + 60));
  if (EQUATION.test(head) || (isSectionHeader(start) && before.end - before.start < 30)) return false;
  const full = width > 0 && before.to - before.from >= width * 0.72;
  if (!full && ENTRY.test(head) && ENTRY.test(start)) return false;
  // A bracket opened on this line closes on the next: "(see Pattern / Notes)".
  if (
    /\([^()]{0,40}$/.test(tail) &&
    /^[^()]{0,40}\)/.test(head) &&
    !/^\w+\)\s/.test(head.replace(/^[A-Za-z ]+\)[,.;]/, ""))
  )
    return true;
  const opens = OPEN_END.test(tail);
  if (opens && !/^(?:row|rnd|round)s?\s?\d[\d\s-]{0,8}[:(]/i.test(head)) return true;
  if (/\bch$/i.test(tail) && /^\d/.test(head)) return true;
  if (ROW_LABEL.test(head) || LIST_NUMBER.test(head) || isSectionHeader(head)) return false;
  const closed = CLOSED_END.test(tail);
  const whole = plain.slice(before.start, before.end);
  if (isCapitals(head) || (isCapitals(whole) && before.end - before.start < 50)) return false;
  if (ENTRY.test(head) && (ENTRY.test(start) || isSectionHeader(start)))
    return !closed && full && !/^\S{1,8}\s?=/.test(head);
  const continues = /^[a-z(*[{,;+&]/.test(head);
  // "Hdc / in 3rd ch": a place belongs to what stands before it, however short.
  if (
    !closed &&
    /^(?:in|into|across|around|to)\s/.test(head) &&
    beginsInstruction(plain, before.start, before.end)
  )
    return true;
  // "ch#1 skip": a list typed in small letters has short lines that all begin alike.
  if (closed && /^(?:(?:with|using)\b.{0,40}\s)?(?:ch|chain)\s?\d{2,}/i.test(head)) return false;
  if (full) return !closed || continues || !/^[A-Z][A-Za-z ]{2,40}[:.-]/.test(head);
  if (closed)
    return width === 0 && /^[a-z]/.test(head) && !/[.:!?]$/.test(tail) && before.end - before.start > 25;
  return continues && before.end - before.start > 5;
}

/** ALL CAPITALS, as headings are. */
function isCapitals(words: string): boolean {
  const letters = words.replace(/[^A-Za-z]/g, "");
  return letters.length >= 3 && letters === letters.toUpperCase() && words.length < 60;
}
