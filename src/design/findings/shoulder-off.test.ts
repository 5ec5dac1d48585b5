import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { shoulderOff } from "./shoulder-off.ts";

it("says what, why and what to do", () =>
  expect(
    said(shoulderOff, {
      measure: "width across shoulders",
      cases: [
        { size: "XS", drop: 2 },
        { size: "5X", drop: 12.3 },
      ],
    }),
  ).toEqual([
    'The shoulder falls otherwise in other sizes, by "width across shoulders".',
    "On each side the seam lies beyond the shoulder by 2 cm in XS, 12.3 cm in 5X.",
    "Let the width across the shoulders follow the cross back, which grows far less than the bust.",
    "Or answer it as meant: larger sizes of a dropped shoulder drop further.",
  ]));
