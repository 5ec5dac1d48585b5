import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { listOutOfOrder } from "./list-out-of-order.ts";

it("names the two neighbours", () => {
  expect(said(listOutOfOrder, { words: "41 (54, 51, 57)", from: 54, to: 51 })).toEqual([
    '"41 (54, 51, 57)" goes down from 54 to 51.',
    "The rest of the list goes up from size to size.",
    "Put the values in the order of the sizes.",
    "See whether two figures changed places in a number.",
  ]);
  expect(said(listOutOfOrder, { words: "30 (26, 28, 22)", from: 26, to: 28 }).slice(0, 2)).toEqual([
    '"30 (26, 28, 22)" goes up from 26 to 28.',
    "The rest of the list goes down from size to size.",
  ]);
});
