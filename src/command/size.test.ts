import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, describe, expect, it } from "vitest";
import schema from "../../docs/sizes-report.schema.json" with { type: "json" };
import { main } from "./main.ts";

const folder = mkdtempSync(path.join(tmpdir(), "sizes-"));
afterAll(() => rmSync(folder, { recursive: true }));

const sample = new URL("../../samples/pullover-no-9.md", import.meta.url).pathname;

function keep(name: string, content: string): string {
  writeFileSync(path.join(folder, name), content);
  return path.join(folder, name);
}

async function run(...args: readonly string[]) {
  let out = "";
  let err = "";
  const code = await main(args, { out: (text) => (out += text), err: (text) => (err += text), columns: 90 });
  return { code, out, err };
}

const COWL = `---
title: Plain Cowl
sizes: S M L
fabrics:
  plain: { swatch: { washed: 30 sts x 30 rows in 20 x 20 cm } } # dried flat
plan:
  cowl width: 20 24 28 cm
counts:
  cowl sts: { along: cowl width, is: 30 38 42 } # before testing
---
# Cowl
Ch {cowl sts + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. {cowl sts} sts.
`;

describe("size", () => {
  it("shows what was wanted, made and missed", async () => {
    const { code, out, err } = await run("size", keep("cowl.md", COWL));
    expect({ code, err }).toEqual({ code: 0, err: "" });
    // 38 sts of 20/30 cm are 25.3 cm.
    expect(out).toMatch(
      /cowl width +20\.0 +25\.3 +28\.0\n +wanted +20\.0 +24\.0 +28\.0\n +missed +0\.0 +\+1\.3 +0\.0/,
    );
    expect(out).toContain("design/better-choice");
  });

  it("gives other programs an object that fits its schema", async () => {
    const validate = new Ajv2020({ strict: false }).compile(schema);
    for (const file of [sample, keep("cowl.md", COWL)]) {
      const { out } = await run("size", file, "--json");
      const report = JSON.parse(out);
      expect(validate(report), JSON.stringify(validate.errors)).toBe(true);
      for (const list of report.measurements.flatMap((one: Record<string, unknown>) => [
        one.wanted,
        one.made,
        one.missed,
        one.plusMinus,
      ]))
        expect(list).toHaveLength(report.sizes.length);
    }
  }, 120_000);

  it("says of the sample that nothing is better, and whom it fits", async () => {
    const report = JSON.parse((await run("size", sample, "--json")).out);
    expect(report.proven).toBe(true);
    expect(report.gap).toBe(0);
    expect(report.coverage.population).toBe("women");
    expect(report.coverage.share).toBeGreaterThan(0.5);
    expect(report.coverage.share).toBeLessThanOrEqual(1);
    // Nobody in the survey of women has a bust above 126.6 cm; every other size is taken by a share of those who are fitted.
    expect(report.coverage.notJudged).toEqual(["3X", "4X", "5X"]);
    expect(report.coverage.bySize.slice(6)).toEqual([null, null, null]);
    expect(
      report.coverage.bySize.slice(0, 6).reduce((sum: number, share: number) => sum + share, 0),
    ).toBeCloseTo(report.coverage.share, 9);
    expect(report.coverage.widening.map(({ measurement }: { measurement: string }) => measurement)).toEqual(
      expect.arrayContaining(["bust", "upper arm"]),
    );
    expect(report.nextBest.costsMore).toBeGreaterThanOrEqual(0);
    expect(report.nextBest.changes.length).toBeGreaterThan(0);
    expect(
      report.ties.every(({ difference }: { difference: number[] }) => difference.every((one) => one === 0)),
    ).toBe(true);
  }, 120_000);

  it("says which rule costs the most and what is next best", async () => {
    // 20 and 28 cm are 30 and 42 sts; an odd count misses each by a stitch of 20/30 cm, 24 cm by 35 or 37 sts alike.
    const odd = COWL.replace("is: 30 38 42", "parity: odd, is: 31 37 43");
    const { out } = await run("size", keep("odd.md", odd));
    expect(out.replace(/\s+/g, " ")).toContain(
      'The rule that costs the most, of misses and uneven steps that would go without it: "cowl sts is odd" (line 9), 2.0 cm.',
    );
    expect(out.replace(/\s+/g, " ")).toMatch(/The next best choice: cowl sts \d\d for \d\d in [SML]/);
    const report = JSON.parse((await run("size", keep("odd.md", odd), "--json")).out);
    expect(report.rules[0]).toMatchObject({ text: "cowl sts is odd", line: 9 });
  });

  it("minds the largest miss where the design says so", async () => {
    // Steps of 6 sts: 30 (20 cm), 36 (24 cm) and 42 (28 cm) are exact, and the size between is held off by 2 sts.
    const text = COWL.replace("counts:", "aim: largest miss\ncounts:");
    const report = JSON.parse((await run("size", keep("aim.md", text), "--json")).out);
    expect(report).toMatchObject({ proven: false, gap: 1.333 });
    const { out } = await run("size", keep("aim.md", text));
    expect(out).toContain("The largest miss is 1.3 cm; a choice with 0.0 cm was found.");
  });

  it("refuses a plain text and a file that is not there", async () => {
    expect(await run("size", keep("plain.txt", "Row 1: Ch 10."))).toMatchObject({ code: 2, out: "" });
    expect(await run("size", path.join(folder, "none.md"))).toMatchObject({ code: 2, out: "" });
  });
});

