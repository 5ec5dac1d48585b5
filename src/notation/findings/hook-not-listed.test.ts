import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { hookNotListed } from "./hook-not-listed.ts";

it.each(["3.5", "3.5 mm", "3.5mm"])("names the hook of %s", (mm) =>
  expect(said(hookNotListed, { mm })).toEqual([
    "The 3.5 mm hook is used and not listed.",
    "The materials do not have it.",
    "Add the 3.5 mm hook to the materials.",
  ]),
);
