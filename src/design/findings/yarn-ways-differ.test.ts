import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { yarnWaysDiffer } from "./yarn-ways-differ.ts";

it("says what, why and what to do", () =>
  expect(
    said(yarnWaysDiffer, {
      piece: null,
      yarn: "main",
      cases: [80, 90, 100, 110].map((byArea, at) => ({ size: `size ${at}`, byStitch: 120, byArea })),
    }),
  ).toEqual([
    "The yarn of the garment comes out differently by its stitches and by its area.",
    "By stitches and by the swatch's weight for its area: size 0 120 m and 80 m; size 1 120 m and 90 m; size 2 120 m and 100 m; and 1 more size. More than a tenth apart, one of the two is mistaken.",
    "Check that each fabric's rows are worked in it, and say under headings which are where it cannot be told.",
    "Weigh the swatches again, all of one yarn together.",
  ]));
