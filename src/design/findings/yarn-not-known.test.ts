import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { yarnNotKnown } from "./yarn-not-known.ts";

it("says what, why and what to do", () =>
  expect(
    said(yarnNotKnown, { missing: ["No swatch of rib was weighed: its yarn is by geometry alone."] }),
  ).toEqual([
    "The yarn cannot be told in full.",
    "No swatch of rib was weighed: its yarn is by geometry alone.",
    "Give what is missing, to have the yarn of every size.",
  ]));
