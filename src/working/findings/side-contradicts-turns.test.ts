import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { sideContradictsTurns } from "./side-contradicts-turns.ts";

it("says where the turns are counted from", () =>
  expect(
    said(sideContradictsTurns, {
      row: "Row 12 (WS)",
      written: "WS",
      worked: "RS",
      before: "Row 7 (RS)",
      sizes: ["S", "M"],
    }),
  ).toEqual([
    "Row 12 (WS) is marked WS and worked on the right side in sizes S and M.",
    "Counting the turns from Row 7 (RS), the right side faces the maker here.",
    "Mark the row RS in sizes S and M.",
    "Add a row or take one out before it.",
    "See whether a turn is missing or doubled after Row 7 (RS).",
  ]));

it("says no size where there is one, and counts from the beginning", () =>
  expect(
    said(sideContradictsTurns, {
      row: "Row 3 (RS)",
      written: "RS",
      worked: "WS",
      before: null,
      sizes: ["one size"],
    }),
  ).toEqual([
    "Row 3 (RS) is marked RS and worked on the wrong side.",
    "Counting the turns from the beginning, the wrong side faces the maker here.",
    "Mark the row WS.",
    "Add a row or take one out before it.",
    "See whether a turn is missing or doubled.",
  ]));
