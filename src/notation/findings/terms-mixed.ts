import { declare, sentence } from "../../base/index.ts";

/** A word of the one set of terms in a pattern that is written in the other. */
export interface Facts {
  readonly word: string;
  /** Terms of the pattern. */
  readonly terms: "US" | "UK";
  /** How they are known: "the pattern says so", "it has sc and skip". */
  readonly because: string;
}

export const termsMixed = declare<Facts>({
  code: "words/terms-mixed",
  severity: "warning",
  what: (d) => `"${d.word}" is a ${d.terms === "US" ? "UK" : "US"} term in a pattern in ${d.terms} terms.`,
  why: (d) => sentence(`The pattern is read in ${d.terms} terms: ${d.because}`),
  todo: (d) => [`Write the ${d.terms} term.`, "Name the terms at the head of the pattern."],
});
