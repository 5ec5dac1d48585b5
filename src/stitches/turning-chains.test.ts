import { expect, it } from "vitest";
import { countingOf, TURNING_CHAINS, turningChainFor } from "./turning-chains.ts";

// Chains by stitch: trade handbook, section 3.3.
it.each([
  ["sl st", 0],
  ["sc", 1],
  ["hdc", 2],
  ["dc", 3],
  ["tr", 4],
  ["dtr", 5],
])("a row of %s starts with %i chains", (code, chains) => {
  expect(turningChainFor(code).chains).toBe(chains);
});

it.each([
  ["fpdc", 3],
  ["sc2tog", 1],
  ["esc", 1],
  ["3tr-cluster", 4],
  ["puff", 2],
  ["v-stitch", 3],
])("a row of %s starts like its plain stitch, with %i", (code, chains) => {
  expect(turningChainFor(code).chains).toBe(chains);
});

// A designer's own habit, trade handbook, section 3.3: 1, 1, 2, 3 for sc, hdc, dc and tr.
it("knows the shorter habit", () => {
  const habit = ["sc", "hdc", "dc", "tr"].map(
    (stitch) => TURNING_CHAINS.find((one) => one.stitch === stitch)!,
  );
  expect(habit.map((one) => one.alsoMet ?? one.chains)).toEqual([1, 1, 2, 3]);
});

// An editor's experience, trade handbook, section 3.3.
it("knows how often they count", () => {
  expect([1, 2, 3, 4, 9].map(countingOf)).toEqual([
    "almost never",
    "about half",
    "usually",
    "usually",
    "usually",
  ]);
});
