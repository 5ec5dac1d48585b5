import { declare, sentence } from "../../base/index.ts";

/** A row that is worked again over a row on which it does not come out. */
export interface Facts {
  readonly row: string;
  /** What is repeated: "Rows 3 and 4". */
  readonly repeated: string;
  /** One sentence: what goes wrong. */
  readonly inner: string;
  /** Where it goes wrong: "the 3rd time, Row 9". */
  readonly at: string;
}

export const repeatedRowDoesNotFit = declare<Facts>({
  code: "rows/repeated-row-does-not-fit",
  severity: "error",
  what: (d) => `${d.row} cannot repeat ${d.repeated} all the way.`,
  why: (d) => `${sentence(`${d.at}: ${d.inner}`)}`,
  todo: (d) => [
    `Change ${d.repeated} so that the end fits the beginning again.`,
    "Write out the rows that cannot be repeats.",
  ],
});
