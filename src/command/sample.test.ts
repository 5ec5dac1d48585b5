import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { type Proof, proveDesign } from "../design/index.ts";
import { main } from "./main.ts";

const file = new URL("../../samples/pullover-no-9.md", import.meta.url).pathname;
const text = readFileSync(file, "utf8");

async function run(...args: readonly string[]): Promise<string> {
  let out = "";
  await main(args, { out: (words) => (out += words), err: () => {}, columns: 160 });
  return out;
}

interface Report {
  readonly sizes: readonly string[];
  readonly measurements: readonly {
    readonly name: string;
    readonly made: readonly number[];
    readonly wanted: readonly number[];
    readonly missed: readonly number[];
    readonly plusMinus: readonly number[];
  }[];
  readonly counts: readonly {
    readonly name: string;
    readonly values: readonly number[];
    readonly worked: readonly number[];
  }[];
  readonly pieces: readonly {
    readonly rows: readonly { readonly line: number; readonly stitches: readonly (number | null)[] }[];
  }[];
}

let proof: Proof;
let sizes: Report;
let checked: Report;
let shown: readonly string[];
let graded: { readonly changes: readonly unknown[]; readonly after: Report };
beforeAll(async () => {
  proof = proveDesign(text);
  sizes = JSON.parse(await run("size", "--json", file));
  checked = JSON.parse(await run("check", "--json", file));
  shown = (await run("size", file)).split("\n");
  graded = JSON.parse(await run("grade", "--dry-run", "--json", file));
}, 120_000);

/** Numbers of a line of a table, behind its name. */
const numbersBehind = (name: string, from: number): number[] => {
  const line =
    shown.slice(from).find((one) => one.trimStart().startsWith(`${name} `) || one.trim() === name) ?? "";
  return line.trimStart().slice(name.length).replaceAll("−", "-").trim().split(/\s+/).map(Number);
};
const tenth = (cm: number | null | undefined): string => (cm ?? Number.NaN).toFixed(1).replace("-0.0", "0.0");
/** "18 (19.5, 20½)" as numbers. */
const FRACTIONS: Readonly<Record<string, number>> = { "¼": 0.25, "½": 0.5, "¾": 0.75 };
const listed = (words: string): number[] =>
  [...words.matchAll(/(\d+(?:\.\d+)?)([¼½¾])?/gu)].map(
    ([, whole, part]) => Number(whole) + (part ? (FRACTIONS[part] ?? 0) : 0),
  );

describe("every number of the sample is the same however it is asked for", () => {
  it("its counts: table, worked rows, both reports, the page and the best choice", () => {
    const from = shown.findIndex((line) => line.startsWith("Counts"));
    expect(proof.counts?.length).toBeGreaterThan(20);
    for (const [at, { name, values, worked }] of (proof.counts ?? []).entries()) {
      expect(worked, name).toEqual(values);
      expect(sizes.counts[at], name).toMatchObject({ name, values, worked });
      expect(graded.after.counts[at]?.values, name).toEqual(values);
      expect(numbersBehind(name, from), name).toEqual(values);
      expect(proof.choice?.counts?.get(name), name).toEqual(values);
    }
    expect(graded.changes).toEqual([]);
  });

  it("its rows: every count in braces is what the maker counts there, in the proof and in the report", () => {
    const counts = new Map(proof.counts?.map(({ name, values }) => [name, values ?? []] as const));
    const rows = checked.pieces.flatMap((piece) => piece.rows);
    const lines = proof.worked.pieces.flatMap((piece) => piece.lines);
    expect(rows.map(({ stitches }) => stitches)).toEqual(lines.map(({ stitches }) => stitches));
    let held = 0;
    for (const { line, stitches } of rows) {
      // The last count of the line, "{body sts} sts.", is that of its last row.
      const said = [...(text.split("\n")[line - 1] ?? "").matchAll(/\{([a-z ]+?)(?: \+ (\d+))?\} sts\./g)].at(
        -1,
      );
      const values = counts.get(said?.[1] ?? "");
      if (!values || stitches.every((count) => count === null)) continue;
      expect(stitches, said?.[0]).toEqual(values.map((count) => (count ?? 0) + Number(said?.[2] ?? 0)));
      held++;
    }
    expect(held).toBeGreaterThan(30);
  });

  it("its measurements: proof, report, page, and what the pattern prints in centimetres and inches", () => {
    const from = shown.findIndex((line) => line.startsWith("Finished"));
    for (const [at, one] of (proof.finished ?? []).entries()) {
      const report = sizes.measurements[at];
      expect(report?.name).toBe(one.name);
      for (const key of ["made", "wanted", "missed", "plusMinus"] as const)
        for (const [size, cm] of one[key].entries())
          expect(report?.[key][size], `${one.name} ${key}`).toBeCloseTo(cm ?? Number.NaN, 3);
      expect(numbersBehind(one.name, from).map(tenth), one.name).toEqual(one.made.map(tenth));
      expect(graded.after.measurements[at]?.made, one.name).toEqual(report?.made);
    }
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
      const [cm = [], inches = []] = line
        .slice(words.length + 1)
        .split("[")
        .map((part) => listed(part.replace(/(?:cm|").*/u, "")));
      const made = proof.finished?.find((one) => one.name === name)?.made ?? [];
      expect([cm.length, inches.length], words).toEqual([9, 9]);
      for (const [size, length] of made.entries()) {
        // Printed to half a centimetre and to a quarter of an inch, each rounded for itself.
        expect(Math.abs((cm[size] ?? 0) - (length ?? 0)), `${words} cm`).toBeLessThanOrEqual(0.35);
        expect(Math.abs((inches[size] ?? 0) - (length ?? 0) / 2.54), `${words} in`).toBeLessThanOrEqual(0.2);
      }
    }
  });
});
