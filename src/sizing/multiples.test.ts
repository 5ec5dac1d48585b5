import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chainsFor,
  fits,
  fittingAround,
  mergeMultiples,
  nearestFitting,
  ODD,
  roundingFloor,
} from "./multiples.ts";

describe("a multiple of m plus r", () => {
  // Trade handbook, 3.1: a multiple of 5 plus 1.
  it.each([11, 56, 101])("has %i in 5 plus 1", (n) =>
    expect(fits(n, { multiple: 5, remainder: 1 })).toBe(true),
  );
  it("has not 55 in it", () => expect(fits(55, { multiple: 5, remainder: 1 })).toBe(false));
  it("takes a remainder above the multiple", () =>
    expect(fits(37, { multiple: 2, remainder: 5 })).toBe(true));

  // Trade handbook, 3.1: 12 × 9 + 2 = 110 chains; multiple of 2 plus 5 over 32 stitches is 37.
  it("makes chains", () => {
    expect(chainsFor(9, 12, 2, 0)).toBe(110);
    expect(chainsFor(16, 2, 1, 4)).toBe(37);
  });

  it("rounds to the nearest, halves up", () => {
    expect(nearestFitting(82.5, { multiple: 1, remainder: 0 })).toBe(83);
    expect(nearestFitting(20, ODD)).toBe(21);
    expect(nearestFitting(60.4, { multiple: 8, remainder: 2 })).toBe(58);
    expect(nearestFitting(0.7 / 0.1 - 0.5, { multiple: 1, remainder: 0 })).toBe(7);
  });

  // Trade handbook, 1.6: body 110 round and 55 long at 15 sts and 9 rows: 99 rows are 98 or 100, 82.5 sts are 82 or 84.
  it("stands around a wanted number", () => {
    expect(nearestFitting(99, { multiple: 2, remainder: 0 })).toBe(100);
    expect(fittingAround(99, { multiple: 2, remainder: 0 })).toEqual({ below: 98, above: 100 });
    expect(fittingAround(82.5, { multiple: 2, remainder: 0 })).toEqual({ below: 82, above: 84 });
    expect(fittingAround(84, { multiple: 2, remainder: 0 })).toEqual({ below: 84, above: 84 });
  });
});

describe("two multiples at once", () => {
  // Computation notes, section 5.
  it("1 mod 4 and 3 mod 6 are 9 mod 12", () =>
    expect(mergeMultiples({ multiple: 4, remainder: 1 }, { multiple: 6, remainder: 3 })).toEqual({
      multiple: 12,
      remainder: 9,
    }));
  it("1 mod 4 and 2 mod 6 have nothing in common", () =>
    expect(mergeMultiples({ multiple: 4, remainder: 1 }, { multiple: 6, remainder: 2 })).toBeNull());

  it("agree with trying every number", () => {
    const rule = fc.record({
      multiple: fc.integer({ min: 1, max: 14 }),
      remainder: fc.integer({ min: -20, max: 20 }),
    });
    fc.assert(
      fc.property(rule, rule, (a, b) => {
        const both = mergeMultiples(a, b);
        const numbers = Array.from({ length: 400 }, (_, i) => i - 200);
        expect(numbers.filter((n) => fits(n, a) && fits(n, b))).toEqual(
          numbers.filter((n) => both !== null && fits(n, both)),
        );
      }),
      { seed: 41, numRuns: 300 },
    );
  });
});

// Computation notes, section 5: an 8-stitch repeat at 16 st/10 cm ±2.5 cm, 1 stitch ±0.31 cm.
it("cannot round closer than half a repeat", () => {
  expect(roundingFloor(8, 10 / 16)).toBe(2.5);
  expect(roundingFloor(1, 10 / 16)).toBeCloseTo(0.31, 2);
});
