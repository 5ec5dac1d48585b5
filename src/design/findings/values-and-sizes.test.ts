import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { valuesAndSizes } from "./values-and-sizes.ts";

it("says what, why and what to do", () =>
  expect(said(valuesAndSizes, { entry: "body sts", has: 8, sizes: 9 })).toEqual([
    '"body sts" has 8 values, and there are 9 sizes.',
    "A list has one value for each size, in the order of the sizes, or one value for all.",
    "Add the values that are missing.",
  ]));
