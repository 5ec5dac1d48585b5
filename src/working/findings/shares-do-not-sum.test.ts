import { describe, expect, it } from "vitest";
import { said } from "../../base/index.ts";
import { found } from "../rows-in.ts";
import { sharesDoNotSum } from "./shares-do-not-sum.ts";

const M = (n: number) => [{ size: "M", n }];

it("sets the count against the sum of its parts", () =>
  expect(said(sharesDoNotSum, { row: "Row 4", total: M(70), sum: M(68) })).toEqual([
    "The parts of Row 4 do not come to its count in size M.",
    "70 sts are printed in all, and the parts told behind come to 68.",
    "Change the part that is wrong.",
    "Change the count of the whole.",
  ]));

const yoke = (parts: string): string =>
  `Sizes S (M)\n\nYOKE\nCh 41 (45).\nRow 1: Sc in 2nd ch from hook and in each ch across. 40 (44) sts: ${parts}.`;

describe("parts that are told behind a count", () => {
  it.each([
    "back 20 (22), fronts 10 (11) each",
    "right front 10 (11), back 20 (22), left front 10 (11)",
    "fronts 20 (22), back 20 (22)",
    "20 (22) on the back and 20 (22) on the front",
    "20 (22) on each side",
  ])("come to it: %s", (parts) => expect(found(yoke(parts))).toEqual([]));

  it.each([
    "back 20 (21), fronts 10 (11) each",
    "right front 10 (11), back 20 (22), left front 11 (11)",
    "19 (22) on the back and 20 (22) on the front",
  ])("do not come to it: %s", (parts) =>
    expect(found(yoke(parts))).toEqual(["rows/shares-do-not-sum Row 1"]),
  );
});

const point = (count: string): string =>
  `SCARF\nCh 16.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (15 sts)\nRow 2: Ch 1, sc in each st across. (${count})`;

it("lets a stitch stand between two sides", () => {
  expect(found(point("15 sts: 7 on each side"))).toEqual([]);
  expect(found(point("15 sts: 8 on each side"))).toEqual(["rows/shares-do-not-sum Row 2"]);
  expect(found(point("15 sts: 6 on each side"))).toEqual(["rows/shares-do-not-sum Row 2"]);
});
