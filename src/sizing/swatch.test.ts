import { describe, expect, it } from "vitest";
import { changeBetween, gaugeOf, lengthWhileWorking, type Swatch } from "./swatch.ts";

const washed = (times: number, width: number) =>
  ({ state: { kind: "washed", times }, stitches: 20, rows: 10, width, height: 10 }) as const;
const shrinking: Swatch = {
  readings: [
    { state: { kind: "worked" }, stitches: 20, rows: 10, width: 8.8, height: 10 },
    washed(1, 7.65),
    washed(2, 6.9),
    { state: { kind: "hung", load: 90 }, stitches: 20, rows: 10, width: 6.5, height: 11 },
  ],
  grams: 8,
};

describe("gauge of a swatch", () => {
  // Trade handbook, 1.2: 18 sts and 24 rows in 4 in are 4.5 sts and 6 rows an inch.
  it("comes from whole stitches over the length they cover", () => {
    const gauge = gaugeOf({
      readings: [{ state: { kind: "worked" }, stitches: 18, rows: 24, width: 10.16, height: 10.16 }],
    });
    expect(2.54 / gauge!.stitchWidth).toBeCloseTo(4.5, 12);
    expect(2.54 / gauge!.rowHeight).toBeCloseTo(6, 12);
    expect(gauge!.stitchesPer10cm).toBeCloseTo(17.717, 3);
    expect(gauge!.aspect).toBeCloseTo(0.75, 12);
    expect(gauge!.gramsPerCm2).toBeNull();
  });

  it("is taken as the garment will be: after most washes, never hung", () => {
    expect(gaugeOf(shrinking)!.state).toEqual({ kind: "washed", times: 2 });
    expect(gaugeOf(shrinking)!.stitchWidth).toBeCloseTo(0.345, 12);
  });

  it("can be asked for in another state, and is missing where it was not measured", () => {
    expect(gaugeOf(shrinking, { kind: "worked" })!.stitchWidth).toBeCloseTo(0.44, 12);
    expect(gaugeOf(shrinking, { kind: "hung", load: 90 })!.rowHeight).toBeCloseTo(1.1, 12);
    expect(gaugeOf(shrinking, { kind: "hung", load: 91 })).toBeNull();
    expect(gaugeOf({ readings: [] })).toBeNull();
  });

  it("keeps the weight with the stitches when they shrink", () => {
    expect(gaugeOf(shrinking, { kind: "worked" })!.gramsPerCm2).toBeCloseTo(8 / 88, 12);
    expect(gaugeOf(shrinking)!.gramsPerCm2).toBeCloseTo(8 / 69, 12);
  });

  it("refuses a swatch of no width", () =>
    expect(() => gaugeOf({ readings: [washed(1, 0)] })).toThrow(RangeError));
});

describe("change by washing", () => {
  const [worked, once, twice] = shrinking.readings;
  // Trade handbook, 1.2: a maker's record, 20 sts 8.8, 7.65, 6.9 cm: 13.1 % and 21.6 % lost.
  it("is what a stitch lost", () => {
    expect(100 * (1 - changeBetween(worked!, once!).width)).toBeCloseTo(13.1, 1);
    expect(100 * (1 - changeBetween(worked!, twice!).width)).toBeCloseTo(21.6, 1);
  });
  // Trade handbook, 1.2: kh = 1.06, want 50 cm, stop at 47.2 cm.
  it("says where to stop", () =>
    expect(lengthWhileWorking(50, { width: 1, height: 1.06 })).toBeCloseTo(47.2, 1));
});
