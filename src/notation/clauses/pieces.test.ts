import { describe, expect, it } from "vitest";
import { readRow } from "./row-for-tests.ts";

// Forms of words: notation survey, section 7. Rows are our own; how each is understood is common practice, no source.
describe("Pieces, seams, holding", () => {
  it.each([
    ["Work as for Left Front, reversing shaping.", '(as "Left Front" reversing)'],
    ["Same as Back to armhole.", '(as "Back" until from-other)'],
    ["Sew side seams.", "(seam side)"],
    ["Sew shoulder seams.", "(seam shoulder)"],
    ["Set in sleeves.", "(seam sleeve-to-armhole)"],
    ["Sew side seams, leaving 8 cm open at hem.", "(seam side open 8cm)"],
    ["With right sides together, join shoulders with sl st.", "(seam shoulder)"],
    ["Divide for neck.", "(hold)"],
    ["place next 20 sts on hold", "(hold 20)"],
    ["Weave in ends.", "(aside)"],
    ["Block to measurements.", "(aside)"],
  ])("%s", (row, tree) => expect(readRow(row)).toBe(tree));
});
