import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { definedNotUsed } from "./defined-not-used.ts";

it("names the word", () =>
  expect(said(definedNotUsed, { word: "tr" })).toEqual([
    '"tr" is defined and not used.',
    "No row of the pattern names it.",
    'Take "tr" out of the list.',
    "See whether a row names it otherwise.",
  ]));
