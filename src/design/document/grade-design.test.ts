import { readFileSync } from "node:fs";
import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { highsSolver } from "../../sizing/index.ts";
import { proveDesign } from "../prove.ts";
import { gradeDesign, type Regraded } from "./grade-design.ts";

const sample = readFileSync(new URL("../../../samples/pullover-no-9.md", import.meta.url), "utf8");

const cowl = (counts: string, plan = "cowl width: 20 24 28 cm") => `---
title: Plain Cowl
sizes: S M L
fabrics:
  plain: { swatch: { washed: 30 sts x 30 rows in 20 x 20 cm } } # dried flat
plan:
  ${plan}
counts:
${counts}
---
# Cowl
Ch {cowl sts + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. {cowl sts} sts.
`;

async function graded(text: string): Promise<Regraded> {
  const result = await gradeDesign(text);
  if (result.is !== "graded")
    throw new Error(`${result.is}: ${result.findings.map(({ what }) => what).join(" ")}`);
  return result;
}

describe("choosing counts anew", () => {
  // Computation notes, section 5: g = 0.5, m = 2, r = 1, targets 10.0, 10.6, 11.4 give 19, 21, 23 at a cost of 0.7.
  const known = (is: string) =>
    cowl(
      `  cowl sts: { along: cowl width, multiple: 2 + 1, is: ${is} } # tested`,
      "cowl width: 10 10.6 11.4 cm",
    ).replace("30 sts x 30 rows in 20 x 20 cm", "40 sts x 30 rows in 20 x 20 cm");
  it("finds the published optimum and its cost", async () => {
    const { changes, costAfter, costBefore, proved } = await graded(known("21 21 23"));
    expect(changes).toEqual([{ name: "cowl sts", before: [21, 21, 23], after: [19, 21, 23], written: true }]);
    expect(costAfter).toBeCloseTo(0.7, 6);
    expect(costBefore).toBeCloseTo(0.8, 6);
    expect(proved).toBe(true);
  });

  it.each([
    ["21 21 23", "19 21 23"],
    ['"21 (21, 23)"', '"19 (21, 23)"'],
    ["[21, 21, 23]", "[19, 21, 23]"],
    ['"21 21 23"', '"19 21 23"'],
    ["21", "19 21 23"],
  ])("touches the numbers alone: %s", async (before, after) =>
    expect((await graded(known(before))).text).toBe(known(after)),
  );

  it("writes counts that have no values yet, in braces and below", async () => {
    expect((await graded(cowl("  cowl sts: { along: cowl width }"))).text).toContain(
      "  cowl sts: { along: cowl width, is: 30 36 42 }\n",
    );
    expect(
      (await graded(cowl("  cowl sts:\n    along: cowl width # all round\n    in: plain # in use"))).text,
    ).toContain("    along: cowl width # all round\n    in: plain # in use\n    is: 30 36 42\n");
  });

  it("leaves held counts and counts by hand alone", async () => {
    const text = cowl("  cowl sts: { along: cowl width, held: { M: 38 }, is: 31 38 41 }\n  edge sts: 7 8 9");
    const { changes, text: after } = await graded(text);
    expect(changes.map(({ after: values }) => values)).toEqual([[30, 38, 42]]);
    expect(after).toContain("edge sts: 7 8 9");
  });

  it.each([
    ["", [24]],
    ["aim: sum of misses", [24]],
    ["aim: largest miss", [22]],
    ["aim: the worst miss", [22]],
  ])("minds all misses or the largest first: %j", async (aim, values) => {
    // One count for 20 and for 24 cm: whatever lies between misses by 4 cm in all, and 22 by no more than 2 cm at once.
    const text = `---
sizes: one size
fabrics: { a: { swatch: 10 sts x 10 rows in 10 x 10 cm } }
plan: { front: 20 cm, back: 24 cm }
${aim}
counts:
  front sts: { along: front }
  back sts: { along: back, same as: front sts }
---
Ch {front sts + 1}.
`;
    const result = await gradeDesign(text);
    expect(result.is === "graded" && result.changes.find(({ name }) => name === "front sts")?.after).toEqual(
      values,
    );
  });

  it("brings a follower along without writing it", async () => {
    const { changes, text } = await graded(
      cowl("  cowl sts: { along: cowl width, is: 30 35 42 }\n  edge sts: { same as: half of cowl sts }"),
    );
    expect(changes).toEqual([
      { name: "cowl sts", before: [30, 35, 42], after: [30, 36, 42], written: true },
      { name: "edge sts", before: [15, null, 21], after: [15, 18, 21], written: false },
    ]);
    expect(text).toContain("edge sts: { same as: half of cowl sts }");
    expect(proveDesign(text).counts?.[1]?.values).toEqual([15, 18, 21]);
  });

  it("names the rules that clash and writes nothing", async () => {
    const result = await gradeDesign(
      cowl("  cowl sts: { along: cowl width, multiple: 6 + 1, parity: even, is: 30 36 42 }"),
    );
    expect(result.is).toBe("rules clash");
    expect(result.is === "rules clash" && result.findings[0]?.why).toBe(
      "They are: cowl sts is a multiple of 6 plus 1 (line 9) and cowl sts is even (line 9).",
    );
  });

  it("refuses where part of the plan is not understood", async () => {
    const result = await gradeDesign(
      cowl("  cowl sts: { along: cowl width, is: 30 36 42 }", "cowl width: 20 24 28"),
    );
    expect(result.is).toBe("table has errors");
  });

  it("has nothing to do for a plain text", async () => {
    expect((await gradeDesign("Row 1: Ch 10.")).is).toBe("no table");
  });
});

describe("the sample", () => {
  it("is left as it stands", async () => {
    const { edits, text, proved } = await graded(sample);
    expect(edits).toEqual([]);
    expect(text).toBe(sample);
    expect(proved).toBe(true);
  });

  it("follows a swatch that changed, with every tie and every row coming out", async () => {
    const wider = sample.replace(
      "washed: 35 sts x 35 rows in 25 x 25 cm",
      "washed: 35 sts x 35 rows in 26 x 24 cm",
    );
    const solver = highsSolver(await loadHighs());
    const result = await gradeDesign(wider, solver);
    if (result.is !== "graded") throw new Error(result.is);
    const { after, changes, costAfter, costBefore } = result;
    expect(costAfter).toBeLessThan(costBefore as number);
    expect(changes.map(({ name }) => name)).toContain("body sts");
    expect(after.ties?.every(({ difference }) => difference.every((one) => one === 0))).toBe(true);
    expect(after.findings.filter(({ code }) => code === "rows/count-differs")).toEqual([]);
    // Only lines with counts on them differ.
    const [old, now] = [wider.split("\n"), result.text.split("\n")];
    expect(now).toHaveLength(old.length);
    const changed = now.filter((line, at) => line !== old[at]);
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.every((line) => line.includes(" is: "))).toBe(true);
  });
});
