import { declare } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A repeat of a row that is not there. */
export interface Facts {
  readonly row: string;
  /** The row asked for: "Row 14". */
  readonly asked: string;
}

export const rowNotFound = declare<Facts>({
  code: "rows/row-not-found",
  severity: "error",
  what: (d) => `${d.row} ${verb(d.row, "repeats", "repeat")} ${d.asked}, which is not there.`,
  why: (d) => `Above ${d.row} this piece has no ${d.asked}.`,
  todo: () => ["Name a row that stands above.", "Name its piece too where it belongs to another one."],
});
