import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// A look along the size axis for a broken progression: notation survey, section 12.

const counted = (list: string) =>
  `Sizes: XS (S, M, L, XL, 2X)\n\nBACK\nCh 60.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. ${list} sts.`;
const uneven = (list: string) => foundIn(counted(list), "sizes/uneven-step");

it("finds the one value off an even line", () =>
  expect(uneven("50 (56, 62, 69, 74, 80)")).toEqual([
    'Row 1: 50 (56, 62, 69, 74, 80): "50 (56, 62, 69, 74, 80)" leaves its even steps in size L.',
  ]));

describe("is silent on", () => {
  it.each([
    ["even steps", "50 (56, 62, 68, 74, 80)"],
    ["larger steps from some size on", "50 (54, 58, 64, 70, 76)"],
    ["steps by turns", "50 (54, 60, 64, 70, 74)"],
    ["a last step of its own", "50 (56, 62, 68, 74, 82)"],
    ["two sizes that share a count", "50 (56, 62, 62, 74, 80)"],
    ["steps of one stitch, rounded for shaping", "50 (51, 53, 53, 54, 55)"],
    ["two values off", "50 (57, 62, 69, 74, 80)"],
  ])("%s", (_, list) => expect(uneven(list)).toEqual([]));

  it("a count that repeats lead up to", () =>
    expect(
      foundIn(
        `${counted("50 (56, 62, 68, 74, 80)")}\nRep Row 1 3 (3, 3, 4, 3, 3) times more. 50 (56, 62, 69, 74, 80) sts.`,
        "sizes/uneven-step",
      ),
    ).toEqual([]));

  it("four sizes, which show no line", () =>
    expect(
      foundIn(
        "Sizes: S (M, L, XL)\n\nCh 60.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 50 (56, 63, 68) sts.",
        "sizes/uneven-step",
      ),
    ).toEqual([]));
});
