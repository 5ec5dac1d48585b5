import { describe, expect, it } from "vitest";
import { ballsFor, gramsOf, metresByArea, metresIn, purchaseOf, rowsLeft } from "./buying.ts";

/* Examples of the trade handbook, 4.1, 4.3 and 4.4, with the pages it read them in. */
describe("what is bought", () => {
  it("is whole balls, always up", () => {
    expect(ballsFor(600, 150)).toBe(4); // [S75]
    expect(ballsFor(600, 90)).toBe(7); // 6.67 [S75]
    expect(ballsFor(4 * 115, 220)).toBe(3); // 2.09 [S82], which itself rounds down
    expect(ballsFor(0, 90)).toBe(0);
  });

  it("has the safety on top, and tells what is left over", () => {
    const ball = { metres: 95, grams: 50, price: { amount: 6.4, currency: "EUR" } };
    const buy = purchaseOf(900, ball, 0.1);
    expect(buy.metres).toBeCloseTo(990, 9);
    expect(buy.balls).toBe(11);
    expect(buy.cost).toBeCloseTo(70.4, 9);
    expect(buy.leftMetres).toBeCloseTo(145, 9);
    expect(buy.leftGrams).toBeCloseTo((145 * 50) / 95, 9);
    expect(purchaseOf(null, ball).balls).toBeNull();
    expect(purchaseOf(900, { metres: null, grams: null, price: null }).balls).toBeNull();
  });

  it("weighs leftovers into metres", () => {
    // 12 g are 10 m; a ball of 60 g is 50 m [S76].
    expect(metresIn(60, { metres: 10, grams: 12, price: null })).toBeCloseTo(50, 9);
    expect(gramsOf(50, { metres: 10, grams: 12, price: null })).toBeCloseTo(60, 9);
  });

  it("counts the rows that a part of a ball still makes", () => {
    // 50 g went into 9 rounds, 45 g are left [S80].
    expect(50 / 9).toBeCloseTo(5.56, 2);
    expect(rowsLeft(45, 50 / 9)).toBe(8);
  });

  it("goes from the sample's weight to another size by area", () => {
    // Handbook, 4.1: front and back 20 x 28 in, two of them 1120 sq in; a sleeve of (8 + 15) / 2 x 18 = 207 sq in.
    const body = 2 * 20 * 28;
    const sleeve = ((8 + 15) / 2) * 18;
    expect([body, sleeve]).toEqual([1120, 207]);
    expect(metresByArea(1000, 0, body, body + 2 * sleeve)).toBeCloseTo((1000 * 1534) / 1120, 9);
    expect(metresByArea(1000, 100, 10, 20)).toBeCloseTo(1900, 9);
    // Computation notes, section 8: a square of 34 in in hdc, from one of 5 in that took 802 in of yarn.
    expect(metresByArea(802, 0, 5 * 5, 34 * 34)).toBeCloseTo(37_084, -1);
  });
});
