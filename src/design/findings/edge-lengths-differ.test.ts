import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { edgeLengthsDiffer } from "./edge-lengths-differ.ts";

it("says what, why and what to do", () =>
  expect(
    said(edgeLengthsDiffer, {
      one: "sleeve top",
      other: "armhole",
      cases: [{ size: "4X", one: 52, other: 56.4 }],
    }),
  ).toEqual([
    '"sleeve top" and "armhole" do not go together in size 4X.',
    "4X: 52 cm against 56.4 cm.",
    'Tie the counts of "sleeve top" and "armhole" to each other, and choose them anew.',
    "A sleeve top may be up to 2.5 cm longer than its armhole, and is then eased in; it is never shorter.",
  ]));
