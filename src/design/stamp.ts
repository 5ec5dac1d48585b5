import type { Instruction } from "../notation/index.ts";
import type { WorkedLine } from "../working/index.ts";

/**
 * The stamp of a row and its counts: five letters or digits that change when the words of the row or a count of any size
 * changes, its own or the one it was worked on. White space does not matter. It tells an answer that was given to another
 * state of the row.
 */
export function stampOf(
  text: string,
  instruction: Instruction,
  line: WorkedLine,
  before: WorkedLine | null,
): string {
  const answersFrom = Math.min(instruction.span.to, ...instruction.answers.map((answer) => answer.span.from));
  const words = text.slice(instruction.span.from, answersFrom).replace(/\s+/gu, " ").trim();
  return hashOf(`${words}|${line.stitches.join(",")}|${before?.stitches.join(",") ?? ""}`);
}

/** The stamp of any words: a change of one sign changes it. */
export const stampOfWords = (words: string): string => hashOf(words.replace(/\s+/gu, " ").trim());

/** FNV-1a, 32 bits, in base 32 without letters that look like digits. Source: the published FNV parameters, from memory. */
function hashOf(words: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < words.length; at++) {
    hash ^= words.charCodeAt(at);
    hash = Math.imul(hash, 0x01000193) >>> 0;
  }
  const letters = "abcdefghjkmnpqrstuvwxyz023456789";
  let stamp = "";
  for (let at = 0; at < 5; at++) {
    stamp += letters[hash & 31];
    hash >>>= 5;
  }
  return stamp;
}
