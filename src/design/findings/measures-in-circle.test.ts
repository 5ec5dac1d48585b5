import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { measuresInCircle } from "./measures-in-circle.ts";

it("says what, why and what to do", () =>
  expect(said(measuresInCircle, { names: ["body length", "armhole depth"] })).toEqual([
    '"body length" and "armhole depth" are said by one another.',
    '"body length" needs "armhole depth" needs "body length", so none of them comes to a number.',
    "Say one of them by a body measurement, by ease or by a length.",
  ]));
