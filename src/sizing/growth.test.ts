import { describe, expect, it } from "vitest";
import { growthOf, growthPerSize, lengthBeforeHanging } from "./growth.ts";

const hung = (load: number, height: number) =>
  ({ state: { kind: "hung", load }, stitches: 24, rows: 20, width: 16, height }) as const;
const curve = growthOf({
  readings: [
    { state: { kind: "worked" }, stitches: 24, rows: 20, width: 16, height: 19 },
    { state: { kind: "washed", times: 1 }, stitches: 24, rows: 20, width: 16, height: 20 },
    hung(160, 22),
    hung(80, 20.6),
  ],
});

describe("growth under load", () => {
  // Trade handbook, 1.7: 600 g below, 110 cm round, swatch 16 cm wide: clip 87 g.
  it("is tried with what the garment weighs for each cm round", () =>
    expect(growthPerSize(curve, 16, [{ gramsBelow: 600, round: 110 }])[0]!.clip).toBeCloseTo(87, 0));

  it("is measured from the washed piece, lightest load first", () => {
    expect(curve.map(({ gramsPerCm }) => gramsPerCm)).toEqual([5, 10]);
    expect(curve.map(({ growth }) => growth)).toEqual([expect.closeTo(0.03, 10), expect.closeTo(0.1, 10)]);
  });

  it("is more in larger sizes, and said when it was never tried", () => {
    const sizes = [
      { gramsBelow: 0, round: 90 },
      { gramsBelow: 225, round: 90 },
      { gramsBelow: 825, round: 110 },
      { gramsBelow: 1800, round: 150 },
    ];
    const grown = growthPerSize(curve, 16, sizes);
    expect(grown.map(({ growth }) => Math.round(1e6 * growth) / 1e6)).toEqual([0, 0.015, 0.065, 0.128]);
    expect(grown.map(({ beyond }) => beyond)).toEqual([false, false, false, true]);
  });

  it("is left out of the length worked", () => expect(lengthBeforeHanging(55, 0.1)).toBeCloseTo(50, 10));
  it("of a piece never hung is unknown", () => {
    expect(growthOf({ readings: [] })).toEqual([]);
    expect(() => growthPerSize([], 16, [])).toThrow(RangeError);
  });
});
