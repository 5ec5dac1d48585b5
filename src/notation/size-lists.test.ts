import { describe, expect, it } from "vitest";
import { plainText } from "./glyphs.ts";
import { type ListFound, readSizeList } from "./size-lists.ts";

/** The list at the start of the text and what is left behind it. */
function read(
  text: string,
  sizes: number,
  afterRows = false,
): { values: ListFound["values"]; rest: string } | null {
  const found = readSizeList(plainText(text), 0, { sizes, afterRows });
  return found && { values: found.values, rest: text.slice(found.to) };
}

describe("size lists (notation survey, section 8)", () => {
  it.each([
    ["41 (45, 51, 57) sts", 4, [41, 45, 51, 57], " sts"],
    ["18 (20) sts", 2, [18, 20], " sts"],
    ["46(62) ch", 2, [46, 62], " ch"],
    ["28 (32-36-40) sts", 4, [28, 32, 36, 40], " sts"],
    ["8-10-12 sc", 3, [8, 10, 12], " sc"],
    ["60, 66, 72 sts total", 3, [60, 66, 72], " sts total"],
    ["(62, 66, 70)", 3, [62, 66, 70], ""],
    ["71 [75, 79] sc", 3, [71, 75, 79], " sc"],
    ["3.5[4:4.5]mm", 3, [3.5, 4, 4.5], "mm"],
    ["30:32:34 sts", 3, [30, 32, 34], " sts"],
    ["30 (32: 34: 36) sts", 4, [30, 32, 34, 36], " sts"],
    ["85 (93) 101 (109) 117 sts", 5, [85, 93, 101, 109, 117], " sts"],
    ["39 (43) 48 sts", 3, [39, 43, 48], " sts"],
    ["9/11 ch", 2, [9, 11], " ch"],
    ["105; 113; 121", 3, [105, 113, 121], ""],
    ["14, (15, 16) times", 3, [14, 15, 16], " times"],
    ["0 (1, 0, 1) time", 4, [0, 1, 0, 1], " time"],
    ["- (-, 3, 6) rows", 4, [null, null, 3, 6], " rows"],
    ["— (—, 3) rows", 3, [null, null, 3], " rows"],
    ["zero (one, two) time(s)", 3, [0, 1, 2], " time(s)"],
    ["40(44, 48) sts", 3, [40, 44, 48], " sts"],
    ["18 (18,18, 20) sts", 4, [18, 18, 18, 20], " sts"],
    ["40 (44,\n 48) sts", 3, [40, 44, 48], " sts"],
    ["24 (28-32} sts", 3, [24, 28, 32], " sts"],
    ["40 (44, 48 sts.", 3, [40, 44, 48], " sts."],
    ["1 (2, 3, 4) (5, 6) more", 6, [1, 2, 3, 4, 5, 6], " more"],
    ['9 (10, 11)" [23 cm]', 3, [9, 10, 11], '" [23 cm]'],
    ["11 (11½, 12) in", 3, [11, 11.5, 12], " in"],
    ["5 1/2 (6, 6 1/2) in", 3, [5.5, 6, 6.5], " in"],
    ["4th (5th, 6th) row", 3, [4, 5, 6], " row"],
    ["84 {92, 98} sts", 3, [84, 92, 98], " sts"],
  ] as const)("%j in %i sizes", (text, sizes, values, rest) =>
    expect(read(text, sizes)).toEqual({ values, rest }),
  );

  it("keeps a list with the wrong number of values", () => {
    expect(read("41 (45, 51) sts", 4)).toEqual({ values: [41, 45, 51], rest: " sts" });
    expect(read("41 (45, 51) sts", 1)).toEqual({ values: [41, 45, 51], rest: " sts" });
  });

  it.each([
    ["24 (24) sts", 1, " (24) sts"],
    ["24 (24 sts)", 3, " (24 sts)"],
    ["5 (24)", 2, " (24)"],
    ["3-5 sc", 3, "-5 sc"],
    ["8-10 rows", 1, "-10 rows"],
    ["5, 2 in next", 2, ", 2 in next"],
    ["5 (6, 2 in next) 4 times", 3, " (6, 2 in next) 4 times"],
    ["12 (2 sc, 4 dc) in next", 3, " (2 sc, 4 dc) in next"],
    ["40 sts (44 sts, 48 sts)", 3, " sts (44 sts, 48 sts)"],
    ['11" (28 cm)', 2, '" (28 cm)'],
    ["3 (4, 5 across row)", 3, " (4, 5 across row)"],
  ] as const)("reads one number in %j of %i sizes", (text, sizes, rest) =>
    expect(read(text, sizes)?.rest).toBe(rest),
  );

  it("takes commas and hyphens behind the word rows for rows", () => {
    expect(read("3, 5, 7:", 3, true)).toEqual({ values: [3], rest: ", 5, 7:" });
    expect(read("2-4:", 2, true)).toEqual({ values: [2], rest: "-4:" });
    expect(read("1: 2 sc in 2nd ch", 2, true)).toEqual({ values: [1], rest: ": 2 sc in 2nd ch" });
    expect(read("17 (19, 21):", 3, true)?.values).toEqual([17, 19, 21]);
  });

  it("does not take repeated brackets for sizes", () => {
    expect(read("(5, 2, 3) 4 times", 3)).toBe(null);
    expect(read("(5, 2) in next st", 2)).toBe(null);
  });

  it("says where a bracket was left open or closed with another", () => {
    const open = readSizeList("40 (44, 48 sts.", 0, { sizes: 3, afterRows: false });
    expect(open?.mend).toEqual({ from: 10, to: 10, text: ")" });
    const other = readSizeList("24 (28-32} sts", 0, { sizes: 3, afterRows: false });
    expect(other?.mend).toEqual({ from: 9, to: 10, text: ")" });
  });

  it("stays linear on brackets and numbers without end", () => {
    const text = "1 (".repeat(4000) + "1,".repeat(4000);
    const begun = performance.now();
    for (let at = 0; at < text.length; at++) readSizeList(text, at, { sizes: 5, afterRows: false });
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});
