import { declare } from "../../base/index.ts";

/** Words that should be a measure or a count, and are not. */
export interface Facts {
  /** The entry that the words stand in. */
  readonly entry: string;
  /** What is wrong with the words marked, as a sentence. */
  readonly problem: string;
}

export const measureNotRead = declare<Facts>({
  code: "design/measure-not-read",
  severity: "error",
  what: (d) => `The words for "${d.entry}" are not understood.`,
  why: (d) => d.problem,
  todo: () => [
    "Say measures as in: half of finished bust plus 2 cm.",
    "Join measures with plus and minus, and give every number its unit.",
  ],
});
