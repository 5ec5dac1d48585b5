import { describe, expect, it } from "vitest";
import { dress, findFigures, isMeasure, readWord } from "./numerals.ts";

const figures = (text: string) => findFigures(text, { from: 0, to: text.length });
const said = (text: string) => figures(text).map(({ span }) => text.slice(span.from, span.to));

describe("numbers in a text", () => {
  it("are whole numbers, ordinals with their ending", () =>
    expect(said("2nd row: sc in next 14 (16) sts, 3 dc, ch-2 sp, 1st, 1 st")).toEqual([
      "2nd",
      "14",
      "16",
      "3",
      "2",
      "1st",
      "1",
    ]));
  it("are no fractions, decimals or stitch names", () =>
    expect(said("sc2tog, 14½, 5.5 mm, 1/2, dc3tog")).toEqual([]));
  it("are words where the reader says so", () => {
    expect(readWord("twice", { from: 0, to: 5 })).toMatchObject({ value: 2, word: true, ordinal: false });
    expect(readWord("across", { from: 0, to: 6 })).toBeNull();
  });
  it("keep their dress", () => {
    const change = (text: string, by: number) => {
      const [numeral] = figures(text);
      return numeral && dress(text, numeral, numeral.value + by);
    };
    expect([
      change("2nd", 1),
      change("11th", 1),
      change("20th", 1),
      change("9 sts", 1),
      change("0", -1),
    ]).toEqual(["3rd", "12th", "21st", "10", null]);
    const twice = readWord("Twice", { from: 0, to: 5 });
    expect(twice && dress("Twice", twice, 3)).toBe("Three times");
  });
  it("are measures before a unit, also through further sizes, but not before a place", () => {
    const measure = (text: string) => isMeasure(text, figures(text)[0]?.span ?? { from: 0, to: 0 });
    expect(["28 cm", '4"', "37 (37, 36½) cm", "10 inches above", "2 in [5 cm]"].map(measure)).toEqual([
      true,
      true,
      true,
      true,
      true,
    ]);
    expect(["2 in next st", "12 sts", "6 more times", "4 rows"].map(measure)).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });
});
