import { beginsPiece } from "./beginnings.ts";
import { readDefinitions } from "./definitions.ts";
import { signs, talk } from "./evidence.ts";
import type { Section } from "./section-words.ts";

/*
 * What a line without a label can be told to be by its own words: a rule across the page, an entry of a list, a gauge, a clause
 * on sizes, the definition of a stitch.
 */

const UNRESOLVED_SIZES =
  /^(?:for\s)?(?:the\s)?(?:(?:sizes?\s[\w\s,/&-]{1,70}(?:\sonly)?|[\w\s,/&-]{1,50}\ssizes?\sonly|[\w,/& -]{1,40}\sonly))\s?[:.]?$/i;
/** "14 sts and 12 rows = 10 cm" with no heading over it. */
const GAUGE =
  /^(?:work\s)?\d[\d.,½¼¾]*\s?(?:sts?|stitches|e?sc|dc|hdc|tr|htr|shells?)\b.{0,60}(?:=|\bto\b|\bper\b|\bmeasures?\b)\s?\d{1,3}[^.;]{0,14}(?:cm\b|in\b|ins\b|inch|")/i;
const RULE = /^[-=_*~#\s]{3,}$/;
const ENTRY = /^[\p{L}\d()/*+.' -]{1,22}\s?(?:=|:|\s-{1,2}\s|\.{3}|\t)\s{0,3}\S/u;

/** "-----" across the page. */
export function isRule(words: string): boolean {
  return RULE.test(words);
}

/** "sc = single crochet", "Hook: 4 mm". */
export function isEntry(words: string): boolean {
  return ENTRY.test(words);
}

/** A gauge that says so by its words alone. */
export function isGauge(words: string): boolean {
  return GAUGE.test(words) && !/\bch\s?\d/i.test(words);
}

/** "For Size Large only:" where no size of the run has that name. */
export function isSizeClause(words: string): boolean {
  return UNRESOLVED_SIZES.test(words) && words.length < 120;
}

/**
 * Whether the stretch says how a stitch of its own name is worked.
 *
 * @param section  what the lines around are under
 * @param started  rows have been met
 */
export function definesStitch(
  flat: string,
  from: number,
  to: number,
  section: Section | null,
  started: boolean,
): boolean {
  const found = readDefinitions(flat, from, to)[0];
  if (!found) return false;
  if (section === "definitions") return true;
  if (started || section === "materials" || section === "sizes" || section === "gauge" || section === "note")
    return false;
  const name = found.names[0] as string;
  const rest = found.words.from;
  if (name.split(/\s+/).length > 6 || /^\d+$/.test(name)) return false;
  // "sc = single crochet" is an abbreviation; a definition says how to work.
  const words = flat.slice(rest, Math.min(to, rest + 400));
  const told =
    /\b(?:insert|yarn over|yo\b|draw|pull up|pull through|work|in (?:the )?(?:next|same|indicated|st|sp)|into)\b/i.test(
      words,
    ) || signs(flat, rest, to) >= 1;
  return told && !beginsPiece(words) && talk(flat, rest, to) === 0 && section !== "abbreviations";
}
