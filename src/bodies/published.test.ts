import { describe, expect, it } from "vitest";
import { readTable } from "../../scripts/bodies/tables.mjs";
import { answerOf, type Chart, type ChartValue, holesOf, middlesOf, notedValues, sizesFor } from "./chart.ts";
import type { Measurement } from "./measurement.ts";
import { publishedChart } from "./published.ts";
import type { Population } from "./rows.ts";

const ALL: readonly Population[] = ["women", "men", "youth", "child", "baby"];

const value = (chart: Chart, measurement: Measurement, size: string): ChartValue => {
  const found = chart.values.get(measurement)?.[chart.sizes.indexOf(size)];
  if (!found) throw new Error(`no ${measurement} in ${size}`);
  return found;
};

describe("the published charts", () => {
  it("have the sizes the council prints", () => {
    expect(ALL.map((population) => publishedChart(population).sizes.join(" "))).toEqual([
      "XS S M L XL 2X 3X 4X 5X",
      "S M L XL 2X 3X 4X 5X",
      "12 14 16",
      "2 4 6 8 10",
      "3 months 6 months 12 months 18 months 24 months",
    ]);
  });

  it("hold every row of the table and nothing else", () => {
    const cells = ALL.flatMap((population) =>
      [...publishedChart(population).values.values()].flatMap((row) => row.filter((cell) => cell !== null)),
    );
    const rows = readTable("chart-sizes.csv");
    const sumOf = (numbers: number[]) => numbers.reduce((sum, number) => sum + number, 0);
    expect(cells.length).toBe(rows.length);
    expect(rows.length).toBe(258);
    expect(sumOf(cells.map(({ min, max }) => min + 2 * max))).toBeCloseTo(
      sumOf(rows.map((row) => Number(row.cm_min) + 2 * Number(row.cm_max))),
      6,
    );
    expect(sumOf(cells.map(({ inches }) => (inches ? inches.min + 2 * inches.max : 0)))).toBeCloseTo(
      sumOf(rows.map((row) => Number(row.in_min) + 2 * Number(row.in_max))),
      6,
    );
    expect(cells.filter(({ status }) => status === "memory").length).toBe(
      rows.filter(({ status }) => status === "memory").length,
    );
  });

  // The publisher rounds to half centimetres and to eighths or quarters of an inch, each for itself.
  it("print inches and centimetres that agree within 0.7 cm, but for the one slip that is noted", () => {
    const away = ALL.flatMap((population) => {
      const chart = publishedChart(population);
      return [...chart.values].flatMap(([measurement, row]) =>
        row.flatMap((cell, index) =>
          cell?.inches &&
          (Math.abs(cell.inches.min * 2.54 - cell.min) > 0.7 ||
            Math.abs(cell.inches.max * 2.54 - cell.max) > 0.7)
            ? [`${population} ${chart.sizes[index]} ${measurement}: ${cell.note}`]
            : [],
        ),
      );
    });
    expect(away).toEqual(["women XS neck to wrist: cm 68.5 is 27 in, not 26.5 in"]);
  });

  // data/bodies/SOURCES.md: a yarn publisher's sheet and a printed pattern give women's busts, a page their upper ends
  // (trade handbook, 2.2), a printed pattern the chests of 2 to 10.
  it("agree with independent prints of bust and chest", () => {
    const women = publishedChart("women").values.get("bust")!;
    expect(women.map((cell) => cell?.inches?.max)).toEqual([30, 34, 38, 42, 46, 50, 54, 58, 62]);
    expect([women[0]?.min, women[0]?.max, women[8]?.min]).toEqual([71, 76, 152]);
    const pattern = [53.5, 58.5, 63.5, 67.5, 71];
    publishedChart("child")
      .values.get("bust")!
      .forEach((cell, size) => {
        expect(Math.abs((cell?.min ?? 0) - (pattern[size] ?? 0))).toBeLessThanOrEqual(0.5);
      });
  });

  // The women's chart as recalled independently from the older booklet (trade handbook, 2.2).
  it("differ from the second copy of the women's chart where that is known, and nowhere else", () => {
    const chart = publishedChart("women");
    const names: Record<string, Measurement> = {
      bust_circ: "bust",
      centre_back_neck_to_wrist: "neck to wrist",
      back_waist_length: "back length",
      cross_back_shoulder_to_shoulder: "cross back",
      arm_length_underarm_to_wrist: "arm length",
      upper_arm_circ: "upper arm",
      armhole_depth: "armhole depth",
      waist_circ: "waist",
      hip_circ: "hip",
    };
    const differing: string[] = [];
    let compared = 0;
    for (const row of readTable("checks/second-copy-women.csv")) {
      const measurement = names[row.measurement ?? ""]!;
      for (const size of chart.sizes) {
        const [min, max = min] = row[size]!.split("-").map(Number);
        const { inches } = value(chart, measurement, size);
        compared++;
        if (inches?.min !== min || inches?.max !== max) differing.push(`${measurement} ${size}`);
      }
    }
    expect(compared).toBe(81);
    expect(differing).toEqual([
      ...chart.sizes.map((size) => `neck to wrist ${size}`),
      "cross back M",
      "cross back L",
    ]);
  });

  it("know their slips", () => {
    const women = notedValues(publishedChart("women")).map(
      ({ measurement, size }) => `${measurement} ${size}`,
    );
    for (const slip of ["upper arm 5X", "cross back 2X", "back length 5X", "neck to wrist XS", "bust 5X"])
      expect(women).toContain(slip);
    const men = notedValues(publishedChart("men"));
    expect(
      men.find(({ measurement, size }) => measurement === "arm length" && size === "4X")?.note,
    ).toContain("49.5");
    expect(men.filter(({ measurement }) => measurement === "back hip length").length).toBe(8);
  });
});

describe("a chart", () => {
  const women = publishedChart("women");

  // Trade handbook, 2.2, and data/bodies/checks: ranges leave 5 cm between sizes.
  it("shows the holes between its sizes", () => {
    expect(holesOf(women).map(({ from, to }) => to - from)).toEqual([5, 5.5, 5, 5, 5, 5, 5, 5]);
    expect(holesOf(women)[0]).toEqual({ from: 76, to: 81, between: "XS and S" });
    expect(sizesFor(women, 94)).toEqual([2]);
    expect(sizesFor(women, 99)).toEqual([]);
  });

  it("answers with the middle of a range, and says what stands in for what it lacks", () => {
    expect(answerOf(women, "bust", 2)).toMatchObject({ cm: 94, value: { min: 91.5, max: 96.5 } });
    expect(answerOf(women, "shoulder width", 2)).toMatchObject({ cm: 40, standsIn: "cross back" });
    expect(answerOf(women, "head", 2)).toBeNull();
    expect(middlesOf(publishedChart("men"), "hip").slice(3)).toEqual([121.75, 129.5, null, null, null]);
  });
});
