import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { gaugeOutsideClass } from "./gauge-outside-class.ts";

it("says what, why and what to do", () =>
  expect(said(gaugeOutsideClass, { fabric: "bump", stitches: 24.2, yarnClass: 4, from: 11, to: 14 })).toEqual(
    [
      "The gauge of bump is unusual for yarn of class 4.",
      "It has 24.2 sts to 10 cm. The trade's table has 11 to 14 for the class, as a guideline, over single crochet.",
      "Check the swatch and the class of the yarn.",
      "Leave it, if the fabric is meant to be so.",
    ],
  ));
