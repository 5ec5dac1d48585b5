import { expect, it } from "vitest";
import { codesCovered, coversPlace } from "./families.ts";
import { hasStitch } from "./lookup.ts";

// Common practice, no source: a row of posts or decreases is spoken of by its plain stitch in the next row.
it.each([
  ["dc", "dc"],
  ["dc", "dc2tog"],
  ["dc", "fpdc"],
  ["dc", "edc"],
  ["dc", "fdc"],
  ["dc", "crossed-dc"],
  ["sc", "invdec"],
  ["sc", "fsc"],
  ["sc2tog", "invdec"],
  ["fpdc", "fpdc2tog"],
  ["cluster", "3tr-cluster"],
  ["shell", "7dc-shell"],
  ["picot", "ch4-picot"],
  ["my own stitch", "my own stitch"],
])("lets %s speak of %s", (name, code) => {
  expect(coversPlace(name, code)).toBe(true);
});

it.each([
  ["dc", "hdc"],
  ["dc", "tr"],
  ["dc", "cluster"],
  ["dc", "3dc-cluster"],
  ["fpdc", "dc"],
  ["fpdc", "bpdc"],
  ["dc2tog", "dc"],
  ["sc", "sl st"],
  ["sl st", "sc"],
  ["3dc-cluster", "cluster"],
  ["bobble", "popcorn"],
  ["my own stitch", "dc"],
  ["dc", "my own stitch"],
])("does not let %s speak of %s", (name, code) => {
  expect(coversPlace(name, code)).toBe(false);
});

it("covers nothing that is not in the dictionary", () => {
  for (const name of [
    "dc",
    "fpdc",
    "cluster",
    "shell",
    "picot",
    "v-stitch",
    "puff",
    "popcorn",
    "bobble",
    "fan",
  ]) {
    const codes = codesCovered(name);
    expect(codes[0]).toBe(name);
    expect(codes.length).toBeGreaterThan(1);
    expect(codes.filter((code) => !hasStitch(code))).toEqual([]);
  }
});
