import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { entryUnknown } from "./entry-unknown.ts";

it("says what, why and what to do", () =>
  expect(said(entryUnknown, { entry: "swach", under: "bump", near: "swatch" })).toEqual([
    '"swach" is no entry that is known under bump.',
    "It is kept as it stands and changes nothing.",
    'Write "swatch", if that is meant.',
    "Leave it, if it is a note of your own.",
  ]));
