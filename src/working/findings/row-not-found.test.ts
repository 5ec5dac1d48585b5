import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { rowNotFound } from "./row-not-found.ts";

it("names the row asked for", () =>
  expect(said(rowNotFound, { row: "Rows 9-12", asked: "Row 14" })).toEqual([
    "Rows 9-12 repeat Row 14, which is not there.",
    "Above Rows 9-12 this piece has no Row 14.",
    "Name a row that stands above.",
    "Name its piece too where it belongs to another one.",
  ]));
