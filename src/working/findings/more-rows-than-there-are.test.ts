import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { moreRowsThanThereAre } from "./more-rows-than-there-are.ts";

it("counts the rows", () =>
  expect(
    said(moreRowsThanThereAre, {
      row: "Row 7",
      cases: [
        { size: "3X", needs: 80, has: 48 },
        { size: "4X", needs: 84, has: 48 },
      ],
    }),
  ).toEqual([
    "The shaping at Row 7 needs more rows than there are in sizes 3X and 4X.",
    "It takes 80 and 84 rows as written; there are 48.",
    "Shape more often, or fewer times.",
    "Work 32 and 36 rows more in sizes 3X and 4X.",
  ]));

it("counts one row as one", () =>
  expect(
    said(moreRowsThanThereAre, { row: "Row 7", cases: [{ size: "one size", needs: 2, has: 1 }] }),
  ).toEqual([
    "The shaping at Row 7 needs more rows than there are.",
    "It takes 2 rows as written; there is 1.",
    "Shape more often, or fewer times.",
    "Work 1 row more.",
  ]));
