import { declare } from "../../base/index.ts";

/** An answer after a row that has no finding to answer. */
export interface Facts {
  readonly row: string;
  /** The designer's own reason, as written. */
  readonly reason: string;
}

export const answerMatchesNothing = declare<Facts>({
  code: "answers/matches-nothing",
  severity: "note",
  what: (d) => `The answer "${d.reason.replace(/\.$/, "")}" answers no finding.`,
  why: (d) => `No finding stands at ${d.row} now.`,
  todo: () => ["Take the answer out.", "See whether it belongs to another row."],
});
