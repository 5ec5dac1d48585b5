import { declare } from "../../base/index.ts";

/** A row whose number another row of the piece has already. */
export interface Facts {
  readonly row: string;
  readonly found: number;
}

export const numberRepeats = declare<Facts>({
  code: "rows/number-repeats",
  severity: "warning",
  what: (d) => `The number ${d.found} stands at ${d.row} a second time.`,
  why: (d) => `Two rows of this piece carry the number ${d.found}.`,
  todo: () => [
    "Number the rows on from the one before.",
    "Begin the count again under a heading of its own.",
  ],
});
