import { expect, it } from "vitest";
import { bodyMeasures } from "./body-measures.ts";
import { answerOf } from "./chart.ts";
import type { Measurement } from "./measurement.ts";
import { isBelievable, personChart } from "./person-chart.ts";
import { peopleIn } from "./survey.ts";

it("takes one person's measurements as a chart of one size", () => {
  const chart = personChart("Ada", { bust: 96, "upper arm": 31 });
  expect(chart).toMatchObject({ kind: "person", sizes: ["Ada"], population: null });
  expect(answerOf(chart, "upper arm", 0)).toEqual({ cm: 31, value: { min: 31, max: 31, status: "own" } });
  expect(answerOf(chart, "hip", 0)).toBeNull();
  expect(() => personChart("Ada", { bust: -1 })).toThrow(RangeError);
});

it("doubts what does not go with the bust", () => {
  const chart = personChart("Ada", { bust: 94, "upper arm": 45, hip: 102 }, "women");
  // The line through the measured women: 3.64 + 0.2775 × 94.
  expect(answerOf(chart, "upper arm", 0)?.value.note).toContain("have 29.7 cm in the middle");
  expect(answerOf(chart, "hip", 0)?.value.note).toBeUndefined();
});

it("believes all measured people, and doubts few of them", () => {
  const names: readonly Measurement[] = [
    "bust",
    "hip",
    "upper arm",
    "shoulder width",
    "back length",
    "wrist",
  ];
  let doubted = 0;
  for (let person = 0; person < peopleIn("women"); person++) {
    const measures = Object.fromEntries(names.map((name) => [name, bodyMeasures("women", name)[person]!]));
    for (const name of names) expect(isBelievable(name, measures[name]!)).toBe(true);
    const chart = personChart("somebody", measures, "women");
    if ([...chart.values.values()].some(([value]) => value?.note !== undefined)) doubted++;
  }
  expect(doubted).toBeGreaterThan(0);
  expect(doubted / peopleIn("women")).toBeLessThan(0.05);
});
