import { readMultiple } from "./clauses/multiples.ts";
import { Reading } from "./clauses/reading.ts";
import { readSequence } from "./clauses/sequence.ts";
import type { ReadContext } from "./context.ts";
import { lex } from "./lex.ts";
import type { MultipleNote } from "./tree.ts";

/* Rules of width, wherever they stand: in a heading, beside a stitch pattern, in a note. */

const BEGINS = /\bmult(?:iples?)?\s+of\s+\d|\b(?:odd|uneven|even)\s+number\s+of\b/giu;
/** Words enough for the longest rule. */
const AHEAD = 120;
const BEFORE = 90;

/** Every rule of width in the text, in order. */
export function findMultiples(
  text: string,
  flat: string,
  from: number,
  context: ReadContext,
): MultipleNote[] {
  const found: MultipleNote[] = [];
  const words = flat.slice(0, 200_000);
  BEGINS.lastIndex = from;
  for (let hit = BEGINS.exec(words); hit; hit = BEGINS.exec(words)) {
    const tokens = lex(text, hit.index, Math.min(flat.length, hit.index + AHEAD), context);
    const multiple = readMultiple(new Reading(tokens, context, readSequence));
    if (multiple) found.push({ ...multiple, ...nameBefore(flat, hit.index, multiple.counts) });
  }
  return found;
}

/** "2 x 2 Rib - Multiple of 4 sts", "Fan pattern (worked over a multiple of 6)"; "Chains: multiple of 12" counts chains. */
function nameBefore(
  flat: string,
  at: number,
  counts: MultipleNote["counts"],
): Pick<MultipleNote, "name" | "counts"> {
  const before = flat.slice(Math.max(0, at - BEFORE), at);
  const line = before.slice(Math.max(before.lastIndexOf("\n"), lastStop(before)) + 1);
  const name = line
    .replace(/\b(?:an?|any|the|in)\s*$/iu, "")
    .replace(
      /[\s([:–—-]*\b(?:is\s)?(?:work(?:ed)?|made)?\s?(?:over|on|across|with|with an)?[\s:(–—-]*$/iu,
      "",
    )
    .trim();
  const chains = /\b(?:ch(?:ain)?s?|base|foundation|starting chain)\W*$/iu.test(name);
  if (chains) return { name: "", counts: "chains" };
  return { name: name.replace(/^[\s*•#-]+|[\s:–—-]+$/gu, ""), counts };
}

function lastStop(words: string): number {
  return Math.max(words.lastIndexOf(". "), words.lastIndexOf("! "), words.lastIndexOf("? "));
}
