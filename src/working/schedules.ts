import type { Amount, ScheduleClause } from "../notation/index.ts";

/** A shaping schedule written out: after how many rows each shaping row comes, and by how much it changes the count. */
export interface UnrolledSchedule {
  /** Row of each shaping, from 1 for the first row of the schedule. */
  readonly rows: readonly number[];
  /** Stitches gained (or lost, below 0) in each shaping row. */
  readonly change: number;
  /** Rows the schedule takes, to its last shaping. */
  readonly length: number;
}

/** How many places of a row a schedule changes. */
export function placesChanged(where: ScheduleClause["where"]): number | null {
  switch (where) {
    case "each-end":
      return 2;
    case "neck-edge":
    case "armhole-edge":
    case "beginning":
    case "end":
    case "one-edge":
      return 1;
    case "each-marker":
      return null;
  }
}

/**
 * Writes a schedule out into one list of rows. "Every 4th row" is three plain rows and a shaping row, so that the first
 * comes on the 4th unless the words say "next row". Source: trade handbook, section 3.6.
 *
 * @param numberOf  value of an amount in the size at hand
 * @returns         null where the number of shapings is not said, only a count to reach
 */
export function unrollSchedule(
  schedule: ScheduleClause,
  numberOf: (amount: Amount) => number,
  have: number,
): UnrolledSchedule | null {
  const places = placesChanged(schedule.where);
  if (places === null) return null;
  const change = numberOf(schedule.by) * places * (schedule.change === "inc" ? 1 : -1);
  const rows: number[] = [];
  let at = 0;
  if (schedule.first) {
    at = numberOf(schedule.first);
    rows.push(at);
  }
  const wanted = schedule.until?.stitches ? numberOf(schedule.until.stitches) : null;
  for (const beat of schedule.beats) {
    const every = Math.max(1, numberOf(beat.every));
    const times = beat.times
      ? numberOf(beat.times)
      : wanted === null
        ? null
        : Math.ceil((wanted - have - rows.length * change) / change);
    if (times === null || !Number.isFinite(times) || times < 0 || times > 10_000) return null;
    for (let time = 0; time < times; time++) {
      at += every;
      rows.push(at);
    }
  }
  if (schedule.beats.length === 0 && rows.length === 0) return null;
  return { rows, change, length: at };
}
