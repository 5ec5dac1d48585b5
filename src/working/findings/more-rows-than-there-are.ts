import { agree, counted, declare, inSizes, sayNumbers } from "../../base/index.ts";

/** Shaping that goes on after the piece has ended. */
export interface Facts {
  readonly row: string;
  readonly cases: readonly { readonly size: string; readonly needs: number; readonly has: number }[];
}

export const moreRowsThanThereAre = declare<Facts>({
  code: "shaping/more-rows-than-there-are",
  severity: "error",
  what: (d) => `The shaping at ${d.row} needs more rows than there are${inSizes(d.cases)}.`,
  why: (d) => {
    const has = d.cases.map((c) => c.has);
    return (
      `It takes ${counted(
        d.cases.map((c) => c.needs),
        "row",
      )} as written; ` + `there ${agree(has, "is", "are")} ${sayNumbers(has)}.`
    );
  },
  todo: (d) => [
    "Shape more often, or fewer times.",
    `Work ${counted(
      d.cases.map((c) => c.needs - c.has),
      "row",
    )} more${inSizes(d.cases)}.`,
  ],
});
