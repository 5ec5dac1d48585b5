import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { endsOnOtherSide } from "./ends-on-other-side.ts";

it("says the number of rows and the side they end on", () =>
  expect(
    said(endsOnOtherSide, {
      row: "Rows 5-17",
      asked: "WS",
      rows: [
        { size: "M", n: 13 },
        { size: "L", n: 15 },
      ],
    }),
  ).toEqual([
    "The last row of Rows 5-17 is not a WS row in sizes M and L.",
    "Worked as written, 13 and 15 rows are made; the last of them is an RS row.",
    "Work 1 row more in sizes M and L: 14 and 16.",
    'Write "ending with an RS row" in sizes M and L.',
  ]));

it("names the row asked for", () =>
  expect(said(endsOnOtherSide, { row: "Next rows", asked: 5, rows: [{ size: "one size", n: 14 }] })).toEqual([
    "The last row of Next rows is not Row 5.",
    "Worked as written, 14 rows are made; the last of them is not Row 5.",
    "Change the number of rows so that the last is Row 5.",
    "Name the row that it ends with.",
  ]));
