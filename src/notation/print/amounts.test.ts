import { describe, expect, it } from "vitest";
import { printAmount, printMeasure, printOrdinal, printSizes } from "./amounts.ts";

const span = { from: 0, to: 0 };
const list = (...values: (number | null)[]) => ({ span, values });

describe("size lists", () => {
  it("sets the smallest size outside the brackets and groups them past five sizes (trade handbook, section 5.2)", () => {
    expect(printAmount(list(24))).toBe("24");
    expect(printAmount(list(24, 26, 28))).toBe("24 (26, 28)");
    expect(printAmount(list(1, 2, 3, 4, 5))).toBe("1 (2, 3, 4, 5)");
    expect(printAmount(list(1, 2, 3, 4, 5, 6, 7, 8, 9))).toBe("1 (2, 3, 4, 5) (6, 7, 8, 9)");
    expect(printSizes(["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"])).toBe(
      "XS (S, M, L, XL) (2X, 3X, 4X, 5X)",
    );
  });

  it("keeps groups as even as they can be", () => {
    expect(printAmount(list(1, 2, 3, 4, 5, 6))).toBe("1 (2, 3, 4) (5, 6)");
    expect(printAmount(list(1, 2, 3, 4, 5, 6, 7, 8, 9, 10))).toBe("1 (2, 3, 4) (5, 6, 7) (8, 9, 10)");
  });

  it("has a dash for a size that does none", () => expect(printAmount(list(null, 2, 4))).toBe("— (2, 4)"));

  it("counts off ordinals", () => expect(printOrdinal(list(2, 3, 11))).toBe("2nd (3rd, 11th)"));
});

describe("measures", () => {
  it("prints centimetres as they are", () =>
    expect(printMeasure({ span, values: [28, 29, 30.5], unit: "cm" })).toBe("28 (29, 30.5) cm"));

  it("turns centimetres back into inches, 2.54 to one, and has eighths as fractions", () =>
    expect(printMeasure({ span, values: [27.94, 29.21, 0.635], unit: "in" })).toBe("11 (11½, ¼) in"));

  it("prints millimetres of a length that is kept in centimetres", () =>
    expect(printMeasure({ span, values: [0.4], unit: "mm" })).toBe("4 mm"));
});
