import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { found } from "../rows-in.ts";
import { notFastenedOff } from "./not-fastened-off.ts";

it("names the part, the next one and the others", () =>
  expect(said(notFastenedOff, { row: "Row 9", piece: "Strap", next: "Pocket", others: 3 })).toEqual([
    "Strap ends with Row 9 and is not fastened off.",
    "Pocket begins with yarn of its own, and 3 other parts are fastened off.",
    "Fasten off behind Row 9.",
    "See whether a row is missing behind Row 9.",
  ]));

const part = (name: string, end: string): string =>
  `${name}\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts\nRow 2: Ch 1, sc in each st across.${end} 12 sts\n`;
const bag = (...ends: readonly string[]): string =>
  ends.map((end, at) => part(["FRONT", "BACK", "STRAP", "POCKET", "FLAP"][at] as string, end)).join("\n");
const cut = " Fasten off.";

it("misses it in one part of several", () =>
  expect(found(bag(cut, cut, "", cut))).toEqual(["pieces/not-fastened-off Row 2"]));

it("misses it in the last part", () =>
  expect(found(bag(cut, cut, cut, ""))).toEqual(["pieces/not-fastened-off Row 2"]));

it("says nothing where all say it, where few do, or where the pattern never does", () => {
  expect(found(bag(cut, cut, cut, cut))).toEqual([]);
  expect(found(bag(cut, "", cut))).toEqual([]);
  expect(found(bag("", "", "", ""))).toEqual([]);
});

it("says nothing where the work goes on, or something is said of the yarn", () => {
  expect(found(bag(cut, cut, " Do not cut the yarn.", cut))).toEqual([]);
  const on = `${bag(cut, cut, cut)}\nLID\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts\n\nRim\nRow 2: Ch 1, sc in each st across. 12 sts\nFasten off.`;
  expect(found(on)).toEqual([]);
});
