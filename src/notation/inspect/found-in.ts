import { readPattern } from "../read-pattern.ts";
import { inspectTree } from "./inspect-tree.ts";

/** For the tests: what is found in a text of one kind, each as "words of the place: what". */
export function foundIn(text: string, code: string): string[] {
  return inspectTree(readPattern(text))
    .filter((finding) => finding.code === code)
    .map(({ span, row, what }) => `${row ?? "-"}: ${text.slice(span.from, span.to)}: ${what}`);
}
