/** The word most like the one typed, or undefined where none is near enough to be meant. */
export function nearest(typed: string, words: readonly string[]): string | undefined {
  const allowed = Math.max(1, Math.floor(typed.length / 3));
  const ranked = words
    .map((word) => ({ word, off: distance(typed.toLowerCase(), word.toLowerCase()) }))
    .sort((a, b) => a.off - b.off);
  return ranked[0] && ranked[0].off <= allowed ? ranked[0].word : undefined;
}

/** Letters to put in, take out, change or swap with the next to get from one word to the other. */
function distance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, at) => at)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const before = rows[i - 1] as number[];
      const change = (before[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min((before[j] as number) + 1, (row[j - 1] as number) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, ((rows[i - 2] as number[])[j - 2] as number) + 1);
      row.push(best);
    }
    rows.push(row);
  }
  return (rows[a.length] as number[])[b.length] as number;
}
