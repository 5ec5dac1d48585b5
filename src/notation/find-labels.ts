import type { Span } from "../base/index.ts";
import type { Block } from "./blocks.ts";
import { beginsInstruction, signs } from "./evidence.ts";
import { type LabelFound, type LabelPlace, readLabel } from "./labels.ts";
import { namesPart, namesPiece } from "./section-words.ts";
import type { Amount, Label } from "./tree.ts";

/*
 * Where in a block rows begin: at its start, and behind the end of a sentence ("Row 1: ... turn. Row 2: ... turn.").
 */

export interface LabelAt extends LabelFound {
  readonly at: number;
  /** The name of a part that stands before the label with no mark between: "Shape Armholes Row 1: ...". */
  readonly name?: Span;
}

/** How a document numbers its rows when it does without the word: "4. Ch 2, ..." */
export interface BareNumbers {
  /** Rows are told by a number alone. */
  readonly used: boolean;
  /** The number that would come next. */
  readonly next?: number;
  /** They follow each other inside one paragraph: "... join. (44) 2: Ch 1, ...". */
  readonly inline: boolean;
}

const CANDIDATE =
  /\b(?:(?:rs|ws|right side|wrong side)\s(?=r)|rows?\b|rnds?(?=\b|\d)|rounds?(?=\b|\d)|rds?(?=\b|\d)|rows?(?=\d)|r(?=\d)|next\s(?=\d|row|rnd|round|rs|ws)|foundation\s(?=row|rnd|round|ch)|set-?up\s(?=row|rnd|round)|(?:inc|dec|increase|decrease|pattern|shaping|last|final|following|joining|pick-?up|turning|border|edging|short|eyelet|buttonhole)\.?\s(?=rows?\b|rnd|round)|(?:all\s)?(?:even|odd)\s(?=rows|rnds|rounds)|\d{1,3}(?:\s?-\s?\d{1,3})?\.\s?(?=(?:rows?|rnds?|rounds?)\s?:)|\d{1,3}(?:\s?(?:st|nd|rd|th)|d)\b|(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)\s(?=row|rnd|round|and|to))/gi;
/** Words before a number of a row that make it a reference. */
const REFERENCE =
  /\b(?:rep|repeat|rpt|of|as|from|work|working|end|ending|through|and|to|on|in|after|before|until|for|with|the|at|by|like|see|follow|previous|than|row|rows|rnds?|rounds?|or|every|each|all|into|complete|finish|this)[.,]?\s{0,2}$/i;
const SHORTENED = /\b(?:rep|rpt|beg|cont|foll?|incl?|no|approx|prev)\.$/i;
/** "... join. (44) 2: Ch 1", "... in each sc. (12 sc)3. (1 sc in next": numbers that go on from one to the next. */
const INLINE_BARE =
  /(?<=^\s{0,2}|[.)\]!]\s{0,2})(\d{1,3})(?:\s?-\s?(\d{1,3}))?(?::\s?(?=[A-Z*([\d])|[.)]\s{1,2}(?=[A-Z*([\d]|ch\b))/g;
const BARE =
  /^(\d{1,3})(?:\s?(?:-|to|thru|&)\s?(\d{1,3}))?\s?(?:[.):>]{1,2}|-(?=\s?\D)|\s(?=-\s)|(?<=-\s?\d{1,3})\s(?=[A-Za-z]))-?\s{0,3}(?=\S)/i;
/** "1. row:", "9-13. rnd:": the figure with a full stop is an ordinal, as in other languages. */
const FIGURED = /(\d{1,3})(?:\s?-\s?(\d{1,3}))?\.\s?(rows?|rnds?|rounds?)\s?[:-]\s{0,3}/iy;
const LIST_NUMBER = /\d{1,2}[.)]\s{1,2}/y;

/** Looks over the blocks for numbers that stand where labels stand. */
export function bareNumbers(flat: string, blocks: readonly Block[]): BareNumbers {
  let bare = 0;
  let labelled = 0;
  let last = 0;
  let inline = 0;
  for (const block of blocks) {
    const words = flat.slice(block.start, Math.min(block.end, block.start + 40));
    if (
      /^(?:\d{1,2}[.)]\s)?(?:rows?|rnds?|rounds?|rds?|r)\s?\d|^\d+(?:st|nd|rd|th|d)\s(?:row|rnd|round)/i.test(
        words,
      )
    )
      labelled++;
    const found = BARE.exec(words);
    const number = Number(found?.[1]);
    const body = block.start + (found?.[0].length ?? 0);
    if (found && number > last && number <= last + 12 && isStitched(flat, body, block.end)) {
      bare++;
      last = Number(found[2] ?? number);
    } else if (found && number === 1 && isStitched(flat, body, block.end)) last = 1;
    inline += runOfNumbers(flat, block.start, block.end).length;
  }
  return { used: bare >= 3 && bare > labelled, inline: inline >= 3 && inline > labelled };
}

