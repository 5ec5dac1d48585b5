import type { Amount, Measure } from "../tree.ts";
import type { Reading } from "./reading.ts";

/** Number words that are words to the lexer because they are much else besides. */
const ARTICLES = new Set(["a", "an", "another"]);

/** A plain number or size list here, stepped over; ordinals are none. */
export function readAmount(reading: Reading): Amount | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is !== "number" || token.ordinal) return null;
  cursor.at += 1;
  return { span: token.span, values: token.values };
}

/** The same, or "a", "an", "another" for one. */
export function readAmountOrArticle(reading: Reading): Amount | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is === "word" && ARTICLES.has(token.norm)) {
    cursor.at += 1;
    return { span: token.span, values: [1] };
  }
  return readAmount(reading);
}

/** "2nd", "(3rd, 4th)", "second", "first". */
export function readOrdinal(reading: Reading): Amount | null {
  const { cursor } = reading;
  const token = cursor.token();
  if (token?.is === "number" && token.ordinal) {
    cursor.at += 1;
    return { span: token.span, values: token.values };
  }
  if (token?.is === "word" && token.norm === "first") {
    cursor.at += 1;
    return { span: token.span, values: [1] };
  }
  return null;
}

/** The amount where every size has this one value. */
export function isJust(amount: Amount | undefined, value: number): boolean {
  return amount !== undefined && amount.values.length === 1 && amount.values[0] === value;
}

/** The one value for every size, or null. */
export function singleValue(amount: Amount | undefined): number | null {
  return amount !== undefined && amount.values.length === 1 ? (amount.values[0] ?? null) : null;
}

const CM_PER_INCH = 2.54;

const UNITS: Readonly<Record<string, "cm" | "in" | "mm">> = {
  cm: "cm",
  cms: "cm",
  centimetre: "cm",
  centimetres: "cm",
  centimeters: "cm",
  centimeter: "cm",
  in: "in",
  ins: "in",
  inch: "in",
  inches: "in",
  '"': "in",
  "”": "in",
  "″": "in",
  mm: "mm",
};

const PER_UNIT = { cm: 1, in: CM_PER_INCH, mm: 0.1 } as const;

/** A length with its unit: "28 (30) cm", `11"`, "11 in [28 cm]", "9-1/2 ins."; null and no step where no unit follows. */
export function readMeasure(reading: Reading): Measure | null {
  const { cursor } = reading;
  const start = cursor.at;
  const amount = readAmount(reading);
  if (!amount) return null;
  cursor.accept("-");
  const unit = UNITS[cursor.key()];
  // "5 in next st" is no measure: an inch is not followed by a place.
  if (!unit || (cursor.key() === "in" && isPlaceAhead(reading))) {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  readOtherUnit(reading);
  const values = amount.values.map((value) => (value === null ? null : round(value * PER_UNIT[unit])));
  return { span: cursor.spanFrom(start), values, unit };
}

function round(cm: number): number {
  return Math.round(cm * 1e6) / 1e6;
}

const PLACE_HEADS = new Set([
  "next",
  "each",
  "every",
  "first",
  "last",
  "same",
  "the",
  "ring",
  "st",
  "sts",
  "sc",
  "dc",
  "ch",
  "corner",
  "any",
  "pattern",
  "patt",
  "pat",
  "sp",
  "top",
  "all",
  "rows",
  "row",
  "magic",
]);

function isPlaceAhead(reading: Reading): boolean {
  const { cursor } = reading;
  return PLACE_HEADS.has(cursor.key(1)) || (cursor.isNumber(1) && !cursor.isNumber(2));
}

/** The same length in the other unit, in brackets or after a stroke: it is a copy and is not kept. */
function readOtherUnit(reading: Reading): void {
  const { cursor } = reading;
  const start = cursor.at;
  const bracketed = cursor.isOpener();
  const close = cursor.partner[cursor.at] ?? -1;
  if (bracketed || cursor.isMark("/")) cursor.at += 1;
  else if (!cursor.isNumber()) return;
  const amount = readAmount(reading);
  cursor.accept("-");
  if (!amount || !UNITS[cursor.key()]) {
    cursor.at = start;
    return;
  }
  cursor.at += 1;
  if (bracketed) {
    if (cursor.at === close) cursor.at += 1;
    else cursor.at = start;
  }
}
