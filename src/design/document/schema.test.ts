import { readFileSync } from "node:fs";
import Ajv from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readTable } from "./read-table.ts";
import { findTable } from "./table.ts";

const read = (name: string): string => readFileSync(new URL(`../../../${name}`, import.meta.url), "utf8");
const schema = JSON.parse(read("docs/design-document.schema.json"));
const validate = new Ajv({ strict: false }).compile(schema);

const tableOf = (text: string): string => {
  const place = findTable(text);
  return place ? text.slice(place.yaml.from, place.yaml.to) : "";
};

describe("the schema for editors", () => {
  it("takes the sample", () => {
    expect(validate(parse(tableOf(read("samples/pullover-no-9.md"))))).toBe(true);
    expect(validate(parse("terms: French"))).toBe(false);
    expect(validate(parse("counts: { body sts: { order: sideways } }"))).toBe(false);
  });

  it("names the entries that the reader knows, and no others", () => {
    const unknown = (entries: readonly string[], where: (entry: string) => string) =>
      entries.filter((entry) =>
        readTable(`---\n${where(entry)}\n---\n`, () => ["M"])?.findings.some(
          ({ code }) => code === "design/entry-unknown",
        ),
      );
    expect(unknown([...Object.keys(schema.properties), "nonsense"], (entry) => `${entry}: x`)).toEqual([
      "nonsense",
    ]);
    const count = Object.keys(schema.$defs.count.properties);
    expect(unknown([...count, "nonsense"], (entry) => `counts: { a sts: { ${entry}: x } }`)).toEqual([
      "nonsense",
    ]);
    const yarn = Object.keys(schema.$defs.yarn.properties);
    expect(unknown([...yarn, "nonsense"], (entry) => `yarn: { main: { ${entry}: x } }`)).toEqual([
      "nonsense",
    ]);
    const fabric = Object.keys(schema.$defs.fabric.properties);
    expect(unknown([...fabric, "nonsense"], (entry) => `fabrics: { a: { ${entry}: x } }`)).toEqual([
      "nonsense",
    ]);
  });

  it("takes every example of the manual that is a whole table", () => {
    const manual = read("docs/design-document.md");
    const blocks = [...manual.matchAll(/(?:^ {4}.*\n|^\n(?= {4}))+/gm)].map(([block]) =>
      block.replace(/^ {4}/gm, "").trimStart(),
    );
    const maps = blocks.map((block) => tableOf(block) || block).filter((block) => /^[a-z]/.test(block));
    expect(maps.length).toBeGreaterThan(8);
    for (const block of maps) {
      expect(validate(parse(block)), block).toBe(true);
      const found = readTable(`---\n${block}\n---\n`, () => ["S", "M", "L"])?.findings ?? [];
      expect(
        found
          .filter(({ code }) => ["design/table-not-read", "design/entry-unknown"].includes(code))
          .map(({ what }) => what),
        block,
      ).toEqual([]);
    }
  });
});
