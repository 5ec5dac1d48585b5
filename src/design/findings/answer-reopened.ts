import { declare, sentence } from "../../base/index.ts";

/** An answer given to a finding before its row or the counts changed. */
export interface Facts {
  readonly row: string;
  /** The designer's own reason, as written. */
  readonly reason: string;
}

export const answerReopened = declare<Facts>({
  code: "answers/reopened",
  severity: "warning",
  what: (d) => `The answer after ${d.row} is open again.`,
  why: (d) =>
    sentence(`The words or counts of ${d.row} changed after the answer "${d.reason.replace(/\.$/, "")}"`),
  todo: () => [
    "Where the answer still holds, take out its stamp, from the ~ to the bracket; it gets a new one.",
    "Where it does not, take it out.",
  ],
});
