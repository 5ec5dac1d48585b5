import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { doesNotGoOver } from "./does-not-go-over.ts";

it("says what, why and what to do", () =>
  expect(
    said(doesNotGoOver, {
      opening: "neck opening",
      body: "head",
      cases: [{ size: "XS", rest: 50, stretched: 53.5, needs: 55 }],
    }),
  ).toEqual([
    'The head does not go through "neck opening" in size XS.',
    "XS: 50 cm round, 53.5 cm pulled out; the head is 55 cm.",
    "Make the opening larger.",
    "Or measure a swatch of its fabric pulled out, and write it behind stretched.",
    "Or leave it open: a placket or a button at the neck needs no such room.",
  ]));
