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
  /** All misses together, weighted, cm: as written, and as they could be. */
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
    return `${shown.join(", ")}${more}. Misses and uneven steps come to ${sayCm(d.atBest)} instead of ${sayCm(d.asWritten)}${best}.`;
  },
  todo: () => ["See the difference: loopwright grade --dry-run.", "Leave it: counts as written hold still."],
});
