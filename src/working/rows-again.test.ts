import { describe, expect, it } from "vitest";
import { readPattern } from "../notation/index.ts";
import { workPattern } from "./work-pattern.ts";

/** Number of the row that each line ends with. */
const lastRows = (pattern: string): string =>
  workPattern(readPattern(pattern))
    .pieces.flatMap(({ lines }) => lines)
    .map(({ last }) => last.join("/"))
    .join(" ");

describe("rows worked again", () => {
  const START = `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 12 sts.
Row 2: Ch 1, sc in each st across, turn. 12 sts.
Row 3: Ch 1, sc in each st across, turn. 12 sts.
Rows 4-10: Rep Rows 2 and 3, ending with Row 2. 12 sts.`;
  it.each([
    ["for more rows", "Rep Rows 2 and 3 for 6 more rows. 12 sts.", 16],
    ["alternately", "Work Rows 2 and 3 alternately for 6 more rows, ending with a WS row. 12 sts.", 16],
    ["until more rows", "Rep Rows 2 and 3 until 6 more rows have been worked. 12 sts.", 16],
    ["until rows in all", "Rep Rows 2 and 3 until 16 rows have been worked. 12 sts.", 16],
    ["for rows in all", "Rep Rows 2 and 3 for a total of 16 rows. 12 sts.", 16],
    ["so many times", "Rep Rows 2 and 3 3 times more. 12 sts.", 16],
  ])("%s are counted from where they are meant to be", (_, line, last) =>
    expect(lastRows(`${START}\n${line}`)).toMatch(new RegExp(` ${last}$`)),
  );
});
