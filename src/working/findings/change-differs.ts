import { counted, declare, inSizes, type SizedNumbers, sayNumbers } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A row that says how many stitches it gains or loses, and gains or loses another number. */
export interface Facts {
  readonly row: string;
  readonly change: "inc" | "dec";
  /** Only the sizes at fault; the same sizes in `worked`. */
  readonly printed: SizedNumbers;
  /** Stitches gained, or lost where the words say a decrease; below 0 where it goes the other way. */
  readonly worked: SizedNumbers;
}

const numbers = (sized: SizedNumbers) => sized.map((one) => one.n);

export const changeDiffers = declare<Facts>({
  code: "rows/change-differs",
  severity: "error",
  what: (d) =>
    `${d.row} ${verb(d.row, "says", "say")} ${counted(numbers(d.printed), "st")} ${d.change === "inc" ? "increased" : "decreased"}` +
    `${inSizes(d.printed)}, and ${verb(d.row, "makes", "make")} another number.`,
  why: (d) => {
    const worked = numbers(d.worked);
    const more = d.change === "inc";
    if (worked.every((n) => n < 0))
      return `Worked as written it ${more ? "loses" : "gains"} ${counted(
        worked.map((n) => -n),
        "st",
      )}.`;
    return `Worked as written it ${more ? "gains" : "loses"} ${sayNumbers(worked)}.`;
  },
  todo: (d) => [
    numbers(d.worked).some((n) => n <= 0)
      ? `Print what ${d.row} does, or leave the number out.`
      : `Print ${counted(numbers(d.worked), "st")} ${d.change === "inc" ? "increased" : "decreased"} at ${d.row}${inSizes(d.worked)}.`,
    `Change ${d.row} so that ${d.change === "inc" ? verb(d.row, "it adds", "they add") : verb(d.row, "it takes away", "they take away")} ${counted(numbers(d.printed), "st")}${inSizes(d.printed)}.`,
  ],
});