describe("grade", () => {
  it("shows the difference, then writes the numbers and nothing else", async () => {
    const file = keep("grade.md", COWL);
    const dry = await run("grade", "--dry-run", file);
    expect(dry).toMatchObject({ code: 0, err: "" });
    expect(dry.out).toContain("It would change line 9.");
    expect(readFileSync(file, "utf8")).toBe(COWL);
    const done = await run("grade", file);
    expect(done.out).toMatch(/cowl sts += {2}36 +=\n +was +30 +38 +42/);
    expect(done.code).toBe(0);
    expect(readFileSync(file, "utf8")).toBe(COWL.replace("30 38 42", "30 36 42"));
    expect(readdirSync(folder).filter((name) => name.endsWith(".new"))).toEqual([]);
    expect((await run("grade", file)).out).toContain("stays as it is");
  });

  it("keeps the mark at the beginning of a file", async () => {
    const file = keep("marked.md", `\uFEFF${COWL}`);
    await run("grade", file);
    expect(readFileSync(file, "utf8")).toBe(`\uFEFF${COWL.replace("30 38 42", "30 36 42")}`);
  });

  it("leaves the sample as it stands", async () => {
    const text = readFileSync(sample, "utf8");
    const copy = keep("sample.md", text);
    const { code, out } = await run("grade", copy);
    expect(code).toBe(0);
    expect(out).toContain("stays as it is");
    expect(readFileSync(copy, "utf8")).toBe(text);
  });

  it("names rules that clash and writes nothing", async () => {
    const clash = COWL.replace("is: 30 38 42", "multiple: 4 + 1, parity: even, is: 30 38 42");
    const file = keep("clash.md", clash);
    const { code, out } = await run("grade", file);
    expect(code).toBe(1);
    expect(out).toContain("cowl sts is a multiple of 4 plus 1 (line 9) and cowl sts is even (line 9)");
    expect(readFileSync(file, "utf8")).toBe(clash);
    expect(JSON.parse((await run("grade", file, "--json")).out)).toMatchObject({
      graded: false,
      why: "rules clash",
    });
  });

  it("tells other programs what changed", async () => {
    const report = JSON.parse((await run("grade", "--dry-run", "--json", keep("json.md", COWL))).out);
    expect(report).toMatchObject({
      graded: true,
      written: false,
      proven: true,
      changes: [{ name: "cowl sts", before: [30, 38, 42], after: [30, 36, 42] }],
    });
  });
});
