import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { nothingToWorkInto } from "./nothing-to-work-into.ts";

it.each([
  ["ch-2 space", "a ch-2 space"],
  ["edge stitch", "an edge stitch"],
])("names the missing %s", (place, one) =>
  expect(
    said(nothingToWorkInto, { row: "Row 3", place, before: "Row 2", words: "2 dc in next ch-2 sp" }),
  ).toEqual([
    `Row 3 finds no ${place} for "2 dc in next ch-2 sp".`,
    `Row 2 has no ${place} from here on.`,
    "Name a place that Row 2 has.",
    `Change Row 2 so that ${one} stands here.`,
  ]),
);
