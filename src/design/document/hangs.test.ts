import { describe, expect, it } from "vitest";
import { lengthBeforeHanging } from "../../sizing/index.ts";
import { proveDesign } from "../prove.ts";
import { gradeDesign } from "./grade-design.ts";
import { readTable } from "./read-table.ts";

/*
 * A row is 0.5 cm high and a square centimetre weighs 0.04 g: 20 x 20 cm of 40 rows weigh 16 g. Hung with 80 g on 20 cm, 4 g to a
 * cm, the swatch is a tenth longer.
 */
const design = (hangs: string, counts: string, plan = "length: 50 cm\n  round: 100 120 cm") => `---
title: Tunic
sizes: S L
fabrics:
  plain: { swatch: { washed: 40 sts x 40 rows in 20 x 20 cm, hung 80 g: 40 sts x 40 rows in 20 x 22 cm, grams: 16 } }
  rib: { swatch: { washed: 40 sts x 40 rows in 20 x 20 cm, grams: 32 } }
plan:
  ${plan}
${hangs}
counts:
${counts}
---
# Back
Ch 5.
`;

const LENGTH = "  rows: { along: length, in: plain, is: 96 }";
const measure = (text: string, name = "length") =>
  proveDesign(text).finished?.find((one) => one.name === name);
const codes = (text: string) =>
  proveDesign(text)
    .findings.map(({ code }) => code)
    .filter((code) => code.startsWith("design/") && !/better|misses/.test(code));

describe("a length that hangs", () => {
  it("grows by what it bears: nothing at its hem, its own weight at its top", () => {
    const made = measure(design("hangs: { length: round }", LENGTH));
    // 96 rows lie 48 cm. Its top bears about 50 x 0.04 = 2 g a cm, half of what made a tenth; the mean of all rows is half of that.
    const lying = lengthBeforeHanging(50, 0.025);
    const share = (0.1 / 4) * ((lying * 0.04) / 2);
    expect(made?.made[0]).toBeCloseTo(48 * (1 + share), 1);
    expect(made?.hanging?.[0]).toBeCloseTo((made?.made[0] ?? 0) - 48, 9);
    expect(made?.missed[0]).toBeCloseTo((made?.made[0] ?? 0) - 50, 9);
    // Twice as wide weighs twice as much on twice as much fabric.
    expect(made?.made[1]).toBeCloseTo(made?.made[0] ?? 0, 9);
  });

  it("grows more where more hangs below: pockets, and a body below a narrow shoulder", () => {
    const pockets = measure(design("hangs: { length: { round: round, below: 120 g } }", LENGTH));
    // Trade handbook, 1.7: the load is what hangs below over what is round: 1.2 g a cm in S, 1 g in L, on every row.
    const bare = measure(design("hangs: { length: round }", LENGTH));
    const more = (size: number) => (pockets?.hanging?.[size] ?? 0) - (bare?.hanging?.[size] ?? 0);
    expect(more(0)).toBeCloseTo(48 * (0.1 / 4) * 1.2, 1);
    expect(more(1)).toBeCloseTo(48 * (0.1 / 4) * 1, 1);
    const text = design(
      "hangs:\n  length: round\n  armhole: { round: shoulders, below: length }",
      `${LENGTH}\n  armhole rows: { along: armhole, in: plain, of: rows, is: 40 }`,
      "length: 50 cm\n  armhole: 20 cm\n  round: 100 140 cm\n  shoulders: 70 cm",
    );
    const armhole = measure(text, "armhole");
    // The same shoulders bear 100 x 50 x 0.04 = 200 g in S and 280 g in L: the same fabric grows more in the larger size.
    const load = (round: number) => (round * 50 * 0.04) / 70 + (20 * 0.04) / 2;
    // It lies a little shorter than the 20 cm and so bears a little less.
    for (const [size, round] of [100, 140].entries())
      expect(Math.abs((armhole?.hanging?.[size] ?? 0) - 20 * (0.1 / 4) * load(round))).toBeLessThan(0.1);
    expect(armhole?.hanging?.[1]).toBeGreaterThan((armhole?.hanging?.[0] ?? 0) * 1.2);
  });

  it("bears a rib that was not hung, which does not grow", () => {
    const text = design(
      "hangs: { length: round }",
      "  rib rows: { along: rib depth, in: rib, is: 20 }\n  rows: { along: length minus rib depth minus 2 rows in plain, in: plain, is: 78 }",
      "length: 50 cm\n  rib depth: 10 cm\n  round: 100 cm",
    );
    const made = measure(text);
    // 10 cm of rib weigh 0.8 g a cm; 40 cm of plain bear that and half of their own 1.6 g.
    expect(made?.hanging?.[0]).toBeCloseTo(40 * (0.1 / 4) * (0.8 + 0.8), 1);
    expect(made?.made[0]).toBeCloseTo(50 + (made?.hanging?.[0] ?? 0), 9);
    expect(measure(text, "rib depth")).toMatchObject({ made: [10, 10], hanging: null });
  });

  it("is worked shorter, so that it is as long as wanted when it is worn", async () => {
    const result = await gradeDesign(
      design("hangs: { length: round }", "  rows: { along: length, in: plain }"),
    );
    if (result.is !== "graded") throw new Error(result.is);
    // 50 cm worn are 48.8 cm lying, 97.6 rows.
    expect(result.changes[0]?.after).toEqual([98, 98]);
    const flat = await gradeDesign(design("", "  rows: { along: length, in: plain }"));
    expect(flat.is === "graded" && flat.changes[0]?.after).toEqual([100, 100]);
    expect(result.after.finished?.find(({ name }) => name === "length")?.missed[0]).toBeCloseTo(0.2, 1);
  });

  it("goes into what is said by it", () => {
    const text = design(
      "hangs: { length: round }",
      `${LENGTH}\n  yoke rows: { along: yoke, in: plain, of: rows, is: 20 }`,
      "length: 50 cm\n  yoke: 10 cm\n  whole: length plus yoke\n  round: 100 cm",
    );
    const all = measure(text, "whole");
    expect(all?.made[0]).toBeCloseTo((measure(text)?.made[0] ?? 0) + 10, 9);
  });
});

describe("what is said of hanging", () => {
  it("is noted where a swatch was hung and nothing hangs", () =>
    expect(codes(design("", LENGTH))).toEqual(["design/hanging-not-said"]));
  it("is noted where more hangs than was tried", () => {
    expect(codes(design("hangs: { length: round }", LENGTH))).toEqual([]);
    expect(codes(design("hangs: { length: { round: round, below: 600 g } }", LENGTH))).toEqual([
      "design/hang-heavier",
    ]);
  });
  it.each([
    ["hangs: { lenght: round }", "design/name-unknown"],
    ["hangs: { length: roud }", "design/name-unknown"],
    ["hangs: { length: { below: 20 g } }", "design/entry-not-understood"],
    ["hangs: { length: { round: round, below: a lot } }", "design/entry-not-understood"],
    ["hangs: { round: round }", "design/entry-not-understood"],
  ])("is told where it cannot be: %s", (hangs, code) =>
    expect(readTable(design(hangs, LENGTH), () => [])?.findings.map((finding) => finding.code)).toContain(
      code,
    ),
  );
});
