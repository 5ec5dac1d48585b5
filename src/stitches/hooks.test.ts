import { describe, expect, it } from "vitest";
import { lookupHook, nearestHook } from "./hooks.ts";

// Letters and millimetres: trade handbook, section 1.8.
it.each([
  ["B", 2.25],
  ["C", 2.75],
  ["E", 3.5],
  ["F", 3.75],
  ["G", 4],
  ["H", 5],
  ["I", 5.5],
  ["J", 6],
  ["K", 6.5],
  ["L", 8],
  ["M/N", 9],
  ["N/P", 10],
  ["D", 3.25],
])("%s is %d mm", (letter, mm) => {
  expect(lookupHook(letter)?.mm).toBe(mm);
});

it.each([
  ["5 mm", 5, "mm"],
  ["5.00mm", 5, "mm"],
  ["5,5 mm", 5.5, "mm"],
  ["US H-8 (5 mm)", 5, "mm"],
  ["H/8 (5.00-mm)", 5, "mm"],
  ["size H-8", 5, "us"],
  ["US H/8", 5, "us"],
  ["size H hook", 5, "us"],
  ["h8", 5, "us"],
  ["US 7", 4.5, "us"],
  ["size 7", 4.5, "us"],
  ["K-10½", 6.5, "us"],
  ["K-10 1/2", 6.5, "us"],
  ["K/10.5", 6.5, "us"],
  ["M/N-13", 9, "us"],
  ["UK 6", 5, "uk"],
  ["old UK size 00", 9, "uk"],
  ["steel 7", 1.65, "us"],
  ["size 7 steel", 1.65, "us"],
  ["4.75 mm", 4.75, "mm"],
])("reads %s as %d mm", (words, mm, by) => {
  expect(lookupHook(words)).toMatchObject({ mm, by });
});

it.each(["", "a hook", "7", "Z-99", "H-9", "0 mm", "hook", "UK 99", "what you like"])(
  "finds no hook in %o",
  (words) => {
    expect(lookupHook(words)).toBeUndefined();
  },
);

it("says where a size is not sold", () => {
  expect(lookupHook("4.75 mm")?.hook).toBeNull();
  expect(lookupHook("5 mm")?.hook?.us).toBe("H-8");
});

describe("nearestHook", () => {
  it("finds the nearest of a kind", () => {
    expect(nearestHook(4.9).us).toBe("H-8");
    expect(nearestHook(3.5).kind).toBe("regular");
    expect(nearestHook(3.5, "steel").us).toBe("00");
    expect(nearestHook(100).mm).toBe(30);
  });

  it("takes the finer of two as near", () => {
    expect(nearestHook(4.75).mm).toBe(4.5);
  });

  it("calls a size of nothing the caller's mistake", () => {
    expect(() => nearestHook(0)).toThrow(RangeError);
    expect(() => nearestHook(Number.NaN)).toThrow(RangeError);
  });
});
