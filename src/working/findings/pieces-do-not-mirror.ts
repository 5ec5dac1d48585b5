import { declare, inSizes, sayNumbers, sentence } from "../../base/index.ts";

/** Two pieces that should be the same seen from either side, and are not. */
export interface Facts {
  /** Headings of the pieces: "Left Front". */
  readonly one: string;
  readonly other: string;
  readonly cases: readonly {
    readonly size: string;
    readonly one: number;
    readonly other: number;
    /** What is counted, in the plural: "rows", "sts at the neck". */
    readonly what: string;
  }[];
}

export const piecesDoNotMirror = declare<Facts>({
  code: "pieces/do-not-mirror",
  severity: "warning",
  what: (d) => `${d.one} and ${d.other} do not mirror${inSizes(d.cases)}.`,
  why: (d) => {
    const kinds = [...new Set(d.cases.map((c) => c.what))];
    return kinds
      .map((what) => {
        const cases = d.cases.filter((c) => c.what === what);
        return sentence(
          `${what}: ${sayNumbers(cases.map((c) => c.one))} in ${d.one}, ` +
            `${sayNumbers(cases.map((c) => c.other))} in ${d.other}${kinds.length > 1 ? inSizes(cases) : ""}`,
        );
      })
      .join(" ");
  },
  todo: (d) => [
    `Change ${d.one} or ${d.other} so that both have the same.`,
    "Say in the pattern where the two are meant to differ.",
  ],
});
