import { describe, expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { found } from "../rows-in.ts";
import { joinsOtherChain } from "./joins-other-chain.ts";

it("sets the chain of the join against the one at the start", () =>
  expect(said(joinsOtherChain, { row: "Rnd 2", named: 2, begins: 3 })).toEqual([
    "Rnd 2 is joined to a chain of 2, and begins with one of 3.",
    "Either the chain at the beginning or the one at the join has a wrong number.",
    "Join to the chain of 3.",
    "Begin Rnd 2 with 2 chains.",
  ]));

const disc = (begins: string, join: string): string =>
  `DISC\nRnd 1: ${begins}, 9 dc in magic ring, ${join}.\nFasten off.`;
const codes = (begins: string, join: string): readonly string[] =>
  found(disc(begins, join)).filter((each) => each.startsWith("rows/joins-other-chain"));

describe("a join that names the chain", () => {
  it.each([
    ["Ch 3", "join with sl st in top of ch 3"],
    ["Ch 3 (counts as dc)", "sl st to top of beg ch-3 to join"],
    ["Ch 3", "join with sl st in top of beg ch"],
    // Three chains for the stitch and one beside it.
    ["Ch 4", "join with sl st in top of ch 3"],
    ["Ch 3, ch 1", "join with sl st in 3rd ch of ch-4"],
    ["Ch 4", "join with sl st in 3rd ch of ch-4"],
  ])("is right: %s, %s", (begins, join) => expect(codes(begins, join)).toEqual([]));

  it.each([
    ["Ch 3", "join with sl st in top of ch 2"],
    ["Ch 2", "join with sl st in top of ch 3"],
    ["Ch 3", "join with sl st in top of beg ch-4"],
    ["Ch 4", "join with sl st in 4th ch of ch-5"],
  ])("is wrong: %s, %s", (begins, join) =>
    expect(codes(begins, join)).toEqual(["rows/joins-other-chain Rnd 1"]),
  );

  it("is held where the chain is the first of a group", () =>
    expect(
      found(
        "SQUARE\nRnd 1: Ch 3, 2 dc in magic ring, ch 2, (3 dc, ch 2) in ring 3 times, join with sl st in top of ch 3.\nRnd 2: Sl st in next 2 dc, (sl st, ch 3, 2 dc, ch 2, 3 dc) in next ch-2 sp, join with sl st in top of ch 2.",
      ).filter((each) => each.startsWith("rows/joins")),
    ).toEqual([]));
});
