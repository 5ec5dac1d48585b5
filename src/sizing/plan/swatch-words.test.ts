import { describe, expect, it } from "vitest";
import type { Swatch, SwatchReading } from "../swatch.ts";
import { gaugeOfFabric } from "./fabric-gauge.ts";
import { completeReading, readSwatchMeasures, readSwatchState } from "./swatch-words.ts";

describe("what was measured of a swatch", () => {
  it.each([
    ["42 sts x 36 rows in 30.0 x 32.4 cm", [42, 36, 30, 32.4]],
    ["42 stitches and 36 rows over 30 cm by 32.4 cm", [42, 36, 30, 32.4]],
    ["14 sts and 14 rows to 10 cm", [14, 14, 10, 10]],
    // Trade handbook, section 1.2: 18 sts and 24 rows per 4 in are 4.5 sts and 6 rows an inch.
    ["18 sts x 24 rows in 4 in", [18, 24, 10.16, 10.16]],
    ["20 sts in 88 mm", [20, null, 8.8, null]],
    ["24 rows in 20 cm", [null, 24, null, 20]],
  ])("%s", (words, [stitches, rows, width, height]) => {
    const { measures } = readSwatchMeasures(words);
    expect(measures?.stitches).toBe(stitches);
    expect(measures?.rows).toBe(rows);
    for (const [found, wanted] of [
      [measures?.width, width],
      [measures?.height, height],
    ])
      if (wanted === null) expect(found).toBeNull();
      else expect(found).toBeCloseTo(wanted as number, 9);
  });
  it.each([
    ["42 x 36 in 30 x 32 cm", 'Say what was counted: "sts" or "rows" stands behind the number.'],
    ["42 sts x 36 rows in 30 x 32.4", "The unit is missing: cm, in or mm."],
    ["42 sts x 36 rows", 'What they measure follows, as in "in 30 x 32.4 cm".'],
    ["0 sts x 36 rows in 30 x 32 cm", "A swatch has at least one stitch and one row."],
    ["42 sts in 30 cm washed", "These words are not understood here."],
  ])("%s", (words, say) => expect(readSwatchMeasures(words).slip?.say).toBe(say));
});

it.each([
  ["worked", { kind: "worked" }],
  ["as worked", { kind: "worked" }],
  ["washed", { kind: "washed", times: 1 }],
  ["washed twice", { kind: "washed", times: 2 }],
  ["washed 3 times", { kind: "washed", times: 3 }],
  ["hung 80 g", { kind: "hung", load: 80 }],
  ["hung with 87.5 grams", { kind: "hung", load: 87.5 }],
  ["stretched", { kind: "stretched" }],
  ["knotted", null],
])("state %s", (words, state) => expect(readSwatchState(words)).toEqual(state));

describe("the gauge of a fabric", () => {
  const washed: SwatchReading = {
    state: { kind: "washed", times: 1 },
    stitches: 32,
    rows: 28,
    width: 20,
    height: 20,
  };
  it("takes rows from before where a rib was pulled out", () => {
    const pulled = completeReading(
      { kind: "stretched" },
      { stitches: 32, rows: null, width: 26, height: null },
      washed,
    );
    expect(pulled).toMatchObject({ rows: 28, height: 20, width: 26 });
    const gauge = gaugeOfFabric([{ readings: [washed, pulled as SwatchReading] }]);
    expect(gauge?.stretch.stitches).toBeCloseTo(1.3, 9);
    expect(gauge?.stretch.rows).toBeNull();
    expect(gauge?.stitchWidth.value).toBeCloseTo(0.625, 9);
    expect(gauge?.washed).toBe(true);
  });
  it("has none without a whole reading", () =>
    expect(
      completeReading({ kind: "worked" }, { stitches: 4, rows: null, width: 2, height: null }, undefined),
    ).toBeNull());
  it("pools several swatches by inverse variance and prefers those that were washed", () => {
    const swatch = (width: number, kind: "washed" | "worked"): Swatch => ({
      readings: [
        {
          state: kind === "washed" ? { kind, times: 1 } : { kind },
          stitches: 32,
          rows: 28,
          width,
          height: 20,
        },
      ],
    });
    const both = gaugeOfFabric([swatch(20, "washed"), swatch(20.2, "washed"), swatch(30, "worked")]);
    expect(both?.stitchWidth.value).toBeGreaterThan(20 / 32);
    expect(both?.stitchWidth.value).toBeLessThan(20.2 / 32);
    const one = gaugeOfFabric([swatch(20, "washed")]);
    expect(both?.stitchWidth.u).toBeLessThan(one?.stitchWidth.u as number);
  });
});
