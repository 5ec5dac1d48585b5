import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { rejoinWithoutPlace } from "./rejoin-without-place.ts";

it("asks for the stitch", () =>
  expect(said(rejoinWithoutPlace, { row: "Row 1 (RS)" })).toEqual([
    "The place to rejoin the yarn is not said at Row 1 (RS).",
    "More than one edge is open here, and the place decides which stitches are worked.",
    'Name the stitch, such as "rejoin yarn in next unworked st".',
    'Say how many are passed first, such as "sk next 12 sts, join yarn in next st".',
  ]));