function isStitched(flat: string, from: number, to: number): boolean {
  const end = Math.min(to, from + 160);
  return (
    signs(flat, from, end) >= 1 &&
    (beginsInstruction(flat, from, end) || signs(flat, from, end) >= 2) &&
    !/^[^.;(]{0,80}\b(?:counts? as|does not count|is worked|are worked|never counts?)\b/i.test(
      flat.slice(from, end),
    )
  );
}

/** Every label in the block, in order. */
export function findLabels(
  text: string,
  flat: string,
  from: number,
  to: number,
  place: LabelPlace,
  bare: BareNumbers,
): LabelAt[] {
  const found: LabelAt[] = [];
  const first = firstLabel(text, flat, from, to, place, bare);
  if (first) found.push(first);
  // Only this block is searched: a search that finds nothing must not run on to the end of the text.
  const stretch = flat.slice(from, to);
  for (const hit of stretch.matchAll(CANDIDATE)) {
    const at = from + hit.index;
    const least = found.at(-1)?.to ?? from;
    if (at < least) continue;
    const name = partName(flat, Math.max(from, least), at);
    if (!name && !isBoundary(flat, from, at)) continue;
    const label = figuredLabel(flat, at, to, place) ?? readLabel(text, flat, at, to, place);
    if (!label || !isSeparated(label, flat, to)) continue;
    found.push({ ...label, at, ...(name ? { name } : {}) });
  }
  if (bare.inline) addInline(found, flat, from, to, place);
  return found;
}

function firstLabel(
  text: string,
  flat: string,
  from: number,
  to: number,
  place: LabelPlace,
  bare: BareNumbers,
): LabelAt | null {
  const figured = figuredLabel(flat, from, to, place);
  if (figured) return { ...figured, at: from };
  LIST_NUMBER.lastIndex = from;
  const listed = LIST_NUMBER.exec(flat);
  if (listed) {
    const inner = readLabel(text, flat, from + listed[0].length, to, place);
    if (inner && /[:.-]/.test(inner.separator)) return { ...inner, at: from + listed[0].length };
  }
  const label = readLabel(text, flat, from, to, place);
  if (label) return { ...label, at: from };
  if (!bare.used) return null;
  const number = BARE.exec(flat.slice(from, Math.min(to, from + 40)));
  // The number that comes next needs no stitch behind it.
  const expected = bare.next !== undefined && Number(number?.[1]) === bare.next;
  if (!number || !(expected || isStitched(flat, from + number[0].length, to))) return null;
  return { ...bareLabel(number[1] as string, number[2], from, from + number[0].length, place), at: from };
}

function figuredLabel(flat: string, from: number, to: number, place: LabelPlace): LabelFound | null {
  FIGURED.lastIndex = from;
  const figured = FIGURED.exec(flat);
  const behind = from + (figured?.[0].length ?? 0);
  if (!figured || behind >= to) return null;
  const rounds = /^r(?:n|ou)/i.test(figured[3] as string);
  return {
    ...bareLabel(figured[1] as string, figured[2], from, behind, { ...place, rounds }),
    separator: ":",
  };
}

function bareLabel(
  first: string,
  last: string | undefined,
  at: number,
  to: number,
  place: LabelPlace,
): LabelFound {
  const amount = (value: string, from: number): Amount => ({
    span: { from, to: from + value.length },
    values: [Number(value)],
  });
  const start = amount(first, at);
  const end = last === undefined ? start : { ...amount(last, at), span: start.span };
  const label: Label = {
    span: { from: at, to: at + first.length },
    is: place.rounds ? "round" : "row",
    words: last === undefined ? first : `${first}-${last}`,
    rows: [{ from: start, to: end }],
    rounds: place.rounds,
  };
  return { label, to, separator: "." };
}

function addInline(found: LabelAt[], flat: string, from: number, to: number, place: LabelPlace): void {
  for (const { at, number, until, length } of runOfNumbers(flat, from, to)) {
    if (found.some((label) => at >= label.at && at < label.to)) continue;
    found.push({ ...bareLabel(number, until, at, at + length, place), at });
  }
  found.sort((a, b) => a.at - b.at);
}

interface NumberAt {
  readonly at: number;
  readonly number: string;
  /** The last of several: "11-23." */
  readonly until: string | undefined;
  /** With its mark and the space behind it. */
  readonly length: number;
}

/** How far a number may jump where the text leaves rows out: "3: ... 9: ...", with a colon, which no count has behind it. */
const LONGEST_JUMP = 12;

/** The numbers in a stretch that count rows: each the next after the one before, from 1 or 2 on, with stitches behind them. */
function runOfNumbers(flat: string, from: number, to: number): NumberAt[] {
  const run: NumberAt[] = [];
  let last = 0;
  for (const hit of flat.slice(from, to).matchAll(INLINE_BARE)) {
    const number = Number(hit[1]);
    const colon = hit[0].includes(":");
    const begins = number === 1 || (run.length === 0 && number === 2);
    const goesOn =
      number === last + 1 || (colon && number > last && number <= last + LONGEST_JUMP && last > 0);
    const at = from + hit.index;
    if (!(begins || goesOn) || signs(flat, at + hit[0].length, Math.min(to, at + 120)) === 0) continue;
    run.push({ at, number: hit[1] as string, until: hit[2], length: hit[0].length });
    last = Number(hit[2] ?? number);
  }
  return run;
}

/** A label inside a block stands behind the end of a sentence or a bracket, or in another column of the page. */
function isBoundary(flat: string, from: number, at: number): boolean {
  let before = at - 1;
  while (before >= from && at - before < 12 && flat[before] === " ") before--;
  if (before < from) return true;
  const gap = at - before - 1;
  const glyph = flat[before] as string;
  if (gap >= 3) return true;
  // "... in last st, turn Row 5 ch 2": the turn ends the row, though no mark does.
  if (
    /\bturn$/i.test(flat.slice(Math.max(from, before - 6), before + 1)) &&
    /^(?:Row|Rnd|Round)\s?\d/.test(flat.slice(at, at + 9))
  )
    return true;
  if (
    glyph === ":" &&
    /\b(?:follows|foll?|thus)\s?:$/i.test(flat.slice(Math.max(from, before - 10), before + 1))
  )
    return true;
  if (!/[.!?;)\]}…>]/.test(glyph)) return false;
  if (glyph === ")" || glyph === "]") return true;
  const behind = flat.slice(Math.max(from, before - 14), before + 1);
  // "ch 1 to turn all rows. 2nd ROW:" ends a sentence; "rep. Row 2" is an abbreviation.
  return glyph === "." ? !SHORTENED.test(behind) : !REFERENCE.test(behind);
}

