import { clip, oneLine, padEnd, padStart, widthOf } from "./cells.ts";
import { type Block, blocksOf, type Entry, TRUSTED } from "./entries.ts";
import type { Paint } from "./paint.ts";
import type { View } from "./view.ts";
import { fill, hang } from "./wrap.ts";

/** How wide the parts of all tables of one report are. */
interface Measures {
  readonly width: number;
  readonly line: number;
  readonly label: number;
  readonly side: number;
  /** Columns of each size's numbers; null where the sizes do not fit beside one another and are set as lists. */
  readonly sizes: readonly Column[] | null;
  readonly gap: number;
}

/** A column of numbers, right-aligned by their last digit; `tail` is room for the sign behind some of them. */
interface Column {
  readonly digits: number;
  readonly tail: number;
}

const GUTTER = { error: "!!", warning: "! " };
const SHORTEST_LABEL = 10;
/** Labels give way to the numbers down to this, where they are longer. */
const CUT_LABEL = 13;
/** Lists of numbers that find no room behind their row stand below it, set in by this much. */
const LIST_INDENT = 8;

/** The pieces of a pattern as tables: one line a row, one column a size, then the key to the signs in use. */
export function setTables(view: View, width: number, paint: Paint): string[] {
  const blocks = blocksOf(view);
  const entries = blocks.flatMap((block) => block.entries);
  if (entries.length === 0) return [];
  const measures = measure(view, entries, width);
  let top: string | null = null;
  const lines = blocks.flatMap((block) => {
    const { under, name } = block.title;
    const over = under !== null && under !== top ? [paint.strong(oneLine(under))] : [];
    top = under ?? name;
    return [...over, ...setBlock(view, block, measures, paint), ""];
  });
  const key = setKey(view, entries, width).map(paint.quiet);
  return key.length > 0 ? [...lines, ...key, ""] : lines;
}

/* --------------------------------------------------------------- measures */

function measure(view: View, entries: readonly Entry[], width: number): Measures {
  const rows = entries.filter((entry) => entry.values.length > 0);
  const line = most(entries.map((entry) => String(entry.line ?? "")));
  const side = most(rows.map((entry) => entry.side));
  const longest = Math.max(24, Math.floor(width / 4));
  const wanted = Math.min(longest, Math.max(SHORTEST_LABEL, most(rows.map((entry) => entry.label))));
  const sizes = headsOf(view).map((head, at) => {
    const values = rows.map((entry) => entry.values[at] ?? "");
    const tail = values.some((value) => value.endsWith(TRUSTED)) ? TRUSTED.length : 0;
    return { digits: Math.max(most(values.map(bare)), widthOf(head) - tail), tail };
  });
  for (const gap of [2, 1]) {
    const numbers = sizes.reduce((sum, column) => sum + gap + column.digits + column.tail, 0);
    const room = width - numbers - leadWidth({ line, side, label: 0 });
    if (room >= Math.min(wanted, CUT_LABEL))
      return { width, line, side, label: Math.min(wanted, room), sizes, gap };
  }
  const label = Math.min(wanted, Math.max(SHORTEST_LABEL, Math.floor(width / 5)));
  return { width, line, side, label, sizes: null, gap: 1 };
}

const most = (words: readonly string[]): number => Math.max(0, ...words.map(widthOf));

/** Columns before the numbers: gutter, line, label, side, sign. */
const leadWidth = ({ line, label, side }: Pick<Measures, "line" | "label" | "side">): number =>
  3 + line + 2 + label + (side > 0 ? 1 + side : 0) + 2;

/** What stands over the numbers of each size. */
const headsOf = (view: View): readonly string[] =>
  view.proof.sizes.length > 1 ? view.sizes.map(oneLine) : ["sts"];

const bare = (value: string): string => (value.endsWith(TRUSTED) ? value.slice(0, -TRUSTED.length) : value);

/* ---------------------------------------------------------------- setting */

function setBlock(view: View, block: Block, measures: Measures, paint: Paint): string[] {
  return [
    ...setHead(view, block, measures, paint),
    ...block.entries.flatMap((entry) => setEntry(entry, measures, paint)),
  ];
}

/** The name of the piece, a section set in under it, with the names of the sizes over their columns. */
function setHead(view: View, { title, entries }: Block, measures: Measures, paint: Paint): string[] {
  const name = (title.under === null ? "" : "  ") + oneLine(title.name);
  const heads = headsOf(view);
  const alone = hang("", fill([clip(name, measures.width)], measures.width)).map(paint.strong);
  if (entries.every((entry) => entry.values.length === 0)) return name.trim() === "" ? [] : alone;
  const { sizes } = measures;
  if (!sizes) {
    const list = listed(heads, measures.width - LIST_INDENT);
    return [...alone, ...list.map((words) => paint.quiet(" ".repeat(LIST_INDENT) + words))];
  }
  const lead = leadWidth(measures);
  const columns = heads
    .map((head, at) => {
      const { digits, tail } = sizes[at] as Column;
      const over = widthOf(head) <= digits ? padStart(head, digits) + " ".repeat(tail) : head;
      return " ".repeat(measures.gap) + padStart(over, digits + tail);
    })
    .join("");
  return widthOf(name) > lead
    ? [...alone, " ".repeat(lead) + columns]
    : [paint.strong(name) + " ".repeat(lead - widthOf(name)) + columns];
}

