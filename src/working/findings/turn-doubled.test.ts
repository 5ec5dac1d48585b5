import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { turnDoubled } from "./turn-doubled.ts";

it("names both rows", () =>
  expect(said(turnDoubled, { row: "Row 5", before: "Row 4" })).toEqual([
    "The turn between Row 4 and Row 5 is written twice.",
    "Two turns bring the same side to the front again; they are read as one.",
    'Take "turn" out at the end of Row 4 or at the start of Row 5.',
  ]));
