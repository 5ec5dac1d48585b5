import { expect, it } from "vitest";
import { lookupAbbreviations } from "./abbreviations.ts";

const terms = (abbreviation: string, inTerms: "US" | "UK" = "US"): string[] =>
  lookupAbbreviations(abbreviation, inTerms).map((entry) => entry.term);

it("gives a stitch in the terms asked for", () => {
  expect(terms("dc", "US")).toEqual(["double crochet"]);
  expect(terms("dc", "UK")).toEqual(["double crochet"]);
  expect(lookupAbbreviations("dc", "UK")[0]).toMatchObject({
    code: "sc",
    kind: "stitch",
    needsDefinition: true,
  });
  expect(terms("htr", "UK")).toEqual(["half treble"]);
  expect(terms("htr", "US")).toEqual([]);
});

it("gives all that an abbreviation stands for", () => {
  expect(terms("MC")).toEqual(["main color", "magic circle"]);
  expect(terms("MC", "UK")).toEqual(["main colour", "magic circle"]);
  expect(terms("m").sort()).toEqual(["marker", "meter"]);
});

// Spellings from the notation survey, section 10.
it.each([
  ["sts", "stitch"],
  ["nx.", "next"],
  ["ea", "each"],
  ["hk", "hook"],
  ["lps", "loop"],
  ["rpt", "repeat"],
  ["yoh", "yarn over hook"],
  ["W.o.h.", "yarn over hook"],
  ["Ch-sp", "chain space"],
  ["hdcdec", "half double crochet 2 together"],
  ["FPDC", "front post double crochet"],
])("knows %s", (abbreviation, term) => {
  expect(terms(abbreviation)).toEqual([term]);
});

it("knows what needs no explaining", () => {
  for (const plain of ["in", "cm", "st", "sts", "*", "[ ]", "oz"]) {
    expect(
      lookupAbbreviations(plain, "US").map((entry) => entry.needsDefinition),
      plain,
    ).toEqual([false]);
  }
  for (const short of ["sc", "rnd", "RS", "BLO", "tch", "fpdc", "pm"]) {
    expect(
      lookupAbbreviations(short, "US").map((entry) => entry.needsDefinition),
      short,
    ).toEqual([true]);
  }
});

it.each([
  "single crochet",
  "half double",
  "popcorn",
  "fan",
  "slip stitch",
  "front post dc",
  "picot",
  "banana",
  "turn",
])("does not take %s for an abbreviation", (word) => {
  expect(lookupAbbreviations(word, "US")).toEqual([]);
});
