import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { notDefined } from "./not-defined.ts";

it("names the word and its first row", () =>
  expect(said(notDefined, { word: "shell", row: "Row 2" })).toEqual([
    '"shell" is used in Row 2 and not defined.',
    "The pattern does not say how it is worked, or what it stands for.",
    'Add "shell" to the abbreviations or the special stitches.',
  ]));
