import { describe, expect, it } from "vitest";
import { deal, gapsInRound, spread } from "./distribute.ts";

describe("events spread evenly", () => {
  // Computation notes, section 6.
  it.each([
    [50, 7, "3 10 17 25 32 39 46"],
    [23, 5, "2 6 11 16 20"],
  ])("in %i places, %i events", (places, events, at) => expect(spread(places, events).join(" ")).toBe(at));

  it("are balanced in every stretch of every row up to 80, at any phase", () => {
    const unbalanced: string[] = [];
    for (let n = 1; n <= 80; n++) {
      for (let k = 1; k <= n; k++) {
        for (const phase of [0.5, 0, 0.3])
          if (!isBalanced(n, spread(n, k, phase))) unbalanced.push(`${k} in ${n} at ${phase}`);
      }
    }
    expect(unbalanced).toEqual([]);
  });

  it("knows an uneven row from an even one", () => {
    expect(isBalanced(12, [0, 4, 8])).toBe(true);
    expect(isBalanced(12, [0, 3, 8])).toBe(false);
  });

  it("do not stack when the phase moves", () => {
    const stacked = spread(48, 6, 0).filter((at) => spread(48, 6, 0.5).includes(at));
    expect(stacked).toEqual([]);
  });

  it("are none where none are wanted, and too many are a mistake", () => {
    expect(spread(5, 0)).toEqual([]);
    expect(() => spread(5, 6)).toThrow(RangeError);
    expect(() => spread(5, 2, 1)).toThrow(RangeError);
    expect(() => spread(5.5, 2)).toThrow(RangeError);
  });
});

describe("gaps in a round", () => {
  // Computation notes, section 6.
  it.each([
    [131, 12, { short: 10, shortTimes: 1, long: 11, longTimes: 11 }],
    [84, 10, { short: 8, shortTimes: 6, long: 9, longTimes: 4 }],
    [124, 14, { short: 8, shortTimes: 2, long: 9, longTimes: 12 }],
    [50, 7, { short: 7, shortTimes: 6, long: 8, longTimes: 1 }],
  ])("of %i places and %i events", (places, events, gaps) => {
    expect(gapsInRound(places, events)).toEqual(gaps);
    const at = spread(places, events);
    const found = at.map((here, i) => (at[i + 1] ?? at[0]! + places) - here);
    expect(found.filter((gap) => gap === gaps.long).length).toBe(gaps.longTimes);
    expect(found.filter((gap) => gap === gaps.short).length).toBe(gaps.shortTimes);
  });
});

it("deals evenly, and nothing is lost", () => {
  expect(deal(69, 10).toSorted().join(" ")).toBe("6 7 7 7 7 7 7 7 7 7");
  expect(deal(68, 17)).toEqual(Array.from({ length: 17 }, () => 4));
  expect(deal(7, 3)).toEqual([2, 3, 2]);
  expect(deal(2, 5)).toEqual([0, 1, 0, 1, 0]);
});

/** Whether every stretch of each length, going round, holds one of two neighbouring numbers of events. */
function isBalanced(places: number, at: readonly number[]): boolean {
  const has = Array.from({ length: places }, (_, i) => (at.includes(i) ? 1 : 0));
  const upTo = [0];
  for (let i = 0; i < 2 * places; i++) upTo.push(upTo[i]! + has[i % places]!);
  for (let length = 1; length < places; length++) {
    let least = places;
    let most = 0;
    for (let from = 0; from < places; from++) {
      const inside = upTo[from + length]! - upTo[from]!;
      least = Math.min(least, inside);
      most = Math.max(most, inside);
    }
    if (most - least > 1) return false;
  }
  return true;
}
