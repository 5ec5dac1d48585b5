import { counted, declare, inSizes, sayNumbers } from "../../base/index.ts";

/** Shaping that ends with another count than the one written for it. */
export interface Facts {
  readonly row: string;
  readonly cases: readonly {
    readonly size: string;
    readonly from: number;
    /** Stitches after the shaping as written. */
    readonly to: number;
    readonly wanted: number;
  }[];
}

export const missesItsCount = declare<Facts>({
  code: "shaping/misses-its-count",
  severity: "error",
  what: (d) => `The shaping at ${d.row} misses its count${inSizes(d.cases)}.`,
  why: (d) =>
    `It goes from ${sayNumbers(d.cases.map((c) => c.from))} to ${counted(
      d.cases.map((c) => c.to),
      "st",
    )}; ` +
    `${sayNumbers(d.cases.map((c) => c.wanted))} ${d.cases.length === 1 && d.cases[0]?.wanted === 1 ? "is" : "are"} written.`,
  todo: (d) => [
    `Change the shaping so that ${counted(
      d.cases.map((c) => Math.abs(c.wanted - c.from)),
      "st",
    )} ` + `${way(d)} in all${inSizes(d.cases)}.`,
    `Write ${counted(
      d.cases.map((c) => c.to),
      "st",
    )}${inSizes(d.cases)}.`,
  ],
});

const way = ({ cases }: Facts) =>
  cases.every((c) => c.wanted >= c.from)
    ? "come"
    : cases.every((c) => c.wanted <= c.from)
      ? "go"
      : "come or go";
