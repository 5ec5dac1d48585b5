import { describe, expect, it } from "vitest";
import { readTable } from "../../scripts/bodies/tables.mjs";
import { type ChartAsk, chartFit } from "./chart-fit.ts";
import { correctedChart } from "./corrected.ts";
import { publishedChart } from "./published.ts";
import { surveyColumn } from "./survey.ts";

const women = publishedChart("women");
const flexed = Float64Array.from(surveyColumn("women", "upperArmFlexed"), (mm) => mm / 10);
const HIP: ChartAsk = { measurement: "hip", grace: 2.5 };
const ARM: ChartAsk = { measurement: "upper arm", grace: 1.25, bodies: flexed };

describe("measured women held against the published chart", () => {
  // data/bodies/checks/chart-vs-bodies.csv: women in each size by bust, strictly and with the holes shared.
  it("fall into the sizes that were counted apart from this code", () => {
    const { bySize } = chartFit(women, "women", []);
    const counted = (grouping: string, size: string) =>
      Number(
        readTable("checks/chart-vs-bodies.csv").find((row) => row.grouping === grouping && row.size === size)
          ?.n_women,
      );
    for (const { size, inside, nearest } of bySize) {
      expect(inside).toBe(counted("strict", size));
      expect(nearest).toBe(counted("nearest", size));
    }
    expect(bySize.length).toBe(9);
  });

  // Comparison of chart and bodies: 1,011 of 1,986 women are in no size at all.
  it("are in a hole every other time", () => {
    const { people, inHoles } = chartFit(women, "women", []);
    expect([people, inHoles.people]).toEqual([1986, 1011]);
    expect(inHoles.share).toBeCloseTo(0.509, 3);
  });

  // The same: 2.5 cm of grace (1.25 on the arm, flexed) leave 20 % in hip and arm at once, 4 % with the waist too.
  it("fit it in hip and arm at once one time in five", () => {
    expect(chartFit(women, "women", [HIP, ARM]).together).toBeCloseTo(0.2, 2);
    expect(chartFit(women, "women", [HIP, ARM, { measurement: "waist", grace: 2.5 }]).together).toBeCloseTo(
      0.04,
      2,
    );
  });

  it("fit the corrected chart better, with nobody in a hole", () => {
    const relaxed: ChartAsk = { measurement: "upper arm", grace: 1.25 };
    const before = chartFit(women, "women", [HIP, relaxed]);
    const after = chartFit(correctedChart("women"), "women", [HIP, relaxed]);
    expect(after.inHoles.people).toBe(0);
    expect(after.together).toBeGreaterThan(2 * before.together);
  });

  it("cannot be held against a measurement the chart lacks", () =>
    expect(() => chartFit(women, "women", [{ measurement: "head", grace: 1 }])).toThrow(RangeError));
});

it("leaves half the measured men without a published size too", () => {
  const { people, inHoles } = chartFit(publishedChart("men"), "men", []);
  expect(people).toBe(4082);
  expect(inHoles.share).toBeGreaterThan(0.45);
  expect(inHoles.share).toBeLessThan(0.55);
});
