import type { PerSize } from "../../base/index.ts";
import type { Multiple } from "../multiples.ts";
import { type Slip, WordCursor } from "./word-cursor.ts";

/** Whole numbers as a pattern lists them, each with its place; null where a size has none ("-"). */
export interface CountList {
  readonly values: PerSize<number | null>;
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

export type CountListRead =
  | { readonly list: CountList; readonly slip: null }
  | { readonly list: null; readonly slip: Slip };

/** Reads "61 69 77", "61 (69, 77) (83, 91)", "61, 69, 77", "62"; a dash stands for a size that has none. */
export function readCountList(words: string): CountListRead {
  const values: (number | null)[] = [];
  const spans: { from: number; to: number }[] = [];
  const token = /\s*(?:[,;()[\]]\s*)*(?:(\d{1,6})(?![\d.½¼¾/])|([-–—])(?!\d))/y;
  let at = 0;
  for (;;) {
    token.lastIndex = at;
    const found = token.exec(words);
    if (!found) break;
    at = token.lastIndex;
    const [, number, dash] = found;
    const length = (number ?? dash ?? "").length;
    values.push(number === undefined ? null : Number(number));
    spans.push({ from: at - length, to: at });
  }
  const rest = words.slice(at);
  if (/[^\s,;()[\]]/.test(rest) || values.length === 0) {
    const from = at + (rest.length - rest.trimStart().length);
    return {
      list: null,
      slip: {
        span: { from: Math.min(from, words.length), to: words.length },
        say:
          values.length === 0 ? "Whole numbers stand here, one for each size." : "Here is no whole number.",
      },
    };
  }
  return { list: { values, spans }, slip: null };
}

/** Reads "2 + 1", "8 plus 2", "multiple of 4", "4"; null for other words. */
export function readMultiple(words: string): Multiple | null {
  const cursor = new WordCursor(words);
  cursor.take(/(?:a\s+)?multiples?\s+of\b/iy);
  const multiple = cursor.number();
  if (multiple === null || !Number.isInteger(multiple.value) || multiple.value < 1) return null;
  cursor.take(/(?:stitch(?:es)?|sts?|rows?)\b/iy);
  const sign = cursor.take(/plus\b|\+/iy) ? 1 : cursor.take(/minus\b|[-−–]/iy) ? -1 : 0;
  const remainder = sign === 0 ? null : cursor.number();
  if (sign !== 0 && (remainder === null || !Number.isInteger(remainder.value))) return null;
  if (!cursor.done) return null;
  return { multiple: multiple.value, remainder: sign * (remainder?.value ?? 0) };
}
