import type { Clause } from "../tree.ts";
import type { Reading } from "./reading.ts";

/** Which sizes words such as "Sizes M and L only" name; empty for "all sizes"; null where no sizes are named. */
export function readSizesMeant(reading: Reading): { sizes: readonly number[]; all: boolean } | null {
  return reading.cursor.attempt(() => {
    const { cursor, context } = reading;
    cursor.accept("for|on|in|work|working|to|these|at|rep|repeat");
    cursor.accept("the|of");
    if (cursor.accept("all|both|every sizes|size")) return { sizes: [], all: true };
    const worded = cursor.accept("size|sizes|sz");
    const found: number[] = [];
    for (let guard = 0; guard < 16; guard += 1) {
      const name = sizeHere(reading);
      if (name === null) break;
      const before = cursor.at;
      if (cursor.accept("-|to|through|thru|up-to")) {
        const last = sizeHere(reading);
        if (last !== null && last > name) {
          for (let size = name; size <= last; size += 1) found.push(size);
        } else {
          cursor.at = before;
          found.push(name);
        }
      } else found.push(name);
      if (!cursor.accept(", and|&?") && !cursor.accept("and|&|/|or|+")) break;
    }
    if (found.length === 0) return null;
    const noun = cursor.accept("size|sizes") || worded;
    const only = cursor.accept("only");
    if (!noun && !only && !cursor.isMark(":") && context.sizes < 2) return null;
    if (!noun && !only && !cursor.isMark(":")) return null;
    return { sizes: [...new Set(found)].sort((a, b) => a - b), all: false };
  });
}

/** The size whose name stands here, stepped over. */
function sizeHere(reading: Reading): number | null {
  const { cursor, context } = reading;
  let best: { size: number; length: number } | null = null;
  context.sizeNames.forEach((name, size) => {
    const wanted = name.toLowerCase().replace(/[\s.\-–]+/gu, "");
    if (wanted === "") return;
    let have = "";
    for (let length = 1; length <= 6; length += 1) {
      const token = cursor.token(length - 1);
      if (!token || token.is === "break") break;
      if (token.is === "mark" && token.text === ".") break;
      if (!(token.is === "mark" && token.text === "-"))
        have += token.text.toLowerCase().replace(/[.-]+/gu, "");
      if (have === wanted && (!best || length > best.length)) best = { size, length };
      if (have.length >= wanted.length) break;
    }
  });
  const found = best as { size: number; length: number } | null;
  if (!found) {
    const ordinal = cursor.token();
    const named = cursor.fits("small|smallest")
      ? 0
      : cursor.fits("largest|biggest")
        ? context.sizes - 1
        : null;
    if (named !== null && context.sizes > 1) {
      cursor.at += 1;
      return named;
    }
    void ordinal;
    return null;
  }
  cursor.at += found.length;
  return found.size;
}

/** "Sizes M and L only: ...", "For size 4: ...", "End here for S." */
export function readSizeOnly(reading: Reading): Clause | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    if (cursor.accept("end|stop|finish|fasten off? here")) {
      const meant = readSizesMeant(reading) ?? looseSizes(reading);
      return meant && !meant.all
        ? { kind: "size-end", span: cursor.spanFrom(start), sizes: meant.sizes }
        : null;
    }
    const meant = readSizesMeant(reading);
    if (!meant) return null;
    cursor.accept(":|,|-|.");
    if (meant.all) return { kind: "aside", span: cursor.spanFrom(start) };
    if (cursor.done) return null;
    const words = cursor.wordsFrom(start);
    if (cursor.accept("end|stop|fasten off? here|off") && cursor.isBoundary())
      return { kind: "size-end", span: cursor.spanFrom(start), sizes: meant.sizes };
    const end = nextSizes(reading);
    const body = reading.inside(end);
    return { kind: "size-only", span: cursor.spanFrom(start), sizes: meant.sizes, words, body };
  });
}

function looseSizes(reading: Reading): { sizes: readonly number[]; all: boolean } | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept("for|in|with");
    cursor.accept("size|sizes");
    const sizes: number[] = [];
    for (let guard = 0; guard < 16; guard += 1) {
      const size = sizeHere(reading);
      if (size === null) break;
      sizes.push(size);
      if (!cursor.accept(", and|&?") && !cursor.accept("and|&|/|-")) break;
    }
    return sizes.length > 0 ? { sizes, all: false } : null;
  });
}

/** Where the next words for sizes begin a sentence; the fence where none do. */
function nextSizes(reading: Reading): number {
  const { cursor } = reading;
  const start = cursor.at;
  let found = cursor.limit;
  for (let at = start + 1; at < cursor.limit; at += 1) {
    const before = cursor.tokens[at - 1];
    if (before?.is !== "mark" || (before.text !== "." && before.text !== ";")) continue;
    cursor.at = at;
    const meant = cursor.fits("for|size|sizes|all|both|end|on") ? readSizesMeant(reading) : null;
    if (meant) {
      found = at;
      break;
    }
  }
  cursor.at = start;
  return found;
}

/** "[Sizes M and L only: ...]", "(for size S: ...)". */
export function readSizeOnlyBracket(reading: Reading, open: number, close: number): readonly Clause[] | null {
  const { cursor } = reading;
  return cursor.attempt(() => {
    cursor.at = open + 1;
    const meant = cursor.within(close, () => readSizesMeant(reading));
    if (!meant || meant.all) return null;
    const words = cursor.wordsFrom(open + 1);
    cursor.accept(":|,|-|.");
    const body = reading.inside(close);
    cursor.at = close + 1;
    const span = cursor.spanFrom(open);
    return body.length > 0
      ? [{ kind: "size-only", span, sizes: meant.sizes, words, body }]
      : [{ kind: "aside", span }];
  });
}
