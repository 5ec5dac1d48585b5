import { expect, it } from "vitest";
import { median, timeInTurn } from "./timing.ts";

it("takes the middle", () => {
  expect([median([5]), median([9, 1, 5]), median([1, 2, 3, 10])]).toEqual([5, 5, 2.5]);
  expect(() => median([])).toThrow(RangeError);
});

it("runs all in turn and leaves the first rounds out", () => {
  const seen: string[] = [];
  const medians = timeInTurn([(round) => seen.push(`a${round}`), (round) => seen.push(`b${round}`)], 2, 1);
  expect(seen).toEqual(["a0", "b0", "a1", "b1", "a2", "b2"]);
  expect(medians.length).toBe(2);
});
