import { expect, it } from "vitest";
import { easeInCm, easeOf, easeWords, garmentEases } from "./ease.ts";
import { garmentLengths } from "./garment-lengths.ts";
import { headSizes } from "./head-sizes.ts";
import { letterCodes, lettersFor } from "./letter-codes.ts";
import { lookupMeasurement, nearestMeasurement } from "./measurement.ts";
import { surveyColumn } from "./survey.ts";

it("lets the sources disagree about one word", () => {
  // Trade handbook, 2.1: very close is 0 on one page, -10 % of the body on another, -2 to -4 in with the council.
  expect(easeOf("very close").map(({ source, least, most, unit }) => [source, least, most, unit])).toEqual([
    ["council", -4, -2, "in"],
    ["council", -10, -5, "cm"],
    ["teaching page A", 0, 0, "in"],
    ["teaching page B", -10, -10, "percent"],
    ["older scheme", -2, -1, "in"],
  ]);
  expect(easeOf("Classic Fit")).toEqual(easeOf("standard"));
  expect(easeOf("snug")).toEqual([]);
  expect(
    easeWords()
      .filter((entry) => entry.most === null)
      .every(({ word }) => word === "oversized"),
  ).toBe(true);
});

it("turns words into centimetres on a body", () => {
  const [inches, cm] = easeOf("classic fit");
  expect(easeInCm(inches!, 94)).toEqual({ least: 5.08, most: 10.16 });
  expect(easeInCm(cm!, 94)).toEqual({ least: 5, most: 10 });
  const share = easeOf("very close").find(({ unit }) => unit === "percent")!;
  expect(easeInCm(share, 94).least).toBeCloseTo(-9.4, 9);
  expect(easeInCm(easeOf("oversized")[0]!, 94).most).toBeNull();
});

it("prints inches and centimetres of ease that mean the same", () => {
  const council = easeWords().filter(({ source }) => source === "council");
  const inches = council.filter(({ unit }) => unit === "in");
  expect(inches.length).toBe(5);
  for (const entry of inches) {
    const twin = council.find(({ word, unit }) => word === entry.word && unit === "cm")!;
    expect(Math.abs((entry.least ?? 0) * 2.54 - (twin.least ?? 0))).toBeLessThan(0.5);
    expect(Math.abs((entry.most ?? 0) * 2.54 - (twin.most ?? 0))).toBeLessThan(0.5);
  }
});

it("knows usual ease by garment and where tops end", () => {
  // Trade handbook, 2.1.
  expect(garmentEases().find(({ garment }) => garment === "drop shoulder")).toMatchObject({
    least: 10,
    most: 25,
  });
  expect(
    garmentLengths().find(({ population, length }) => population === "women" && length === "hip length")
      ?.drop,
  ).toBe(15);
  for (const { drop, inches } of garmentLengths()) expect(Math.abs(drop - inches * 2.54)).toBeLessThan(0.3);
});

it("has heads of measured people", () => {
  for (const [who, population] of [
    ["woman, measured, p10-p90", "women"],
    ["man, measured, p10-p90", "men"],
  ] as const) {
    const entry = headSizes().find((head) => head.who === who)!;
    const heads = [...surveyColumn(population, "head")].sort((a, b) => a - b);
    expect(heads[Math.round(0.1 * (heads.length - 1))]! / 10).toBeCloseTo(entry.min, 1);
    expect(heads[Math.round(0.9 * (heads.length - 1))]! / 10).toBeCloseTo(entry.max, 1);
  }
  expect(headSizes().filter(({ source, kind }) => source === "cyc" && kind !== "hat")).toEqual([]);
});

it("has the letters of EN 13402-3 without holes", () => {
  for (const population of ["women", "men"] as const) {
    const codes = letterCodes(population);
    expect(codes.map(({ letters }) => letters).join(" ")).toBe("XXS XS S M L XL XXL 3XL");
    for (const [index, code] of codes.slice(1).entries()) expect(code.min).toBe(codes[index]!.max);
  }
  expect(lettersFor("women", 94)?.letters).toBe("M");
  expect(lettersFor("women", 98)?.letters).toBe("L");
  expect(lettersFor("men", 101.9)?.letters).toBe("M");
  expect(lettersFor("women", 150)).toBeUndefined();
});

it("knows a measurement by its other names", () => {
  expect(lookupMeasurement("Chest")?.name).toBe("bust");
  expect(lookupMeasurement(" cross-back ")?.name).toBe("cross back");
  expect(lookupMeasurement("upper_arm")?.name).toBe("upper arm");
  expect(lookupMeasurement("collar")).toBeUndefined();
  expect(nearestMeasurement("uper arms")).toBe("upper arm");
  expect(nearestMeasurement("buttonhole")).toBeUndefined();
});
