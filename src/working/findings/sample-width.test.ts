import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { sampleWidth } from "./sample-width.ts";

it("tells the rule and both samples", () =>
  expect(
    said(sampleWidth, {
      name: "Fan pattern",
      rule: "a multiple of 6 + 3",
      wide: 27,
      unit: "ch",
      repeats: 4,
      wider: 45,
    }),
  ).toEqual([
    "The counts of Fan pattern are those of a sample 27 ch wide.",
    "The text gives a multiple of 6 + 3 and no number. The rows are worked on 4 repeats, and again on 45 ch.",
    "Leave it, if it is meant for any width.",
  ]));

it("asks for a rule where there is none", () =>
  expect(
    said(sampleWidth, {
      name: "Moss pattern",
      rule: null,
      wide: 25,
      unit: "sts",
      repeats: null,
      wider: null,
    }),
  ).toEqual([
    "The counts of Moss pattern are those of a sample 25 sts wide.",
    "The text says neither how many stitches it is worked over nor a multiple of how many.",
    "Say over a multiple of how many stitches it is worked.",
  ]));
