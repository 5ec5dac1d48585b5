import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { countWithoutValues } from "./count-without-values.ts";

it("says what, why and what to do", () =>
  expect(said(countWithoutValues, { count: "body sts" })).toEqual([
    '"body sts" has no values yet.',
    "Rows that use it cannot be worked until it has.",
    "Have all counts chosen: loopwright grade.",
    "Or write the values yourself, behind is.",
  ]));
