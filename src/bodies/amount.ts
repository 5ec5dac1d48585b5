/** A length as it is written in a table cell: one number or a range, with its unit where that is said. */
export interface Amount {
  readonly min: number;
  readonly max: number;
  readonly unit: Unit | null;
}

export type Unit = "cm" | "in";

/** Centimetres in an inch, exactly. */
export const CM_PER_INCH = 2.54;

const FRACTIONS: Readonly<Record<string, number>> = {
  "¼": 1 / 4,
  "½": 1 / 2,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

const UNIT = String.raw`(?:cm|centimet(?:re|er)s?|in\.?|inch(?:es)?|"|″|”)`;
// 14 1/2, 14-1/2, 14½, 14.5, 14,5, 1/2, ½: a hyphen before a fraction belongs to the number, as the trade prints it.
const NUMBER = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+ ?[¼½¾⅛⅜⅝⅞]|[¼½¾⅛⅜⅝⅞]|\d+(?:[.,]\d+)?)`;
const AMOUNT = new RegExp(
  `^(${NUMBER})\\s*(${UNIT})?(?:\\s*(?:-|–|—|\\bto\\b)\\s*(${NUMBER})\\s*(${UNIT})?)?$`,
  "i",
);

/** Reads "71-76", "9 3/4 in", "28 to 30\"", "35,5 cm"; null where the words are no such amount. */
export function readAmount(words: string): Amount | null {
  const match = AMOUNT.exec(words.trim());
  if (match === null) return null;
  const [, first = "", unitOfFirst, second, unitOfSecond] = match;
  const min = numberOf(first);
  const max = second === undefined ? min : numberOf(second);
  const unit = unitOf(unitOfSecond ?? unitOfFirst ?? "");
  return Number.isFinite(min) && Number.isFinite(max) ? { min, max, unit } : null;
}

/** The unit a heading states, as in "bust (in)" or "measurement, cm"; null where it states none. */
export function unitStated(heading: string): Unit | null {
  const match = new RegExp(`(?:^|[\\s(,/\\[])(${UNIT})[\\])]?\\s*$`, "i").exec(heading.trim());
  return match === null ? null : unitOf(match[1] ?? "");
}

/** A heading without the unit it states. */
export function withoutUnit(heading: string): string {
  return heading.trim().replace(new RegExp(`[\\s(,/\\[]+${UNIT}[\\])]?\\s*$`, "i"), "");
}

function numberOf(words: string): number {
  const parts = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(words);
  if (parts !== null) return Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]);
  const sign = words.at(-1) ?? "";
  if (sign in FRACTIONS) return Number(words.slice(0, -1).trim() || 0) + (FRACTIONS[sign] ?? 0);
  return Number(words.replace(",", "."));
}

const unitOf = (words: string): Unit | null => (words === "" ? null : /^c/i.test(words) ? "cm" : "in");
