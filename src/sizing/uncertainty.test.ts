import { describe, expect, it } from "vitest";
import {
  learnFromTesters,
  measureOf,
  measureWithin,
  pool,
  sizeOf,
  uOfGauge,
  uOfLimit,
  uOfReading,
  uOfRounding,
} from "./uncertainty.ts";

// Every value here: computation notes, section 7.
describe("the error of a gauge carried to a garment", () => {
  it.each([
    [16, 0.25, 118.15, 121.9],
    [16, 0.5, 116.36, 123.87],
    [16, 1, 112.94, 128.0],
    [20, 0.25, 118.52, 121.52],
  ])("%f st ± %f puts 120 cm between %f and %f", (gauge, limit, least, greatest) => {
    const within = measureWithin(120, gauge, limit);
    expect(within.least).toBeCloseTo(least, 2);
    expect(within.greatest).toBeCloseTo(greatest, 1);
  });

  it("of a quarter stitch alone is 1.083 cm on 120, 2.17 expanded", () => {
    expect(uOfLimit(0.25)).toBeCloseTo(0.1443, 4);
    const share = uOfGauge(16, 10, { count: 0.25, ruler: 0 });
    expect(100 * share).toBeCloseTo(0.902, 3);
    const made = measureOf(192, 10 / 16, share);
    expect(made.value).toBe(120);
    expect(made.u).toBeCloseTo(1.083, 3);
    expect(made.plusMinus).toBeCloseTo(2.17, 2);
    expect((120 * uOfLimit(0.25, "triangular")) / 16).toBeCloseTo(0.765, 3);
  });

  it.each([
    [5, 3.73, 4.48],
    [10, 1.87, 2.24],
    [15, 1.24, 1.49],
    [20, 0.93, 1.12],
  ])("with a ruler ±2 mm at both ends of %f cm is %f in a hundred, %f cm", (length, percent, u) => {
    const share = uOfGauge(1.6 * length, length);
    expect(100 * share).toBeCloseTo(percent, 2);
    expect(measureOf(192, 10 / 16, share).u).toBeCloseTo(u, 2);
  });

  it("treats rows as it treats stitches", () => {
    const u = uOfReading({ state: { kind: "worked" }, stitches: 16, rows: 32, width: 10, height: 20 });
    expect(u.stitches).toBeCloseTo(uOfGauge(16, 10), 12);
    expect(u.rows).toBeCloseTo(uOfGauge(32, 20), 12);
  });

  it("of a scale that shows whole grams is 0.29 g", () => expect(uOfRounding(1)).toBeCloseTo(0.29, 2));
});

describe("several swatches", () => {
  const pooled = pool([
    { value: 16, u: 0.2 },
    { value: 16.4, u: 0.3 },
    { value: 15.8, u: 0.25 },
  ]);
  it("are one, weighed by how sure each is", () => {
    expect(pooled.value).toBeCloseTo(16.0239, 4);
    expect(pooled.chiSquared).toBeCloseTo(2.388, 3);
    expect(pooled.birge).toBeCloseTo(1.093, 3);
  });
  it("are less sure together when they disagree", () => {
    expect(pooled.u / pooled.birge).toBeCloseTo(0.1385, 4);
    expect(pooled.cautious).toBeNull();
  });
  it("need 73 in a hundred more when there are four", () => {
    const four = pool([15.6, 16.4, 15.8, 16.6].map((value) => ({ value, u: 0.1 })));
    expect(four.cautious! / four.u).toBeCloseTo(1.73, 2);
  });
  it("of one are that one", () =>
    expect(pool([{ value: 16, u: 0.2 }])).toMatchObject({ value: 16, birge: 0 }));
  it("of none are a mistake", () => expect(() => pool([])).toThrow(RangeError));
});

it("learns from testers", () => {
  const learnt = learnFromTesters(
    { value: 16.0239, u: 0.15 },
    192,
    [118.6, 121, 117.9].map((value) => ({ value, u: 1 })),
  );
  expect(learnt.value).toBeCloseTo(16.0884, 4);
  expect(learnt.u).toBeCloseTo(0.0692, 4);
  const bust = measureOf(192, 10 / learnt.value, learnt.u / learnt.value);
  expect(bust.value).toBeCloseTo(119.34, 2);
  expect(bust.u).toBeCloseTo(0.51, 2);
});

it("measures a piece", () => {
  const gauge = { stitchWidth: 0.5, rowHeight: 0.4 } as Parameters<typeof sizeOf>[0];
  expect(sizeOf(gauge, 100, 50)).toEqual({ width: 50, height: 20 });
});
