import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { lineNotUnderstood } from "./line-not-understood.ts";

it("repeats the words", () => {
  expect(said(lineNotUnderstood, { words: ["flip the loop over"] })).toEqual([
    '"flip the loop over" is not understood.',
    "A row is not proved past words that are not understood.",
    "Say it with stitches, places and counts.",
    "Vouch for the row with its count and a reason: (Vouched, 40 sts: ...).",
  ]);
  expect(said(lineNotUnderstood, { words: ["flip it", "as you like"] })[0]).toBe(
    '"flip it" and "as you like" are not understood.',
  );
});
