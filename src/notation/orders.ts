import {
  beginsWithCount,
  isCountOnly,
  isInstruction,
  isRowEnd,
  isRowTotal,
  signs,
  talk,
} from "./evidence.ts";
import { splitSentences } from "./sentences.ts";

/*
 * Sentences of a block that has no label (or of what follows a row in its paragraph): which of them tell the maker to do
 * something, and which sentences are one instruction.
 */

/** A stretch of the block: an instruction of one or more sentences, or talk. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** tail: a count or a "turn" that belongs to what stands before. */
  readonly is: "order" | "prose" | "note" | "tail";
}

const WHOLE =
  /^[\s*(]{0,3}(?:(?:then|now|next|and|also)[,\s]\s?)?(?:rep(?:eat)?\b\.?\s(?:the\s)?(?:last|these|this|previous|prev|above|rows?|rnds?|rounds?|r\d|\d{1,3}(?:st|nd|rd|th|d)|second|third|first|until|pattern|patt|both|all|entire|same)\b|rpt\b\.?\s(?:rows?|rnds?|last)|work(?:ing)?\s(?:even|straight|\d+\s(?:more\s|further\s)?(?:rows?|rnds?|rounds?)|in patt|as\s|same|rows?\s|rnds?\s|rounds?\s|the other|other side|second|left|right|one more|another|until)|cont(?:inue|inuing)?\b|keep(?:ing)?\b|fasten|finish off|break|end off|cut\b|bind off|sew\b|seam|join\s(?:yarn|shoulder|side|sleeve|front|back|new|thread|the yarn|mc|cc|[A-H]\b|colou?r)|re-?join|attach|change\sto|switch|dec(?:rease)?\s\d|inc(?:rease)?\s\d|divide|turn work|weave|fold\b|pin\b|hold\b|complete|do not|don't|\d+\s(?:more\s)?(?:rows?|rnds?|rounds?)\b|with\s(?:rs|ws|right|wrong|smaller|larger|[\d.]+\s?mm|[a-k]\b|mc|cc|colou?r|yarn)|on each|place|mark|leave a)/i;
const CHAIN_ALONE =
  /^[\s*(]{0,3}(?:(?:with|using)\b[^.]{0,70}?,?\s?)?(?:loosely\s)?(?:(?:ch(?:ain)?\.?\s?|make\s(?:a chain of\s)?)\d[^.;]{0,80}|\d+[^.;]{0,30}\sch(?:ains?)?\b[^.;]{0,30})\.?$/i;
/** "To inc 1 dc at beg of row: ..." tells how, not now. */
const TECHNIQUE =
  /^[\s*(]{0,3}(?:to|how to)\s(?:inc|dec|increase|decrease|change|make an?|work an?)\b[^.:]{0,60}:/i;
const NOTE =
  /^[\s*([]{0,3}(?:please\s)?(?:note|notes|n\.?b\.?|tip|hint|remember|important)(?=\s?(?:[:.,!-]|that\b|\d))/i;

/** Cuts the block into stretches. Every character but spaces belongs to one. */
export function readOrders(flat: string, from: number, to: number): Stretch[] {
  const stretches: Stretch[] = [];
  for (const sentence of splitSentences(flat, from, to)) {
    const last = stretches.at(-1);
    const is = kindOf(flat, sentence.from, sentence.to, last?.is === "order");
    const words = flat
      .slice(sentence.from, Math.min(sentence.to, sentence.from + 160))
      .replace(/\s{2,}/g, " ");
    const goesOn =
      last !== undefined && (is === "tail" ? last.is === "order" || last.is === "tail" : is === last.is);
    const anew = is === "order" && last !== undefined && (WHOLE.test(words) || isWhole(flat, last));
    if (goesOn && !anew) stretches[stretches.length - 1] = { from: last.from, to: sentence.to, is: last.is };
    else stretches.push({ from: sentence.from, to: sentence.to, is });
  }
  return stretches;
}

function isWhole(flat: string, stretch: Stretch): boolean {
  const words = flat.slice(stretch.from, Math.min(stretch.to, stretch.from + 200)).replace(/\s{2,}/g, " ");
  return WHOLE.test(words) || CHAIN_ALONE.test(words);
}

function kindOf(flat: string, from: number, to: number, afterOrder: boolean): Stretch["is"] {
  if (
    isCountOnly(flat, from, to) ||
    isRowEnd(flat, from, to) ||
    (afterOrder && (beginsWithCount(flat, from, to) || isRowTotal(flat, from, to)))
  )
    return "tail";
  if (NOTE.test(flat.slice(from, from + 30)) || TECHNIQUE.test(flat.slice(from, Math.min(to, from + 90))))
    return "note";
  if (isInstruction(flat, from, to)) return "order";
  // "You should have 24 sts." says a count, if in words of talk.
  if (
    afterOrder &&
    /\b(?:you (?:should |will |now )*have|total)\b[^.]{0,30}\d/i.test(
      flat.slice(from, Math.min(to, from + 90)),
    )
  )
    return "tail";
  if (
    afterOrder &&
    signs(flat, from, to) > 0 &&
    talk(flat, from, to) === 0 &&
    !/\b(?:is|are|was|were|will)\b/i.test(flat.slice(from, Math.min(to, from + 120)))
  )
    return "order";
  return "prose";
}

/**
 * Where, behind the label of a row, the row itself ends: before a sentence that orders something of its own ("Repeat 2nd row
 * until ...", "Work 4 more rows even.") and before talk that stands last.
 */
export function rowEnd(flat: string, from: number, to: number): number {
  const sentences = splitSentences(flat, from, to);
  let end = sentences.length;
  for (let i = 1; i < sentences.length; i++) {
    const { from: start, to: stop } = sentences[i] as { from: number; to: number };
    const words = flat.slice(start, Math.min(stop, start + 120)).replace(/\s{2,}/g, " ");
    if (SPLITS.test(words)) {
      end = i;
      break;
    }
  }
  while (end > 1) {
    const { from: start, to: stop } = sentences[end - 1] as { from: number; to: number };
    if (isInstruction(flat, start, stop) || isCountOnly(flat, start, stop) || isRowEnd(flat, start, stop))
      break;
    if (
      /\d/.test(flat.slice(start, stop)) ||
      (talk(flat, start, stop) === 0 && !/\b(?:is|are|will|was)\b/i.test(flat.slice(start, stop)))
    )
      break;
    end--;
  }
  return end === 0 ? to : (sentences[end - 1] as { to: number }).to;
}

/** What is never part of the row before it. */
const SPLITS =
  /^[\s*(]{0,2}(?:then\s|now\s)?(?:rep(?:eat)?\b\.?\s(?:the\s)?(?:last\s(?:\d+\s|two\s|three\s|row|rnd|round)|these\s(?:\d|two|rows|last)|this\s(?:row|rnd|round)|previous|above|rows?\s?\d|rnds?\s?\d|rounds?\s?\d|\d{1,3}(?:st|nd|rd|th|d)\s|the\s\d|second\s(?:row|rnd|round)|third\s(?:row|rnd)|row\b)|work\s(?:even|straight|\d+\s(?:more\s|further\s)?(?:rows?|rnds?|rounds?)\b|in patt(?:ern)?\b|rows?\s\d|rnds?\s\d|rounds?\s\d|as (?:for|given)|until)|cont(?:inue)?\.?\s(?:in|even|working|to work|as|straight|with|until|inc|dec)|keeping\b|sew\b|change\sto\s(?:the\s)?(?:\w+\s)?[\w.]+\s?(?:mm\s)?hook|next,? (?:work|sew)|\d+\srows\s(?:even|straight)|work(?:ing)? along)/i;
