import type { Edit } from "../../src/base/index.ts";

/** What is done to a pattern, one at a time. The order is the order of the tables. */
export const KINDS = {
  "number in a row": "a number in an instruction, up or down by one",
  "number in a label": "a row number or the end of a range, up or down by one",
  "printed count": "a number of a printed count, up or down by one",
  "number not read": "a number in words inside a row that the reader leaves aside, up or down by one",
  "sizes swapped": "the values of two neighbouring sizes exchanged",
  "repeat's stop": "where or how often a repeat stops",
  "skip dropped": "the words that skip stitches left out",
  "stitch replaced": "a stitch that takes or makes another number of stitches",
  "increase for decrease": "an increase made a decrease, or the other way round",
  "turn dropped": "the word turn left out",
  "row deleted": "a whole row or foundation left out",
  "loop exchanged": "front loop for back loop, or the other way round",
  "side tag": "RS made WS, or the other way round",
  "hook size": "another hook than the materials list",
} as const;

export type Kind = keyof typeof KINDS;

/** One change of a pattern's text that a designer might make by oversight. */
export interface Mutation extends Edit {
  readonly kind: Kind;
  /** Index of the instruction, counted over all pieces. */
  readonly instruction: number;
  /** What was changed, for people: "6 → 7". */
  readonly words: string;
  /** Why this one harms nobody; absent where a maker would be led astray. */
  readonly harmless?: string;
}

/** The text with the change made. */
export function mutate(text: string, { span, text: words }: Edit): string {
  return text.slice(0, span.from) + words + text.slice(span.to);
}
