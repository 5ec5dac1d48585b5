import type { FabricPattern, Whole } from "./fabric.ts";
import { fabricRow, rowsNamed, rowWords, say, sideOf } from "./row-words.ts";

/**
 * Rows of a fabric without shaping, numbered from `from` to `last`: its own rows once, then told again.
 * A last row that is a count has to end with the fabric's last row, which its multiple sees to.
 */
export function straightRows(
  fabric: FabricPattern,
  from: number,
  last: Whole,
  sts: string,
): readonly string[] {
  const period = fabric.rows.length;
  const lines: string[] = [];
  const end = last.count === undefined ? (last.plus ?? 0) : null;
  for (let row = from; row < from + period; row += 1) {
    if (end !== null && row > end) return lines;
    lines.push(`Row ${row} (${sideOf(row)}): ${rowWords(fabricRow(fabric, row))} ${sts}.`);
  }
  const next = from + period;
  const again = rowsNamed(from, next - 1);
  if (end === null) {
    const ending = (from - 1) % period === 0 ? "" : `, ending with Row ${period}`;
    lines.push(`Rows ${next}-${say(last)}: Rep ${again}${ending}. ${sts}.`);
    return lines;
  }
  if (next > end) return lines;
  const ending = (end - next + 1) % period === 0 ? "" : `, ending with Row ${from + ((end - next) % period)}`;
  lines.push(
    next === end
      ? `Row ${end} (${sideOf(end)}): Rep Row ${from}. ${sts}.`
      : `${rowsNamed(next, end)}: Rep ${again}${ending}. ${sts}.`,
  );
  return lines;
}
