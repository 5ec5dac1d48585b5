import { LETTER_ROWS } from "./data/charts.ts";
import type { Cm } from "./measurement.ts";
import type { Status } from "./rows.ts";

/** A size in letters and the girth of chest or bust it stands for: from `min` up to, not including, `max`. */
export interface LetterCode {
  readonly letters: string;
  readonly min: Cm;
  readonly max: Cm;
  readonly status: Status;
}

/** The letter codes of EN 13402-3 for women or men, smallest first, without holes (read in notes on the standard). */
export function letterCodes(population: "women" | "men"): LetterCode[] {
  return LETTER_ROWS.map(([letters, chestMin, chestMax, bustMin, bustMax, statusMen, statusWomen]) =>
    population === "men"
      ? { letters, min: chestMin, max: chestMax, status: statusMen }
      : { letters, min: bustMin, max: bustMax, status: statusWomen },
  );
}

/** The letters of one bust or chest; undefined outside the table. */
export function lettersFor(population: "women" | "men", bust: Cm): LetterCode | undefined {
  return letterCodes(population).find(({ min, max }) => bust >= min && bust < max);
}
