import type { FindingKind } from "./finding.ts";
import { ONE_SIZE, sayList } from "./sizes.ts";

/** A number in each of some sizes, in size-run order: only the sizes that are spoken of. */
export type SizedNumbers = readonly { readonly size: string; readonly n: number }[];

/**
 * The sizes as the end of a sentence: " in size M", " in sizes M, L and XL".
 * Empty for a pattern that is not graded, and where no size is spoken of.
 */
export function inSizes(cases: readonly (string | { readonly size: string })[]): string {
  const names = [...new Set(cases.map((one) => (typeof one === "string" ? one : one.size)))];
  if (names.length === 0 || (names.length === 1 && names[0] === ONE_SIZE[0])) return "";
  return ` in ${names.length === 1 ? "size" : "sizes"} ${sayList(names)}`;
}

/** "84", "84, 92 and 98"; numbers that are all alike are said once. */
export function sayNumbers(numbers: readonly number[]): string {
  const words = numbers.map(sayNumber);
  return new Set(words).size === 1 ? (words[0] as string) : sayList(words);
}

/** "84 sts", "1 st", "84, 92 and 98 sts": numbers with the word for what they count, given in the singular. */
export function counted(numbers: number | readonly number[], noun: string): string {
  const list = typeof numbers === "number" ? [numbers] : numbers;
  return `${sayNumbers(list)} ${list.every((n) => n === 1) ? noun : plural(noun)}`;
}

/** Picks the verb that goes with the numbers: agree([1], "stays", "stay") is "stays". */
export function agree(numbers: readonly number[], one: string, many: string): string {
  return numbers.every((n) => n === 1) ? one : many;
}

/**
 * The plural of a counting word as patterns print it. Abbreviations, which have no vowel or hold a digit, stay as they
 * are ("24 dc", "4 dc2tog"), but for "st" and "sp"; words add s or es ("9 shells", "4 ch-2 sps").
 */
export function plural(noun: string): string {
  const last = /[^\s-]*$/.exec(noun)?.[0] ?? "";
  if (/^(st|sp)$/i.test(last)) return `${noun}s`;
  if (!/[aeiou]/i.test(last) || /\d/.test(last) || /[^s]s$/i.test(last)) return noun;
  if (/[^aeiou]y$/i.test(noun)) return `${noun.slice(0, -1)}ies`;
  return `${noun}${/(ch|sh|ss|x|z)$/i.test(noun) ? "es" : "s"}`;
}

/** "1st", "2nd", "3rd", "11th", "22nd". */
export function ordinal(n: number): string {
  const tens = n % 100;
  const ending = tens > 10 && tens < 14 ? undefined : { 1: "st", 2: "nd", 3: "rd" }[n % 10];
  return `${n}${ending ?? "th"}`;
}

/** Centimetres to one decimal, as a tape shows them: "43 cm", "46.5 cm", "40 and 42.5 cm". */
export function sayCm(cm: number | readonly number[]): string {
  return `${sayNumbers(typeof cm === "number" ? [cm] : cm)} cm`;
}

/** The words with a capital in front and a full stop behind, whichever they have already. */
export function sentence(words: string): string {
  const trimmed = words.trim();
  const ended = /[.!?]["”)]?$/.test(trimmed) ? trimmed : `${trimmed}.`;
  return capital(ended);
}

/** The words with their first letter in upper case. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The sentences of a finding in the order they are read, without its place: what, why, then each thing to do. */
export function said<Facts>(kind: FindingKind<Facts>, facts: Facts): string[] {
  const finding = kind.at({ span: { from: 0, to: 0 }, piece: null, row: null, sizes: [] }, facts);
  return [finding.what, finding.why, ...finding.todo.map((remedy) => remedy.say)];
}

/** Whole numbers as they are, others to one decimal. */
function sayNumber(n: number): string {
  return String(Math.round(n * 10) / 10);
}
