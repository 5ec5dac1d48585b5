import { agree, counted, declare, inSizes, type SizedNumbers, sayNumbers } from "../../base/index.ts";

/** "Ending with a WS row" or "ending with Row 5" after a number of rows that ends otherwise. */
export interface Facts {
  readonly row: string;
  /** The side, or the number of the row, that the words ask the last row to be. */
  readonly asked: "RS" | "WS" | number;
  /** Rows that are worked, by the words or the gauge, in the sizes at fault. */
  readonly rows: SizedNumbers;
}

const say = (asked: Facts["asked"]) =>
  typeof asked === "number" ? `Row ${asked}` : asked === "RS" ? "an RS row" : "a WS row";

export const endsOnOtherSide = declare<Facts>({
  code: "rows/ends-on-other-side",
  severity: "warning",
  what: (d) => `The last row of ${d.row} is not ${say(d.asked)}${inSizes(d.rows)}.`,
  why: (d) =>
    `Worked as written, ${counted(
      d.rows.map(({ n }) => n),
      "row",
    )} ${agree(
      d.rows.map(({ n }) => n),
      "is",
      "are",
    )} made; ` +
    (typeof d.asked === "number"
      ? `the last of them is not Row ${d.asked}.`
      : `the last of them is ${say(d.asked === "RS" ? "WS" : "RS")}.`),
  todo: (d) => [
    typeof d.asked === "number"
      ? `Change the number of rows so that the last is Row ${d.asked}.`
      : `Work 1 row more${inSizes(d.rows)}: ${sayNumbers(d.rows.map(({ n }) => n + 1))}.`,
    typeof d.asked === "number"
      ? "Name the row that it ends with."
      : `Write "ending with ${say(d.asked === "RS" ? "WS" : "RS")}"${inSizes(d.rows)}.`,
  ],
});
