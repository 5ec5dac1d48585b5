import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { tooTight } from "./too-tight.ts";

it("says what, why and what to do", () =>
  expect(
    said(tooTight, {
      measure: "upper sleeve",
      body: "upper arm",
      cases: [{ size: "2X", made: 34, body: 38.2, has: 1.05 }],
    }),
  ).toEqual([
    '"upper sleeve" is too tight in size 2X.',
    "2X: 34 cm made, and the upper arm is 38.2 cm; it would have to stretch to 1.12 times its width, and the swatch stretched to 1.05.",
    "Give it more ease.",
    "Or use a fabric that stretches more.",
  ]));
