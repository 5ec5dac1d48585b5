import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { answerReopened } from "./answer-reopened.ts";

it("repeats the reason", () =>
  expect(said(answerReopened, { row: "Row 12", reason: "the last stitch is left for the band." })).toEqual([
    "The answer after Row 12 is open again.",
    'The words or counts of Row 12 changed after the answer "the last stitch is left for the band".',
    "Where the answer still holds, take out its stamp, from the ~ to the bracket; it gets a new one.",
    "Where it does not, take it out.",
  ]));
