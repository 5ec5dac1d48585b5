import { describe, expect, it } from "vitest";
import { bearableGaugeError, rowsAtGauge, stretchNeeded, widthAtGauge } from "./gauge.ts";

// Trade handbook, 1.3.
describe("another maker's gauge", () => {
  it.each([
    [40, 4, 5, 32],
    [40, 4, 3, 53 + 1 / 3],
  ])("%f in at %f to the inch are, at %f, %f in", (wanted, pattern, maker, finished) =>
    expect(widthAtGauge(wanted, pattern, maker).finished).toBeCloseTo(finished, 10),
  );
  it("narrows 100 cm by 3.4 at half a stitch more", () =>
    expect(widthAtGauge(100, 14, 14.5).off).toBeCloseTo(-3.4, 1));
  it("may be off by 2.3 in a hundred with 10 cm steps at 110 cm", () => {
    expect(100 * bearableGaugeError(10, 110)).toBeCloseTo(2.3, 1);
    expect(14 * bearableGaugeError(10, 110)).toBeCloseTo(0.3, 1);
  });
});

describe("rows at another row gauge", () => {
  it("keep the length and the side that faces", () => {
    expect(rowsAtGauge(60, 9, 10)).toBe(66); // 66.67, nearest even
    expect(rowsAtGauge(61, 9, 10)).toBe(67); // 67.78, nearest odd
    expect(rowsAtGauge(1, 9, 2)).toBe(1);
    expect(rowsAtGauge(40, 10, 10)).toBe(40);
  });
});

// Trade handbook, 2.1: stretched/rest ≥ body/finished.
describe("negative ease", () => {
  it("needs as much stretch as the body is larger", () => {
    expect(stretchNeeded(58, 53, 20, 24)).toEqual({ needs: 58 / 53, has: 1.2, reaches: true });
    expect(stretchNeeded(58, 44, 20, 24).reaches).toBe(false);
  });
});
