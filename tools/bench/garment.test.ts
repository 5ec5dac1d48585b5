import { describe, expect, it } from "vitest";
import { proveDesign } from "../../src/design/index.ts";
import { Counts } from "./counts.ts";
import { editRight, editWrong, makeGarment } from "./garment.ts";

const garment = makeGarment(1);

describe("the garment", () => {
  it("has sixty thousand stitches in the middle of nine sizes, in 250 lines of their own words", () => {
    expect(garment.stitches.length).toBe(9);
    expect(garment.stitches[4]).toBeGreaterThan(60_000);
    expect(garment.distinctLines).toBeGreaterThanOrEqual(250);
  });

  it("is the same for the same seed and another for another", () => {
    expect(makeGarment(1).text).toBe(garment.text);
    expect(makeGarment(2).text).not.toBe(garment.text);
  });

  it("has four times the stitches in the same number of lines when it is wider", () => {
    const wide = makeGarment(1, 4);
    const words = (text: string) => text.replace(/\d+( \([\d, ]+\))*/g, "N");
    expect(words(wide.text)).toBe(words(garment.text));
    expect((wide.stitches[4] as number) / (garment.stitches[4] as number)).toBeGreaterThan(3.5);
  });

  it("is right: nothing is found against it, and every row is proved", () => {
    const { findings, coverage, worked } = proveDesign(garment.text);
    expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    expect(coverage.read).toBe(coverage.instructionLines);
    const rows = worked.pieces.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "row"));
    expect(rows.length).toBeGreaterThan(350);
    expect(rows.filter(({ proved }) => !proved)).toEqual([]);
    // 248 stitches in the smallest size, 2 fewer three times.
    expect(garment.editLine).toContain("turn. 242 (");
  });

  it("stays right when its stitches are edited, and is found wrong when a printed count is", () => {
    const edited = [1, 2, 3, 11].map((number) => editRight(garment, number));
    expect(new Set([garment.text, ...edited]).size).toBe(5);
    expect(proveDesign(edited[3] ?? "").findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    expect(proveDesign(editWrong(garment, 1)).findings.map(({ code }) => code)).toContain(
      "rows/count-differs",
    );
  });
});

it("says counts as patterns do", () => {
  const counts = new Counts([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  expect(String(counts)).toBe("1 (2, 3, 4) (5, 6, 7, 8, 9)");
  expect(String(counts.map(() => 6))).toBe("6");
});
