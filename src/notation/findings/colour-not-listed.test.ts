import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { colourNotListed } from "./colour-not-listed.ts";

it("names the colour", () =>
  expect(said(colourNotListed, { colour: "C" })).toEqual([
    "Colour C is used and not listed.",
    "The materials do not have it.",
    "Add colour C and its yarn to the materials.",
  ]));
