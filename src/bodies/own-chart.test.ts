import { describe, expect, it } from "vitest";
import { middlesOf } from "./chart.ts";
import type { Measurement } from "./measurement.ts";
import { readChart } from "./own-chart.ts";

const told = (csv: string) =>
  readChart(csv).problems.map(({ line, column, severity, what }) => `${line}:${column} ${severity} ${what}`);
const row = (csv: string, measurement: Measurement) => middlesOf(readChart(csv).chart!, measurement);

describe("a chart of the designer's own", () => {
  it("has a row for each measurement and a column for each size", () => {
    const csv = "cm,S,M,L\nBust,81-86,91.5-96.5,101.5-106.5\nupper arm,27,30,33\n";
    const { chart, problems } = readChart(csv, "Mine");
    expect(problems).toEqual([]);
    expect(chart).toMatchObject({ name: "Mine", kind: "own", sizes: ["S", "M", "L"], restsOn: null });
    expect(chart!.values.get("bust")![0]).toEqual({ min: 81, max: 86, status: "own" });
    expect(row(csv, "upper arm")).toEqual([27, 30, 33]);
  });

  it("may lie on its side", () => {
    const csv = "size,bust,hip\nA,84,92\nB,94,102\n";
    expect(told(csv)).toEqual([]);
    expect(readChart(csv).chart!.sizes).toEqual(["A", "B"]);
    expect(row(csv, "hip")).toEqual([92, 102]);
  });

  // The published women's chart has bust 28-30 in for 71-76 cm and an upper arm of 9 3/4 in for 25 cm.
  it("may be in inches, with fractions", () => {
    const csv = "in,XS\nbust,28-30\nupper arm,9 3/4\n";
    const chart = readChart(csv).chart!;
    expect(told(csv)).toEqual([]);
    expect(chart.values.get("bust")![0]).toEqual({
      min: 71.12,
      max: 76.2,
      inches: { min: 28, max: 30 },
      status: "own",
    });
    expect(row(csv, "upper arm")[0]).toBeCloseTo(24.77, 9);
  });

  it("may say the unit in one row or one cell", () =>
    expect(row("x,S\nbust (in),34\nhip,92 cm\n", "bust")[0]).toBeCloseTo(86.36, 9));

  it("may have semicolons and decimal commas, quotes, remarks and Windows line ends", () => {
    const csv = '# my own\r\n\r\ncm;"S ""petite""";M\r\nbust;84,5;94\r\n';
    expect(told(csv)).toEqual([]);
    expect(readChart(csv).chart!.sizes).toEqual(['S "petite"', "M"]);
    expect(row(csv, "bust")).toEqual([84.5, 94]);
  });
});

describe("what is wrong with a chart", () => {
  it("is told with line and column", () => {
    expect(
      told(
        [
          "cm,S,M,L,M",
          "bust,84,94,x4,1",
          "uper arm,27,30,33,1",
          "hip,96-92,102,110,1",
          "bust,84,94,104,1",
          "waist,7,85,95,1",
        ].join("\n"),
      ),
    ).toEqual([
      "1:10 error There are two sizes called M.",
      '2:12 error "x4" is not a length.',
      '3:1 error "uper arm" is not a measurement Loopwright knows.',
      "4:5 error The range 96-92 runs backwards.",
      "5:1 error There is a second row for bust.",
      "6:7 warning 7 cm is not the waist of anybody.",
    ]);
  });

  it("offers the nearest name", () =>
    expect(readChart("cm,S\nbust,84\nuper arm,27\n").problems[0]!.todo).toBe(
      'Write "upper arm" if that is meant.',
    ));

  it("keeps the rest", () => {
    const { chart } = readChart("cm,S,M\nbust,84,94\nhip,?,oops\nwaist,70,80\n");
    expect([...chart!.values.keys()]).toEqual(["bust", "waist"]);
  });

  it("is a number without a size, a size without a name or without a number", () => {
    expect(told("cm,S,M\nbust,84,94,104\nhip,92\n")).toEqual([
      "2:12 error bust has more numbers than there are sizes.",
      "3:1 warning hip has no number in M.",
    ]);
    expect(told("cm,S,,L\nbust,84,94,104\n")).toEqual(["1:6 error This size has no name."]);
    expect(told("size,bust\nS,84,92\n")).toEqual([
      "2:6 error S has more numbers than there are measurements.",
    ]);
  });

  it("is a bust that falls, is missing, or is in unsaid inches", () => {
    expect(told("cm,S,M\nbust,94,84\n")).toEqual(["2:9 warning The bust gets smaller in size M."]);
    expect(told("cm,S,M\nhip,94,104\n")).toEqual(["1:1 warning The chart has no bust or chest."]);
    expect(told(",S,M\nbust,34,38\n")).toEqual(["2:1 warning The bust goes up to 38 cm only."]);
    expect(told("cm,S,M\nbust,34,38\n")).toEqual([]);
    expect(told("months,3,6\nchest,40.5,43\n")).toEqual([]);
  });

  it("is an open quotation mark", () =>
    expect(told('cm,S,M\nbust,"84,94\n')).toContain("2:6 error This quotation mark is never closed."));

  it.each(["", "\n\n", "hello", "a,b\nc,d", ",,,\n,,,", '"', "bust", "bust,S", "S,M\n84,94"])(
    "is that there is no chart in %j",
    (csv) => {
      const { chart, problems } = readChart(csv);
      expect(chart).toBeNull();
      expect(problems.some(({ severity }) => severity === "error")).toBe(true);
      for (const { line, column } of problems) expect(line * column).toBeGreaterThan(0);
    },
  );
});
