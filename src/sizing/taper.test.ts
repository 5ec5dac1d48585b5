import { describe, expect, it } from "vitest";
import {
  type RateOrder,
  type ShapingSide,
  shapingRows,
  type Taper,
  taper,
  taperAtRates,
  taperBetween,
} from "./taper.ts";

const say = (rows: number, shapings: number, side: ShapingSide = "any row", order?: RateOrder) => {
  const found = taper(rows, shapings, side, order);
  return found.kind === "taper" ? sayRates(found) : found.why;
};
const sayRates = ({ rates }: Taper) => rates.map(({ every, times }) => `every ${every} x${times}`).join(", ");

describe("a taper", () => {
  // Trade handbook, 3.6, and computation notes, section 6.
  it.each([
    [30, 8, "any row", "every 4 x6, every 3 x2"],
    [30, 8, "right side", "every 4 x7, every 2 x1"],
    [60, 14, "any row", "every 5 x4, every 4 x10"],
    [60, 14, "right side", "every 6 x2, every 4 x12"],
    [44, 9, "any row", "every 5 x8, every 4 x1"],
    [108, 11, "any row", "every 10 x9, every 9 x2"],
    [78, 11, "any row", "every 8 x1, every 7 x10"],
    [78, 11, "right side", "every 8 x6, every 6 x5"],
    [64, 18, "any row", "every 4 x10, every 3 x8"],
    [64, 18, "right side", "every 4 x14, every 2 x4"],
  ] as const)("of %i rows and %i shapings on %s is %s", (rows, shapings, side, rates) =>
    expect(say(rows, shapings, side)).toBe(rates),
  );

  it("can go faster first", () =>
    expect(say(30, 8, "any row", "faster first")).toBe("every 3 x2, every 4 x6"));
  it("of one rate says one", () => expect(say(30, 10)).toBe("every 3 x10"));
  it("leaves an odd row when only every second row shapes", () =>
    expect(taper(31, 8, "right side")).toMatchObject({ kind: "taper", left: 1 }));
  it("of nothing is straight", () => expect(taper(12, 0)).toEqual({ kind: "taper", rates: [], left: 12 }));

  it("fills all rows with all shapings, wherever both fit", () => {
    for (let rows = 0; rows <= 60; rows++) {
      for (let shapings = 1; shapings <= rows; shapings++) {
        for (const side of ["any row", "right side"] as const) {
          const found = taper(rows, shapings, side);
          if (found.kind === "refused") {
            expect(shapings).toBeGreaterThan(Math.floor(rows / 2));
            continue;
          }
          const at = shapingRows(found);
          expect(at.length).toBe(shapings);
          expect(at.at(-1)! + found.left).toBe(rows);
          if (side === "right side") expect(shapingRows(found, 1).every((row) => row % 2 === 1)).toBe(true);
        }
      }
    }
  });
});

describe("a taper that does not fit", () => {
  it("says what does", () => {
    expect(taper(10, 12)).toEqual({ kind: "refused", why: "too few rows", most: 10, needs: 12, ends: [] });
    expect(taper(10, 6, "right side")).toMatchObject({ most: 5, needs: 12 });
  });
  // Trade handbook, 3.6: 80 to 45 is 35, odd, cannot be done in pairs; fix one end.
  it("from 80 to 45 in pairs needs another end", () => {
    const found = taperBetween(80, 45, 2, 60);
    expect(found).toMatchObject({ kind: "refused", why: "odd difference" });
    expect(found.kind === "refused" && found.ends).toEqual([
      { from: 80, to: 46 },
      { from: 80, to: 44 },
      { from: 79, to: 45 },
      { from: 81, to: 45 },
    ]);
  });
  it("offers only ends that can be tapered", () => {
    for (const [from, to] of [
      [80, 45],
      [45, 80],
      [7, 2],
      [2, 9],
    ] as const) {
      const found = taperBetween(from, to, 2, 60);
      expect(found.kind).toBe("refused");
      for (const end of found.kind === "refused" ? found.ends : []) {
        expect(taperBetween(end.from, end.to, 2, 60).kind).toBe("taper");
      }
    }
  });
});

// Trade handbook, 3.6: 38 to 60 stitches is 11 shaping rows of two.
it("tapers between two counts", () =>
  expect(sayRates(taperBetween(38, 60, 2, 108) as Taper)).toBe("every 10 x9, every 9 x2"));

describe("rates of one's own", () => {
  it("fill the rows or do not", () => {
    expect(sayRates(taperAtRates(30, 8, 6, 3) as Taper)).toBe("every 6 x2, every 3 x6");
    expect(taperAtRates(30, 8, 7, 3)).toBeNull();
    expect(taperAtRates(30, 8, 3, 2)).toBeNull();
    expect(sayRates(taperAtRates(24, 8, 3, 3) as Taper)).toBe("every 3 x8");
    expect(taperAtRates(25, 8, 3, 3)).toBeNull();
  });
});
