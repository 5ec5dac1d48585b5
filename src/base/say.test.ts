import { describe, expect, it } from "vitest";
import { declare } from "./finding.ts";
import {
  agree,
  capital,
  counted,
  inSizes,
  ordinal,
  plural,
  said,
  sayCm,
  sayNumbers,
  sentence,
} from "./say.ts";

describe("sizes at the end of a sentence", () => {
  it("names one", () => expect(inSizes([{ size: "M" }])).toBe(" in size M"));
  it("names several", () => expect(inSizes(["M", "L", "XL"])).toBe(" in sizes M, L and XL"));
  it("names each once", () => expect(inSizes([{ size: "M" }, { size: "M" }])).toBe(" in size M"));
  it("says none where the pattern is not graded", () => expect(inSizes([{ size: "one size" }])).toBe(""));
  it("says none where none is meant", () => expect(inSizes([])).toBe(""));
});

describe("numbers", () => {
  it("stand in one list", () => expect(sayNumbers([84, 92, 98])).toBe("84, 92 and 98"));
  it("are said once when alike", () => expect(sayNumbers([2, 2, 2])).toBe("2"));
  it("come with their word", () => {
    expect(counted(1, "st")).toBe("1 st");
    expect(counted(0, "st")).toBe("0 sts");
    expect(counted([1, 1], "row")).toBe("1 row");
    expect(counted([1, 2], "row")).toBe("1 and 2 rows");
    expect(counted([84, 92, 98], "dc")).toBe("84, 92 and 98 dc");
  });
  it("choose the verb", () => {
    expect(agree([1, 1], "stays", "stay")).toBe("stays");
    expect(agree([1, 2], "stays", "stay")).toBe("stay");
  });
  it("measure to a millimetre", () => {
    expect(sayCm(43)).toBe("43 cm");
    expect(sayCm([40, 42.45])).toBe("40 and 42.5 cm");
    expect(sayCm(0.1 + 0.2)).toBe("0.3 cm");
  });
});

it.each([
  ["st", "sts"],
  ["sl st", "sl sts"],
  ["V-st", "V-sts"],
  ["ch-2 sp", "ch-2 sps"],
  ["dc", "dc"],
  ["ch", "ch"],
  ["dc2tog", "dc2tog"],
  ["shell", "shells"],
  ["shells", "shells"],
  ["sts", "sts"],
  ["cross", "crosses"],
  ["stitch", "stitches"],
  ["row", "rows"],
  ["daisy", "daisies"],
])("plural of %s is %s", (one, many) => expect(plural(one)).toBe(many));

it.each([
  [1, "1st"],
  [2, "2nd"],
  [3, "3rd"],
  [4, "4th"],
  [11, "11th"],
  [12, "12th"],
  [13, "13th"],
  [21, "21st"],
  [112, "112th"],
  [122, "122nd"],
])("%i is said %s", (n, words) => expect(ordinal(n)).toBe(words));

it("makes sentences", () => {
  expect(sentence("row 11 ends with 66 sts")).toBe("Row 11 ends with 66 sts.");
  expect(sentence(' It ends with "turn." ')).toBe('It ends with "turn."');
  expect(sentence("done.")).toBe("Done.");
  expect(capital("the 3rd time")).toBe("The 3rd time");
});

it("says a finding from what to do last", () => {
  const kind = declare<{ n: number }>({
    code: "test/said",
    severity: "note",
    what: (d) => `What ${d.n}.`,
    why: (d) => `Why ${d.n}.`,
    todo: () => ["First.", "Second."],
  });
  expect(said(kind, { n: 3 })).toEqual(["What 3.", "Why 3.", "First.", "Second."]);
});
