import { describe, expect, it } from "vitest";
import { heightOf, stitchLength, thicknessByWidth, wrapsPerInch, yarnThickness } from "./stitch-length.ts";

/**
 * One maker's rows: yarn in a row of 5 in and in a square of 5 in, inches. Source: trade handbook, 4.2, and computation
 * notes, section 8 (windchilde.com/bluedepth/tag/crochet). Rows in 5 in follow from the two.
 */
const MEASURED = [
  ["sc", 53, 785.5],
  ["hdc", 78.5, 802],
  ["dc", 102, 790],
] as const;

const at = (kind: string, rowCm: number) =>
  stitchLength(kind, { width: 0.6, scHeight: rowCm / heightOf(kind), yarn: 0.2 }) ?? 0;

describe("yarn in a stitch by geometry", () => {
  it("comes to the check values of the notes, cm of yarn for a cm of row", () => {
    const rowCm = (row: number, square: number): number => 12.7 / (square / row);
    const [sc, hdc, dc] = MEASURED.map(([kind, row, square]) => at(kind, rowCm(row, square)) / 0.6);
    expect(stitchLength("ch", { width: 0.6, scHeight: 1, yarn: 0.2 })).toBeCloseTo(4.78 * 0.6, 2);
    expect(sc).toBeCloseTo(9.73, 2);
    expect(hdc).toBeCloseTo(15.16, 1);
    expect(dc).toBeCloseTo(19.9, 1);
  });

  it("lies within a tenth of what was measured", () => {
    for (const [kind, row, square] of MEASURED) {
      const measured = row / 5;
      const share = at(kind, 12.7 / (square / row)) / 0.6 / measured;
      expect(share, kind).toBeGreaterThan(0.9);
      expect(share, kind).toBeLessThan(1.1);
    }
  });

  it("has hdc to sc of a chunky yarn as it was weighed", () => {
    // Computation notes, section 8: 20 x 20 sts, sc on 6.25 x 5.75 in, hdc on 6.75 x 9.25 in weigh 19 and 28 g.
    const of = (kind: string, width: number, height: number) =>
      stitchLength(kind, {
        width: (width * 2.54) / 20,
        scHeight: (height * 2.54) / 20 / heightOf(kind),
        yarn: 0.3,
      }) ?? 0;
    const ratio = of("hdc", 6.75, 9.25) / of("sc", 6.25, 5.75);
    expect(ratio).toBeCloseTo(1.468, 2);
    expect(Math.abs(ratio / (28 / 19) - 1)).toBeLessThan(0.01);
  });

  it("puts stitches in the order in which they eat yarn", () => {
    const size = { width: 0.6, scHeight: 0.86, yarn: 0.2 };
    const lengths = ["ch", "sc", "hdc", "dc", "tr", "dtr"].map((kind) => stitchLength(kind, size) ?? 0);
    expect([...lengths].sort((a, b) => a - b)).toEqual(lengths);
    // Round a post a stitch takes 10 to 40 % more. Trade handbook, 4.2, common practice, no source.
    const post = (stitchLength("fpdc", size) ?? 0) / (stitchLength("dc", size) ?? 1);
    expect(post).toBeGreaterThan(1.1 - 0.005);
    expect(post).toBeLessThan(1.4);
  });

  it("takes decreases, clusters, fans and picots apart", () => {
    const size = { width: 0.5, scHeight: 0.6, yarn: 0.15 };
    const of = (kind: string): number => stitchLength(kind, size) ?? Number.NaN;
    expect(of("shell")).toBeCloseTo(5 * of("dc"), 9);
    expect(of("v-stitch")).toBeCloseTo(2 * of("dc") + of("ch"), 9);
    expect(of("dc2tog")).toBeCloseTo(2 * of("dc") - of("ch"), 9);
    expect(of("3dc-cluster")).toBeCloseTo(of("dc3tog"), 9);
    expect(of("popcorn")).toBeCloseTo(5 * of("dc"), 9);
    expect(of("fsc")).toBeCloseTo(of("sc") + of("ch"), 9);
    expect(of("picot")).toBeCloseTo(4 * of("ch"), 9);
    expect(stitchLength("?", size)).toBeNull();
    expect(stitchLength("my own stitch", size)).toBeNull();
  });
});

it("has chainless foundations near what was measured", () => {
  // Trade handbook, 4.2: 16 to 17 in of yarn for an inch of chainless foundation, about 5 for an inch of chain.
  const size = { width: 0.6, scHeight: 0.857, yarn: 0.2 };
  const perLength = (kind: string): number => (stitchLength(kind, size) ?? 0) / size.width;
  expect(Math.abs(perLength("ch") / 5 - 1)).toBeLessThan(0.1);
  expect(Math.abs(perLength("fsc") / 16.5 - 1)).toBeLessThan(0.15);
});

describe("how thick a yarn is", () => {
  it("goes by Ashenhurst's root", () => {
    // Computation notes, section 8: 1,700 yards in a pound, firm; 500 tex, 200 m in 100 g.
    expect(wrapsPerInch((1700 * 0.9144) / 453.59237, "firm")).toBeCloseTo(37.1, 1);
    expect(wrapsPerInch(2, "firm")).toBeCloseTo(28.35, 1);
    expect(wrapsPerInch(2, "loose")).toBeCloseTo(15.75, 1);
    expect(yarnThickness(0.5)).toBeCloseTo(2 * yarnThickness(2), 9);
  });

  it("is a third of the stitch where nothing else is known", () => {
    expect(thicknessByWidth(0.6)).toBeCloseTo(0.2, 9);
    expect(() => yarnThickness(0)).toThrow(RangeError);
  });
});
