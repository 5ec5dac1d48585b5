import type { Block } from "./blocks.ts";
import { beginsInstruction, isInstruction, signs } from "./evidence.ts";
import { namesPart, namesPiece, sectionHeader } from "./section-words.ts";

/*
 * Headings: a line by itself, or words run into the line before the first instruction ("SLEEVE-Chain 31.").
 */

/** How a heading is set off, from the strongest. */
export type HeadingStyle = { readonly hashes: number } | "capitals" | "bold" | "colon" | "title" | "run-in";

export interface HeadingFound {
  readonly style: HeadingStyle;
  /** End of the heading's words. */
  readonly to: number;
}

/** Whether the words are set in capitals. */
export function isCapitals(words: string): boolean {
  const letters = words.replace(/\([^()]*\)?/g, "").replace(/[^\p{L}]/gu, "");
  return letters.length >= 2 && letters === letters.toUpperCase() && letters !== letters.toLowerCase();
}

const NOT_HEADING =
  /^(?:colou?rs?\b|col\b|yarn|hooks?\b|size\b|ch\b|note|tip|and\b|or\b|the\b.*\b(?:is|are)\b|you\b|i\b|we\b|if\b|this\b|these\b|when\b|where\b|for\b.*\bonly\b|now\b|then\b|to be\b|by\b|designed\b|copyright|©|https?:|www\.|continued?\b|total\b|as follows|follows|repeat\b|rep\b|turn\b|join\b|fasten\b|work (?:even|as|in)\b|work\b.*\b(?:order|follows)|with\b|using\b|magic\b)/i;

/**
 * Whether a block is a heading by itself.
 *
 * @param follows  whether the next block holds a row or an instruction
 * @param listing  the block stands in a list (materials, abbreviations), where short lines are nothing special
 */
export function blockHeading(
  flat: string,
  block: Block,
  follows: boolean,
  listing: boolean,
): HeadingFound | null {
  let to = block.end;
  const words = flat.slice(block.start, to);
  if (words.length > 90 || words.length < 2) return null;
  const colon = words.endsWith(":");
  if (colon) to = block.start + words.slice(0, -1).trimEnd().length;
  const dashed = /\s?[-.]$/.exec(words);
  const capitals = isCapitals(words);
  if (!/^["'(*]?[\p{L}\d]/u.test(words)) return null;
  const count = words
    .replace(/\([^()]*\)/g, "")
    .trim()
    .split(/\s+/).length;
  if (block.hashes > 0) return { style: { hashes: block.hashes }, to };
  if (count > 9) return null;
  if (/\b(?:YOUR|YOU)\b|^(?:FOR )?(?:ALL )?SIZES?\b/i.test(words)) return null;
  if (
    capitals &&
    signs(flat, block.start, block.end) === 0 &&
    /\p{L}{3}/u.test(words) &&
    !/^[\d\s]*(?:sc|dc|hdc|tr|ch)\b/i.test(words)
  ) {
    return /^(?:FASTEN|FINISH OFF|END|TURN|REPEAT|REP)\b/.test(words)
      ? null
      : { style: "capitals", to: dashed && !colon ? block.start + words.length - dashed[0].length : to };
  }
  if (NOT_HEADING.test(words) || /[,;]$/.test(words)) return null;
  // "Sleeve (make 2)", and not "Make 36ch".
  const make =
    /\bmake\s(?:\d|one|two|three|four)/i.test(words) && !/(?:\b|(?<=\d))ch(?:ain)?s?\b/i.test(words);
  // A remark in brackets does not make an instruction of a heading.
  const bare = words.replace(/\s?\([^()]*\)/g, "");
  if (!make && (signs(bare, 0, bare.length) > 0 || isInstruction(bare, 0, bare.length))) return null;
  if (block.bold) return { style: "bold", to };
  const known = namesPiece(words) || namesPart(words);
  const capital = /^["'(]?\p{Lu}/u.test(words);
  if (colon && (capital || known) && !(beginsInstruction(flat, block.start, block.end) && !known))
    return { style: "colon", to };
  if (/[.!?]$/.test(words)) return known && count <= 3 && follows ? { style: "title", to: to - 1 } : null;
  if (!capital && !known) return null;
  if (/\d/.test(words) && !/(?:#|no\.?|part|make|motif|square|piece|section|size|\()\s?\d/i.test(words))
    return null;
  if (listing) return known && count <= 5 && follows ? { style: "title", to } : null;
  if (known && count <= 7 && (follows || block.apart)) return { style: "title", to };
  return follows && count <= 6 && block.apart && /\p{L}{3}/u.test(words) ? { style: "title", to } : null;
}

const RUN_IN =
  /[*_"'(]{0,3}([\p{L}][\p{L}\d'&/,() -]{1,48}?)\s?(:-?|\.{2,}|…|\.?\s?-{1,2}|\.)\s{0,4}(?=\S)/uy;

export interface RunInFound extends HeadingFound {
  /** Where the words behind the heading begin. */
  readonly rest: number;
  readonly separator: string;
}

/**
 * Words at the head of a block that name a piece or a part, with instructions behind them in the same line.
 *
 * @param rowAt  whether a row's label begins at the offset
 */
export function runInHeading(
  flat: string,
  from: number,
  to: number,
  rowAt: (at: number) => boolean,
  depth = 0,
): RunInFound | null {
  RUN_IN.lastIndex = from;
  const found = RUN_IN.exec(flat);
  if (!found || from + found[0].length >= to) return null;
  const name = (found[1] as string).trim();
  const separator = (found[2] as string).trim();
  const rest = from + found[0].length;
  const count = name.split(/\s+/).length;
  if (count > 6 || /\d\s*$/.test(name) || sectionHeader(name)?.section === "note") return null;
  const capitals = isCapitals(name) && name.length > 2;
  const known = namesPiece(name) || namesPart(name);
  if (!/^\p{Lu}/u.test(name) && !known) return null;
  if (
    signs(name, 0, name.length) > 0 ||
    /^(?:note|tip|hint|colou?r|col|hook|yarn|size|row|rnd|round|rows|rounds|rep|repeat|ch|chain|sc|dc|hdc|tr|(?:half|single|double|treble)\b.*crochet|sl st|sk|skip|turn|join|fasten|with|using|n\.?b)\b/i.test(
      name,
    )
  )
    return null;
  const row = rowAt(rest);
  const instruction =
    row ||
    isInstruction(flat, rest, Math.min(to, firstStop(flat, rest, to))) ||
    (known && /^[:.…]/.test(separator) && separator !== "." && beginsInstruction(flat, rest, to)) ||
    (capitals && depth === 0 && runInHeading(flat, rest, to, rowAt, 1) !== null);
  if (!instruction) return null;
  const verb = beginsInstruction(flat, from, from + name.length + 1) && !namesPart(name) && !namesPiece(name);
  if (verb && !capitals) return null;
  const strong = capitals || known;
  if (separator === "." && (!strong || (!capitals && count > 4) || (!row && !capitals && count > 3)))
    return null;
  if (/^\.?\s?-/.test(separator) && !strong) return null;
  if (!strong && count > 5) return null;
  const nameTo = from + found[0].indexOf(found[1] as string) + name.length;
  return { style: capitals ? "capitals" : "run-in", to: nameTo, rest, separator };
}

function firstStop(flat: string, from: number, to: number): number {
  const stop = flat.slice(from, Math.min(to, from + 300)).search(/[.!?]\s/);
  return stop === -1 ? to : from + stop + 1;
}
