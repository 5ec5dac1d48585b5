import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { entryNotUnderstood } from "./entry-not-understood.ts";

it("says what, why and what to do", () =>
  expect(
    said(entryNotUnderstood, { entry: "terms", found: "French", wants: "The terms are US or UK." }),
  ).toEqual([
    'The entry "terms" is not understood.',
    'It says "French". The terms are US or UK.',
    "Write it as the page on the design document shows.",
  ]));
