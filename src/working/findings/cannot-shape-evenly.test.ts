import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { cannotShapeEvenly } from "./cannot-shape-evenly.ts";

// 26 sts can lose 17: 9 remain, and 26 is not above 3 times 9. With 8 left it is. Trade handbook, section 3.5.
it("says how many stitches can go", () =>
  expect(said(cannotShapeEvenly, { row: "Row 9", cases: [{ size: "M", have: 26, change: -18 }] })).toEqual([
    "Row 9 cannot lose 18 sts evenly in size M.",
    "With 3 sts worked together all along, 26 sts can lose 17 at most.",
    "Spread the decreases over two rows or more.",
    "Lose at most 17 sts in Row 9 in size M.",
  ]));

it("says how many can come, in several sizes", () =>
  expect(
    said(cannotShapeEvenly, {
      row: "Row 2",
      cases: [
        { size: "S", have: 6, change: 20 },
        { size: "M", have: 8, change: 20 },
      ],
    }),
  ).toEqual([
    "Row 2 cannot gain 20 sts evenly in sizes S and M.",
    "With 3 sts in every st all along, 6 and 8 sts can gain 12 and 16 at most.",
    "Spread the increases over two rows or more.",
    "Gain at most 12 and 16 sts in Row 2 in sizes S and M.",
  ]));
