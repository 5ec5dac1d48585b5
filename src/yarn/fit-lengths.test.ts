import { describe, expect, it } from "vitest";
import { fitLengths, weighingShare } from "./fit-lengths.ts";
import { nonNegativeLeastSquares } from "./least-squares.ts";

/** Computation notes, section 8: true lengths of ch, sc, hdc, dc and tr, six swatches of them, and the centimetres in each. */
const TRUE = [2.4, 5, 7.4, 9.6, 12.2];
const SWATCHES = [
  [21, 400, 0, 0, 0],
  [22, 0, 300, 0, 0],
  [23, 0, 0, 240, 0],
  [24, 0, 0, 0, 180],
  [61, 120, 80, 60, 20],
  [200, 0, 0, 0, 0],
];
const CM = [2050.4, 2272.8, 2359.2, 2253.6, 2158.4, 480];

describe("lengths from weighed swatches", () => {
  it("come out as they were put in", () => {
    const found = nonNegativeLeastSquares(SWATCHES, CM);
    found.forEach((length, at) => {
      expect(length).toBeCloseTo(TRUE[at] as number, 6);
    });
  });

  it("bear errors of the scale as the notes have it", () => {
    const errors = [0.01, -0.01, 0.008, -0.006, 0.012, -0.015];
    const found = nonNegativeLeastSquares(
      SWATCHES,
      CM.map((cm, at) => cm * (1 + (errors[at] as number))),
    );
    [2.383, 5.066, 7.342, 9.7, 12.139].forEach((length, at) => {
      expect(found[at]).toBeCloseTo(length, 3);
    });
  });

  it("never go below zero", () => {
    // Unbounded, the second would be -1.
    expect(
      nonNegativeLeastSquares(
        [
          [1, 1],
          [1, 0],
          [2, 1],
        ],
        [1, 2, 3],
      )[1],
    ).toBe(0);
    expect(
      nonNegativeLeastSquares(
        [
          [1, 0],
          [0, 1],
        ],
        [-1, 2],
      ),
    ).toEqual([0, 2]);
  });

  it("stay at the prior where no swatch speaks, and leave it where one does", () => {
    const prior = new Map([
      ["sc", 5],
      ["dc", 10],
    ]);
    const swatch = { stitches: new Map([["sc", 400]]), cm: 2400, share: weighingShare(40) };
    const fitted = fitLengths([swatch], prior);
    expect(fitted.get("dc")).toBeCloseTo(10, 9);
    expect(fitted.get("sc")).toBeGreaterThan(5.9);
    expect(fitted.get("sc")).toBeLessThan(6);
    expect(fitLengths([], prior).get("sc")).toBeCloseTo(5, 9);
  });

  it("share what one swatch of two kinds leaves open as the prior has it", () => {
    const prior = new Map([
      ["sc", 5],
      ["dc", 10],
    ]);
    const cm = 1.2 * (200 * 5 + 100 * 10);
    const fitted = fitLengths(
      [
        {
          stitches: new Map([
            ["sc", 200],
            ["dc", 100],
          ]),
          cm,
          share: 0.001,
        },
      ],
      prior,
    );
    expect(fitted.get("sc")).toBeCloseTo(6, 2);
    expect(fitted.get("dc")).toBeCloseTo(12, 2);
  });

  it("trust a small swatch less", () => {
    // Computation notes, sections 7 and 8: 1 g resolution is 0.29 g.
    expect(weighingShare(20)).toBeGreaterThan(weighingShare(60));
    expect(weighingShare(1e9)).toBeCloseTo(0.02, 6);
    expect(Math.hypot(0.29 / 10, 0.02)).toBeCloseTo(weighingShare(10), 3);
  });
});
