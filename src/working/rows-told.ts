import type { Amount, Clause } from "../notation/index.ts";
import type { PieceState } from "./piece.ts";
import type { Trouble } from "./trouble.ts";

/**
 * Holds "the sleeve has 46 rnds" against the rows that were worked. A designer may count from the beginning of the piece, of a section
 * or from where the numbers begin again: one of these must come true.
 */
export function checkRowsTold(
  state: PieceState,
  clauses: readonly Clause[],
  number: (amount: Amount) => number | null,
  troubles: Trouble[],
): void {
  if (state.rowsWorked === null || state.everUnread || state.rows.length === 0) return;
  for (const clause of clauses) {
    if (clause.kind !== "aside" || !clause.rowsDone) continue;
    const told = number(clause.rowsDone);
    const counts = countsFromBeginnings(state);
    if (told === null || counts.length === 0 || counts.includes(told)) continue;
    const worked = counts.reduce((best, each) =>
      Math.abs(each - told) < Math.abs(best - told) ? each : best,
    );
    troubles.push({ is: "rows-told", span: clause.rowsDone.span, told, worked });
  }
}

/** How many rows stand from each beginning to the last row: of the piece, of a section, of numbers from 1. */
function countsFromBeginnings({ rows }: PieceState): number[] {
  let count = 0;
  const counts: number[] = [];
  for (let at = rows.length - 1; at >= 0; at--) {
    const row = rows[at];
    const before = rows[at - 1];
    // Where a measure alone says how many rows, nothing is known from before them.
    if (!row || row.rows === null) break;
    count += row.rows;
    if (!before || before.sectionAt !== row.sectionAt || (row.number === 1 && before.number !== 0))
      counts.push(count);
  }
  return counts;
}
