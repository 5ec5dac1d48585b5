import { counted, declare, inSizes, type SizedNumbers } from "../../base/index.ts";

/** "Evenly" with no number of stitches. */
export interface Facts {
  readonly row: string;
  /** Stitches that would lie flat along the edge, where that follows from the gauge; empty where it does not. */
  readonly offered: SizedNumbers;
}

export const evenlyWithoutNumber = declare<Facts>({
  code: "rows/evenly-without-number",
  severity: "note",
  what: (d) => `"Evenly" in ${d.row} has no number of stitches.`,
  why: (d) =>
    d.offered.length === 0
      ? "Every maker ends with another number, and the next row has to fit it."
      : `Every maker ends with another number; the edge offers ${offer(d.offered)}.`,
  todo: (d) => [d.offered.length === 0 ? "Print the number of stitches." : `Print ${offer(d.offered)}.`],
});

const offer = (offered: SizedNumbers) =>
  `${counted(
    offered.map(({ n }) => n),
    "st",
  )}${inSizes(offered)}`;
