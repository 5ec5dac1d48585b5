import { describe, expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

// Number of values in each bracket the same: trade handbook, section 5.3. Shapes of lists: notation survey, section 8.

const HEAD = "Sizes: XS (S, M, L)\n\nBACK\nCh 31 (35, 39, 43).\n";
const ROW = "Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38, 42) sts.\n";
const lengths = (text: string) => foundIn(text, "sizes/list-length");

describe("a list with another number of values than sizes", () => {
  it("is found where a value is missing", () =>
    expect(lengths(`${HEAD}${ROW}Row 2: Ch 1, sc in each st across, turn. 30 (34, 38) sts.`)).toEqual([
      'Row 2: 30 (34, 38): "30 (34, 38)" has 3 values for 4 sizes.',
    ]));

  it("is found where there is one too many", () =>
    expect(lengths(`${HEAD}${ROW}Row 2: Ch 1, sc in next 28 (32, 36, 40, 44) sts, turn.`)).toEqual([
      'Row 2: 28 (32, 36, 40, 44): "28 (32, 36, 40, 44)" has 5 values for 4 sizes.',
    ]));

  it("is found where one value in a bracket is left", () =>
    expect(lengths(`${HEAD}${ROW}Row 2: Ch 1, sc in each st across, turn. 30 (34) sts.`)).toEqual([
      'Row 2: 30 (34): "30 (34)" has 2 values for 4 sizes.',
    ]));

  it("is found in the label of a row", () =>
    expect(lengths(`${HEAD}${ROW}Rows 2-12 (14, 16): Rep Row 1. 30 (34, 38, 42) sts.`)).toHaveLength(1));

  it("is found among the finished measurements", () =>
    expect(
      lengths(
        `Sizes: XS (S, M, L)\n\nFINISHED MEASUREMENTS\nBust: 80 (90, 100, 110) cm\nLength: 50 (52, 54, 56) cm\nArmhole depth: 18 (19, 20) cm\n\nBACK\nCh 31 (35, 39, 43).\n${ROW}`,
      ),
    ).toEqual(['-: 18 (19, 20): "18 (19, 20)" has 3 values for 4 sizes.']));
});

describe("other lists", () => {
  it("may hold the counts of several rows", () =>
    expect(
      lengths(`${HEAD}${ROW}Rows 2-4: Ch 1, 2 sc in first st, sc across, turn. (31, 32, 33 sts)`),
    ).toEqual([]));

  it("may be for the sizes that are named", () =>
    expect(
      lengths(`${HEAD}${ROW}M and L only:\nRow 2: Ch 1, sc in each st across, turn. 38 (42) sts.\n`),
    ).toEqual([]));

  it("may give a length in two units", () =>
    expect(
      lengths(
        `${HEAD}${ROW}Row 2: Ch 1, sc in each st across, turn.\nRep Row 2 until piece measures 9 (10, 11, 12)" [23 (25.5, 28, 30.5) cm].`,
      ),
    ).toEqual([]));

  it("may be a count in a bracket behind a number", () =>
    expect(lengths(`${HEAD}${ROW}Row 2 (30 sts): Ch 1, (sc in next 5 sts) 6 times (30 sts), turn.`)).toEqual(
      [],
    ));

  it("do not outvote the sizes: lists that disagree say that the run was not understood", () =>
    expect(
      lengths(
        "Sizes: S (M)\n\nCh 31 (35, 39).\nRow 1: Sc in 2nd ch from hook and in each ch across. 30 (34, 38) sts.",
      ),
    ).toEqual([]));

  it("do not matter in a pattern of one size", () =>
    expect(
      lengths("Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38) sts."),
    ).toEqual([]));
});
