import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { notionNotListed } from "./notion-not-listed.ts";

it("names the notion", () =>
  expect(said(notionNotListed, { notion: "stitch markers" })).toEqual([
    "Notion used and not listed: stitch markers.",
    "The materials do not have it.",
    "Add to the materials: Stitch markers.",
  ]));
