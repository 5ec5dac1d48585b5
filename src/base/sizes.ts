/** One value for every size, in the order of the pattern's size run. */
export type PerSize<T> = readonly T[];

/** The names of the sizes, smallest first as the pattern lists them; a pattern that is not graded has one. */
export type SizeRun = readonly string[];

/** The size run of a pattern that is not graded. */
export const ONE_SIZE: SizeRun = ["one size"];

/** The value of one size, where a list of one value stands for every size. */
export function valueAt<T>(values: readonly T[], size: number): T | undefined {
  return values.length === 1 ? values[0] : values[size];
}

/** The names at the given indices, in size-run order. */
export function namesOf(run: SizeRun, indices: Iterable<number>): string[] {
  return [...indices].sort((a, b) => a - b).map((index) => run[index] ?? `size ${index + 1}`);
}

/** "S", "S and M", "S, M and L"; and "every size" where all of a graded run are meant. */
export function sayList(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}
