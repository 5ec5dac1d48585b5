import { capital, counted, declare, inSizes, sayNumbers } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A row that reaches the end of the row below before its own words do. */
export interface Facts {
  readonly row: string;
  readonly before: string;
  readonly cases: readonly {
    readonly size: string;
    /** Stitches of the row below. */
    readonly have: number;
    /** Stitches the row takes by the end of the clause at fault. */
    readonly need: number;
  }[];
  /** The clause at fault, as written. */
  readonly words: string;
}

export const notEnoughStitches = declare<Facts>({
  code: "rows/not-enough-stitches",
  severity: "error",
  what: (d) => `${d.row} ${verb(d.row, "runs", "run")} out of stitches at "${d.words}"${inSizes(d.cases)}.`,
  why: (d) =>
    `${capital(d.before)} ${verb(d.before, "has", "have")} ${counted(
      d.cases.map((c) => c.have),
      "st",
    )}; ` + `by the end of these words the row takes ${sayNumbers(d.cases.map((c) => c.need))}.`,
  todo: (d) => [
    `Take ${counted(
      d.cases.map((c) => c.need - c.have),
      "st",
    )} fewer of ${d.before}${inSizes(d.cases)}.`,
    `End ${d.before} with at least ${counted(
      d.cases.map((c) => c.need),
      "st",
    )}${inSizes(d.cases)}.`,
  ],
});
