import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { joinMissing } from "./join-missing.ts";

it("says how the round is read, and offers that first", () => {
  expect(said(joinMissing, { row: "Rnd 4", before: "Rnd 3", how: "joined" })).toEqual([
    "No join is written between Rnd 3 and Rnd 4.",
    "Other rounds are joined, and so Rnd 3 is read with a join.",
    'End Rnd 3 with "join with sl st in first st".',
    'Write "do not join" at Rnd 3 where the rounds go on in a spiral.',
  ]);
  expect(said(joinMissing, { row: "Rnd 4", before: "Rnd 3", how: "spiral" }).slice(1, 3)).toEqual([
    "No round around it is joined, and so Rnd 3 is read as a spiral.",
    'Write "do not join" at Rnd 3 where the rounds go on in a spiral.',
  ]);
});
