import type { LineIndex, Span } from "../base/index.ts";
import { type Cell, cellsOf } from "./cells.ts";

/** One printed line of the pattern, and the marks that stand under it. */
export interface MarkedLine {
  /** Line number, on the first printed line of each written one; else null. */
  readonly line: number | null;
  readonly text: string;
  readonly marks: string;
}

/** What stands before the place on a cut line, so that the eye finds where it is. */
const CONTEXT = 18;
/** A place that is longer is shown by its beginning. */
const MOST_ROWS = 3;
const CUT = "…";

/**
 * The place of a span as it is printed: each written line it touches, underlined. A line wider than the width is cut to a window
 * around the place; a place wider than that runs on over a few lines. Of many lines only the first two and the last are shown.
 *
 * @param width  columns for the line itself
 * @param mark   the sign to underline with
 */
export function underline(
  text: string,
  index: LineIndex,
  span: Span,
  width: number,
  mark = "^",
): MarkedLine[] {
  const shown = trimmed(text, span);
  const first = index.position(shown.from).line;
  const last = Math.max(first, index.position(Math.max(shown.from, shown.to - 1)).line);
  const lines = Array.from({ length: last - first + 1 }, (_, at) => first + at).filter(
    (line) => first === last || index.lineText(line).trim() !== "",
  );
  const kept = lines.length > MOST_ROWS ? [...lines.slice(0, 2), null, ...lines.slice(-1)] : lines;
  return kept.flatMap((line) => {
    if (line === null) return [{ line: null, text: CUT, marks: "" }];
    const start = index.startOf(line);
    const within = { from: shown.from - start, to: shown.to - start };
    return underlineIn(cellsOf(index.lineText(line)), within, width, mark).map((row, at) => ({
      line: at === 0 ? line : null,
      ...row,
    }));
  });
}

/** A span without white space at its ends, unless it is nothing else. */
function trimmed(text: string, span: Span): Span {
  const from = Math.max(0, Math.min(span.from, text.length));
  const to = Math.max(from, Math.min(span.to, text.length));
  const words = text.slice(from, to);
  const inner = words.trim();
  if (inner === "") return { from, to };
  const lead = words.length - words.trimStart().length;
  return { from: from + lead, to: from + lead + inner.length };
}

function underlineIn(
  cells: readonly Cell[],
  span: Span,
  width: number,
  mark: string,
): { text: string; marks: string }[] {
  // A place of no length, where something is missing, is marked by one sign.
  const isMarked = (cell: Cell): boolean =>
    span.from === span.to
      ? cell.from <= span.from && span.from < cell.to
      : cell.from < span.to && cell.to > span.from;
  const begin = cells.findIndex(isMarked);
  const end = cells.findLastIndex(isMarked);
  const indent = leading(cells);
  if (widthOfCells(cells.slice(indent)) <= width)
    return [setRow(cells.slice(indent), isMarked, mark, begin === -1)];
  if (begin === -1) return [setRow(tail(cells, width), isMarked, mark, true)];

  const rows: { text: string; marks: string }[] = [];
  let at = windowStart(cells, begin, end, width, indent);
  while (at <= end && rows.length < MOST_ROWS) {
    const lead = at > indent && rows.length === 0 ? CUT : "";
    const isLastRow = rows.length === MOST_ROWS - 1;
    const stop = rowEnd(cells, at, width - lead.length - 1);
    const cutsOff = stop < cells.length && (stop > end || isLastRow);
    const row = setRow(cells.slice(at, stop), isMarked, mark, false);
    rows.push({
      text: `${lead}${row.text.trimEnd()}${cutsOff ? CUT : ""}`,
      marks: row.marks === "" ? "" : `${" ".repeat(lead.length)}${row.marks}`,
    });
    at = stop;
    while (cells[at]?.text === " ") at++;
  }
  return rows;
}

/** Where a cut line begins: some words before the place, and further back where the line's end leaves room. */
function windowStart(
  cells: readonly Cell[],
  begin: number,
  end: number,
  width: number,
  indent: number,
): number {
  const place = widthOfCells(cells.slice(begin, end + 1));
  const room = width - place - 2;
  // A place that goes on below anyway need not begin at the edge.
  const context = room >= CONTEXT || room < 4 ? CONTEXT : room;
  let start = backBy(cells, begin, context);
  if (widthOfCells(cells.slice(start)) < width - 2) start = backBy(cells, cells.length, width - 2);
  if (start <= indent || widthOfCells(cells.slice(indent, end + 1)) <= width - 1) return indent;
  // Not in the middle of a word, where one begins before the place.
  for (let at = start; at <= begin; at++)
    if (cells[at - 1]?.text === " " && cells[at]?.text !== " ") return at;
  return start;
}

function backBy(cells: readonly Cell[], from: number, columns: number): number {
  let at = from;
  let used = 0;
  while (at > 0 && used + (cells[at - 1] as Cell).width <= columns) {
    at--;
    used += (cells[at] as Cell).width;
  }
  return at;
}

/** The first cell that no longer stands on a row of this width; rows end at a space where there is one. */
function rowEnd(cells: readonly Cell[], from: number, width: number): number {
  let used = 0;
  let at = from;
  while (at < cells.length && used + (cells[at] as Cell).width <= width) {
    used += (cells[at] as Cell).width;
    at++;
  }
  if (at === cells.length) return at;
  for (let back = at; back > from + (at - from) / 2; back--) if (cells[back]?.text === " ") return back;
  return Math.max(at, from + 1);
}

const tail = (cells: readonly Cell[], width: number): readonly Cell[] =>
  cells.slice(backBy(cells, cells.length, width - 1));

const widthOfCells = (cells: readonly Cell[]): number => cells.reduce((sum, cell) => sum + cell.width, 0);

function leading(cells: readonly Cell[]): number {
  const at = cells.findIndex((cell) => cell.text.trim() !== "");
  return at === -1 ? 0 : at;
}

/** A row of cells and its marks. `atEnd`: the place is behind the last character. */
function setRow(
  cells: readonly Cell[],
  isMarked: (cell: Cell) => boolean,
  mark: string,
  atEnd: boolean,
): { text: string; marks: string } {
  const text = cells.map((cell) => cell.text).join("");
  const marks = cells.map((cell) => (isMarked(cell) ? mark : " ").repeat(cell.width)).join("");
  return { text, marks: atEnd ? `${" ".repeat(widthOfCells(cells))}${mark}` : marks.trimEnd() };
}
