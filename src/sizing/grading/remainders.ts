import { commonDenominator } from "./fractions.ts";
import type { Link } from "./model.ts";

/**
 * Whether whole k exist at all for the links that must come out exactly, sizes and bounds left aside. Three even counts
 * never come to an odd sum, and no search through ever larger counts would find that out.
 *
 * @param chains  how many there are in the block
 */
export function remaindersAgree(links: readonly Link[], chains: number): boolean {
  const rows: bigint[][] = [];
  for (const { terms, least, most } of links) {
    if (least !== most) continue;
    const scale = commonDenominator([...terms.map(({ times }) => times), least]);
    if (scale === null) continue;
    const row = new Array<bigint>(chains + 1).fill(0n);
    for (const { chain, times } of terms) row[chain] = BigInt(Math.round(times * scale));
    row[chains] = BigInt(Math.round(least * scale));
    rows.push(row);
  }
  return solvable(rows, chains);
}

/** Whole solutions of the rows, by column operations that leave one number above 0 in each row in turn. */
function solvable(rows: bigint[][], unknowns: number): boolean {
  let pivot = 0;
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r]!;
    for (let c = pivot + 1; c < unknowns; c++) {
      while (row[c] !== 0n) {
        const times = pivot < unknowns ? row[pivot]! / row[c]! : 0n;
        for (const one of rows) {
          const kept = one[pivot]! - times * one[c]!;
          one[pivot] = one[c]!;
          one[c] = kept;
        }
      }
    }
    const head = pivot < unknowns ? row[pivot]! : 0n;
    if (head === 0n) {
      if (row[unknowns] !== 0n) return false;
      continue;
    }
    if (row[unknowns]! % head !== 0n) return false;
    // The unknown of this row is settled: its share moves to the right side of the rows below.
    const value = row[unknowns]! / head;
    for (const one of rows.slice(r + 1)) {
      one[unknowns]! -= value * one[pivot]!;
      one[pivot] = 0n;
    }
    pivot += 1;
  }
  return true;
}
