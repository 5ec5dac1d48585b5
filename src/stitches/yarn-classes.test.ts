import { expect, it } from "vitest";
import { classesForHook, lookupYarnClasses, yarnClass } from "./yarn-classes.ts";

// Stitches over 4 in and hooks: trade handbook, section 1.8.
it.each([
  [1, 21, 32, 2.25, 3.5],
  [2, 16, 20, 3.5, 4.5],
  [3, 12, 17, 4.5, 5.5],
  [4, 11, 14, 5.5, 6.5],
  [5, 8, 11, 6.5, 9],
])("class %i has %i to %i stitches on %d to %d mm", (number, from, to, thin, thick) => {
  expect(yarnClass(number)).toMatchObject({
    gauge: { from, to },
    hookMm: { from: thin, to: thick },
    gaugeStitch: "sc",
  });
});

it("counts lace in double crochet", () => {
  expect(yarnClass(0)).toMatchObject({ gauge: { from: 32, to: 42 }, gaugeStitch: "dc" });
});

it.each([
  ["4", [4]],
  ["#4", [4]],
  ["class 3", [3]],
  ["DK", [3]],
  ["worsted weight", [4]],
  ["Chunky yarn", [5]],
  ["8 ply", [3]],
  ["4-ply", [1]],
  ["fingering", [0, 1]],
  ["9", []],
  ["string", []],
])("takes %s for class %j", (words, numbers) => {
  expect(lookupYarnClasses(words).map((one) => one.number)).toEqual(numbers);
});

it("finds the classes a hook serves", () => {
  expect(classesForHook(5).map((one) => one.number)).toEqual([3]);
  expect(classesForHook(5.5).map((one) => one.number)).toEqual([3, 4]);
  expect(classesForHook(20).map((one) => one.number)).toEqual([7]);
  expect(classesForHook(1)).toEqual([]);
});

it("calls a class that is none the caller's mistake", () => {
  expect(() => yarnClass(8)).toThrow(RangeError);
});
