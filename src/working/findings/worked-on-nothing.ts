import { declare } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A first row with no foundation under it. */
export interface Facts {
  readonly row: string;
}

export const workedOnNothing = declare<Facts>({
  code: "rows/worked-on-nothing",
  severity: "warning",
  what: (d) => `${d.row} ${verb(d.row, "has", "have")} nothing to work into.`,
  why: () => "No chain, ring or foundation row stands before it in this piece.",
  todo: () => [
    'Write the foundation first, such as "Ch 31."',
    "Name the edge and the piece where it grows from another piece.",
  ],
});
