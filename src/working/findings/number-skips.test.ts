import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { numberSkips } from "./number-skips.ts";

it("names the one number that is missing", () =>
  expect(said(numberSkips, { row: "Row 7", expected: 6, found: 7 })).toEqual([
    "The row numbers jump at Row 7.",
    "The next number is 6, and 7 is written: Number 6 is missing.",
    "Number it 6.",
    "Write the missing row.",
  ]));

it("names several", () =>
  expect(said(numberSkips, { row: "Rows 10-12", expected: 6, found: 10 }).slice(1)).toEqual([
    "The next number is 6, and 10 is written: Numbers 6 to 9 are missing.",
    "Number it 6.",
    "Write the missing rows.",
  ]));

it("says when they go back", () =>
  expect(said(numberSkips, { row: "Row 4", expected: 9, found: 4 }).slice(1)).toEqual([
    "The next number is 9, and 4 is written, which goes back.",
    "Number it 9.",
    "Begin the count again under a heading of its own.",
  ]));
