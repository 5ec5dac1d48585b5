import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// Ascending where it must be: trade handbook, section 5.3. Sleeves of a drop shoulder fall: trade handbook, section 2.4.

const HEAD = "Sizes: XS (S, M, L, XL)\n\nBACK\nCh 51 (55, 61, 65, 71).\n";
const counted = (list: string) =>
  `${HEAD}Row 1: Sc in 2nd ch from hook and in each ch across, turn. 50 (54, 60, 64, 70) sts.\nRow 2: Ch 1, sc2tog, sc in each st across, turn. ${list} sts.`;
const orders = (text: string) => foundIn(text, "sizes/list-out-of-order");

describe("a count that turns round", () => {
  it("is found where two values changed places", () =>
    expect(orders(counted("49 (53, 63, 59, 69)"))).toEqual([
      'Row 2: 49 (53, 63, 59, 69): "49 (53, 63, 59, 69)" goes down from 63 to 59.',
    ]));

  it("is found where two figures changed places", () =>
    expect(orders(counted("49 (53, 95, 63, 69)"))).toEqual([
      'Row 2: 49 (53, 95, 63, 69): "49 (53, 95, 63, 69)" goes down from 95 to 63.',
    ]));

  it("is told once, however many rows have it", () =>
    expect(
      orders(
        `${counted("49 (53, 63, 59, 69)")}\nRow 3: Ch 1, sc in each st across, turn. 49 (53, 63, 59, 69) sts.`,
      ),
    ).toHaveLength(1));

  it("in three sizes goes by the way of the other lists", () => {
    const three =
      "Sizes: S (M, L)\n\nBACK\nCh 51 (55, 59).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 50 (54, 58) sts.\nRow 2: Ch 1, sc2tog, sc in each st across, turn. 49 (53, 57) sts.\nRow 3: Ch 1, sc2tog, sc in each st across, turn. 48 (56, 52) sts.";
    expect(orders(three)).toHaveLength(1);
    expect(orders(three.replace("50 (54, 58)", "50").replace("49 (53, 57)", "49"))).toEqual([]);
  });
});

describe("right lists", () => {
  it("may fall throughout", () => expect(orders(counted("69 (63, 59, 53, 49)"))).toEqual([]));
  it("may stand still", () => expect(orders(counted("49 (53, 53, 59, 59)"))).toEqual([]));
  it("may turn where nothing says that a figure is wrong", () =>
    expect(orders(counted("112 (104, 116, 140, 168)"))).toEqual([]));
  it("may turn where the number of repeats before them turns", () =>
    expect(
      orders(
        `${HEAD}Row 1: Sc in 2nd ch from hook and in each ch across, turn. 50 (54, 60, 64, 70) sts.\nRep Row 1 6 (8, 12, 10, 14) times more. 49 (53, 63, 59, 69) sts.`,
      ),
    ).toEqual([]));
  it("may go up and down where they are numbers of rows", () =>
    expect(
      orders(
        `${counted("49 (53, 59, 63, 69)")}\nNext 10 (14, 12, 16, 18) rows: Ch 1, sc in each st across, turn.`,
      ),
    ).toEqual([]));
});
