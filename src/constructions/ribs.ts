import { rowsNamed } from "./row-words.ts";

/** Rows of post stitches in turn over a first row of hdc: columns that stand out on the right side. Row 1 is a WS row. */
export function postRib(rows: number, sts: string, odd: boolean): readonly string[] {
  const turned = (one: string, other: string): string =>
    `Ch 1, *${one} around next st, ${other} around next st; rep from * ${odd ? `to last st, ${one} around last st` : "across"}, turn. ${sts}.`;
  return [
    `Row 1 (WS): Hdc in 2nd ch from hook and in each ch across, turn. ${sts}.`,
    `Row 2 (RS): ${turned("FPdc", "BPdc")}`,
    // An odd number of columns begins with the same one from both sides, which then stands the other way.
    `Row 3 (WS): ${odd ? turned("BPdc", "FPdc") : turned("FPdc", "BPdc")}`,
    ...(rows > 4
      ? [`${rowsNamed(4, rows)}: Rep Rows 2 and 3${rows % 2 === 0 ? ", ending with Row 2" : ""}. ${sts}.`]
      : []),
    ...(rows === 4 ? [`Row 4 (RS): Rep Row 2. ${sts}.`] : []),
  ];
}

/** Rows of sc in back loops, along the edge. Row 1 is a WS row. */
export function ridges(rows: number, sts: string): readonly string[] {
  return [
    `Row 1 (WS): Sc in 2nd ch from hook and in each ch across, turn. ${sts}.`,
    `Row 2 (RS): Ch 1, sc BLO in each st across, turn. ${sts}.`,
    ...(rows > 3 ? [`${rowsNamed(3, rows)}: Rep Row 2. ${sts}.`] : []),
    ...(rows === 3 ? [`Row 3 (WS): Rep Row 2. ${sts}.`] : []),
  ];
}
