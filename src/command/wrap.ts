import { cellsOf, widthOf } from "./cells.ts";

/**
 * Sets words in lines of a width. Lines break at spaces; only a word longer than a whole line is broken inside.
 *
 * @param words  one paragraph; white space counts as one space
 */
export function wrap(words: string, width: number): string[] {
  return fill(words.split(/\s+/u).filter(Boolean), width);
}

/** Sets parts that must stay whole, such as the numbers of a list, in lines of a width. */
export function fill(parts: readonly string[], width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const part of parts) {
    const joined = line === "" ? part : `${line} ${part}`;
    if (widthOf(joined) <= width) {
      line = joined;
      continue;
    }
    if (line !== "") lines.push(line);
    const [last = "", ...before] = broken(part, width).reverse();
    lines.push(...before.reverse());
    line = last;
  }
  if (line !== "") lines.push(line);
  return lines;
}

/** A number is never broken, however narrow the place. */
function broken(part: string, width: number): string[] {
  if (widthOf(part) <= width || /^[\d(),.[\]]+$/.test(part)) return [part];
  const lines: string[] = [];
  let line = "";
  let used = 0;
  for (const cell of cellsOf(part)) {
    if (used + cell.width > width && line !== "") {
      lines.push(line);
      line = "";
      used = 0;
    }
    line += cell.text;
    used += cell.width;
  }
  return [...lines, line];
}

/** The lines with a lead before the first and as many spaces before the others. */
export function hang(lead: string, lines: readonly string[]): string[] {
  const indent = " ".repeat(widthOf(lead));
  return lines.map((line, at) => (at === 0 ? lead : indent) + line);
}
