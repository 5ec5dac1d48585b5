/** Milliseconds of one run. */
export function time(run: () => unknown): number {
  const start = performance.now();
  kept = run();
  return performance.now() - start;
}

/** What a run gave back is kept until the next one, so that no run is taken for useless. */
export let kept: unknown;

/** The middle of several times: half of them are shorter. @throws {RangeError} of none */
export function median(times: readonly number[]): number {
  if (times.length === 0) throw new RangeError("no times");
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[middle] as number)
    : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
}

/**
 * Runs several things in turn, round after round, so that a slow moment of the machine meets all of them alike.
 *
 * @returns the median of each, in milliseconds; the first rounds, which warm the machine, are left out
 */
export function timeInTurn(
  runs: readonly ((round: number) => unknown)[],
  rounds: number,
  warmUp: number,
): number[] {
  const times: number[][] = runs.map(() => []);
  for (let round = 0; round < warmUp + rounds; round++)
    for (const [at, run] of runs.entries()) {
      const took = time(() => run(round));
      if (round >= warmUp) times[at]?.push(took);
    }
  return times.map(median);
}
