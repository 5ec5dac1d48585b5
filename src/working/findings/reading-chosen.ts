import { declare } from "../../base/index.ts";

/** Words that can be read in more than one way, where the way that was chosen matters. */
export interface Facts {
  readonly row: string;
  /** As written. */
  readonly words: string;
  /** What they are taken to mean: "3 times in all". */
  readonly taken: string;
  /** What else they could mean: "3 times after the first". */
  readonly other: string;
}

export const readingChosen = declare<Facts>({
  code: "rows/reading-chosen",
  severity: "note",
  what: (d) => `"${d.words}" in ${d.row} is read as ${d.taken}.`,
  why: (d) => `It can also be read as ${d.other}, and then the counts come out otherwise.`,
  todo: () => ["Write it so that it can be read one way only."],
});
