import { plural } from "../../base/index.ts";
import { abbreviationIn, hasStitch, nameIn, stitchOf } from "../../stitches/index.ts";
import type { LoopWord } from "../tree.ts";
import type { PrintStyle } from "./style.ts";

/**
 * The stitch as the terms abbreviate it; a special stitch of the pattern, and bare "inc" and "dec", by their own name. A lump or fan that
 * every book abbreviates otherwise has its whole name: "shell", not "sh".
 */
export function printStitch(code: string, style: PrintStyle): string {
  if (!hasStitch(code)) return code;
  const abbreviation = abbreviationIn(code, style.terms);
  return stitchOf(code).varies && abbreviation.length <= 2 ? nameIn(code, style.terms) : abbreviation;
}

/** The same for more than one: "24 dc", "3 shells", "12 esc". */
export function printStitches(code: string, style: PrintStyle): string {
  const one = printStitch(code, style);
  return EXTENDED.test(one) ? one : plural(one);
}

/** Abbreviations with a vowel that are none the less no words. */
const EXTENDED = /(?:^|[ -])e(?:sc|hdc|dc|htr|tr|dtr|trtr|qtr)$/u;

/** Words for a loop in front of "of next st", and as a state of the row. */
export const LOOP_NAMES: Readonly<Record<LoopWord, string>> = {
  back: "back loop",
  front: "front loop",
  both: "both loops",
  third: "third loop",
  "back-bump": "back bump",
};

/** The short word behind the stitch: "hdc BLO". Loops without one are named with the place. */
export const SHORT_LOOPS: Readonly<Partial<Record<LoopWord, string>>> = { back: "BLO", front: "FLO" };

/** "dc + ch 1": what a starting chain stands for, one chain a "ch 1". */
export function printParts(parts: readonly string[], style: PrintStyle): string {
  return parts.map((part) => (/^ch \d+$/.test(part) ? part : printStitch(part, style))).join(" + ");
}
