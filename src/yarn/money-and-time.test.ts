import { describe, expect, it } from "vitest";
import { firstFall, GROWTH, METRES_A_YARD, pulloverMetres } from "./class-range.ts";
import { earningsOf } from "./earnings.ts";
import { hoursByLength, hoursByRate, TURNING_AND_COUNTING } from "./time.ts";

/* Trade handbook, section 9, and computation notes, section 10. */
describe("what a design costs and earns", () => {
  it("breaks even where the handbook says", () => {
    const figures = { price: 7, fee: 0.1, cash: 416, hours: 50, wage: 15, sold: null };
    const { perCopy, cost, copiesForAll, copiesForCash } = earningsOf(figures);
    expect(perCopy).toBeCloseTo(6.3, 9);
    expect(cost / perCopy).toBeCloseTo(185.1, 1);
    expect(copiesForAll).toBe(186);
    expect(copiesForCash).toBe(67);
  });

  it("tells what an hour brought", () => {
    const sold = earningsOf({ price: 7, fee: 0.1, cash: 416, hours: 50, wage: 15, sold: 300 });
    expect(sold.left).toBeCloseTo(300 * 6.3 - 416, 9);
    expect(sold.perHour).toBeCloseTo((300 * 6.3 - 416) / 50, 9);
    expect(sold.profit).toBeCloseTo(300 * 6.3 - 416 - 750, 9);
    expect(earningsOf({ price: 0, fee: 0, cash: 1, hours: 0, wage: 0, sold: 5 }).copiesForAll).toBeNull();
  });

  it("adds up the costs that a page printed with another sum", () => {
    // Handbook, section 8: items whose printed total is 416.32 come to 453.82 [S102b].
    expect([119.82, 161.5, 5, 137.5, 30].reduce((sum, one) => sum + one, 0)).toBeCloseTo(453.82, 9);
  });
});

describe("hours", () => {
  it("come out by the handbook's rate", () => {
    expect(hoursByRate(30_000, 20)).toBeCloseTo(31.25, 9);
    expect(hoursByRate(30_000, 20) / TURNING_AND_COUNTING).toBeCloseTo(25, 9);
    expect(hoursByRate(0, 20, 90)).toBeCloseTo(1.5, 9);
    // Notes, section 10: 45,000 stitches at 20, 25 and 30 a minute, without pauses.
    for (const [rate, hours] of [
      [20, 37.5],
      [25, 30],
      [30, 25],
    ] as const)
      expect(hoursByRate(45_000, rate) / TURNING_AND_COUNTING).toBeCloseTo(hours, 9);
    expect(() => hoursByRate(1, 0)).toThrow(RangeError);
  });

  it("agree with yards an hour", () => {
    // Handbook, section 9: 60-120 yd an hour, so 1200 yd in 10-20 h. Notes: 20 dc of 12 cm a minute are 144 m, 157 yd an hour.
    expect(hoursByLength(1200 * METRES_A_YARD, 120 * METRES_A_YARD)).toBeCloseTo(10, 9);
    expect(hoursByLength(1200 * METRES_A_YARD, 60 * METRES_A_YARD)).toBeCloseTo(20, 9);
    expect((20 * 60 * 12) / 100 / METRES_A_YARD).toBeCloseTo(157, 0);
  });
});

describe("sanity", () => {
  it("has the handbook's printed cardigans within it", () => {
    // Handbook, 4.5: balls of 207 yd, XS-3X [S78]; a textured cardigan in five sizes, yards [S79].
    const worsted = [5, 6, 6, 7, 7, 8, 8].map((balls) => balls * 207);
    expect([worsted[0], worsted.at(-1)]).toEqual([1035, 1656]);
    const textured = [1210, 1660, 2170, 2495, 2955];
    const range = pulloverMetres(4);
    for (const yards of worsted) {
      expect(yards * METRES_A_YARD).toBeGreaterThan(range?.from ?? Number.NaN);
      expect(yards * METRES_A_YARD).toBeLessThan(range?.to ?? Number.NaN);
    }
    expect(firstFall(worsted)).toBeNull();
    expect(firstFall(textured)).toBeNull();
    const growth = (textured.at(-1) ?? 0) / (textured[0] ?? 1);
    expect(growth).toBeCloseTo(2.44, 2);
    expect(growth).toBeLessThan(GROWTH.to);
    expect(firstFall([3, 4, 3.9])).toBe(2);
    expect(pulloverMetres(7)).toBeNull();
  });
});
