import type { Span } from "../base/index.ts";
import type { Block } from "./blocks.ts";

/*
 * Texts whose line breaks were lost: a heading in capitals stands before the beginning of a piece in the midst of a
 * paragraph, "... your gauge. SHRUG Right Armhole Ch 60, sl st in first ch."
 */

/** A block, or what stands of it between headings that run into the lines. */
export interface Part extends Block {
  readonly runTogether?: boolean;
}

const RUN_TOGETHER =
  /(?:^|[.!?)\]]\s)((?:[A-Z][A-Z&'-]+\s){1,7}(?:[A-Z][a-z]+\s){0,3})(?=(?:(?:With|Using)\b[^.]{0,40}?,?\s)?(?:[Cc]h|Chain|CHAIN|CH)\.?\s\d|(?:Make|Fsc)\s(?:a\s)?(?:\d|ch|magic)|Magic\s)/g;
const CAPITALS_AHEAD = /^(?:[A-Z][A-Z&'-]+\s){1,7}(?:[A-Z][a-z]+\s){0,3}(?=[A-Z])/;

/** The block cut before each such heading. */
export function cutBeforeCapitals(flat: string, block: Block): Part[] {
  if (block.end - block.start <= 120) return [block];
  const parts: Part[] = [];
  let from = block.start;
  let runTogether = false;
  const cut = (to: number) => {
    const span = trimmed(flat, from, to);
    if (span.to > span.from) parts.push({ ...block, start: span.from, end: span.to, runTogether });
  };
  for (const found of flat.slice(block.start, block.end).matchAll(RUN_TOGETHER)) {
    const at = block.start + found.index + found[0].length - (found[1] as string).length;
    cut(at);
    from = at;
    runTogether = true;
  }
  if (parts.length === 0 && !runTogether) return [block];
  cut(block.end);
  return parts;
}

/** How long the heading is that the block begins with. */
export function capitalsAhead(flat: string, block: Block): number {
  return CAPITALS_AHEAD.exec(flat.slice(block.start, block.start + 200))?.[0].length ?? 0;
}

/** The stretch without the space around it. */
export function trimmed(flat: string, from: number, to: number): Span {
  let start = from;
  let end = to;
  while (start < end && /\s/.test(flat[start] as string)) start++;
  while (end > start && /\s/.test(flat[end - 1] as string)) end--;
  return { from: start, to: end };
}
