import { counted, declare, inSizes, type SizedNumbers, sentence } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A row whose count is taken as printed because it cannot be worked. */
export interface Facts {
  readonly row: string;
  readonly count: SizedNumbers;
  /** Why it cannot be worked: "the words after \"dc\" are not understood". */
  readonly because: string;
}

export const takenOnTrust = declare<Facts>({
  code: "rows/taken-on-trust",
  severity: "note",
  what: (d) =>
    `${d.row} ${verb(d.row, "is", "are")} taken at the printed ${counted(
      d.count.map(({ n }) => n),
      "st",
    )}` + `${inSizes(d.count)}, without proof.`,
  why: (d) => sentence(d.because),
  todo: (d) => [
    `Mend what stops ${d.row}, and the count is proved.`,
    `Vouch for it with a reason after the row: (Vouched, ${counted(
      d.count.map(({ n }) => n),
      "st",
    )}: ...).`,
  ],
});
