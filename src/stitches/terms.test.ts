import { describe, expect, it } from "vitest";
import { lookupStitch } from "./lookup.ts";
import { LONGEST_SIGN, TERM_PAIRS, TERM_SIGNS, termSign, wordIn } from "./terms.ts";

describe("termSign", () => {
  // Trade handbook, section 5.2: the presence of sc proves American terms.
  it("takes sc as proof of American terms", () => {
    expect(termSign("sc")).toMatchObject({ terms: "US", weight: 10 });
    expect(termSign("S.C.")).toMatchObject({ terms: "US", weight: 10 });
    expect(termSign("single crochets")).toMatchObject({ terms: "US", weight: 10 });
  });

  // Notation survey, section 10: htr, miss and tension are the tells of British text, tr alone is not.
  it("takes htr and tension for British, and leans on miss", () => {
    expect(termSign("htr")).toMatchObject({ terms: "UK", weight: 10 });
    expect(termSign("tension")).toMatchObject({ terms: "UK", weight: 3 });
    expect(termSign("miss")).toMatchObject({ terms: "UK", weight: 1 });
    for (const word of [
      "tr",
      "dc",
      "dtr",
      "trtr",
      "dc2tog",
      "tr2tog",
      "ch",
      "sl st",
      "treble",
      "double crochet",
    ]) {
      expect(termSign(word)).toBeUndefined();
    }
  });

  it("lets no deciding stitch word be a stitch of the other terms", () => {
    for (const sign of TERM_SIGNS.filter((one) => one.weight === 10)) {
      expect(lookupStitch(sign.words, sign.terms === "US" ? "UK" : "US")?.code, sign.words).toBeUndefined();
    }
  });

  it("has each word once and none longer than it says", () => {
    expect(new Set(TERM_SIGNS.map((one) => one.words)).size).toBe(TERM_SIGNS.length);
    expect(Math.max(...TERM_SIGNS.map((one) => one.words.split(" ").length))).toBe(LONGEST_SIGN);
  });
});

it("says words in the other terms", () => {
  expect(wordIn("gauge", "UK")).toBe("tension");
  expect(wordIn("Miss", "US")).toBe("skip");
  expect(wordIn("yrh", "US")).toBe("yo");
  expect(wordIn("turn", "UK")).toBeUndefined();
  expect(wordIn("fasten off", "UK")).toBeUndefined();
});

it("comes back to the same word", () => {
  for (const { us, uk } of TERM_PAIRS.filter((pair) => pair.us !== pair.uk && pair.us !== "sk")) {
    expect(wordIn(wordIn(us, "UK")!, "US")).toBe(us);
    expect(wordIn(us, "UK")).toBe(uk);
  }
});
