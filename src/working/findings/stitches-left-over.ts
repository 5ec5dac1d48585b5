import { agree, capital, counted, declare, inSizes, sayNumbers } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A row that ends before the row below does, without saying that stitches stay unworked. */
export interface Facts {
  readonly row: string;
  readonly before: string;
  readonly cases: readonly {
    readonly size: string;
    readonly left: number;
    /** Stitches of the row below. */
    readonly have: number;
  }[];
}

export const stitchesLeftOver = declare<Facts>({
  code: "rows/stitches-left-over",
  severity: "error",
  what: (d) =>
    `${d.row} ${verb(d.row, "ends", "end")} before ${d.before} ${verb(d.before, "does", "do")}${inSizes(d.cases)}.`,
  why: (d) => {
    const left = d.cases.map((c) => c.left);
    return (
      `${capital(d.before)} ${verb(d.before, "has", "have")} ${counted(
        d.cases.map((c) => c.have),
        "st",
      )}: ` +
      `${d.row} ${verb(d.row, "takes", "take")} ${sayNumbers(d.cases.map((c) => c.have - c.left))} and ` +
      `${sayNumbers(left)} ${agree(left, "stays", "stay")} unworked.`
    );
  },
  todo: (d) => {
    const left = d.cases.map((c) => c.left);
    const last = agree(left, "last st", `last ${sayNumbers(left)} sts`);
    return [
      `Work the ${last} of ${d.before} too${inSizes(d.cases)}.`,
      `Write "leave ${last} unworked" where that is meant${inSizes(d.cases)}.`,
    ];
  },
});
