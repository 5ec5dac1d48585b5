import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { turningChainTwoWays } from "./turning-chain-two-ways.ts";

it("says both ways", () =>
  expect(
    said(turningChainTwoWays, {
      row: "Row 6",
      chain: "ch 3",
      here: "does not count",
      elsewhere: "counts",
      stitch: "dc",
    }),
  ).toEqual([
    "The ch 3 of Row 6 does not count as dc; elsewhere it counts as dc.",
    "The words of Row 6 say so, and the words of the other rows say otherwise.",
    "Change Row 6 so that its ch 3 counts as dc.",
    "Answer that it is meant, with the reason.",
  ]));

it("says them the other way round", () =>
  expect(
    said(turningChainTwoWays, {
      row: "Row 2",
      chain: "ch 2",
      here: "counts",
      elsewhere: "does not count",
      stitch: "hdc",
    })[0],
  ).toBe("The ch 2 of Row 2 counts as hdc; elsewhere it does not count as hdc."));
