import { counted, declare, inSizes, type SizedNumbers, sayNumbers } from "../../base/index.ts";

/** A sentence says how many rows there are by now, and there are others. */
export interface Facts {
  /** Only the sizes at fault; the same sizes in `worked`. */
  readonly told: SizedNumbers;
  /** Counted from the beginning that comes nearest. */
  readonly worked: SizedNumbers;
}

const numbers = (sized: SizedNumbers) => sized.map((one) => one.n);

export const rowsToldDiffer = declare<Facts>({
  code: "rows/rows-told-differ",
  severity: "warning",
  what: (d) =>
    `${counted(numbers(d.told), "row")} are told here${inSizes(d.told)}, and ${sayNumbers(numbers(d.worked))} were worked.`,
  why: () => "Neither the piece nor a part of it has so many rows by now.",
  todo: (d) => [
    `Write ${counted(numbers(d.worked), "row")} here${inSizes(d.worked)}.`,
    "See whether a row was left out before, or written once too often.",
  ],
});
