import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { unevenStep } from "./uneven-step.ts";

it("says where the steps lead", () =>
  expect(said(unevenStep, { words: "40 (46, 51, 58, 64)", size: "L", found: 51, expected: 52 })).toEqual([
    '"40 (46, 51, 58, 64)" leaves its even steps in size L.',
    "The other steps lead to 52; 51 is written.",
    "Write 52 in size L.",
  ]));
