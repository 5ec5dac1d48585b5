import type { SizeRun, Span } from "../../base/index.ts";
import type { Terms } from "../../stitches/index.ts";
import type { Clause, Instruction } from "../tree.ts";
import { type Chosen, first } from "./settled.ts";

/** How a pattern is set in words. */
export interface PrintStyle {
  readonly terms: Terms;
  readonly sizes: SizeRun;
  /**
   * The counts to set at the end of a row in place of those the pattern claims: "24 (26, 28) sts". Null keeps the claims
   * of the row as they are; "" sets none. `printAmount` makes the size list.
   */
  readonly counts?: (instruction: Instruction) => string | null;
  /** Rows that stay as the designer wrote them, whatever clean notation would make of them. */
  readonly keeps?: (instruction: Instruction) => boolean;
  /** Which reading of an ambiguous clause is printed, by the index of its option; the first where this is not given. */
  readonly chosen?: Chosen;
}

/** The style's choice among readings. */
export function chosenIn(style: PrintStyle): Chosen {
  return style.chosen ?? first;
}

/** The words that stand in the designer's text at a span, in the terms that are printed. */
export type OwnWords = (span: Span) => string;

/** What the printer of one clause knows of the row it stands in. */
export interface Setting {
  readonly style: PrintStyle;
  /** Whether rows are called rounds here. */
  readonly rounds: boolean;
  /** Whether a star repeat is already open, so that a repeat inside it takes brackets. */
  readonly starred: boolean;
  /** The designer's own words, for what the tree does not keep; null where the text is not at hand. */
  readonly own: OwnWords | null;
  /** Prints clauses that stand inside another, commas between. */
  readonly inner: (clauses: readonly Clause[], setting: Setting) => string;
}

/** "row" or "rnd". */
export function rowWord(setting: Setting): string {
  return setting.rounds ? "rnd" : "row";
}

/** "Row" or "Rnd", as in front of a row number. */
export function RowWord(setting: Setting): string {
  return setting.rounds ? "Rnd" : "Row";
}
