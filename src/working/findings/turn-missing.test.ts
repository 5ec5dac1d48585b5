import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { turnMissing } from "./turn-missing.ts";

it("says what shows it", () => {
  expect(said(turnMissing, { row: "Row 5 (WS)", before: "Row 4", tag: "WS" })).toEqual([
    "No turn is written between Row 4 and Row 5 (WS).",
    "Row 5 (WS) is marked WS, and so is read with a turn.",
    'End Row 4 with "turn".',
    'Write "do not turn" where the same side stays in front.',
  ]);
  expect(said(turnMissing, { row: "Row 5", before: "Row 4", tag: null })[1]).toBe(
    "Row 5 is worked back over Row 4, and so is read with a turn.",
  );
});
