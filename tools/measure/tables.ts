/** A table for a terminal: the first column to the left, numbers to the right; a line under the head and over the foot. */
export function drawTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  ...feet: readonly (readonly string[])[]
): string {
  const all = [head, ...rows, ...feet];
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column] as number) : cell.padStart(widths[column] as number),
      )
      .join("  ")
      .trimEnd();
  const rule = widths.map((width) => "─".repeat(width)).join("  ");
  return [line(head), rule, ...rows.map(line), ...(feet.length > 0 ? [rule, ...feet.map(line)] : [])].join(
    "\n",
  );
}

/** "93 %" rounded down, so that 100 % means all of them; "-" of nothing. */
export function share(part: number, whole: number): string {
  return whole === 0 ? "-" : `${Math.floor((100 * part) / whole + 1e-9)} %`;
}
