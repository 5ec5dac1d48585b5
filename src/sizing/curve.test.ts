import { describe, expect, it } from "vitest";
import { capCurve, capRows, edgeLength, fitStaircases, quarterEllipse } from "./curve.ts";

describe("whole stitches along a curve", () => {
  // Computation notes, section 6: sums of absolute errors for 1 to 6 runs that meet right above or below the curve.
  const armhole = quarterEllipse(24, 14);
  const cap = capCurve(60, 40);
  it.each([
    ["armhole, 24 rows x 14 st", armhole, 1, [96.05, 19.03, 8.34, 5.81, 5.58, 5.39], 5.394],
    ["half cap, 60 rows x 40 st", cap, 1, [163.77, 132.35, 22.74, 18.77, 12.32, 11.87], 11.43],
    // Runs that may meet further away come nearer; these two are ours, the same at reaches of 3, 5 and 8.
    ["armhole, meeting further out", armhole, 2, [96.05, 16.58, 7.81, 5.81, 5.58, 5.39], 5.394],
    ["half cap, meeting further out", cap, 2, [163.77, 132.35, 21.28, 16.8, 12.32, 11.87], 11.43],
  ])("%s", (_, curve, reach, errors, floor) => {
    const found = fitStaircases(curve, 6, reach);
    expect(found.byRuns.map(({ error }) => Math.round(100 * error) / 100)).toEqual(errors);
    expect(found.floor).toBeCloseTo(floor, 2);
    for (const { runs, counts, error } of found.byRuns) {
      expect(runs.reduce((sum, { rows }) => sum + rows, 0)).toBe(curve.length - 1);
      expect(runs.reduce((sum, { stitches }) => sum + stitches, 0)).toBe(
        Math.round(curve.at(-1)! - curve[0]!),
      );
      expect(counts.reduce((sum, count, row) => sum + Math.abs(count - curve[row]!), 0)).toBeCloseTo(
        error,
        9,
      );
    }
  });

  it("takes the knee of error against runs", () => {
    expect(fitStaircases(quarterEllipse(24, 14), 6).knee).toBe(1);
    expect(fitStaircases(capCurve(60, 40), 6).knee).toBe(2);
  });

  it("needs one run for a straight line", () => {
    const { byRuns, knee } = fitStaircases([0, 1, 2, 3, 4], 3);
    expect(byRuns.map(({ error }) => error)).toEqual([0, 0, 0]);
    expect(byRuns[2]!.runs).toEqual([{ rows: 4, stitches: 4 }]);
    expect(knee).toBe(0);
  });

  it("goes down as well as up", () => {
    const { byRuns } = fitStaircases([10, 8, 6, 4, 5, 6, 7], 2);
    expect(byRuns[1]!.runs).toEqual([
      { rows: 3, stitches: -6 },
      { rows: 3, stitches: 3 },
    ]);
  });

  it("agrees with trying every corner", () => {
    for (const curve of [
      [0, 0.4, 1.7, 1.9, 4.2, 4.4, 5],
      [3, 3.2, 2.1, 0.4, 0.2, 1.6, 2],
    ]) {
      const { byRuns } = fitStaircases(curve, 3);
      expect(byRuns.map(({ error }) => error)).toEqual(
        [1, 2, 3].map((runs) => expect.closeTo(tried(curve, runs), 9)),
      );
    }
  });

  it("refuses a curve of no rows", () => expect(() => fitStaircases([3], 2)).toThrow(RangeError));
});

describe("a sleeve cap", () => {
  it("is as long as its armhole", () => {
    const found = capRows(40, 24, 0.5, 0.4)!;
    const length = edgeLength(capCurve(found.rows, 40), 0.5, 0.4);
    expect(length - 24).toBeCloseTo(found.off, 9);
    expect(Math.abs(found.off)).toBeLessThan(0.2);
    for (const rows of [found.rows - 1, found.rows + 1]) {
      expect(Math.abs(edgeLength(capCurve(rows, 40), 0.5, 0.4) - 24)).toBeGreaterThanOrEqual(
        Math.abs(found.off),
      );
    }
  });
  it("cannot be shorter than it is wide", () => expect(capRows(40, 19, 0.5, 0.4)).toBeNull());
  // Trade handbook, 2.4: a raglan line of depth 20 and run 14 is 24.4 cm.
  it("has an edge like any other", () => expect(edgeLength([0, 14], 1, 20)).toBeCloseTo(24.4, 1));
});

/** Least error with at most this many runs, over all corners within 3 stitches of the curve. */
function tried(curve: readonly number[], runs: number, from = 0, start = Math.round(curve[0]!)): number {
  const rows = curve.length - 1;
  if (from === rows) return start === Math.round(curve[rows]!) ? 0 : Number.POSITIVE_INFINITY;
  if (runs === 0) return Number.POSITIVE_INFINITY;
  let best = Number.POSITIVE_INFINITY;
  for (let to = from + 1; to <= rows; to++) {
    for (let end = Math.floor(curve[to]!) - 3; end <= curve[to]! + 4; end++) {
      let error = 0;
      for (let row = from + 1; row <= to; row++) {
        error += Math.abs(Math.round(start + ((end - start) * (row - from)) / (to - from)) - curve[row]!);
      }
      best = Math.min(best, error + tried(curve, runs - 1, to, end));
    }
  }
  return best;
}
