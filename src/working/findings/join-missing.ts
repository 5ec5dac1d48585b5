import { declare } from "../../base/index.ts";
import { verb } from "./label.ts";

/** A round that is not joined where the words do not say that it goes on in a spiral. */
export interface Facts {
  readonly row: string;
  readonly before: string;
  /** How the round before is read meanwhile. */
  readonly how: "joined" | "spiral";
}

export const joinMissing = declare<Facts>({
  code: "rows/join-missing",
  severity: "warning",
  what: (d) => `No join is written between ${d.before} and ${d.row}.`,
  why: (d) =>
    d.how === "joined"
      ? `Other rounds are joined, and so ${d.before} ${verb(d.before, "is", "are")} read with a join.`
      : `No round around it is joined, and so ${d.before} ${verb(d.before, "is", "are")} read as a spiral.`,
  todo: (d) => {
    const join = `End ${d.before} with "join with sl st in first st".`;
    const spiral = `Write "do not join" at ${d.before} where the rounds go on in a spiral.`;
    return d.how === "joined" ? [join, spiral] : [spiral, join];
  },
});
