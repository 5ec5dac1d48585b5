import type { Span } from "../../base/index.ts";
import type { OwnWords } from "./style.ts";

const ARTICLES: ReadonlySet<string> = new Set(["a", "an", "the", "your"]);

/**
 * The printer's words or, where they say less than the designer's own, those: "changing to B in the last sc" holds a place that the
 * tree does not keep.
 */
export function fullerOf(printed: string, span: Span, own: OwnWords | null): string {
  if (own === null) return printed;
  const words = lead(own(span));
  return wordCount(words) > wordCount(printed) ? words : printed;
}

/** The designer's words as they stand inside a sentence. */
export function lead(words: string): string {
  const plain = words.replace(/\s+/gu, " ").trim();
  // "RS" and "B" keep their capitals.
  return /^\p{Lu}\p{Ll}|^A\s\p{Ll}/u.test(plain) ? plain.charAt(0).toLowerCase() + plain.slice(1) : plain;
}

function wordCount(words: string): number {
  return (words.toLowerCase().match(/[\p{L}']+/gu) ?? []).filter((word) => !ARTICLES.has(word)).length;
}
