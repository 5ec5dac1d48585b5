import { EASE_ROWS, GARMENT_EASE_ROWS } from "./data/charts.ts";
import type { Cm, Measurement } from "./measurement.ts";
import type { Status } from "./rows.ts";

/** What one source means by one word for ease at the bust. */
export interface EaseWord {
  readonly word: string;
  readonly source: string;
  /** Least and most as printed; null at an open end. */
  readonly least: number | null;
  readonly most: number | null;
  readonly unit: "cm" | "in" | "percent";
  readonly status: Status;
  readonly note?: string;
}

/** Least and most ease in centimetres; null at an open end. */
export interface EaseRange {
  readonly least: Cm | null;
  readonly most: Cm | null;
}

/** Usual ease of a kind of garment at one measurement. */
export interface GarmentEase {
  readonly garment: string;
  readonly measurement: Measurement;
  readonly least: Cm;
  readonly most: Cm;
  readonly status: Status;
}

/** Every word for ease with its numbers, source by source. Sources do not agree: print numbers, not words. */
export function easeWords(): EaseWord[] {
  return EASE_ROWS.map(([source, word, least, most, unit, status, note]) => ({
    word,
    source,
    least,
    most,
    unit,
    status,
    ...(note === undefined ? {} : { note }),
  }));
}

/** Words that mean the same class of fit in the published tables, by the class's own name here. */
const CLASSES: readonly (readonly [fit: string, ...words: string[]])[] = [
  ["very close", "very close-fitting", "very close fitting", "very close fit"],
  ["close", "close-fitting", "close fitting", "close fit"],
  ["standard", "classic fit", "classic", "standard fit"],
  ["loose", "loose fit", "loose-fitting", "loose fitting"],
  ["oversized", "oversize"],
];

/** What each source makes of a word for ease, however it is written; empty for a word none of them has. */
export function easeOf(word: string): EaseWord[] {
  const classOf = (name: string) => {
    const plain = name.toLowerCase().trim();
    return CLASSES.find((names) => names.includes(plain))?.[0];
  };
  const wanted = classOf(word);
  return wanted === undefined ? [] : easeWords().filter((entry) => classOf(entry.word) === wanted);
}

/** The ease a word means on one body, cm: inches times 2.54, a percentage taken of the body's bust. */
export function easeInCm(entry: EaseWord, bust: Cm): EaseRange {
  const factor = { cm: 1, in: 2.54, percent: bust / 100 }[entry.unit];
  return {
    least: entry.least === null ? null : entry.least * factor,
    most: entry.most === null ? null : entry.most * factor,
  };
}

/** Usual ease by garment, cm (common practice, no source). */
export function garmentEases(): GarmentEase[] {
  return GARMENT_EASE_ROWS.map(([garment, measurement, least, most, status]) => ({
    garment,
    measurement,
    least,
    most,
    status,
  }));
}
