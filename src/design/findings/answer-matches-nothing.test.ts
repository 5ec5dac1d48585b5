import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { answerMatchesNothing } from "./answer-matches-nothing.ts";

it("repeats the reason", () =>
  expect(
    said(answerMatchesNothing, { row: "Row 12", reason: "the last stitch is left for the band" }),
  ).toEqual([
    'The answer "the last stitch is left for the band" answers no finding.',
    "No finding stands at Row 12 now.",
    "Take the answer out.",
    "See whether it belongs to another row.",
  ]));
