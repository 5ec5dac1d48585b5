import { describe, expect, it } from "vitest";
import {
  abbreviationIn,
  allStitches,
  hasStitch,
  lookupStitch,
  nameIn,
  normaliseSpelling,
  spellings,
  stitchOf,
} from "./lookup.ts";
import type { Terms } from "./terms.ts";

const TERMS: readonly Terms[] = ["US", "UK"];
const code = (spelling: string, terms: Terms): string | undefined => lookupStitch(spelling, terms)?.code;

describe("lookupStitch", () => {
  // Spellings from the notation survey, sections 5 and 10.
  it.each([
    ["sc", "sc"],
    ["s.c.", "sc"],
    ["s c", "sc"],
    ["Single Crochet", "sc"],
    ["single crochets", "sc"],
    ["DC", "dc"],
    ["DCs", "dc"],
    ["DC's", "dc"],
    ["d.c.", "dc"],
    ["half double", "hdc"],
    ["triple crochet", "tr"],
    ["sl-st", "sl st"],
    ["slst", "sl st"],
    ["ss", "sl st"],
    ["sl sts", "sl st"],
    ["slip stitches", "sl st"],
    ["ch's", "ch"],
    ["chains", "ch"],
    ["fp-dc", "fpdc"],
    ["FPdc", "fpdc"],
    ["dcfp", "fpdc"],
    ["dcbp", "bpdc"],
    ["bptr", "bptr"],
    ["front post double crochet", "fpdc"],
    ["2 dc tog", "dc2tog"],
    ["dc 2 tog", "dc2tog"],
    ["sc 2tog", "sc2tog"],
    ["dc3-tog", "dc3tog"],
    ["DC2TG", "dc2tog"],
    ["2sctog", "sc2tog"],
    ["tr 2 tog", "tr2tog"],
    ["hdc dec", "hdc2tog"],
    ["hdcdec", "hdc2tog"],
    ["single crochet two together", "sc2tog"],
    ["invdec", "invdec"],
    ["long sc", "spike-sc"],
    ["V-st", "v-stitch"],
    ["V-sts", "v-stitch"],
    ["shells", "shell"],
    ["3-dc cl", "3dc-cluster"],
    ["FPdc2tog", "fpdc2tog"],
    ["fsc", "fsc"],
    ["crab st", "rsc"],
  ])("reads %s in US terms as %s", (spelling, wanted) => {
    expect(code(spelling, "US")).toBe(wanted);
  });

  it.each([
    ["d.c.", "sc"],
    ["htr", "hdc"],
    ["tr", "dc"],
    ["tc", "dc"],
    ["trebles", "dc"],
    ["ss", "sl st"],
    ["sl st", "sl st"],
    ["dcfp", "fpsc"],
    ["RtrF", "fpdc"],
    ["FPtr", "fpdc"],
    ["raised treble back", "bpdc"],
    ["dc2tog", "sc2tog"],
    ["ttr", "dtr"],
    ["3-tr cluster", "3dc-cluster"],
  ])("reads %s in UK terms as %s", (spelling, wanted) => {
    expect(code(spelling, "UK")).toBe(wanted);
  });

  it.each([
    "dtog",
    "2 sc inc",
    "3 sc dec",
    "st",
    "sp",
    "inc",
    "dec",
    "turn",
    "",
    "s",
    "pcs",
    "row",
    "tch",
    "1",
  ])("finds no stitch in %o", (word) => {
    for (const terms of TERMS) expect(lookupStitch(word, terms)).toBeUndefined();
  });

  // Common practice: "sc" in a key means that the pattern is in US terms.
  it("does not know sc and hdc in UK terms", () => {
    expect(lookupStitch("sc", "UK")).toBeUndefined();
    expect(lookupStitch("hdc", "UK")).toBeUndefined();
  });

  it.each(TERMS)("lets no %s spelling name two stitches", (terms) => {
    const named = new Map<string, string>();
    const clashes: string[] = [];
    for (const stitch of allStitches()) {
      const names = terms === "US" ? stitch.us : stitch.uk;
      const also = (terms === "US" ? stitch.alsoUs : stitch.alsoUk) ?? [];
      for (const spelling of [names.abbreviation, names.name, ...also].map(normaliseSpelling)) {
        const other = named.get(spelling);
        if (other !== undefined && other !== stitch.code)
          clashes.push(`${spelling}: ${other}, ${stitch.code}`);
        named.set(spelling, stitch.code);
      }
    }
    expect(clashes).toEqual([]);
    expect(spellings(terms)).toEqual([...named.keys()].sort());
  });

  it.each(TERMS)("lets no plural of a %s spelling name another stitch", (terms) => {
    const wrong = spellings(terms).filter(
      (spelling) => spelling !== "pc" && code(`${spelling}s`, terms) !== code(spelling, terms),
    );
    expect(wrong).toEqual([]);
  });
});

describe("stitchOf", () => {
  it("gives back every stitch by its code", () => {
    for (const stitch of allStitches()) expect(stitchOf(stitch.code)).toBe(stitch);
  });

  it("calls an unknown code the program's mistake", () => {
    expect(() => stitchOf("no such stitch")).toThrow(RangeError);
    expect(hasStitch("no such stitch")).toBe(false);
    expect(hasStitch("sc")).toBe(true);
  });
});

it("names a stitch in both sets of terms", () => {
  expect(nameIn("dc", "US")).toBe("double crochet");
  expect(nameIn("dc", "UK")).toBe("treble");
  expect(abbreviationIn("sc2tog", "UK")).toBe("dc2tog");
  expect(abbreviationIn("fpdc", "UK")).toBe("RtrF");
});
