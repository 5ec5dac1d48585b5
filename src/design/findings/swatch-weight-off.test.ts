import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { swatchWeightOff } from "./swatch-weight-off.ts";

it("says what, why and what to do", () =>
  expect(said(swatchWeightOff, { fabric: "bump", grams: 27, expected: 44.04 })).toEqual([
    "The swatch of bump is said to weigh 27 g, which is hard to believe.",
    "Stitches of this size in this yarn would weigh about 44 g. Measured swatches come within a tenth or two of that, and this one is 39 in 100 below it.",
    "Weigh the swatch again, and see that the stitches and rows are those of the whole piece weighed.",
    "Check the metres and grams of the ball.",
  ]));
