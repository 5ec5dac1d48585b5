import { readdirSync, statSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { COLUMNS } from "../../scripts/bodies/make-surveys.mjs";
import { readTable } from "../../scripts/bodies/tables.mjs";
import { peopleIn, type SurveyColumn, type Surveyed, surveyColumn } from "./survey.ts";

const POPULATIONS: readonly [Surveyed, number][] = [
  ["women", 1986],
  ["men", 4082],
];

describe.each(POPULATIONS)("the survey of %s", (population, people) => {
  // The memorandum that released the files gives these numbers of people (data/bodies/SOURCES.md).
  it("has everybody in it", () => expect(peopleIn(population)).toBe(people));

  it("unpacks to the very numbers of the table", () => {
    const rows = readTable(`army-${population}.csv`);
    expect(rows.length).toBe(people);
    for (const [column, name, factor] of COLUMNS) {
      const wanted = rows.map((row) => Math.round(Number(row[column]) * factor));
      expect([...surveyColumn(population, name as SurveyColumn)], name).toEqual(wanted);
    }
  });

  // data/bodies/checks/army-summary.csv was computed apart from this code.
  it("has the published summary's means, spreads and ties to the bust", () => {
    const sex = population === "women" ? "F" : "M";
    const bust = surveyColumn(population, "bust");
    let compared = 0;
    for (const check of readTable("checks/army-summary.csv")) {
      const entry = COLUMNS.find(([column]) => column === check.measurement);
      if (check.sex !== sex || entry === undefined) continue;
      const values = Array.from(
        surveyColumn(population, entry[1] as SurveyColumn),
        (value) => value / entry[2],
      );
      const { mean, sd, slope, intercept, corr, residualSd } = lineOf([...bust], values);
      const label = `${check.measurement}`;
      expect(mean, label).toBeCloseTo(Number(check.mean), 0.9);
      expect(sd, label).toBeCloseTo(Number(check.sd), 0.9);
      expect(corr, label).toBeCloseTo(Number(check.corr_with_chest_or_bust), 2.9);
      expect(slope, label).toBeCloseTo(Number(check.slope_per_mm_of_chest_or_bust), 3.9);
      expect(intercept, label).toBeCloseTo(Number(check.intercept), 0.9);
      expect(residualSd, label).toBeCloseTo(Number(check.residual_sd), 0.9);
      compared++;
    }
    expect(compared).toBe(COLUMNS.length);
  });
});

it("takes less than 300 kB compiled in, every table included", () => {
  const folder = new URL("./data/", import.meta.url);
  const sizes = readdirSync(folder).map((name) => statSync(new URL(name, folder)).size);
  const sum = sizes.reduce((all, size) => all + size, 0);
  expect(sum).toBeGreaterThan(100_000);
  expect(sum).toBeLessThan(300_000);
});

/** Mean, sample sd and the least-squares line of y on x, written out from the definitions. */
function lineOf(x: readonly number[], y: readonly number[]) {
  const n = x.length;
  const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [mx, my] = [meanOf(x), meanOf(y)];
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let i = 0; i < n; i++) {
    const [dx, dy] = [x[i]! - mx, y[i]! - my];
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  }
  const slope = sxy / sxx;
  return {
    mean: my,
    sd: Math.sqrt(syy / (n - 1)),
    slope,
    intercept: my - slope * mx,
    corr: sxy / Math.sqrt(sxx * syy),
    residualSd: Math.sqrt(Math.max(0, syy - slope * sxy) / (n - 2)),
  };
}
