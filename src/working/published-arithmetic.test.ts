import { expect, it } from "vitest";
import { counts, found } from "./rows-in.ts";

/* The maker held against published arithmetic. The source stands beside each check. */

// Trade handbook, section 3.1: 12 x 9 + 2 = 110 chains; from the second chain one is passed.
it("works a repeat of twelve nine times over a multiple of 12 plus 2", () => {
  const text =
    "Ch 111.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (110 sc)\nRow 2: Ch 1, sc in first st, *sc in next 10 sts, ch 2, sk next 2 sts; rep from * across to last st, sc in last st, turn. (92 sc, 9 ch-2 sps)";
  expect(found(text)).toEqual([]);
  expect(counts(text)).toBe("Row 1: 110, Row 2: 92");
});

// Trade handbook, section 3.4: 112 stitches, 16 increases, one every 7.
it("increases 16 in 112", () =>
  expect(
    counts(
      "Ch 112, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join. (112)\nRnd 2: Ch 1, *sc in next 6 sts, 2 sc in next st; rep from * around, join. (128)",
    ),
  ).toBe("Rnd 1: 112, Rnd 2: 128"));

// Trade handbook, section 3.4: 40 stitches, 4 increases, five sections of 8.
it("increases 4 in 40 between five sections of 8", () =>
  expect(
    counts(
      "Ch 41.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in next 7 sts, 2 sc in next st, (sc in next 7 sts, 2 sc in next st) 3 times, sc in next 8 sts, turn.",
    ),
  ).toBe("Row 1: 40, Row 2: 44"));

// Trade handbook, section 3.5: 30 stitches, 10 decreases: 1 plain, 1 decrease, ten times.
it("decreases 10 in 30", () =>
  expect(
    counts(
      "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 5 sc in each st around. (30)\nRnd 3: (sc in next st, sc2tog) 10 times. (20)",
    ),
  ).toBe("Rnd 1: 6, Rnd 2: 30, Rnd 3: 20"));

// Trade handbook, section 3.5, the trap: 26 stitches lose 15 by 4 three-togethers and 7 two-togethers.
it("decreases 15 in 26 by threes and twos", () => {
  const text =
    "Ch 27.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (26 sc)\nRow 2: Ch 1, sc3tog 4 times, sc2tog 7 times, turn. (11 sts)";
  expect(found(text)).toEqual([]);
  expect(counts(text)).toBe("Row 1: 26, Row 2: 11");
});

it("cannot decrease 15 in 26 by two-togethers alone", () =>
  expect(
    found(
      "Ch 27.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc2tog 15 times, turn.",
    ),
  ).toEqual(["rows/not-enough-stitches Row 2"]));

// Trade handbook, section 3.6: 30 rows, 8 shaping rows: every 4th row 6 times, then every 3rd row 2 times (24 + 6 = 30).
it("unrolls a two-step taper", () => {
  const text =
    "Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (30 sc)\nRows 2-31: Inc 1 st each end of every 4th row 6 times, then every 3rd row 2 times. (46 sts)";
  expect(found(text)).toEqual([]);
});

it("says when a taper needs more rows than there are", () =>
  expect(
    found(
      "Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (30 sc)\nRows 2-25: Inc 1 st each end of every 4th row 6 times, then every 3rd row 2 times. (46 sts)",
    ),
  ).toEqual(["shaping/more-rows-than-there-are Rows 2-25"]));

// Trade handbook, section 3.9: 6, 12, 18, 24 in sc.
it("grows a flat circle by six", () => {
  const text =
    "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around. (12)\nRnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18)\nRnd 4: *Sc in next 2 sts, 2 sc in next st; rep from * around. (24)";
  expect(found(text)).toEqual([]);
  expect(counts(text)).toBe("Rnd 1: 6, Rnd 2: 12, Rnd 3: 18, Rnd 4: 24");
});

// Trade handbook, section 2.4: four underarm chains each side add 8 to the body.
it("counts underarm chains twice over in a body", () => {
  const text =
    "Ch 236, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join. (236)\nRnd 2: Ch 1, sc in next 36 sts, ch 4, sk next 46 sts, sc in next 72 sts, ch 4, sk next 46 sts, sc in next 36 sts, join. (144 sc, 2 ch-4 sps)\nRnd 3: Ch 1, sc in each st and in each ch around, join. (152)";
  expect(found(text)).toEqual([]);
  expect(counts(text)).toBe("Rnd 1: 236, Rnd 2: 144, Rnd 3: 152");
});

// Computation notes, section 1: 400 sc, two increases at each side make 404; two two-togethers at each side take them back.
it("adds two increases at each side of 400 and takes them off again", () => {
  const text =
    "Ch 401.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (400)\nRow 2: Ch 1, 2 sc in each of first 2 sts, sc in each st to last 2 sts, 2 sc in each of last 2 sts, turn. (404)\nRow 3: Ch 1, (sc2tog) twice, sc in each st to last 4 sts, (sc2tog) twice, turn. (400)";
  expect(found(text)).toEqual([]);
  expect(counts(text)).toBe("Row 1: 400, Row 2: 404, Row 3: 400");
});

// Computation notes, section 1: (sc 2, hdc 2, dc 3, sc 1) x 50 takes 400 and makes 400.
it("takes and makes 400 in fifty repeats of eight", () =>
  expect(
    counts(
      "Ch 401.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (400)\nRow 2: Ch 1, (sc in next 2 sts, hdc in next 2 sts, dc in next 3 sts, sc in next st) 50 times, turn. (400)",
    ),
  ).toBe("Row 1: 400, Row 2: 400"));

// Common practice, no source: a chain of n worked from the second chain gives n - 1.
it.each([2, 3, 21, 58, 300])("gives one stitch fewer than %i chains from the second chain", (chains) =>
  expect(counts(`Ch ${chains}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.`)).toBe(
    `Row 1: ${chains - 1}`,
  ),
);

// Common practice, no source: chain k over k skipped keeps the count, chains being counted.
it.each([1, 2, 3])("keeps the number when %i chains stand over as many skipped", (k) =>
  expect(
    counts(
      `Ch ${10 * (k + 1) + 2}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in first st, *ch ${k}, sk next ${k === 1 ? "st" : `${k} sts`}, sc in next st; rep from * across, turn.\nRow 3: Ch 1, sc in each st and in each ch across, turn.`,
    ),
  ).toBe(`Row 1: ${10 * (k + 1) + 1}, Row 2: 11, Row 3: ${10 * (k + 1) + 1}`),
);

// Trade handbook, section 3.3: counting the chain and working the first stitch adds one a row; not counting it and skipping loses one.
it("grows when a chain that counts is followed by a stitch in the first stitch", () =>
  expect(
    counts(
      "Ch 23.\nRow 1: Dc in 4th ch from hook and in each ch across (skipped ch count as dc), turn. (21 dc)\nRow 2: Ch 3 (counts as dc), dc in first st, dc in each st across, turn. (22 dc)",
    ),
  ).toBe("Row 1: 21, Row 2: 22"));
