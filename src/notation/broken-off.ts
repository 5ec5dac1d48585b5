/** What no sentence ends with, even where a blank line follows. */
const OPEN_WORD =
  /(?:\b(?:in|into|of|from|to|the|and|each|ea|next|with|a|an|for|at|until|or|as|by|every|between|through|over|these|first|ending with)|[,(&+])$/i;
/** A bracket opened shortly before and not closed. */
const OPEN_BRACKET = /\([^()]{0,40}$/;

/**
 * Whether words end in mid-sentence, so that what stands behind an empty line goes on with them.
 *
 * @param tail  the last words, in plain glyphs, without the space behind them
 * @param head  the first words behind the empty line
 */
export function breaksOff(tail: string, head: string): boolean {
  if (OPEN_BRACKET.test(tail) && /^[^()]{0,40}\)/.test(head)) return true;
  return OPEN_WORD.test(tail) && /^[a-z\d(*[]/.test(head);
}
