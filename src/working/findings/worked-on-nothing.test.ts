import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { workedOnNothing } from "./worked-on-nothing.ts";

it("asks for a foundation", () =>
  expect(said(workedOnNothing, { row: "Row 1" })).toEqual([
    "Row 1 has nothing to work into.",
    "No chain, ring or foundation row stands before it in this piece.",
    'Write the foundation first, such as "Ch 31."',
    "Name the edge and the piece where it grows from another piece.",
  ]));
