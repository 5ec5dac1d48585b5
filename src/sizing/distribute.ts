import type { Count } from "./units.ts";
import { mustBeWhole } from "./units.ts";

/** Gaps of two lengths that differ by one: "11 gaps of 11 and 1 of 10". */
export interface Gaps {
  readonly short: Count;
  readonly shortTimes: Count;
  /** short + 1. */
  readonly long: Count;
  readonly longTimes: Count;
}

/** Half a gap before the first event and half after the last: what a flat row wants, so that no event falls on an edge. */
export const CENTRED = 0.5;

/**
 * Places for `events` among `places`, as even as can be: in any stretch of the row the number of events is one of two
 * neighbouring whole numbers. No arrangement is evener (balanced words; computation notes, section 6).
 *
 * @param places  from 0
 * @param events  at most `places`
 * @param phase   share of a gap before the first event, 0 up to but not 1; another phase each round keeps increases
 *                from standing above each other
 * @returns       positions from 0, ascending
 */
export function spread(places: Count, events: Count, phase = CENTRED): readonly Count[] {
  mustBeWhole(places, "places");
  mustBeWhole(events, "events");
  if (events > places) throw new RangeError(`${events} events do not fit ${places} places`);
  if (!(phase >= 0 && phase < 1)) throw new RangeError(`a phase is from 0 up to 1, got ${phase}`);
  // Only whole numbers are divided: a phase of 0.3 times a whole number may miss one by a hair and put an event one off.
  const first = Math.floor(phase * places);
  return Array.from({ length: events }, (_, i) => Math.floor((i * places + first) / events));
}

/**
 * Deals `amount` into `parts` that differ by at most one, the larger ones spread evenly and the same from both ends.
 *
 * @returns one number a part; their sum is `amount`
 */
export function deal(amount: Count, parts: Count): readonly Count[] {
  mustBeWhole(amount, "an amount");
  mustBeWhole(parts, "parts", 1);
  const each = Math.floor(amount / parts);
  const dealt = Array.from({ length: parts }, () => each);
  const more = amount % parts;
  for (const at of spread(parts, more)) dealt[at]! += 1;
  return dealt;
}

/** The gaps between events spread evenly round a round. */
export function gapsInRound(places: Count, events: Count): Gaps {
  mustBeWhole(places, "places");
  mustBeWhole(events, "events", 1);
  const short = Math.floor(places / events);
  const longTimes = places % events;
  return { short, shortTimes: events - longTimes, long: short + 1, longTimes };
}
