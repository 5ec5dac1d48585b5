import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { unknownPiece } from "./unknown-piece.ts";

it("names the piece asked for", () =>
  expect(said(unknownPiece, { row: "Right Front", asked: "Left Frnt" })).toEqual([
    "Left Frnt is named at Right Front and is no piece of this pattern.",
    'No heading above reads "Left Frnt".',
    "Name the piece as its heading does.",
    "Write the piece, or move it above.",
  ]));
