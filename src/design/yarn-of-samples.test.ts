import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { apart, firstFall, pulloverMetres } from "../yarn/index.ts";
import { proveDesign } from "./prove.ts";

const folder = new URL("../../samples/", import.meta.url);
const designs = readdirSync(folder)
  .filter((name) => name.endsWith(".md"))
  .map((name) => ({ name, proof: proveDesign(readFileSync(new URL(name, folder), "utf8")) }))
  .filter(({ proof }) => proof.yarn && !proof.yarn.rough);

it("has a sample with weighed swatches", () => expect(designs.length).toBeGreaterThan(0));

/** Trade handbook, 4.5, for every sample whose swatches are weighed. */
describe.each(designs)("the yarn of $name", ({ proof }) => {
  const yarn = proof.yarn as NonNullable<typeof proof.yarn>;
  const metres = proof.sizes.map((_, size) =>
    yarn.yarns.reduce((sum, one) => sum + (one.metres[size] ?? Number.NaN), 0),
  );

  it("grows from size to size, by no more and no less than garments do", () => {
    expect(firstFall(metres)).toBeNull();
    if (proof.sizes.length < 9) return;
    const growth = (metres.at(-1) ?? 0) / (metres[0] ?? 1);
    expect(growth).toBeGreaterThan(1.5);
    expect(growth).toBeLessThan(2.6);
  });

  it("lies in the range of its class", () => {
    const classes = new Set(proof.table?.yarns.map(({ yarnClass }) => yarnClass));
    const [only] = classes;
    const range = classes.size === 1 && typeof only === "number" ? pulloverMetres(only) : null;
    // The published ranges are of adults' pullovers.
    if (!range || !/pullover|sweater/i.test(proof.title)) return;
    expect(Math.min(...metres)).toBeGreaterThan(range.from);
    expect(Math.max(...metres)).toBeLessThan(range.to);
  });

  it("comes out by stitches and by area within a tenth of each other", () => {
    for (const { ways } of yarn.yarns)
      for (const two of ways) expect(Math.abs(apart(two) ?? 0)).toBeLessThan(0.1);
    expect(
      proof.findings.filter(
        ({ code }) => /yarn|swatch-weight|colour/.test(code) && code.startsWith("design/"),
      ),
    ).toEqual([]);
  });
});

it("is within 1 in 100 by both ways in the pullover, as the manual says", () => {
  const pullover = designs.find(({ name }) => name === "pullover-no-9.md")?.proof.yarn;
  for (const two of pullover?.yarns[0]?.ways ?? []) expect(Math.abs(apart(two) ?? 1)).toBeLessThan(0.01);
});

it("has every large piece of the pullover within a tenth by both ways", () => {
  const pullover = designs.find(({ name }) => name === "pullover-no-9.md")?.proof.yarn;
  const large = pullover?.pieces.filter(({ name }) => ["Back", "Front", "Sleeves"].includes(name)) ?? [];
  expect(large).toHaveLength(3);
  for (const { yarns } of large)
    for (const ways of yarns) for (const two of ways) expect(Math.abs(apart(two) ?? 1)).toBeLessThan(0.1);
});