/** "Shape Armholes Row 1:", "Pattern Stitch, Row 1:": the name of a part between the end of a sentence and the label. */
function partName(flat: string, from: number, at: number): Span | null {
  const before = flat.slice(Math.max(from, at - 60), at);
  const found = /(?:^|[.!?)\]]\s{1,3})([^.!?;()*\d[\]]{3,48}?)\s?[,:]?\s{1,3}$/.exec(before);
  const words = found?.[1] ?? "";
  // At the cut end of the stretch looked at, the words may have begun earlier.
  if (!found || (found.index === 0 && !/^[.!?)\]]/.test(found[0]) && at - 60 > from)) return null;
  if (!/^\p{Lu}/u.test(words) || words.split(/\s+/).length > 5) return null;
  if (
    /^(?:work|rep|repeat|rpt|complete|follow|make|beg|begin|cont|continue|end|next|note|for|sizes?|all)\b/i.test(
      words,
    )
  )
    return null;
  if (/\b(?:rep|repeat|work|of|as|to|from|end|until|in|for|with|and|the|only)$/i.test(words)) return null;
  if (!namesPart(words) && !namesPiece(words)) return null;
  const start = at - found[0].length + found[0].indexOf(words);
  return { from: start, to: start + words.trimEnd().length };
}

function isSeparated(label: LabelFound, flat: string, to: number): boolean {
  if (/[:>]/.test(label.separator)) return true;
  if (/^\.|^-|^…/.test(label.separator)) return beginsInstruction(flat, label.to, to);
  if (label.separator !== "" || !beginsInstruction(flat, label.to, to)) return false;
  return (
    label.label.side !== undefined ||
    (label.label.rows.length > 0 && /^(?:Row|Rnd|Round|ROW|RND|ROUND)/.test(label.label.words))
  );
}
