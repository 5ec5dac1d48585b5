import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { turningChainUndecided } from "./turning-chain-undecided.ts";

it("offers first what is taken meanwhile", () => {
  expect(said(turningChainUndecided, { chain: "ch 3", stitch: "dc", taken: "counts" })).toEqual([
    "The pattern does not say whether the ch 3 at the start of a row counts as dc.",
    "The printed counts do not decide it; here it counts as dc.",
    "Write in the notes: Ch 3 counts as dc throughout.",
    "Write in the notes: Ch 3 does not count as a st throughout.",
  ]);
  expect(
    said(turningChainUndecided, { chain: "ch 2", stitch: "hdc", taken: "does not count" }).slice(1, 3),
  ).toEqual([
    "The printed counts do not decide it; here it does not count as hdc.",
    "Write in the notes: Ch 2 does not count as a st throughout.",
  ]);
});
