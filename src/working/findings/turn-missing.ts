import { capital, declare } from "../../base/index.ts";
import { verb } from "./label.ts";

/** Two rows with no turn between them, where the second needs one. */
export interface Facts {
  readonly row: string;
  readonly before: string;
  /** The side written at the row, where it is that which shows the turn to be missing. */
  readonly tag: "RS" | "WS" | null;
}

export const turnMissing = declare<Facts>({
  code: "rows/turn-missing",
  severity: "warning",
  what: (d) => `No turn is written between ${d.before} and ${d.row}.`,
  why: (d) =>
    d.tag === null
      ? `${capital(d.row)} ${verb(d.row, "is", "are")} worked back over ${d.before}, and so is read with a turn.`
      : `${capital(d.row)} ${verb(d.row, "is", "are")} marked ${d.tag}, and so is read with a turn.`,
  todo: (d) => [`End ${d.before} with "turn".`, `Write "do not turn" where the same side stays in front.`],
});
