import { expect, it } from "vitest";
import { found } from "./rows-in.ts";

const pocket = (first: string, second: string, third: string): string =>
  `POCKET\nNote: Ch 1 does not count as a st throughout.\n\nCh 11.\nRow 1: ${first}Sc in 2nd ch from hook and in each ch across. 10 sc.\nRow 2: ${second} 10 sc.\n${third}`;
const again = "Rows 3-8: Rep Row 2. 10 sc. Fasten off.";

it("misses a turn in a small piece whose other rows are turned", () => {
  expect(found(pocket("", "Turn, ch 1, sc in each st across.", again))).toEqual([]);
  expect(
    found(
      pocket(
        "",
        "Ch 1, sc in each st across.",
        "Row 3: Turn, ch 1, sc in each st across. 10 sc.\nRows 4-8: Rep Row 3. 10 sc.\nRow 9: Turn, ch 1, sc in each st across. 10 sc.",
      ),
    ),
  ).toEqual(["rows/turn-missing Row 2"]);
});

it("takes rows without a turn for a habit of the writer", () =>
  expect(
    found(
      pocket(
        "",
        "Ch 1, sc in each st across.",
        "Row 3: Ch 1, sc in each st across. 10 sc.\nRow 4: Turn, ch 1, sc in each st across. 10 sc.",
      ),
    ),
  ).toEqual([]));
