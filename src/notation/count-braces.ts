/*
 * Counts by name: {body sts}, {body sts + 1}, {front + back - 2}. Whole numbers and names, joined by plus and minus.
 */

export interface CountFound {
  readonly to: number;
  /** One value per size; empty where a name is not known. */
  readonly values: readonly (number | null)[];
  /** What stands between the braces. */
  readonly words: string;
}

const BRACES = /\{([^{}\n]{1,200})\}/y;

/**
 * The text with every count in braces as a list of numbers of the same length, "{body sts}" as "1 (111111)": what tells an
 * instruction from talk, and a count from other words, knows lists.
 */
export function countsAsLists(flat: string): string {
  return flat.replace(/\{\s{0,4}[a-z][^{}\n]{0,198}\}/gi, ({ length }) => {
    if (length < 5) return "1".repeat(length);
    const inside = Math.min(60, length - 4);
    return `1 (${"1".repeat(inside)})`.padEnd(length);
  });
}

/** The count in braces at `at`, or null where the braces hold something else, such as the count of a row ("{24}", "{24 sts}"). */
export function readCount(
  text: string,
  at: number,
  counts: ReadonlyMap<string, readonly (number | null)[]>,
): CountFound | null {
  BRACES.lastIndex = at;
  const found = BRACES.exec(text);
  if (!found) return null;
  const words = (found[1] as string).trim();
  const to = at + found[0].length;
  if (!/^[a-z]/i.test(words)) return null;
  return { to, words, values: valuesOf(words, counts) };
}

function valuesOf(
  words: string,
  counts: ReadonlyMap<string, readonly (number | null)[]>,
): readonly (number | null)[] {
  const whole = namedCount(words, counts);
  if (whole) return whole;
  // A name may hold a hyphen of its own; a sign between spaces parts two terms.
  const parts = words.split(/\s+([+-])\s+/);
  let sum: readonly (number | null)[] = [0];
  for (let i = 0; i < parts.length; i += 2) {
    const part = (parts[i] as string).trim();
    const term = /^\d+$/.test(part) ? [Number(part)] : namedCount(part, counts);
    if (!term) return [];
    sum = add(sum, term, parts[i - 1] === "-" ? -1 : 1);
  }
  return sum;
}

function namedCount(
  name: string,
  counts: ReadonlyMap<string, readonly (number | null)[]>,
): readonly (number | null)[] | undefined {
  const exact = counts.get(name);
  if (exact) return exact;
  const wanted = name.toLowerCase().replace(/\s+/g, " ");
  for (const [key, values] of counts) if (key.toLowerCase().replace(/\s+/g, " ") === wanted) return values;
  return undefined;
}

/** Term by term; a list of one value stands for all sizes, and none plus anything is none. */
function add(
  a: readonly (number | null)[],
  b: readonly (number | null)[],
  sign: 1 | -1,
): readonly (number | null)[] {
  const length = Math.max(a.length, b.length);
  return Array.from({ length }, (_, i) => {
    const x = a.length === 1 ? a[0] : a[i];
    const y = b.length === 1 ? b[0] : b[i];
    return typeof x === "number" && typeof y === "number" ? x + sign * y : null;
  });
}
