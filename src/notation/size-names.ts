/*
 * Names of sizes: how they are written, and which sizes of the run a few words mean ("M and L only", "sizes XS-M", "size 4").
 */

const LETTERS =
  "(?:(?:adult|child|kids?|women(?:'?s)?|men(?:'?s)?|ladies|baby|toddler|teen|youth)\\s(?:x?s|x{0,3}l|m|small|medium|large)|\\d{0,2}x{0,4}[ -]?small|\\d{0,2}x{0,4}[ -]?large|extra[ -]?small|extra[ -]?large|small|medium|large|petite|plus|preemie|newborn|baby|infant|toddler|child(?:ren)?(?:'?s)?|kids?|teen|youth|ladies|women(?:'?s)?|woman|men(?:'?s)?|man|adults?|one size|x{1,5}[ls]|\\dx{1,2}l?|[smlx]|xxs|xs|sm|md|lg|xl)";
const AGE =
  '(?:\\d{1,3}(?:\\s?(?:-|to|\\/)\\s?\\d{1,3})?\\s?(?:months?|mos?\\.?|m|years?|yrs?\\.?|y|t|"|in|ins|inch|inches|cm)?)';
/** One size name, as a piece of a regular expression. */
export const SIZE_NAME = `(?:${LETTERS}(?:\\s?[/&-]\\s?${LETTERS}){0,2}|newborn to \\d+ months|${AGE}(?:\\s?\\/\\s?${AGE})?)`;

const SAME: Readonly<Record<string, string>> = {
  "extra small": "xs",
  xsmall: "xs",
  xxsmall: "xxs",
  small: "s",
  sm: "s",
  medium: "m",
  md: "m",
  med: "m",
  large: "l",
  lg: "l",
  "extra large": "xl",
  xlarge: "xl",
  xxlarge: "2xl",
  xxl: "2xl",
  xxxl: "3xl",
  xxxxl: "4xl",
  xxxxxl: "5xl",
  "2x": "2xl",
  "3x": "3xl",
  "4x": "4xl",
  "5x": "5xl",
  "6x": "6xl",
  "1x": "xl",
  "2xlarge": "2xl",
  "3xlarge": "3xl",
  "4xlarge": "4xl",
  "5xlarge": "5xl",
  men: "man",
  mens: "man",
  women: "woman",
  womens: "woman",
  ladies: "woman",
  children: "child",
  childrens: "child",
  childs: "child",
  kids: "child",
  kid: "child",
  adults: "adult",
};

/** One form for the many ways of writing a size: "X-Large", "XL" and "extra large" are the same. */
export function sizeKey(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/'/g, "")
    .replace(/\b(?:months?|mos?\.?)(?=$|\s|\/)/g, "mo")
    .replace(/\b(?:years?|yrs?\.?)(?=$|\s|\/)/g, "yr")
    .replace(/\s*(?:"|\binches\b|\binch\b|\bins\b|\bin\b|\bcm\b)\.?/g, "")
    .replace(/\bsizes?\b/g, "")
    .replace(/\s*-\s*/g, "-")
    .replace(/\s+/g, " ")
    .trim();
  return SAME[plain] ?? SAME[plain.replace(/-/g, "")] ?? SAME[plain.replace(/-/g, " ")] ?? plain;
}

/**
 * The sizes that a few words mean, as indices into the run in its order; null where the words do not name sizes of this run.
 * "all sizes" means every one, "M and up", "L and larger" and "S to L" count along the run.
 */
export function readSizeNames(words: string, names: readonly string[]): number[] | null {
  const plain = words
    .toLowerCase()
    .replace(/[([{}\])]/g, ",")
    .replace(/\b(?:for|the|sizes?|only|in|is|are|now|no\.?)\b/g, " ")
    .replace(/\s+/g, " ")
    .replace(/[\s:.,-]+$/, "")
    .replace(/^[\s,]+/, "")
    .trim();
  if (/^all(?: other)?$|^every$|^both$/.test(plain)) return names.map((_, i) => i);
  if (plain === "") return null;
  const keys = names.map(sizeKey);
  const found = new Set<number>();
  for (const part of plain.split(
    /\s*(?:,|;|&|\+|\band\b(?! (?:up|above|larger|smaller|under|below|over|bigger))|\bor\b)\s*/,
  )) {
    if (part === "") continue;
    const meant = onePart(part, keys);
    if (!meant) return null;
    for (const index of meant) found.add(index);
  }
  return found.size === 0 ? null : [...found].sort((a, b) => a - b);
}

function onePart(part: string, keys: readonly string[]): number[] | null {
  const whole = indexOf(part, keys);
  if (whole !== -1) return [whole];
  const open =
    /^(.*?)\s*(?:and (up|above|larger|bigger|over|smaller|under|below)|(?:through|thru|to)? ?(largest|smallest))$/.exec(
      part,
    );
  if (open) {
    const from = indexOf(open[1] as string, keys);
    if (from === -1) return null;
    const down = /smaller|under|below|smallest/.test(open[0]);
    return down ? keys.map((_, i) => i).slice(0, from + 1) : keys.map((_, i) => i).slice(from);
  }
  // "XS-M": only where the whole is no name of its own; a name may hold a hyphen.
  for (const join of [/\s*(?:\bto\b|\bthrough\b|\bthru\b)\s*/, /\s*[-/]\s*/]) {
    const ends = part.split(join);
    if (ends.length !== 2) continue;
    const [from, to] = ends.map((end) => indexOf(end, keys)) as [number, number];
    if (from !== -1 && to > from) return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  }
  return null;
}

function indexOf(name: string, keys: readonly string[]): number {
  const key = sizeKey(name);
  const exact = keys.indexOf(key);
  if (exact !== -1) return exact;
  // "12-24 months" of a run whose names leave the unit out.
  const unitless = keys.indexOf(key.replace(/\s(?:mo|yr)$/, ""));
  if (unitless !== -1) return unitless;
  // "size 4" of a run named "4 years", "S" of "S (32-34)".
  const near = keys.flatMap((other, i) =>
    other.startsWith(`${key} `) || other.startsWith(`${key}/`) || other.endsWith(`/${key}`) ? [i] : [],
  );
  if (near.length === 1) return near[0] as number;
  const ordinal = /^(\d{1,2})$/.exec(key);
  if (ordinal && keys.every((other) => /^size \d+$/.test(other))) {
    const index = Number(ordinal[1]) - 1;
    return index < keys.length ? index : -1;
  }
  return -1;
}
