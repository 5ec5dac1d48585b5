import type { SizeRun } from "../../base/index.ts";
import { ordinal } from "../../base/index.ts";
import type { Amount, Measure } from "../tree.ts";

/** From this many sizes on the bracket is parted into groups. Source: trade handbook, section 5.2. */
const MOST_IN_ONE_BRACKET = 5;
const MOST_IN_A_GROUP = 4;
const CM_PER_INCH = 2.54;
const EIGHTHS = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/**
 * A number as it stands in print: "24", "24 (26, 28)", "1 (2, 3, 4, 5) (6, 7, 8, 9)". Smallest size outside, the rest in brackets;
 * in groups as even as they can be where there are more than five. A size that does none has a dash.
 */
export function printAmount(amount: Pick<Amount, "values">): string {
  return sizeList(amount.values.map((value) => (value === null ? "—" : printNumber(value))));
}

/** The names of the sizes in the shape their numbers have: "XS (S, M, L, XL) (2X, 3X, 4X, 5X)". */
export function printSizes(sizes: SizeRun): string {
  return sizeList(sizes);
}

/** One word for each size, the first outside the brackets. */
export function sizeList(words: readonly string[]): string {
  const [first = "", ...rest] = words;
  if (rest.length === 0) return first;
  // In two sizes "— (3)" could be a dash and a count.
  if (words.length === 2 && first === "—") return `(${words.join(", ")})`;
  const groups = words.length > MOST_IN_ONE_BRACKET ? Math.ceil(rest.length / MOST_IN_A_GROUP) : 1;
  const brackets: string[] = [];
  for (let group = 0, from = 0; group < groups; group += 1) {
    const to = from + Math.ceil((rest.length - from) / (groups - group));
    brackets.push(`(${rest.slice(from, to).join(", ")})`);
    from = to;
  }
  return `${first} ${brackets.join(" ")}`;
}

/** "2nd", "3rd (4th, 5th)". */
export function printOrdinal(amount: Amount): string {
  return sizeList(amount.values.map((value) => (value === null ? "—" : ordinal(value))));
}

/** "28 (29, 30.5) cm", "11½ in". */
export function printMeasure(measure: Measure): string {
  const { unit } = measure;
  const words = measure.values.map((value) => {
    if (value === null) return "—";
    if (unit === "in") return printInches(value / CM_PER_INCH);
    return printNumber(unit === "mm" ? value * 10 : value);
  });
  return unit === null ? sizeList(words) : `${sizeList(words)} ${unit}`;
}

/** "6 times", "twice", "3 (4, 5) more times", "once more". */
export function printTimes(times: Amount, more: boolean): string {
  const [only] = times.values;
  const word = times.values.length === 1 ? (only === 1 ? "once" : only === 2 ? "twice" : null) : null;
  if (word !== null) return more ? `${word} more` : word;
  return `${printAmount(times)}${more ? " more" : ""} ${isOne(times) ? "time" : "times"}`;
}

/** Whether the number is one in every size and written once, so that it need not be said: "1 sc in next 1 st". */
export function goesWithoutSaying(amount: Amount | undefined): boolean {
  return amount === undefined || (amount.values.length === 1 && amount.values[0] === 1);
}

/** Whether every size has the number one, so that the noun behind it stays singular. */
export function isOne(amount: Amount | undefined): boolean {
  return amount === undefined || (amount.values.length > 0 && amount.values.every((value) => value === 1));
}

/** Up to three decimals, no trailing noughts. */
function printNumber(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** Eighths as a fraction, everything else in decimals. */
function printInches(inches: number): string {
  const eighths = Math.round(inches * 8);
  if (Math.abs(eighths / 8 - inches) > 1e-4) return printNumber(inches);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths % 8] as string;
  return whole === 0 && part !== "" ? part : `${whole}${part}`;
}
