import { agree, capital, counted, declare, inSizes, sayNumbers } from "../../base/index.ts";
import { verb } from "./label.ts";

interface Case {
  readonly size: string;
  /** Stitches of the row below, as many as the row has to work over. */
  readonly have: number;
  /** Stitches that one repeat takes. */
  readonly takes: number;
  /** Stitches that the row takes outside the repeat. */
  readonly fixed: number;
}

/** A repeat "across" that does not use up the row below. */
export interface Facts {
  readonly row: string;
  /** Label of the row below: "Row 11". */
  readonly before: string;
  readonly cases: readonly Case[];
}

export const repeatLeavesStitches = declare<Facts>({
  code: "rows/repeat-leaves-stitches",
  severity: "error",
  what: (d) => `${d.row} ${verb(d.row, "does", "do")} not come out even${inSizes(d.cases)}.`,
  why: (d) => {
    const before = `${capital(d.before)} ${verb(d.before, "ends", "end")} with ${counted(
      d.cases.map((c) => c.have),
      "st",
    )}`;
    const fixed = d.cases.map((c) => c.fixed);
    const outside = fixed.some((n) => n > 0) ? `, ${sayNumbers(fixed)} of them outside the repeat` : "";
    if (d.cases.some((c) => c.takes < 1)) return `${before}${outside}. The repeat takes none of them.`;
    const times = d.cases.map((c) => Math.max(0, Math.floor((c.have - c.fixed) / c.takes)));
    const used = d.cases.map((c, at) => (times[at] as number) * c.takes);
    const left = d.cases.map((c, at) => c.have - c.fixed - (used[at] as number));
    const takes = sayNumbers(d.cases.map((c) => c.takes));
    return (
      `${before}${outside}. The repeat takes ${takes}: ` +
      `${counted(times, "repeat")} ${agree(times, "uses", "use")} ${sayNumbers(used)} and ` +
      `${agree(times, "leaves", "leave")} ${sayNumbers(left)} unworked.`
    );
  },
  todo: (d) => {
    if (d.cases.some((c) => c.takes < 1)) return [`Let the repeat take at least 1 st of ${d.before}.`];
    const left = d.cases.map((c) => Math.max(0, c.have - c.fixed) % c.takes);
    const last = agree(left, "Work the last st", `Work the last ${sayNumbers(left)} sts`);
    return [`${last} outside the repeat${inSizes(d.cases)}.`, `End ${d.before} ${fitting(d.cases)}.`];
  },
});

/** "on a multiple of 8 plus 2: 58 or 66 sts", and the two nearest counts of each size. */
function fitting(cases: readonly Case[]): string {
  const multiples = new Set(
    cases.map((c) => `a multiple of ${c.takes}${c.fixed > 0 ? ` plus ${c.fixed}` : ""}`),
  );
  const counts = cases.map((c) => `${nearest(c)}${inSizes([c])}`).join("; ");
  return multiples.size === 1 ? `on ${[...multiples].join("")}: ${counts}` : `with ${counts}`;
}

/** The counts nearest below and above at which the repeat comes out, with one repeat at least. */
function nearest({ have, takes, fixed }: Case): string {
  const times = Math.max(0, Math.floor((have - fixed) / takes));
  const above = fixed + (times + 1) * takes;
  return times === 0 ? counted(above, "st") : `${fixed + times * takes} or ${counted(above, "st")}`;
}
