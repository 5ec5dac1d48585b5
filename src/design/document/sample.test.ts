import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { Proof } from "../proof.ts";
import { proveDesign } from "../prove.ts";

const read = (name: string): string =>
  readFileSync(new URL(`../../../samples/${name}`, import.meta.url), "utf8");

/** The pullover as a design, and the same pullover as a plain text with its numbers written out by hand. */
const text = read("pullover-no-9.md");
const plain = read("pullover-no-9.txt");
let design: Proof;
let byHand: Proof;
beforeAll(() => {
  design = proveDesign(text);
  byHand = proveDesign(plain);
});

describe("the sample agrees with itself however it is asked", () => {
  it("has nothing wrong with it", () => {
    expect(design.findings.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(design.findings.filter(({ code }) => code.startsWith("design/"))).toEqual([]);
    expect(design.sizes).toEqual("XS S M L XL 2X 3X 4X 5X".split(" "));
  });

  it("comes row by row to the counts of the text written by hand", () => {
    const rows = ({ worked }: Proof) =>
      worked.pieces.flatMap(({ lines }) =>
        lines.filter(({ kind }) => kind === "row" || kind === "round" || kind === "foundation"),
      );
    const numbers = (proof: Proof) =>
      rows(proof).map(({ stitches, last, printed }) => ({ stitches, last, printed }));
    expect(rows(design).length).toBeGreaterThan(40);
    expect(numbers(design)).toEqual(numbers(byHand));
  });

  it("has every count as written come out of the rows", () => {
    expect(design.counts?.filter(({ from }) => from !== "rows")).toEqual([]);
    expect(design.counts?.length).toBeGreaterThan(20);
    for (const { name, values, worked } of design.counts ?? []) expect(worked, name).toEqual(values);
  });

  it("makes the finished measurements that the text prints, to the half centimetre it prints them in", () => {
    const printed: readonly (readonly [words: string, measure: string])[] = [
      ["Bust", "finished bust"],
      ["Length from shoulder, neckband not included", "length from shoulder"],
      ["Length from hem to underarm", "hem to underarm"],
      ["Width across the chest, between armholes", "width across shoulders"],
      ["Armhole depth", "armhole depth"],
      ["Neck width before the band", "neck width"],
      ["Upper sleeve, around", "upper sleeve"],
      ["Cuff, around", "cuff"],
      ["Sleeve length", "sleeve length"],
    ];
    for (const [words, name] of printed) {
      const line = text.split("\n").find((one) => one.startsWith(`${words}: `)) ?? "";
      const list =
        line
          .slice(words.length + 1, line.indexOf(" cm"))
          .match(/\d+(?:\.\d+)?/g)
          ?.map(Number) ?? [];
      const made = design.finished?.find((one) => one.name === name)?.made ?? [];
      expect(list, words).toHaveLength(9);
      for (const [size, cm] of list.entries())
        expect(
          Math.abs(cm - (made[size] ?? Number.NaN)),
          `${words}, ${design.sizes[size]}`,
        ).toBeLessThanOrEqual(0.35);
    }
  });

  it("has every tie come out exactly on the worked counts", () => {
    expect(design.ties?.length).toBeGreaterThan(10);
    for (const { text: words, difference } of design.ties ?? [])
      expect(difference, words).toEqual(design.sizes.map(() => 0));
  });

  it("has counts that no choice betters", () => {
    expect(design.choice?.best).toBe(true);
    for (const { name, values } of design.counts ?? [])
      expect(design.choice?.counts?.get(name), name).toEqual(values);
  });

  it("carries the swatch's error to what is made of it", () => {
    // Computation notes, section 7: a ruler off by 2 mm at each end and a quarter stitch over 25 cm, counted in limits.
    const bust = design.finished?.find(({ name }) => name === "finished bust");
    const share = Math.hypot(0.25 / Math.sqrt(3) / 35, (0.2 / Math.sqrt(3) / 25) * Math.SQRT2);
    for (const [size, cm] of (bust?.made ?? []).entries())
      expect(bust?.plusMinus[size]).toBeCloseTo(2 * share * (cm as number), 6);
  });

  it("answers the shoulder as meant, with a stamp that still holds", () => {
    expect(design.answered.map(({ finding }) => finding.code)).toContain("design/shoulder-off");
    expect(design.unstamped).toEqual([]);
  });
});

describe("one number changed", () => {
  it("is found everywhere at once", () => {
    const changed = proveDesign(text.replace("is: 61 69 77 83", "is: 61 71 77 83"));
    const codes = new Set(changed.findings.map(({ code }) => code));
    // The rib and the body follow the count; the chest below the neck does not, and its tie says so in that size alone.
    expect(codes).toContain("design/count-breaks-rule");
    const broken = changed.findings.filter(({ code }) => code === "design/count-breaks-rule");
    expect(broken.flatMap(({ sizes }) => sizes)).toEqual([1]);
    expect(changed.finished?.find(({ name }) => name === "finished bust")?.made[1]).toBeCloseTo(
      (2 * 71 * 25) / 35,
      6,
    );
  });

  it("in a row is held against the table's count", () => {
    const row =
      "Row 3 (RS): Ch 1, sc in first st, *dc in next st, sc in next st; rep from * across, turn. {chest sts} sts.";
    expect(text).toContain(row);
    const changed = proveDesign(text.replace(row, row.replace("sc in first st", "2 sc in first st")));
    expect(changed.findings.map(({ code }) => code)).toContain("rows/count-differs");
  });
});
