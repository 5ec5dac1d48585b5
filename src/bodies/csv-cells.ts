import type { Span } from "../base/index.ts";

/** One cell of a table as it stands in the text, quotes and outer spaces taken off. */
export interface Cell {
  readonly text: string;
  /** Where the cell's words stand; an empty cell is the place where they would. */
  readonly span: Span;
}

/** The mark between cells. Where it is not a comma, a comma inside a number is a decimal one. */
export type Separator = "," | ";" | "\t";

export interface CellTable {
  readonly separator: Separator;
  /** Rows with at least one cell that says something; rows beginning with # are left out. */
  readonly rows: readonly (readonly Cell[])[];
  /** Where a quote is opened that is never closed; null where all are. */
  readonly openQuote: Span | null;
}

/**
 * Cuts CSV text into cells. A cell may stand in double quotes and then hold separators and line breaks; a quote inside is
 * doubled. The separator is a tab, a semicolon or a comma, whichever the first row that has one uses first in this order.
 */
export function readCells(text: string): CellTable {
  const separator = separatorOf(text);
  const rows: Cell[][] = [];
  let row: Cell[] = [];
  let openQuote: Span | null = null;
  let at = text.startsWith("\uFEFF") ? 1 : 0;
  const endRow = () => {
    if (row.some((cell) => cell.text !== "") && !row[0]?.text.startsWith("#")) rows.push(row);
    row = [];
  };
  while (at <= text.length) {
    let from = at;
    while (text[from] === " " || (text[from] === "\t" && separator !== "\t")) from++;
    if (text[from] === '"') {
      let close = from + 1;
      while (close < text.length && (text[close] !== '"' || text[close + 1] === '"'))
        close += text[close] === '"' ? 2 : 1;
      if (close >= text.length) openQuote = { from, to: from + 1 };
      at = Math.min(close + 1, text.length);
      while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
      // Words after the closing quote are kept: nothing in a cell is passed over.
      const inside = text.slice(from + 1, close).replaceAll('""', '"') + text.slice(close + 1, at);
      row.push({ text: inside.trim(), span: { from, to: from + text.slice(from, at).trimEnd().length } });
    } else {
      at = from;
      while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
      const words = text.slice(from, at).trimEnd();
      row.push({ text: words, span: { from, to: from + words.length } });
    }
    if (text[at] !== separator) endRow();
    at++;
  }
  return { separator, rows, openQuote };
}

function separatorOf(text: string): Separator {
  for (const line of text.split("\n")) {
    if (line.trim() === "" || line.startsWith("#")) continue;
    for (const separator of ["\t", ";", ","] as const) if (line.includes(separator)) return separator;
  }
  return ",";
}
