import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { findings, found } from "../rows-in.ts";
import { rowsToldDiffer } from "./rows-told-differ.ts";

const one = (n: number) => [{ size: "one size", n }];

it("sets the rows that are told against those that were worked", () =>
  expect(said(rowsToldDiffer, { told: one(12), worked: one(11) })).toEqual([
    "12 rows are told here, and 11 were worked.",
    "Neither the piece nor a part of it has so many rows by now.",
    "Write 11 rows here.",
    "See whether a row was left out before, or written once too often.",
  ]));

const tube = (told: string): string =>
  `CUFF\nRnd 1: 9 sc in magic ring, join with sl st in first sc. 9 sts.\nRnds 2-5: Ch 1, sc in each st around, join with sl st in first sc. 9 sts. ${told}\nNext 3 rnds: Ch 1, sc in each st around, join with sl st in first sc. 9 sts. The tube has 8 rnds.`;

it.each([
  "You have now worked %n rnds.",
  "With Rnd 1 there are %n rnds.",
  "%n rnds are done.",
  "The tube has %n rnds in all.",
])("holds %s", (words) => {
  expect(found(tube(words.replace("%n", "5")))).toEqual([]);
  expect(found(tube(words.replace("%n", "6")))).toEqual(["rows/rows-told-differ Rnds 2-5"]);
});

it("takes other words about rows for what they are", () => {
  for (const words of [
    "There are 2 rows of holes below.",
    "The last 2 rnds form the rib.",
    "3 rnds are left free.",
  ])
    expect(found(tube(words))).toEqual([]);
});

it("offers the number with an edit", () => {
  const edit = findings(tube("You have now worked 6 rnds."))[0]?.todo[0]?.edits?.[0];
  expect(edit?.text).toBe("5");
});
