import { describe, expect, it } from "vitest";
import { proveDesign } from "../prove.ts";
import { ruleCosts } from "./rule-costs.ts";

/** A stitch is 0.5 cm wide and a row 0.8 cm high in every design here. */
const design = (plan: string, counts: string, rows = "", ease = "bust: 10 cm, upper arm: 5 cm") => `---
title: Top
terms: US
sizes: S M
body: { bust: 80 90 cm, upper arm: 25 27 cm, cross back: 36 37 cm, head: 55 cm, hand: 18 cm }
ease: { ${ease} }
fabrics:
  plain: { swatch: { washed: 40 sts x 25 rows in 20 x 20 cm } }
plan:
${plan}
counts:
${counts}
---
# Back
${rows}`;

const made = (text: string) =>
  Object.fromEntries(
    (proveDesign(text).finished ?? []).map((one) => [one.name, { made: one.made, from: one.from }]),
  );

const ROWS = `Ch {body sts + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. {body sts} sts.
Rows 2-{body rows}: Ch 1 (does not count as a st), sc in each st across, turn. {body sts} sts.
`;

describe("finished measurements as worked", () => {
  it("come from worked counts and the washed gauge, and turn the plan's words round", () => {
    const all = made(
      design(
        "  width: half of finished bust plus 1 cm\n  length: 40 48 cm",
        "  body sts: { along: width, is: 92 102 }\n  body rows: { along: length, is: 50 60 }",
        ROWS,
      ),
    );
    expect(all.width).toEqual({ made: [46, 51], from: "rows" });
    // Half of the bust and 1 cm are 46 and 51 cm, so the bust is 90 and 100.
    expect(all["finished bust"]).toEqual({ made: [90, 100], from: "rows" });
    expect(all.length).toEqual({ made: [40, 48], from: "rows" });
    expect(all["finished upper arm"]).toEqual({ made: [null, null], from: null });
  });

  it("are taken from the rows where rows and table part", () => {
    const text = design(
      "  width: half of finished bust",
      "  body sts: { along: width, is: 90 100 }\n  body rows: 4 4",
      ROWS.replace("turn. {body sts} sts.\nRows", "2 sc in last ch, turn. {body sts} sts.\nRows"),
    );
    const proof = proveDesign(text);
    expect(proof.findings.map(({ code }) => code)).toContain("rows/count-differs");
    const count = proof.counts?.find(({ name }) => name === "body sts");
    expect(count?.values).toEqual([90, 100]);
    expect(count?.worked).not.toEqual([90, 100]);
    expect(proof.finished?.find(({ name }) => name === "width")?.made).toEqual(
      count?.worked.map((n) => (n ?? 0) / 2),
    );
  });

  it("add up, and say that the table alone is behind them where no row is", () => {
    const all = made(
      design(
        "  rib: 5 cm\n  to underarm: 30 32 cm\n  armhole: half of finished upper arm plus 4 cm\n  length: to underarm plus armhole plus 2 rows in plain",
        "  rib rows: { along: rib, is: 6 }\n  straight rows: { along: to underarm minus rib, is: 31 34 }\n  armhole rows: { along: armhole, is: 24 25 }",
      ),
    );
    // 31 rows of 0.8 cm are 24.8 cm, and the rib is 6 rows of 0.8 cm.
    expect(all["to underarm"]?.made[0]).toBeCloseTo(24.8 + 4.8, 9);
    expect(all.length?.made[0]).toBeCloseTo(29.6 + 19.2 + 1.6, 9);
    expect(all.length?.from).toBe("table");
    expect(all["finished upper arm"]?.made[1]).toBeCloseTo(2 * (20 - 4), 9);
  });

  it("count repeats with the stitches beside them", () => {
    const all = made(
      design("  width: 41 cm", "  shells: { along: width, of: repeats, multiple: 8 + 2, is: 10 }"),
    );
    expect(all.width?.made).toEqual([41, 41]);
  });
});

