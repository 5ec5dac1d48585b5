import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { colourWithoutYarn } from "./colour-without-yarn.ts";

it("says what, why and what to do", () =>
  expect(said(colourWithoutYarn, { colour: "B", yarns: ["oat", "rust"] })).toEqual([
    "The rows are worked in B, and no yarn of the table is called so.",
    "The table has oat and rust. Its yarn is reckoned as oat for the time being.",
    "Give a yarn the name B, or write beside it what the rows call it: called: B.",
  ]));
