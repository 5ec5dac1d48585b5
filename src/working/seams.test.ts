import { describe, expect, it } from "vitest";
import { found } from "./rows-in.ts";

/* Rows told as a whole are as many as they say: 30 rows worked even are the same height as 30 rows written out. */

const even = (rows: number): string => `Work even in sc for ${rows} rows.`;
const written = "Rows 2-31: Ch 1, sc in each st across, turn. 20 sts.";
const piece = (name: string, rows: string): string =>
  `${name}\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 20 sts.\n${rows}\nFasten off.\n`;

describe("rows told as a whole", () => {
  it("match rows written out along a side seam", () => {
    const sewn = (rows: string): string =>
      [piece("BACK", rows), piece("FRONT", written), "FINISHING\nSew side seams."].join("\n");
    expect(found(sewn(even(30)))).toEqual([]);
    expect(found(sewn(even(20)))).toEqual(["seams/do-not-match"]);
  });

  it("mirror rows written out", () => {
    const pair = (rows: string): string =>
      [piece("LEFT FRONT", rows), piece("RIGHT FRONT", written)].join("\n");
    expect(found(pair(even(30)))).toEqual([]);
    expect(found(pair(even(20)))).toEqual(["pieces/do-not-mirror"]);
  });
});
