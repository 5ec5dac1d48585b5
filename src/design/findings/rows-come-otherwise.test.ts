import { expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { rowsComeOtherwise } from "./rows-come-otherwise.ts";

it("says what, why and what to do", () =>
  expect(
    said(rowsComeOtherwise, { count: "sleeve rows", cases: [{ size: "M", written: 60, worked: 58 }] }),
  ).toEqual([
    "The rows do not come to sleeve rows.",
    "In M the last row worked is Row 58, and sleeve rows is 60.",
    "Work as many rows as sleeve rows says, or give the count the number of rows.",
  ]));
