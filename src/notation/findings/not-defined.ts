import { declare } from "../../base/index.ts";

/** A stitch or an abbreviation that the pattern uses and does not explain. */
export interface Facts {
  readonly word: string;
  /** The first row that uses it. */
  readonly row: string;
}

export const notDefined = declare<Facts>({
  code: "words/not-defined",
  severity: "warning",
  what: (d) => `"${d.word}" is used in ${d.row} and not defined.`,
  why: () => "The pattern does not say how it is worked, or what it stands for.",
  todo: (d) => [`Add "${d.word}" to the abbreviations or the special stitches.`],
});
