/**
 * The x of least |Ax − b| with no part of it below zero: active sets, by Lawson and Hanson, Solving Least Squares Problems,
 * chapter 23. For the few columns that stitches have.
 *
 * @param rows  A by rows, all of one length
 * @param b     one number a row
 */
export function nonNegativeLeastSquares(
  rows: readonly (readonly number[])[],
  b: readonly number[],
): number[] {
  const columns = rows[0]?.length ?? 0;
  const x: number[] = new Array(columns).fill(0);
  const free = new Set<number>();
  const residual = (): number[] =>
    rows.map(
      (row, at) => (b[at] ?? 0) - row.reduce((sum, value, column) => sum + value * (x[column] ?? 0), 0),
    );
  const scale = Math.max(1, ...b.map(Math.abs)) * Math.max(1, ...rows.flat().map(Math.abs));
  for (let round = 0; round < 3 * columns + 10; round++) {
    const left = residual();
    let best = -1;
    let most = scale * 1e-12;
    for (let column = 0; column < columns; column++) {
      if (free.has(column)) continue;
      const gain = rows.reduce((sum, row, at) => sum + (row[column] ?? 0) * (left[at] ?? 0), 0);
      if (gain > most) [best, most] = [column, gain];
    }
    if (best === -1) return x;
    free.add(best);
    for (let inner = 0; inner <= columns; inner++) {
      const list = [...free];
      const wanted = solveNormal(rows, b, list);
      const below = list.filter((_, at) => (wanted[at] ?? 0) <= 0);
      if (below.length === 0) {
        list.forEach((column, at) => {
          x[column] = wanted[at] ?? 0;
        });
        break;
      }
      // As far towards the unbounded answer as nothing goes below zero.
      let step = 1;
      list.forEach((column, at) => {
        const [from, to] = [x[column] ?? 0, wanted[at] ?? 0];
        if (to <= 0) step = Math.min(step, from / (from - to || 1));
      });
      list.forEach((column, at) => {
        x[column] = (x[column] ?? 0) + step * ((wanted[at] ?? 0) - (x[column] ?? 0));
        if ((x[column] ?? 0) <= 1e-12) {
          x[column] = 0;
          free.delete(column);
        }
      });
      if (free.size === 0) break;
    }
  }
  return x;
}

/** Least squares over some columns alone, by the normal equations with pivots; a column without weight stays 0. */
function solveNormal(
  rows: readonly (readonly number[])[],
  b: readonly number[],
  list: readonly number[],
): number[] {
  const n = list.length;
  const m = list.map((one) => [
    ...list.map((other) => rows.reduce((sum, row) => sum + (row[one] ?? 0) * (row[other] ?? 0), 0)),
    rows.reduce((sum, row, at) => sum + (row[one] ?? 0) * (b[at] ?? 0), 0),
  ]);
  for (let at = 0; at < n; at++) {
    let pivot = at;
    for (let row = at + 1; row < n; row++)
      if (Math.abs(m[row]?.[at] ?? 0) > Math.abs(m[pivot]?.[at] ?? 0)) pivot = row;
    [m[at], m[pivot]] = [m[pivot] as number[], m[at] as number[]];
    const head = m[at] as number[];
    if (Math.abs(head[at] ?? 0) < 1e-12) continue;
    for (let row = 0; row < n; row++) {
      if (row === at) continue;
      const share = (m[row]?.[at] ?? 0) / (head[at] ?? 1);
      if (share === 0) continue;
      m[row] = (m[row] as number[]).map((value, column) => value - share * (head[column] ?? 0));
    }
  }
  return m.map((row, at) => (Math.abs(row[at] ?? 0) < 1e-12 ? 0 : (row[n] ?? 0) / (row[at] ?? 1)));
}
