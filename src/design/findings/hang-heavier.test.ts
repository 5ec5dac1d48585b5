import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { hangHeavier } from "./hang-heavier.ts";

it("says what, why and what to do", () =>
  expect(
    said(hangHeavier, {
      measure: "hem to underarm",
      fabric: "bump",
      hungWith: 80,
      cases: [
        { size: "4X", grams: 87.3 },
        { size: "5X", grams: 91.2 },
      ],
    }),
  ).toEqual([
    "More hangs on hem to underarm than the swatch of bump was hung with.",
    "To hang as the garment does, the swatch bears 87 g in 4X, 91 g in 5X; it was hung with 80 g. Beyond that, growth is guessed.",
    "Hang the swatch with 92 g for a day and write down what it measures.",
  ]));
