import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { stretchNotMeasured } from "./stretch-not-measured.ts";

it("says what, why and what to do", () =>
  expect(
    said(stretchNotMeasured, {
      measure: "bust",
      body: "bust",
      fabric: "bump",
      cases: [{ size: "M", made: 90, body: 94 }],
    }),
  ).toEqual([
    '"bust" has to stretch in size M, and nobody measured whether it does.',
    "M: 90 cm made for a bust of 94 cm, 1.04 times as much.",
    "Pull a swatch of bump out across as far as is comfortable, and write its width behind stretched.",
  ]));
