import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { countDiffers } from "./count-differs.ts";

it("sets printed against worked", () =>
  expect(
    said(countDiffers, {
      row: "Row 12",
      of: null,
      printed: [{ size: "one size", n: 66 }],
      worked: [{ size: "one size", n: 68 }],
      how: "Row 11 ends with 66 sts; this row adds 2",
    }),
  ).toEqual([
    "Row 12 does not come to its printed count: 66 sts printed, 68 worked.",
    "Row 11 ends with 66 sts; this row adds 2. That is 2 more than printed.",
    "Print 68 sts after Row 12.",
    "Change Row 12 so that it makes 66 sts.",
  ]));

it("says the sizes at fault in one list", () =>
  expect(
    said(countDiffers, {
      row: "Row 12",
      of: "dc",
      printed: [84, 92, 98].map((n, at) => ({ size: ["M", "L", "XL"][at] as string, n })),
      worked: [85, 93, 99].map((n, at) => ({ size: ["M", "L", "XL"][at] as string, n })),
      how: null,
    }),
  ).toEqual([
    "Row 12 does not come to its printed count in sizes M, L and XL: 84, 92 and 98 dc printed, 85, 93 and 99 worked.",
    "That is 1 more than printed.",
    "Print 85, 93 and 99 dc after Row 12 in sizes M, L and XL.",
    "Change Row 12 so that it makes 84, 92 and 98 dc in sizes M, L and XL.",
  ]));

it("tells apart sizes with more and sizes with fewer", () =>
  expect(
    said(countDiffers, {
      row: "Rnd 4",
      of: "ch-2 sp",
      printed: [
        { size: "S", n: 1 },
        { size: "M", n: 9 },
        { size: "L", n: 12 },
      ],
      worked: [
        { size: "S", n: 3 },
        { size: "M", n: 8 },
        { size: "L", n: 13 },
      ],
      how: null,
    }),
  ).toEqual([
    "Rnd 4 does not come to its printed count in sizes S, M and L: 1, 9 and 12 ch-2 sps printed, 3, 8 and 13 worked.",
    "That is 2 and 1 more in sizes S and L and 1 fewer in size M than printed.",
    "Print 3, 8 and 13 ch-2 sps after Rnd 4 in sizes S, M and L.",
    "Change Rnd 4 so that it makes 1, 9 and 12 ch-2 sps in sizes S, M and L.",
  ]));

it("speaks of several rows in the plural", () =>
  expect(
    said(countDiffers, {
      row: "Rows 5-12",
      of: null,
      printed: [{ size: "one size", n: 1 }],
      worked: [{ size: "one size", n: 2 }],
      how: null,
    }),
  ).toEqual([
    "Rows 5-12 do not come to their printed count: 1 st printed, 2 worked.",
    "That is 1 more than printed.",
    "Print 2 sts after Rows 5-12.",
    "Change Rows 5-12 so that they make 1 st.",
  ]));
