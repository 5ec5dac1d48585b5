import { readSizeNames } from "./size-names.ts";

/*
 * Words that keep what follows to some sizes: "Sizes M and L only:", "For size 4:", "All sizes:", "Child only:".
 */

export interface SizePrefixFound {
  /** Indices into the run, in its order; empty for all sizes. */
  readonly sizes: readonly number[];
  /** Where the words behind it begin. */
  readonly to: number;
}

const FORMS: readonly RegExp[] = [
  /(?:for\s|in\s)?(?:the\s)?all\s(?:other\s)?sizes(?:\s(?:again|together|now))?(?=\s?[:.,(-]|\s{0,9}(?:\n|$))/iy,
  /(?:for\s|in\s)?(?:the\s)?(?:sizes?\s)?([\p{L}\d(][^.:;*]{0,70}?)\s?(?:sizes?\s)?only\b/iuy,
  /(?:for\s|in\s)?(?:the\s)?sizes?\s([\p{L}\d(][^.:;*]{0,60}?)(?=\s?(?::|\.\s|-\s|\s-|\n|$))/iuy,
  /for\s(?:the\s)?([\p{L}\d(][^.:;*]{0,50}?)(?:\ssizes?)?(?=\s?(?::|,\s|-\s|\s-))/iuy,
  /([\p{L}\d][^.:;*,]{0,24}?)(?:\ssizes?)?(?=\s?:)/iuy,
];
const SEPARATOR = /\s{0,2}(?:[:.,]|-{1,2})?\s*/y;

/** The size words at `from`, or null where the words name no sizes of this run. */
export function readSizePrefix(
  flat: string,
  from: number,
  to: number,
  names: readonly string[],
): SizePrefixFound | null {
  if (names.length < 2) return null;
  for (let i = 0; i < FORMS.length; i++) {
    const form = FORMS[i] as RegExp;
    form.lastIndex = from;
    const found = form.exec(flat);
    if (!found || from + found[0].length > to) continue;
    const words = found[1];
    const sizes = words === undefined ? [] : readSizeNames(words, names);
    if (!sizes) continue;
    // A bare number and a colon is a row of a list, not a size.
    if (i === 4 && /^[\d\s-]+$/.test(words ?? "")) continue;
    SEPARATOR.lastIndex = from + found[0].length;
    const separator = SEPARATOR.exec(flat);
    const end = Math.min(to, from + found[0].length + (separator?.[0].length ?? 0));
    return { sizes: sizes.length === names.length ? [] : sizes, to: end };
  }
  return null;
}
