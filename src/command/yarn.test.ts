import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, describe, expect, it } from "vitest";
import schema from "../../docs/yarn-report.schema.json" with { type: "json" };
import { main } from "./main.ts";

const folder = mkdtempSync(path.join(tmpdir(), "yarn-"));
afterAll(() => rmSync(folder, { recursive: true }));

const samples = new URL("../../samples/", import.meta.url).pathname;
const sample = path.join(samples, "pullover-no-9.md");

function keep(name: string, content: string): string {
  writeFileSync(path.join(folder, name), content);
  return path.join(folder, name);
}

async function run(...args: readonly string[]) {
  let out = "";
  let err = "";
  const code = await main(args, { out: (text) => (out += text), err: (text) => (err += text), columns: 80 });
  return { code, out, err };
}

const COWL = `---
title: Two-Colour Cowl
terms: US
sizes: S M
yarn:
  oat: { class: 4, metres: 100, grams: 50, price: 5 EUR, called: A }
  rust:
    class: 4
    metres: 100
    grams: 50
    price: 5.50 EUR
    called: B
    instead: { brick: { class: 5, metres: 55, grams: 50, price: 4 EUR } }
fabrics:
  plain: { stitch: sc, swatch: { washed: 28 sts x 32 rows in 20 x 20 cm, grams: 25, minutes: 48 } }
plan:
  cowl width: 20 24 cm
counts:
  cowl sts: { along: cowl width, is: 28 34 }
making: { tails: 15 cm, safety: 5 %, finishing: 30 minutes }
costs: { price: 7 EUR, fee: 10 %, hours: 50, wage: 15 EUR, editing: 416 EUR, sold: 200 }
---
# Cowl
With A, ch {cowl sts + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. {cowl sts} sts.
Rows 2-20: Ch 1 (does not count as a st), sc in each st across, turn. {cowl sts} sts.
Rows 21-30: With B, rep Row 2. {cowl sts} sts.
`;

describe("yarn", () => {
  it("reckons each colour by itself, in balls rounded up", async () => {
    const { code, out, err } = await run("yarn", keep("cowl.md", COWL), "--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { colours, hours, finishing, money, instead, rough, timed } = JSON.parse(out);
    expect(colours.map(({ name }: { name: string }) => name)).toEqual(["oat", "rust"]);
    // Trade handbook, 4.1: grams = area x swatch grams / swatch area. 20 and 10 rows of 28 of the swatch's 28 x 32 stitches.
    const [oat, rust] = colours;
    expect(oat.byArea[0]).toBeCloseTo((20 / 32) * 25 * 2, 0);
    expect(rust.byArea[0]).toBeCloseTo((10 / 32) * 25 * 2, 0);
    expect(oat.balls).toEqual([1, 1]);
    expect(oat.cost).toEqual([5, 5]);
    // The swatch's 896 stitches took 48 minutes; the first row's chain is in the hand too.
    expect(hours[0]).toBeCloseTo(((30 * 28 + 29) * 48) / 896 / 60 + 0.5, 1);
    expect(finishing).toEqual([0.5, 0.5]);
    // Trade handbook, section 9: cash 416, 50 h at 15, price 7, fee 10 %: 186 copies.
    expect(money).toMatchObject({ copiesForAll: 186, cash: 416, left: 844 });
    expect(instead).toMatchObject([{ of: "rust", name: "brick", fit: "another gauge" }]);
    expect([rough, timed]).toEqual([false, true]);
  });

  it("gives other programs an object that fits its schema", async () => {
    const validate = new Ajv2020({ strict: false }).compile(schema);
    const texts = readdirSync(samples)
      .filter((name) => /blanket|hat|leaflet|pullover/.test(name))
      .map((name) => path.join(samples, name));
    expect(texts.length).toBeGreaterThan(4);
    for (const file of [...texts, keep("cowl.md", COWL)]) {
      const { out } = await run("yarn", file, "--json");
      expect(validate(JSON.parse(out)), `${file}: ${JSON.stringify(validate.errors)}`).toBe(true);
    }
  }, 120_000);

  it("sets it out in 80 columns", async () => {
    const { code, out } = await run("yarn", sample);
    expect(code).toBe(0);
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    for (const words of ["To buy", "main, balls", "Used, m", "Sleeves, 2 of them", "Hours", "Money: a copy"])
      expect(out).toContain(words);
  });

  it("tells a text without a table roughly, and says what is missing", async () => {
    const text =
      "Sizes: S (M)\n\nGauge: 14 sts and 16 rows = 10 cm in sc.\n\n# Square\nCh 15 (29).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 14 (28) sc.\nRows 2-16: Ch 1 (does not count as a st), sc in each st across, turn.\n";
    const { out } = await run("yarn", keep("square.txt", text), "--json");
    const { colours, rough, missing } = JSON.parse(out);
    expect(rough).toBe(true);
    // One maker's squares took 31.4 in of yarn a square inch, 12.4 cm a cm2 (trade handbook, 4.2): 100 cm2 are 12.4 m.
    expect(colours[0].byStitch[0]).toBeGreaterThan(12.4 * 0.75);
    expect(colours[0].byStitch[0]).toBeLessThan(12.4 * 1.25);
    expect(colours[0].balls).toEqual([null, null]);
    expect(missing.join(" ")).toContain("No swatch was weighed");
    // The table of yarns has 11 to 14 stitches for a 6 mm hook, 12.5 in the middle, so the square of 14 stitches is larger.
    const hook = await run("yarn", keep("hook.txt", text.replace(/Gauge.*/, "Hook: 6 mm")), "--json");
    expect(JSON.parse(hook.out).colours[0].byStitch[0]).toBeGreaterThan(colours[0].byStitch[0]);
    expect(JSON.parse(hook.out).missing.join(" ")).toContain("There is no gauge");
    // Rows as high as single crochet usually is: 16 of them at 0.714 / 0.6 x 0.857 cm.
    const across = await run("yarn", keep("across.txt", text.replace(" and 16 rows", "")), "--json");
    expect(JSON.parse(across.out).pieces[0].areaCm2[0]).toBeCloseTo((10 * 16 * (10 / 14) * 0.857) / 0.6, -1);
    expect(JSON.parse(across.out).missing.join(" ")).toContain("the gauge has no rows");
    const without = await run("yarn", keep("no-gauge.txt", text.replace(/Gauge.*\n/, "")));
    expect(without.out).toContain("A gauge is missing");
    expect(without.out).not.toContain("To buy");
  });

  it("asks for one file that can be read", async () => {
    expect((await run("yarn")).err).toContain("Name the file of the pattern.");
    expect((await run("yarn", path.join(folder, "nowhere.md"))).code).toBe(2);
    expect((await run("yarn", sample, "--dry-run")).err).toContain("--dry-run is no option of yarn.");
    expect((await run("yarn", "--help")).out).toContain("loopwright yarn FILE");
  });
});
