import { expect, it } from "vitest";
import { readPattern } from "../../src/notation/index.ts";
import { removeCounts } from "./without-counts.ts";

const remove = (text: string, share: number) => removeCounts(readPattern(text), share, 1);

it("takes printed counts out in every style and leaves the rows as they were", () => {
  const { text, removed, printed } = remove(
    `STRIP
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 sts.
Row 2: Ch 1, sc in each st across, turn. (10 sts)
Row 3: Ch 1, sc in each st across, turn = 10 sts
Row 4: Ch 1, sc in each st across, turn - 10 sc.
`,
    1,
  );
  expect(text).toBe(`STRIP
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Ch 1, sc in each st across, turn.
Row 3: Ch 1, sc in each st across, turn
Row 4: Ch 1, sc in each st across, turn.
`);
  expect([removed, printed]).toEqual([4, 4]);
});

it("draws a share of them by lot", () => {
  const rows = Array.from(
    { length: 20 },
    (_, at) => `Row ${at + 2}: Ch 1, sc in each st across, turn. 10 sts.`,
  );
  const { text, removed } = remove(
    `STRIP\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${rows.join("\n")}\n`,
    0.7,
  );
  expect(removed).toBe(14);
  expect(text.match(/10 sts\./g)?.length).toBe(6);
});
