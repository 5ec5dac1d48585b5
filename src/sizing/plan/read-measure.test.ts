import { describe, expect, it } from "vitest";
import { linearOf } from "./expression.ts";
import { exactly, type Length, lengthOf, plusMinusOf } from "./length.ts";
import { readMeasure, type Vocabulary } from "./read-measure.ts";

const cm: Readonly<Record<string, number>> = {
  "finished bust": 100,
  bust: 90,
  "rib depth": 5,
  "back neck": 20,
  back: 40,
};
const lengths: Vocabulary = {
  sizes: 3,
  names: new Map(Object.keys(cm).map((name) => [name, name])),
  fabrics: ["bump", "front rib"],
  about: "lengths",
};

/** The length of the words in the second of three sizes; a row of any fabric is 0.5 cm, a stitch 0.25 cm. */
function worthOf(words: string): number | string {
  const { expression, slip } = readMeasure(words, lengths);
  if (slip) return `${words.slice(slip.span.from, slip.span.to)}| ${slip.say}`;
  const length = lengthOf(expression, 1, {
    measure: (name) => exactly(cm[name] as number),
    fabric: (_, of, count) => exactly(count * (of === "rows" ? 0.5 : 0.25)),
  });
  return Math.round((length?.cm ?? Number.NaN) * 1e6) / 1e6;
}

describe("measures in words", () => {
  it.each([
    ["2 cm", 2],
    ["25 mm", 2.5],
    ["1 in", 2.54],
    ["5½ in", 13.97],
    ["5 1/2 inches", 13.97],
    ['3"', 7.62],
    ["half of finished bust", 50],
    ["half finished bust", 50],
    ["Half of the Finished  Bust plus 2 cm", 52],
    ["half of (finished bust plus 2 cm)", 51],
    ["bust plus 10 cm minus 4 cm", 96],
    ["back neck minus rib depth", 15],
    ["twice rib depth", 10],
    ["3 times rib depth", 15],
    ["85 % of bust", 76.5],
    ["85 percent of bust", 76.5],
    ["a third of bust", 30],
    ["three quarters of back", 30],
    ["3 for every 4 of back", 30],
    ["the larger of bust and finished bust", 100],
    ["the smaller of bust plus 20 cm and finished bust", 100],
    ["bust, at least 95 cm", 95],
    ["bust, at least 80 cm, at most 85 cm", 85],
    ["rib depth plus 3 rows in bump", 6.5],
    ["8 sts in front rib", 2],
    ["18 19.5 21 cm", 19.5],
    ["18 (19.5, 21) cm", 19.5],
    ["-5 cm", -5],
    ["minus 2 in", -5.08],
    ["1 in plus 1 cm", 3.54],
  ])("%s", (words, value) => expect(worthOf(words)).toBe(value));

  // 1 inch is 25.4 mm exactly, by definition.
  it.each([
    ["2", "2| The unit is missing: cm, in or mm."],
    ["half of bust pus 2 cm", "pus 2 cm| These words are not understood here."],
    ["half of finishd bust plus 2 cm", 'finishd bust| There is no name "finishd bust".'],
    ["3 rows in bmp", 'bmp| There is no fabric "bmp".'],
    ["bust plus", "s| The words end where a measure should follow."],
    ["(bust plus 2 cm", "(| This bracket is never closed."],
    ["", "| Nothing stands here."],
    [
      "35,5 cm",
      "35,5| A comma between digits can part two numbers or a decimal. Write a point for a decimal, a space between two numbers.",
    ],
    ["18 19 cm", "18 19 cm| 2 numbers stand here, and there are 3 sizes."],
    [
      "((((((((((((((((((((((bust))))))))))))))))))))))",
      "((bust))))))))))))))))))))))| These words are nested too deeply.",
    ],
    ["process.exit(1)", 'process.exit| There is no name "process.exit".'],
  ])("says where %s goes wrong", (words, said) => expect(worthOf(words)).toBe(said));

  it("suggests the name that is nearest", () => {
    const { slip } = readMeasure("half of finishd bust", lengths);
    expect(slip?.about).toEqual({ is: "name", words: "finishd bust", near: "finished bust" });
  });

  it("reads any words without throwing", () => {
    const parts = [
      "half of",
      "bust",
      "plus",
      "(",
      ")",
      "2",
      "cm",
      ",",
      "at least",
      "%",
      "rows in",
      "-",
      "½",
      "the",
      "😀",
    ];
    for (let seed = 1; seed < 3000; seed++) {
      let state = seed;
      const words = Array.from({ length: seed % 9 }, () => {
        state = (state * 1103515245 + 12345) % 2147483648;
        return parts[state % parts.length];
      }).join(" ");
      const { expression, slip } = readMeasure(words, lengths);
      expect(expression === null, words).toBe(slip !== null);
      if (slip) {
        expect(slip.span.from, words).toBeLessThanOrEqual(slip.span.to);
        expect(slip.span.to, words).toBeLessThanOrEqual(words.length);
      }
    }
  });
});

describe("counts in words", () => {
  const counts: Vocabulary = {
    sizes: 3,
    names: new Map(["chest sts", "notch sts", "sts"].map((name) => [name, name])),
    about: "counts",
  };
  it.each([
    ["chest sts plus twice notch sts", { "chest sts": 1, "notch sts": 2 }, [0]],
    ["chest sts + 2 x notch sts - 1", { "chest sts": 1, "notch sts": 2 }, [-1]],
    ["half of (chest sts minus 3 sts)", { "chest sts": 0.5 }, [-1.5]],
    ["3 for every 4 notch sts", { "notch sts": 0.75 }, [0]],
    ["chest sts minus chest sts plus 1 2 3", {}, [1, 2, 3]],
  ])("%s", (words, times, plus) => {
    const { expression } = readMeasure(words, counts);
    const line = expression && linearOf(expression);
    expect(Object.fromEntries(line?.times ?? [])).toEqual(times);
    expect(line?.plus).toEqual(plus);
  });
  it("have no lengths among them", () =>
    expect(readMeasure("chest sts plus 2 cm", counts).slip?.say).toBe(
      "A length cannot stand among counts. Say it in stitches or rows.",
    ));
});

describe("plus or minus of a measure", () => {
  const body: Length = { cm: 50, restsOn: new Map([["bump stitches", 50]]) };
  const shares = new Map([
    ["bump stitches", 0.01],
    ["bump rows", 0.02],
  ]);
  it("is twice the standard uncertainty", () => expect(plusMinusOf(body, shares)).toBeCloseTo(1, 9));
  it("adds up within one gauge and in squares across two", () => {
    const lookup = {
      measure: (name: string): Length =>
        name === "bust" ? body : { cm: 20, restsOn: new Map([["bump rows", 20]]) },
      fabric: () => null,
    };
    const twice = readMeasure("twice bust", lengths).expression;
    const both = readMeasure("bust plus back", lengths).expression;
    expect(plusMinusOf(lengthOf(twice!, 0, lookup)!, shares)).toBeCloseTo(2, 9);
    expect(plusMinusOf(lengthOf(both!, 0, lookup)!, shares)).toBeCloseTo(2 * Math.hypot(0.5, 0.4), 9);
  });
});
