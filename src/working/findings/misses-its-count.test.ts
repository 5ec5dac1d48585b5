import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { missesItsCount } from "./misses-its-count.ts";

it("says from where to where, and what is written", () => {
  expect(
    said(missesItsCount, { row: "Row 5", cases: [{ size: "one size", from: 38, to: 58, wanted: 60 }] }),
  ).toEqual([
    "The shaping at Row 5 misses its count.",
    "It goes from 38 to 58 sts; 60 are written.",
    "Change the shaping so that 22 sts come in all.",
    "Write 58 sts.",
  ]);
  // 80 to 45 stitches cannot be done in pairs: trade handbook, section 3.6.
  expect(
    said(missesItsCount, {
      row: "Row 5",
      cases: [
        { size: "S", from: 80, to: 46, wanted: 45 },
        { size: "M", from: 84, to: 48, wanted: 47 },
      ],
    }),
  ).toEqual([
    "The shaping at Row 5 misses its count in sizes S and M.",
    "It goes from 80 and 84 to 46 and 48 sts; 45 and 47 are written.",
    "Change the shaping so that 35 and 37 sts go in all in sizes S and M.",
    "Write 46 and 48 sts in sizes S and M.",
  ]);
});
