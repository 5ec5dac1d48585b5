import { declare, sayCm } from "../../base/index.ts";

/** Counts as written that are not the closest to the plan. */
export interface Facts {
  /** Counts that a closer choice has otherwise, in the sizes that differ. */
  readonly changes: readonly {
    readonly count: string;
    readonly size: string;
    readonly from: number;
    readonly to: number;
  }[];
  /** Whether the sum of all misses is to be small, or the largest of them first. */
  readonly aim: "least sum" | "least worst";
  /** All misses together, or the largest of them, weighted, cm: as written, and as it could be. */
  readonly asWritten: number;
  readonly atBest: number;
  /** Whether that choice is proved to be the best there is. */
  readonly proved: boolean;
}

export const betterChoice = declare<Facts>({
  code: "design/better-choice",
  severity: "note",
  what: () => "Another choice of counts comes closer to the plan.",
  why: (d) => {
    const shown = d.changes
      .slice(0, 6)
      .map(({ count, size, from, to }) => `${count} in ${size}: ${to} for ${from}`);
    const more = d.changes.length > 6 ? `, and ${d.changes.length - 6} more` : "";
    const best = d.proved ? ", and no choice does better" : "";
    const what = d.aim === "least worst" ? "The largest miss comes to" : "Misses and uneven steps come to";
    return `${shown.join(", ")}${more}. ${what} ${sayCm(d.atBest)} instead of ${sayCm(d.asWritten)}${best}.`;
  },
  todo: () => ["See the difference: loopwright grade --dry-run.", "Leave it: counts as written hold still."],
});
