import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { betterChoice } from "./better-choice.ts";

it("says what, why and what to do", () =>
  expect(
    said(betterChoice, {
      changes: [{ count: "body sts", size: "M", from: 79, to: 77 }],
      aim: "least sum",
      asWritten: 4.2,
      atBest: 2.8,
      proved: true,
    }),
  ).toEqual([
    "Another choice of counts comes closer to the plan.",
    "body sts in M: 77 for 79. Misses and uneven steps come to 2.8 cm instead of 4.2 cm, and no choice does better.",
    "See the difference: loopwright grade --dry-run.",
    "Leave it: counts as written hold still.",
  ]));
