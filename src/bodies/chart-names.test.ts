import { expect, it } from "vitest";
import { CHART_NAMES, chartNamed } from "./chart-names.ts";

it("finds every chart by the name it bears", () => {
  for (const name of CHART_NAMES) expect(chartNamed(name)?.name.toLowerCase()).toBe(name);
});

it("takes the published chart where only the people are named", () => {
  expect(chartNamed("Women")?.kind).toBe("published");
  expect(chartNamed("men  corrected")?.kind).toBe("corrected");
});

it.each(["", "children, corrected", "women, mine", "women, corrected, petite", "toString"])(
  "knows no chart called %j",
  (name) => expect(chartNamed(name)).toBeUndefined(),
);
