import { counted, declare, inSizes, sayNumbers } from "../../base/index.ts";

interface Case {
  readonly size: string;
  readonly have: number;
  /** Stitches to gain, or with a minus to lose, in one row. */
  readonly change: number;
}

/** More shaping in one row than its stitches can take. */
export interface Facts {
  readonly row: string;
  readonly cases: readonly Case[];
}

export const cannotShapeEvenly = declare<Facts>({
  code: "rows/cannot-shape-evenly",
  severity: "error",
  what: (d) => {
    const change = counted(
      d.cases.map((c) => Math.abs(c.change)),
      "st",
    );
    const way = losing(d) ? `lose ${change} evenly` : `gain ${change} evenly`;
    return `${d.row} cannot ${way}${inSizes(d.cases)}.`;
  },
  why: (d) =>
    `With 3 sts ${losing(d) ? "worked together" : "in every st"} all along, ` +
    `${counted(
      d.cases.map((c) => c.have),
      "st",
    )} can ${losing(d) ? "lose" : "gain"} ${sayNumbers(d.cases.map(most))} at most.`,
  todo: (d) => [
    `Spread the ${losing(d) ? "decreases" : "increases"} over two rows or more.`,
    `${losing(d) ? "Lose" : "Gain"} at most ${counted(d.cases.map(most), "st")} in ${d.row}${inSizes(d.cases)}.`,
  ],
});

const losing = (d: Facts) => d.cases.some((c) => c.change < 0);

/**
 * The most that one row can change: m stitches can stay of n where n is not above 3m.
 * Source: trade handbook, section 3.5.
 */
const most = (c: Case) => (c.change < 0 ? c.have - Math.ceil(c.have / 3) : 2 * c.have);
