import { describe, expect, it } from "vitest";
import { found } from "./rows-in.ts";

const START =
  "Note: Ch 1 does not count as a st throughout.\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts.\n";

describe("counts printed row by row for a stretch of rows", () => {
  const rows = (counts: string): string =>
    `SIZE: one size\n\n${START}Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (14 sts)\nRows 3-5: Rep Row 2. (${counts} sts)\nRows 6 and 7: Rep Row 2. (22, 24 sts)\n`;

  it("are held each at its row", () => {
    expect(found(rows("16, 18, 20"))).toEqual([]);
    for (const wrong of ["15, 18, 20", "16, 19, 20", "16, 18, 21"])
      expect(found(rows(wrong))).toEqual(["rows/count-differs Rows 3-5"]);
  });
});

describe("counts of slip stitches", () => {
  const rim = (count: string): string =>
    `Rnd 1: 9 sc in magic ring, join with sl st in first sc. 9 sts.\nRnd 2: Sl st in each st around. ${count}. Fasten off.`;

  it("are held where a row is made of nothing else", () => {
    expect(found(rim("9 sl sts"))).toEqual([]);
    expect(found(rim("8 sl sts"))).toEqual(["rows/count-differs Rnd 2"]);
  });

  it("are not held where one joins the round", () =>
    expect(found("Rnd 1: 9 sc in magic ring, join with sl st in first sc. 9 sc, 1 sl st.")).toEqual([]));
});

describe("counts of chains", () => {
  const gap = (count: string): string =>
    `${START}Row 2: Ch 1, sc in next 4 sts, ch 5, skip next 5 sts, sc in next 3 sts, turn. (7 sc, ${count} ch)`;

  it("are held where the row has long ones, one by one or as spaces", () => {
    expect(found(gap("5"))).toEqual([]);
    expect(found(gap("1"))).toEqual([]);
    expect(found(gap("4"))).toEqual(["rows/count-differs Row 2"]);
  });
});

it("holds a count in brackets that ends a sentence, whatever is done to the piece then", () => {
  const rows = (count: number): string =>
    `Rnd 1: 6 sc in magic ring [6]\nRnd 2: (2 sc in next st) 6 times [${count}]. Stuff the tip lightly`;
  expect(found(rows(12))).toEqual([]);
  expect(found(rows(11))).toEqual(["rows/count-differs Rnd 2"]);
});
