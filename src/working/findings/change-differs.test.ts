import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { findings, found } from "../rows-in.ts";
import { changeDiffers } from "./change-differs.ts";

const one = (n: number) => [{ size: "one size", n }];

it("sets the change that is said against the change that is made", () =>
  expect(
    said(changeDiffers, { row: "Increase rnd", change: "inc", printed: one(4), worked: one(6) }),
  ).toEqual([
    "Increase rnd says 4 sts increased, and makes another number.",
    "Worked as written it gains 6.",
    "Print 6 sts increased at Increase rnd.",
    "Change Increase rnd so that it adds 4 sts.",
  ]));

it("says where a row goes the other way", () =>
  expect(said(changeDiffers, { row: "Row 5", change: "dec", printed: one(2), worked: one(-2) })).toEqual([
    "Row 5 says 2 sts decreased, and makes another number.",
    "Worked as written it gains 2 sts.",
    "Print what Row 5 does, or leave the number out.",
    "Change Row 5 so that it takes away 2 sts.",
  ]));

const cone = (increased: string): string =>
  `HAT\nRnd 1: 8 sc in magic ring, join with sl st in first sc. 8 sts.\nWider rnd: Ch 1, *sc in next st, 2 sc in next st; rep from * around, join with sl st in first sc. ${increased}\nNext rnd: Work the wider rnd once. 12 sts.`;

it("holds a row that is told under a name where it is worked", () => {
  expect(found(cone("4 sts increased."))).toEqual([]);
  expect(found(cone("5 sts increased."))).toEqual(["rows/change-differs Next rnd"]);
});

it("offers the number with an edit", () => {
  const text = cone("5 sts increased.");
  const edit = findings(text)[0]?.todo[0]?.edits?.[0];
  expect(edit && text.slice(edit.span.from, edit.span.to)).toBe("5");
  expect(edit?.text).toBe("4");
});
