import { declare, sentence } from "../../base/index.ts";

/** A slip of the pen that was read past. */
export interface Facts {
  /** The words with the slip, as written. */
  readonly words: string;
  /** What was read instead: "a closing bracket is read after \"dc\"". */
  readonly how: string;
}

export const lineMended = declare<Facts>({
  code: "lines/mended",
  severity: "note",
  what: (d) => `A slip in "${d.words}" is read past.`,
  why: (d) => sentence(d.how),
  todo: () => ["Mend it in the text."],
});
