import { describe, expect, it } from "vitest";
import { groupPickUp, pickUpAlong, pickUpRatio, pickUpRatios } from "./pick-up.ts";

const said = (rowsPer10: number, most: number) =>
  pickUpRatios(10 / rowsPer10, 10 / 15, most).map(({ stitches, rows }) => `${stitches} per ${rows}`);

// Trade handbook, 3.7: edging at 15 sts/10 cm along sc (16 rows/10 cm), hdc (11), dc (8), tr (5.5).
describe("stitches for rows", () => {
  it.each([
    [16, 16, 0.94, ["1 per 1", "15 per 16"]],
    [11, 3, 1.36, ["1 per 1", "3 per 2", "4 per 3"]],
    [8, 8, 1.88, ["2 per 1", "15 per 8"]],
    [5.5, 3, 2.73, ["3 per 1", "8 per 3"]],
  ])("at %f rows to 10 cm, counting in up to %i", (rowsPer10, most, exact, among) => {
    const said16 = said(rowsPer10, most);
    for (const ratio of among) expect(said16).toContain(ratio);
    expect(Math.round((100 * 15) / rowsPer10) / 100).toBeCloseTo(exact, 2);
  });

  it.each([
    [11, "4 per 3"],
    [5.5, "8 per 3"],
    [15, "1 per 1"],
  ])("at %f rows to 10 cm are simplest as %s", (rowsPer10, simplest) => {
    const { stitches, rows } = pickUpRatio(10 / rowsPer10, 10 / 15);
    expect(`${stitches} per ${rows}`).toBe(simplest);
  });

  it("are the simplest that lie flat, at every gauge", () => {
    for (let rowsPer10 = 3; rowsPer10 < 40; rowsPer10 += 0.7) {
      const exact = 15 / rowsPer10;
      const found = pickUpRatio(10 / rowsPer10, 10 / 15, 0.02);
      expect(Math.abs(found.off)).toBeLessThanOrEqual(0.02);
      for (let rows = 1; rows < found.rows; rows++) {
        expect(Math.abs(Math.round(exact * rows) / rows / exact - 1)).toBeGreaterThan(0.02);
      }
    }
  });

  it("need a tolerance", () => expect(() => pickUpRatio(1, 1, 0)).toThrow(RangeError));
});

describe("dealing a total over rows", () => {
  it("loses nothing", () => {
    for (const [rows, stitches] of [
      [64, 60],
      [33, 45],
      [7, 0],
      [10, 30],
    ] as const) {
      const taken = pickUpAlong(rows, stitches);
      expect(taken.length).toBe(rows);
      expect(taken.reduce((a, b) => a + b, 0)).toBe(stitches);
      expect(Math.max(...taken) - Math.min(...taken)).toBeLessThanOrEqual(1);
      expect(groupPickUp(taken).reduce((sum, group) => sum + group.stitches * group.rows, 0)).toBe(stitches);
    }
  });
  it("says runs of alike rows", () =>
    expect(groupPickUp(pickUpAlong(6, 4))).toEqual([
      { stitches: 1, rows: 1 },
      { stitches: 0, rows: 1 },
      { stitches: 1, rows: 2 },
      { stitches: 0, rows: 1 },
      { stitches: 1, rows: 1 },
    ]));
});
