import { describe, expect, it } from "vitest";
import { buttonsFor, frontStitches, holesInRow, holesInRows, mirrorPocket } from "./bands.ts";

describe("buttonholes", () => {
  // Trade handbook, 3.8: 100 sts, 3 at each end, 7 holes of 4: gaps of 11.
  it("along a band leave even gaps", () => {
    const found = holesInRow(100, 7, 4, 3);
    expect(found).toMatchObject({ kind: "holes", edges: [3, 3], gaps: [11, 11, 11, 11, 11, 11] });
    expect(found.kind === "holes" && found.places).toEqual([4, 19, 34, 49, 64, 79, 94]);
  });
  it("that do not come out differ by one", () => {
    const found = holesInRow(102, 7, 4, 3);
    expect(found.kind === "holes" && found.gaps.toSorted().join(" ")).toBe("11 11 11 11 12 12");
  });
  it("use up the band, or are refused with the most that fit", () => {
    for (let stitches = 10; stitches < 60; stitches++) {
      for (let holes = 1; holes < 12; holes++) {
        const found = holesInRow(stitches, holes, 3, 2);
        if (found.kind === "holes") {
          const used = [...found.edges, ...found.gaps, 3 * holes].reduce((a, b) => a + b, 0);
          expect(used).toBe(stitches);
          expect(found.gaps.every((gap) => gap >= 1)).toBe(true);
        } else {
          expect(found.most).toBeLessThan(holes);
          expect(holesInRow(stitches, Math.max(1, found.most), 3, 2).kind).toBe("holes");
        }
      }
    }
  });
  // Trade handbook, 3.8: 56 rows, margins 4, 5 holes.
  it("up a band stand on rows 4, 16, 28, 40, 52", () =>
    expect(holesInRows(56, 5, 4)).toEqual([4, 16, 28, 40, 52]));
  it("need rows of their own", () => {
    expect(holesInRows(10, 5, 4)).toBeNull();
    expect(holesInRows(21, 1, 4)).toEqual([11]);
  });
});

it("finds how many buttons go evenly", () => {
  expect(buttonsFor(56, 2, { least: 6, most: 9 }).map(({ buttons }) => buttons)).toEqual([7, 8, 9]);
  expect(buttonsFor(56, 2, { least: 6, most: 9 })[1]!.spacing).toBeCloseTo(52 / 7, 10);
  expect(buttonsFor(3, 2, { least: 6, most: 9 })).toEqual([]);
});

it("halves what the band leaves of the back", () => {
  expect(frontStitches(100, 8)).toBe(46);
  expect(frontStitches(101, 8)).toBeNull();
  expect(frontStitches(6, 8)).toBeNull();
});

// Trade handbook, 3.8: left pocket s from the band, right one n − s − w.
it("mirrors a pocket", () =>
  expect(mirrorPocket({ before: 12, width: 30, after: 20 })).toEqual({ before: 20, width: 30, after: 12 }));