function setEntry(entry: Entry, measures: Measures, paint: Paint): string[] {
  const gutter = entry.gutter ? GUTTER[entry.gutter] : "  ";
  const line = padStart(String(entry.line ?? ""), measures.line);
  if (entry.values.length === 0) {
    const room = measures.width - 3 - measures.line - 2;
    return [paint.quiet(`${gutter} ${line}  ${clip(entry.label, room)}`)];
  }
  const label = padEnd(clip(entry.label, measures.label), measures.label);
  const side = measures.side > 0 ? ` ${padEnd(entry.side, measures.side)}` : "";
  const tone = TONES[entry.tone](paint);
  const grave = entry.gutter ? paint[entry.gutter] : tone;
  const lead = `${gutter} ${line}  ${label}${side} ${padEnd(entry.sign, 1)}`;
  const { sizes } = measures;
  if (!sizes) return setList(entry, lead, measures.width, grave, tone);
  const numbers = entry.values
    .map((value, at) => {
      const { digits, tail } = sizes[at] as Column;
      const shown = entry.same?.[at] ? "=" : value;
      const behind = padEnd(shown.slice(bare(shown).length), tail);
      return " ".repeat(measures.gap) + padStart(bare(shown), digits) + behind;
    })
    .join("");
  const room = measures.width - leadWidth(measures) - widthOf(numbers) - 2;
  const aside = entry.aside !== "" && room > 12 ? `  ${paint.quiet(clip(entry.aside, room))}` : "";
  return [grave(lead) + tone(numbers) + aside];
}

const TONES: Readonly<Record<Entry["tone"], (paint: Paint) => (words: string) => string>> = {
  row: () => (words) => words,
  more: (paint) => paint.quiet,
  error: (paint) => paint.error,
  quiet: (paint) => paint.quiet,
};

/** A row with its numbers as a list behind it, or under it where there is no room. */
function setList(
  entry: Entry,
  lead: string,
  width: number,
  grave: (words: string) => string,
  tone: (words: string) => string,
): string[] {
  // A number that is the same in every size is said once, as patterns print it.
  const values = new Set(entry.values).size === 1 ? entry.values.slice(0, 1) : entry.values;
  const beside = listed(values, width - widthOf(lead) - 1);
  if (beside.length === 1) return [`${grave(lead)} ${tone(beside[0] as string)}`];
  const below = listed(values, width - LIST_INDENT);
  return [grave(lead), ...below.map((words) => " ".repeat(LIST_INDENT) + tone(words))];
}

/**
 * Values of all sizes as a pattern prints them, the smallest size outside the brackets and, beyond five sizes, brackets of four:
 * "1 (2, 3, 4, 5) (6, 7, 8, 9)". Source of the grouping: trade handbook, section 5.2. Lines break between values only.
 */
export function listed(values: readonly string[], width: number): string[] {
  const [first = "", ...rest] = values;
  const group = 4;
  const parts = rest.map((value, at) => {
    const opens = at % group === 0;
    const closes = at % group === group - 1 || at === rest.length - 1;
    return `${opens ? "(" : ""}${value}${closes ? ")" : ","}`;
  });
  return fill([first, ...parts], width);
}

/* -------------------------------------------------------------------- key */

/** What the signs mean that the tables use. */
function setKey(view: View, entries: readonly Entry[], width: number): string[] {
  const signs = new Set(entries.map((entry) => entry.sign));
  const values = entries.flatMap((entry) => (entry.tone === "row" ? entry.values : []));
  const gutters = new Set(entries.map((entry) => entry.gutter));
  const key: readonly (readonly [boolean, string])[] = [
    [gutters.has("error"), "!! an error"],
    [gutters.has("warning"), "! a warning"],
    [signs.has("="), "= the printed count is the worked one"],
    [signs.has("≠"), "≠ it is not"],
    [signs.has("m"), "m answered as meant"],
    [signs.has("v"), "v vouched for"],
    [values.some((value) => value.endsWith(TRUSTED)), "t on trust, not proved"],
    [values.includes("?"), "? not known"],
    [values.includes("-"), "- not worked in this size"],
  ];
  const parts = key.filter(([used]) => used).map(([, words]) => words);
  if (parts.length === 0 || (parts.length === 1 && view.findings.length === 0)) return [];
  const whole = parts.map((words, at) =>
    `${words}${at < parts.length - 1 ? " ·" : ""}`.replaceAll(" ", "\u00a0"),
  );
  return hang(
    "Key: ",
    fill(whole, width - 5).map((line) => line.replaceAll("\u00a0", " ")),
  );
}
