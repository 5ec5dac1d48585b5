import { declare, sayList } from "../../base/index.ts";

/** Words of an instruction that say nothing to the reader. */
export interface Facts {
  /** Each stretch, as written. */
  readonly words: readonly string[];
}

export const lineNotUnderstood = declare<Facts>({
  code: "lines/not-understood",
  severity: "warning",
  what: (d) => {
    const words = d.words.map((one) => `"${one}"`);
    return `${sayList(words)} ${words.length === 1 ? "is" : "are"} not understood.`;
  },
  why: () => "A row is not proved past words that are not understood.",
  todo: () => [
    "Say it with stitches, places and counts.",
    "Vouch for the row with its count and a reason: (Vouched, 40 sts: ...).",
  ],
});
