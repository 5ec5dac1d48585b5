import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { nameUnknown } from "./name-unknown.ts";

it("says what, why and what to do", () =>
  expect(said(nameUnknown, { name: "boddy sts", what: "count", where: null, near: "body sts" })).toEqual([
    'There is no count "boddy sts".',
    'The nearest name is "body sts".',
    'Write "body sts", if that is meant.',
    "Give the count an entry of its own, if it is missing.",
  ]));
