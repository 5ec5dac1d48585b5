import type { Proof } from "../design/index.ts";
import { clip, oneLine, padEnd, padStart, widthOf } from "./cells.ts";
import type { Paint } from "./paint.ts";
import { listed } from "./table.ts";

/** A line of a table of sizes: a name and one value for each size. */
export interface SizeLine {
  readonly label: string;
  readonly values: readonly string[];
  /** "more" lines stand under the one before them and are set quietly. */
  readonly tone?: "row" | "more" | "good" | "warning";
}

const LONGEST_LABEL = 34;
/** A column of names narrower than this is none: the values are set as lists. */
const SHORTEST_LABEL = 15;
const INDENT = "  ";

/**
 * Lines under the names of the sizes, one column a size. A name too long for its column has a line of its own. Where the
 * terminal is too narrow for all sizes, the values are set as lists.
 */
export function setSizeTable(
  title: string,
  sizes: Proof["sizes"],
  lines: readonly SizeLine[],
  width: number,
  paint: Paint,
): string[] {
  if (lines.length === 0) return [];
  const heads = sizes.map(oneLine);
  const columns = heads.map((head, at) =>
    Math.max(widthOf(head), ...lines.map(({ values }) => widthOf(values[at] ?? ""))),
  );
  const widest = Math.max(
    widthOf(title),
    ...lines.map((line) => widthOf(oneLine(line.label)) + indentOf(line).length),
  );
  const room = width - columns.reduce((sum, column) => sum + 2 + column, 0);
  const label = Math.min(LONGEST_LABEL, widest, Math.max(room, SHORTEST_LABEL));
  const fits = label <= room;
  const over = heads.map((head, at) => `  ${padStart(head, columns[at] ?? 0)}`).join("");
  const head = fits
    ? [paint.strong(padEnd(clip(title, label), label)) + paint.quiet(over)]
    : [paint.strong(title), ...listed(heads, width - 8).map((words) => paint.quiet(" ".repeat(8) + words))];
  return [
    ...head,
    ...lines.flatMap((line) => {
      const tone = toneOf(line, paint);
      const indent = indentOf(line);
      const name = indent + clip(oneLine(line.label), width - indent.length);
      if (!fits) {
        const alike = new Set(line.values).size === 1 ? line.values.slice(0, 1) : line.values;
        return [tone(name), ...listed(alike, width - 8).map((words) => " ".repeat(8) + tone(words))];
      }
      const numbers = columns.map((column, at) => `  ${padStart(line.values[at] ?? "", column)}`).join("");
      if (line.values.length === 0) return [tone(name)];
      if (widthOf(name) <= label) return [tone(padEnd(name, label) + numbers)];
      return [tone(name), tone(" ".repeat(label) + numbers)];
    }),
    "",
  ];
}

/** Lines that say more about the one above them are set in further. */
const indentOf = ({ tone }: SizeLine): string => (tone === "more" ? INDENT + INDENT : INDENT);

function toneOf({ tone }: SizeLine, paint: Paint): (words: string) => string {
  if (tone === "more") return paint.quiet;
  if (tone === "good") return paint.good;
  return tone === "warning" ? paint.warning : (words) => words;
}

/** Centimetres to the millimetre, "?" where they are not known. */
export const cmOf = (cm: number | null): string =>
  cm === null ? "?" : (Math.round(cm * 10) / 10).toFixed(1);

/** The same with its sign: "+0.4", "−1.2", "0.0". */
export function missOf(cm: number | null): string {
  if (cm === null) return "";
  const rounded = Math.round(cm * 10) / 10;
  return rounded === 0 ? "0.0" : `${rounded > 0 ? "+" : "−"}${Math.abs(rounded).toFixed(1)}`;
}

/** Whether a list of misses says anything: some is known and not a zero. */
export const isMissed = (missed: readonly (number | null)[]): boolean =>
  missed.some((cm) => cm !== null && missOf(cm) !== "0.0");

export const countOf = (count: number | null): string => (count === null ? "-" : String(count));
