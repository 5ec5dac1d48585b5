import { counted, declare, inSizes, type SizedNumbers, sayNumbers } from "../../base/index.ts";

/** A count is told part by part as well, and the parts come to another sum. */
export interface Facts {
  readonly row: string;
  /** Only the sizes at fault; the same sizes in `sum`. */
  readonly total: SizedNumbers;
  readonly sum: SizedNumbers;
}

const numbers = (sized: SizedNumbers) => sized.map((one) => one.n);

export const sharesDoNotSum = declare<Facts>({
  code: "rows/shares-do-not-sum",
  severity: "error",
  what: (d) => `The parts of ${d.row} do not come to its count${inSizes(d.total)}.`,
  why: (d) =>
    `${counted(numbers(d.total), "st")} are printed in all, and the parts told behind come to ${sayNumbers(numbers(d.sum))}.`,
  todo: () => ["Change the part that is wrong.", "Change the count of the whole."],
});
