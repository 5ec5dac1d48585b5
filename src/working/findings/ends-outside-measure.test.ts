import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { endsOutsideMeasure } from "./ends-outside-measure.ts";

it("sets the length worked against the length written", () => {
  expect(
    said(endsOutsideMeasure, { row: "Row 9", cases: [{ size: "one size", workedCm: 46.52, statedCm: 43 }] }),
  ).toEqual([
    "The shaping at Row 9 does not end at the written length.",
    "At the gauge it ends at 46.5 cm; 43 cm is written.",
    "Change the rows between the shaping rows so that it ends at 43 cm.",
    "Write 46.5 cm.",
  ]);
  expect(
    said(endsOutsideMeasure, {
      row: "Row 9",
      cases: [
        { size: "S", workedCm: 46.5, statedCm: 43 },
        { size: "M", workedCm: 48, statedCm: 44 },
      ],
    }),
  ).toEqual([
    "The shaping at Row 9 does not end at the written length in sizes S and M.",
    "At the gauge it ends at 46.5 and 48 cm; 43 and 44 cm are written.",
    "Change the rows between the shaping rows so that it ends at 43 and 44 cm in sizes S and M.",
    "Write 46.5 and 48 cm in sizes S and M.",
  ]);
});