describe("wearing", () => {
  const codes = (plan: string, counts: string, ease?: string) =>
    proveDesign(design(plan, counts, "", ease))
      .findings.map(({ code, sizes }) => `${code} ${sizes.join()}`)
      .filter((one) => !/better-choice|turning/.test(one));
  it.each<[string, string, string, string[]]>([
    [
      "neck over head",
      "neck opening: 50 56 cm",
      "neck sts: { along: neck opening, is: 100 112 }",
      ["design/does-not-go-over 0"],
    ],
    [
      "cuff over hand",
      "cuff: 17 19 cm",
      "cuff sts: { along: cuff, is: 34 38 }",
      ["design/does-not-go-over 0"],
    ],
    [
      "sleeve and arm",
      "upper sleeve: 24 30 cm",
      "sleeve sts: { along: upper sleeve, is: 48 60 }",
      ["design/stretch-not-measured 0"],
    ],
    [
      "sleeve and armhole, the sleeve 2.5 cm longer at most and never shorter",
      "sleeve top: 38 42 cm\n  armhole depth: 19 19.5 cm",
      "sleeve sts: { along: sleeve top, is: 76 84 }\n  armhole sts: { along: armhole depth, is: 38 39 }",
      ["design/edge-lengths-differ 1"],
    ],
    [
      "shoulders that follow the bust",
      "width across shoulders: 38 48 cm",
      "shoulder sts: { along: width across shoulders, is: 76 96 }",
      ["design/shoulder-off 0,1"],
    ],
    [
      "nothing to say",
      "neck opening: 60 cm\n  cuff: 20 cm",
      "neck sts: { along: neck opening, is: 120 }\n  cuff sts: { along: cuff, is: 40 }",
      [],
    ],
  ])("%s", (_, plan, counts, found) => expect(codes(`  ${plan}`, `  ${counts}`)).toEqual(found));
  it("asks for a stretch where ease is below zero", () =>
    expect(
      codes("  width: half of finished bust", "  body sts: { along: width, is: 75 85 }", "bust: -5 cm"),
    ).toEqual(["design/stretch-not-measured 0,1"]));
});

describe("what a better choice is", () => {
  const notes = (counts: string) =>
    proveDesign(design("  width: half of finished bust", counts))
      .findings.filter(({ code }) => code === "design/better-choice")
      .map(({ why }) => why);
  it("is said with its numbers, and the written counts hold still", () => {
    const text = "  body sts: { along: width, is: 90 98 }";
    expect(notes(text)).toEqual([
      "body sts in M: 100 for 98. Misses and uneven steps come to 0 cm instead of 1 cm, and no choice does better.",
    ]);
    expect(proveDesign(design("  width: half of finished bust", text)).counts?.[0]?.values).toEqual([90, 98]);
  });
  it("is none where the value is held", () =>
    expect(notes("  body sts: { along: width, held: { M: 98 }, is: 90 98 }")).toEqual([]));
});

describe("counts in the rows", () => {
  it("are found where no entry has their name", () => {
    const text = design(
      "  width: half of finished bust",
      "  body sts: { along: width, is: 90 100 }",
      "Row 1: Ch {boddy sts + 2}.",
    );
    const found = proveDesign(text).findings.find(({ code }) => code === "design/name-unknown");
    expect(found && text.slice(found.span.from, found.span.to)).toBe("boddy sts");
    expect(found?.todo[0]?.say).toBe('Write "body sts", if that is meant.');
  });
});

describe("what rules cost", () => {
  it("is what would go without them", () => {
    const { table } = proveDesign(
      design(
        "  width: half of finished bust\n  rib: 5.2 cm",
        "  body sts: { along: width, multiple: 8 + 4, is: 92 100 }\n  rib sts: { along: rib, at least: 4, is: 10 }",
      ),
    );
    // 90 and 100 sts are wanted, of 0.5 cm each: 92 misses by 1 cm, 100 not at all; the least of 4 costs nothing.
    expect(table && ruleCosts(table)).toEqual([
      { words: "body sts is a multiple of 8 plus 4", line: 13, cost: expect.closeTo(1, 6) },
    ]);
  });
});
