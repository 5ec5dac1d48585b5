import { describe, expect, it } from "vitest";
import { CM_PER_INCH, readAmount, unitStated, withoutUnit } from "./amount.ts";

describe("an amount", () => {
  it.each([
    ["94", 94, 94, null],
    ["71-76", 71, 76, null],
    ["71–76 cm", 71, 76, "cm"],
    ["28 to 30 in", 28, 30, "in"],
    ['28" - 30"', 28, 30, "in"],
    ["9 3/4", 9.75, 9.75, null],
    ["9-3/4 in.", 9.75, 9.75, "in"],
    ["16½–17¼″", 16.5, 17.25, "in"],
    ["14 1/2-15", 14.5, 15, null],
    ["½ inch", 0.5, 0.5, "in"],
    ["35,5 cm", 35.5, 35.5, "cm"],
  ])("%s", (words, min, max, unit) => expect(readAmount(words)).toEqual({ min, max, unit }));

  it.each(["", "about 94", "94 stitches", "-3", "1/0", "71-76-80", "9 3/4 5"])("is not %j", (words) =>
    expect(readAmount(words)).toBeNull(),
  );
});

it("finds the unit of a heading", () => {
  expect(unitStated("bust (in)")).toBe("in");
  expect(unitStated("Measurement, cm")).toBe("cm");
  expect(unitStated("cm")).toBe("cm");
  expect(unitStated("bust")).toBeNull();
  expect(unitStated("skin")).toBeNull();
  expect(withoutUnit("upper arm (inches)")).toBe("upper arm");
  expect(withoutUnit("bust")).toBe("bust");
});

// By definition since 1959.
it("has 2.54 cm to the inch", () => expect(CM_PER_INCH).toBe(2.54));
