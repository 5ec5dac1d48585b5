import { declare } from "../../base/index.ts";

/** A definition that no row needs. */
export interface Facts {
  readonly word: string;
}

export const definedNotUsed = declare<Facts>({
  code: "words/defined-not-used",
  severity: "note",
  what: (d) => `"${d.word}" is defined and not used.`,
  why: () => "No row of the pattern names it.",
  todo: (d) => [`Take "${d.word}" out of the list.`, "See whether a row names it otherwise."],
});
