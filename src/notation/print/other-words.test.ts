import { describe, expect, it } from "vitest";
import { inTerms } from "./other-words.ts";

// The pairs of terms: trade handbook, section 5.2.
describe("words outside the rows in the other terms", () => {
  it("changes an abbreviation list, both sides of it", () => {
    expect(inTerms("sc = single crochet\ndc = double crochet\nsl st = slip stitch", "US", "UK")).toBe(
      "dc = double crochet\ntr = treble\nsl st = slip stitch",
    );
    expect(inTerms("htr = half treble; dc2tog = double crochet 2 together", "UK", "US")).toBe(
      "hdc = half double crochet; sc2tog = single crochet 2 together",
    );
  });

  it("changes what the pattern says of its terms", () => {
    expect(inTerms("ABBREVIATIONS (US TERMS)", "US", "UK")).toBe("ABBREVIATIONS (UK TERMS)");
    expect(inTerms("Written in UK terms.", "UK", "US")).toBe("Written in US terms.");
  });

  it("keeps plurals, capitals and all that is not a stitch", () => {
    expect(inTerms("The ch 3 counts as a dc. Dc in the ring; 5 dcs.", "US", "UK")).toBe(
      "The ch 3 counts as a tr. Tr in the ring; 5 trs.",
    );
    expect(inTerms("Wash by hand and dry flat.", "US", "UK")).toBe("Wash by hand and dry flat.");
  });

  it("leaves a text alone that is in these terms already", () =>
    expect(inTerms("dc = double crochet", "US", "US")).toBe("dc = double crochet"));
});
