import { declare, inSizes } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A side written at a row that is not the side the turns bring to the front. */
export interface Facts {
  readonly row: string;
  readonly written: "RS" | "WS";
  readonly worked: "RS" | "WS";
  /** The row from which the turns are counted; null: from the beginning. */
  readonly before: string | null;
  readonly sizes: readonly string[];
}

const SIDE = { RS: "right side", WS: "wrong side" } as const;

export const sideContradictsTurns = declare<Facts>({
  code: "rows/side-contradicts-turns",
  severity: "warning",
  what: (d) =>
    `${d.row} ${verb(d.row, "is", "are")} marked ${d.written} and worked on the ${SIDE[d.worked]}${inSizes(d.sizes)}.`,
  why: (d) =>
    `Counting the turns from ${d.before ?? "the beginning"}, the ${SIDE[d.worked]} faces the maker here.`,
  todo: (d) => [
    `Mark the row ${d.worked}${inSizes(d.sizes)}.`,
    "Add a row or take one out before it.",
    `See whether a turn is missing or doubled${d.before === null ? "" : ` after ${d.before}`}.`,
  ],
});
