import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { measureNotRead } from "./measure-not-read.ts";

it("says what, why and what to do", () =>
  expect(
    said(measureNotRead, { entry: "body width", problem: "The unit is missing: cm, in or mm." }),
  ).toEqual([
    'The words for "body width" are not understood.',
    "The unit is missing: cm, in or mm.",
    "Say measures as in: half of finished bust plus 2 cm.",
    "Join measures with plus and minus, and give every number its unit.",
  ]));
