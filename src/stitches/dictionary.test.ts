import { describe, expect, it } from "vitest";
import { DICTIONARY } from "./dictionary.ts";
import { hasStitch, lookupStitch, nameIn, stitchOf } from "./lookup.ts";
import { meaningOf } from "./meanings.ts";
import { symbolOf } from "./symbols.ts";

/** Places that parts make: each stitch its own, "ch 2" two chains. */
function placesOf(parts: readonly string[]): number {
  return parts.reduce((sum, part) => {
    const chains = /^ch (\d+)$/u.exec(part);
    return sum + (chains === null ? stitchOf(part).makes : Number(chains[1]));
  }, 0);
}

describe("every record", () => {
  it("has a code of its own", () => {
    expect(new Set(DICTIONARY.map((stitch) => stitch.code)).size).toBe(DICTIONARY.length);
  });

  it.each(DICTIONARY)("$code agrees with itself", (stitch) => {
    const { code, takes, makes, parts, hold, height, symbol, source } = stitch;
    if (parts !== undefined) {
      expect(placesOf(parts)).toBe(makes);
    } else {
      // Without parts it makes stitches of its own kind; more than one at once is always spelled out in parts.
      expect(makes).toBeLessThanOrEqual(1);
    }
    expect(hold === "none").toBe(takes === 0 && makes > 0);
    expect(height).toBeGreaterThanOrEqual(0);
    expect(height === 0).toBe(code === "ch" || makes === 0);
    expect(symbolOf(symbol).code).toBe(symbol);
    expect(source).not.toBe("");
    for (const terms of ["US", "UK"] as const) {
      const names = terms === "US" ? stitch.us : stitch.uk;
      expect(lookupStitch(names.abbreviation, terms)).toBe(stitch);
      expect(lookupStitch(names.name, terms)).toBe(stitch);
      expect(meaningOf(code, terms)).not.toMatch(/[{}#@]|undefined/u);
    }
  });
});

describe("heights", () => {
  // Computation notes, section 8: rows of sc, hdc and dc over the same five inches stand as 1 : 1.45 : 1.91.
  it("are the measured ones where there are any", () => {
    expect(["sc", "hdc", "dc"].map((code) => stitchOf(code).height)).toEqual([1, 1.45, 1.91]);
  });

  it("grow with the stitch in every family of names", () => {
    for (const form of ["@", "fp@", "bp@", "@2tog", "@-inc", "fp@2tog"]) {
      const heights = ["sc", "hdc", "dc", "tr", "dtr", "trtr"].map(
        (code) => stitchOf(form.replace("@", code)).height,
      );
      expect([...heights].sort((a, b) => a - b)).toEqual(heights);
      expect(new Set(heights).size).toBe(heights.length);
    }
  });

  // The chart table's geometry makes hdc about 1.5, dc 2, tr 3, dtr 4 and trtr 5 high: within half a row up to tr.
  it("stay near the drawn ones", () => {
    for (const [code, drawn] of [
      ["hdc", 1.5],
      ["dc", 2],
      ["tr", 3],
      ["dtr", 4],
      ["trtr", 5],
    ] as const) {
      expect(Math.abs(stitchOf(code).height - drawn)).toBeLessThan(0.5);
    }
  });

  it("put an extended stitch between its plain one and the next", () => {
    expect(stitchOf("esc").height).toBeGreaterThan(stitchOf("sc").height);
    expect(stitchOf("esc").height).toBeLessThan(stitchOf("dc").height);
    expect(stitchOf("edc").height).toBeGreaterThan(stitchOf("dc").height);
    expect(stitchOf("edc").height).toBeLessThan(stitchOf("tr").height);
  });
});

// Trade handbook, section 5.2: sc=dc, hdc=htr, dc=tr, tr=dtr, dtr=trtr; chain and slip stitch are equal.
describe("names", () => {
  it.each([
    ["sc", "dc"],
    ["hdc", "htr"],
    ["dc", "tr"],
    ["tr", "dtr"],
    ["dtr", "trtr"],
    ["ch", "ch"],
    ["sl st", "sl st"],
  ])("an American %s is a British %s", (us, uk) => {
    expect(lookupStitch(uk, "UK")).toBe(lookupStitch(us, "US"));
  });

  it("the British name of a stitch is the American name of the next lower one", () => {
    const ladder = ["sc", "dc", "tr", "dtr", "trtr"];
    for (const [index, code] of ladder.slice(0, -1).entries()) {
      expect(lookupStitch(nameIn(code, "UK"), "US")?.code).toBe(ladder[index + 1]);
    }
    for (const form of ["@2tog", "e@", "f@", "@-inc", "spike @"]) {
      const lower = lookupStitch(form.replace("@", "sc"), "US")!;
      expect(lookupStitch(lower.uk.abbreviation, "US")?.code).toBe(
        lookupStitch(form.replace("@", "dc"), "US")?.code,
      );
    }
  });
});

describe("arithmetic", () => {
  // Computation notes, section 1: n together takes n and makes 1; an increase takes 1; a chain takes nothing.
  it.each([
    ["ch", 0, 1],
    ["sc", 1, 1],
    ["sc2tog", 2, 1],
    ["dc5tog", 5, 1],
    ["invdec", 2, 1],
    ["fpdc2tog", 2, 1],
    ["sc-inc", 1, 2],
    ["dc-double-inc", 1, 3],
    ["fsc", 0, 1],
    ["cluster", 1, 1],
    ["popcorn", 1, 1],
    ["shell", 1, 5],
    ["v-stitch", 1, 3],
    ["crossed-dc", 2, 2],
    ["picot", 0, 0],
  ])("%s takes %i and makes %i", (code, takes, makes) => {
    expect([stitchOf(code).takes, stitchOf(code).makes]).toEqual([takes, makes]);
  });

  it("leaves Tunisian crochet out", () => {
    expect(hasStitch("tss")).toBe(false);
    expect(lookupStitch("tunisian simple stitch", "US")).toBeUndefined();
  });
});
