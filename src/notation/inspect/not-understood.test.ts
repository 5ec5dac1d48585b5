import { expect, it } from "vitest";
import { foundIn } from "./found-in.ts";

const unread = (rows: string) =>
  foundIn(
    `Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${rows}`,
    "lines/not-understood",
  );

it("tells each row once, with all its words", () => {
  const found = unread("Row 2: Ch 1, flip the loop over the bar, sc in next st, glorp the moff, turn.");
  expect(found).toHaveLength(1);
  expect(found[0]).toContain("flip the loop over the bar");
  expect(found[0]).toContain("glorp the moff");
  expect(found[0]).toMatch(/^Row 2: /);
});

it("looks into brackets", () =>
  expect(unread("Row 2: Ch 1, (sc in next st, glorp the moff) 5 times, turn.")[0]).toContain(
    "glorp the moff",
  ));

it("is silent where all is understood", () =>
  expect(
    unread("Row 2: Ch 1, *sc in next st, sc2tog; rep from * to last st, sc in last st, turn. (8 sts)"),
  ).toEqual([]));

it("leaves a list with a missing value to the finding that tells of it", () =>
  expect(
    foundIn(
      "Sizes: S (M, L)\n\nCh 11 (13, 15).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 10 (12, 14) sts.\nRow 2: Ch 1, sc in each st across, turn. 10 (12) sts.",
      "lines/not-understood",
    ),
  ).toEqual([]));
