import type { MultipleNote } from "../tree.ts";
import { readAmount } from "./amounts.ts";
import type { Reading } from "./reading.ts";

const STITCHES = "st|sts|stitch|stitches";
const CHAINS = "ch|chs|chain|chains";

/** A rule of width as its words say it, without a name. */
export type Multiple = Omit<MultipleNote, "name">;

/** "a multiple of 8 + 5", "any multiple of 6 sts plus 1 (add 2 for base chain)", "an odd number of sts". */
export function readMultiple(reading: Reading): Multiple | null {
  return readOddOrEven(reading) ?? readMultipleOf(reading);
}

/** The chains of a foundation of that width, what is added for the base chain with it. */
export function chainsOf({ of, plus, base }: Multiple): { readonly of: number; readonly plus: number } {
  return { of, plus: plus + (base ?? 0) };
}

function readOddOrEven({ cursor }: Reading): Multiple | null {
  return cursor.attempt(() => {
    const start = cursor.at;
    cursor.accept("a|an|any|the");
    const odd = cursor.fits("odd|uneven number of") > 0;
    if (!odd && cursor.fits("even number of") === 0) return null;
    cursor.at += cursor.fits("odd|uneven|even number of");
    const chains = cursor.accept(CHAINS);
    if (!chains && !cursor.accept(STITCHES)) return null;
    const counts = chains && !cursor.accept(STITCHES) ? "chains" : "stitches";
    return { of: 2, plus: odd ? 1 : 0, base: null, counts, span: cursor.spanFrom(start) };
  });
}

function readMultipleOf(reading: Reading): Multiple | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    const start = cursor.at;
    cursor.accept("in?");
    cursor.accept("a|an|any|the");
    if (!cursor.accept("multiple|multiples|mult of")) return null;
    const of = readAmount(reading);
    const size = of?.values[0];
    if (!size) return null;
    let counts = countedIn(reading) ?? "unsaid";
    let plus = 0;
    if (cursor.accept("+|plus|and|add")) {
      const extra = readAmount(reading);
      if (!extra) return null;
      plus = extra.values[0] ?? 0;
      const more = countedIn(reading);
      if (counts === "unsaid" && more) counts = more;
      cursor.accept("more|extra");
    }
    return { of: size, plus, base: baseAdded(reading), counts, span: cursor.spanFrom(start) };
  });
}

function countedIn({ cursor }: Reading): Multiple["counts"] | null {
  if (cursor.accept(STITCHES)) return "stitches";
  if (!cursor.accept(CHAINS)) return null;
  // "6 ch sts" are chains.
  cursor.accept(STITCHES);
  return "chains";
}

/** "(add 2 for base chain)", "+ 1 for the turning ch". */
function baseAdded(reading: Reading): number | null {
  return reading.cursor.attempt(() => {
    const { cursor } = reading;
    cursor.accept(",|;|.");
    const bracketed = cursor.isOpener();
    const close = cursor.partner[cursor.at] ?? -1;
    cursor.accept("(|[|,|+|;");
    cursor.accept("and");
    if (!cursor.accept("add|plus|+|adding")) return null;
    const more = readAmount(reading);
    if (!more) return null;
    cursor.accept("ch|chs|chain|chains|extra|more");
    if (!cursor.accept("for|to the? base|foundation|turning|starting|beg|beginning? ch|chain")) return null;
    if (bracketed) {
      if (cursor.at !== close) return null;
      cursor.at += 1;
    }
    return more.values[0] ?? 0;
  });
}
