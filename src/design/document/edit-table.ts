import type { Edit } from "../../base/index.ts";
import { plainName } from "../../sizing/index.ts";
import { type Entry, findTable, Table, type TableNode } from "./table.ts";

/**
 * The edit that gives an entry a value: the words that stand there are replaced, or a line is added. Everything else, comments
 * too, stays as it is.
 *
 * @param path   names of entries from the top down: ["fabrics", "bump", "hook"]
 * @param words  the value as words; put in quotation marks where they need them
 * @returns      null where something on the way holds words and no entries
 */
export function setEntry(text: string, path: readonly string[], words: string): Edit | null {
  const place = findTable(text);
  if (place === null) return { span: { from: 0, to: 0 }, text: `---\n${nested(path, words, 0)}\n---\n\n` };
  const table = new Table(text, place.yaml);
  let node: TableNode | null = table.root;
  let inBraces = false;
  for (const [depth, name] of path.entries()) {
    if (node !== null && !table.isMap(node)) return null;
    const entries: readonly Entry[] = node === null ? [] : table.entries(node, name);
    inBraces ||= table.isInBraces(node);
    const entry = entries.find(({ key }) => plainName(key) === plainName(name));
    const rest = path.slice(depth);
    if (entry === undefined) return insert(table, node, entries, rest, words, inBraces);
    if (depth === path.length - 1)
      return entry.node === null
        ? {
            span: { from: colonAfter(text, entry), to: colonAfter(text, entry) },
            text: ` ${quoted(words, inBraces)}`,
          }
        : { span: entry.span, text: quoted(words, inBraces) };
    if (entry.node === null) {
      const at = colonAfter(text, entry);
      const indent = indentOf(text, entry.keySpan.from) + 2;
      return inBraces
        ? { span: { from: at, to: at }, text: ` ${braced(rest.slice(1), words)}` }
        : { span: { from: at, to: at }, text: `\n${nested(rest.slice(1), words, indent)}` };
    }
    node = entry.node;
  }
  return null;
}

/** An entry that is not there yet goes behind the last one of its map. */
function insert(
  table: Table,
  node: TableNode | null,
  entries: readonly Entry[],
  path: readonly string[],
  words: string,
  inBraces: boolean,
): Edit {
  const { text } = table;
  const last = entries[entries.length - 1];
  const [name = "", ...rest] = path;
  if (inBraces && node !== null) {
    const close = text.lastIndexOf("}", table.spanOf(node).to - 1);
    const at = close - (/[ \t]*$/.exec(text.slice(0, close))?.[0].length ?? 0);
    const value = rest.length === 0 ? quoted(words, true) : braced(rest, words);
    return { span: { from: at, to: at }, text: `${last ? "," : ""} ${name}: ${value}` };
  }
  const indent = last ? indentOf(text, last.keySpan.from) : 0;
  const written = nested(path, words, indent);
  if (!last) {
    const start = table.spanOf(null).from;
    return { span: { from: start, to: start }, text: `${written}\n` };
  }
  const at = endOfLine(text, last.span.to);
  return { span: { from: at, to: at }, text: `\n${written}` };
}

const colonAfter = (text: string, { keySpan }: Entry): number => text.indexOf(":", keySpan.to) + 1;

/** Where the line of an offset ends, its comment included. */
export function endOfLine(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  const to = end === -1 ? text.length : end;
  return text[to - 1] === "\r" ? to - 1 : to;
}

function indentOf(text: string, from: number): number {
  return from - (text.lastIndexOf("\n", from - 1) + 1);
}

function nested(path: readonly string[], words: string, indent: number): string {
  return path
    .map((name, depth) => {
      const lead = " ".repeat(indent + 2 * depth);
      return `${lead}${name}:${depth === path.length - 1 ? ` ${quoted(words, false)}` : ""}`;
    })
    .join("\n");
}

function braced([name = "", ...rest]: readonly string[], words: string): string {
  return `{ ${name}: ${rest.length === 0 ? quoted(words, true) : braced(rest, words)} }`;
}

/** Words in quotation marks where YAML would otherwise take them for something else. */
function quoted(words: string, inBraces: boolean): string {
  const plain =
    words !== "" &&
    words.trim() === words &&
    !/^[-?:,[\]{}#&*!|>'"%@`]/.test(words) &&
    !/:(?:\s|$)|\s#|\n/.test(words) &&
    !(inBraces && /[,[\]{}]/.test(words));
  return plain || /^-\d/.test(words) ? words : `"${words.replace(/[\\"]/g, "\\$&").replace(/\n/g, "\\n")}"`;
}

const NUMBER = String.raw`(?:\d+(?:\.\d+)?(?:[ -]\d+\/\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])`;
const RUN = new RegExp(String.raw`${NUMBER}(?:[\s,;()[\]]+${NUMBER})+`, "gu");
const ONE = new RegExp(NUMBER, "gu");

/**
 * The edits that add a size: its name in the size run, and in every list of one value per size a copy of its neighbour's
 * value, to be chosen or written anew. Lists in the rows are left to the designer: they are then found to be one too short.
 *
 * @param after  the size it comes behind; null for the first place
 * @returns      null where the table does not say its sizes, has the name already, or has no size `after`
 */
export function addSize(text: string, name: string, after: string | null): Edit[] | null {
  const place = findTable(text);
  if (place === null) return null;
  const table = new Table(text, place.yaml);
  const entries = table.entries(table.root, "");
  const run = entries.find(({ key }) => plainName(key) === "sizes");
  if (!run?.node) return null;
  const written = text.slice(run.span.from, run.span.to);
  const names = [...written.matchAll(/[^\s,[\]"']+/g)].filter(([word]) => word !== "-");
  if (names.some(([one]) => one === name)) return null;
  const at = after === null ? 0 : names.findIndex(([one]) => one === after) + 1;
  if (names.length === 0 || (after !== null && at === 0)) return null;
  const edits: Edit[] = [insertIn(run.span.from, written, names, at, name)];
  for (const entry of entries) {
    if (!PER_SIZE.includes(plainName(entry.key)) || entry.node === null) continue;
    const words = text.slice(entry.span.from, entry.span.to);
    for (const list of words.matchAll(RUN)) {
      const numbers = [...list[0].matchAll(ONE)];
      if (numbers.length !== names.length || isInComment(words, list.index)) continue;
      const copied = numbers[Math.max(0, at - 1)]?.[0] ?? "";
      edits.push(insertIn(entry.span.from + list.index, list[0], numbers, at, copied));
    }
  }
  return edits;
}

/** Entries whose lists of numbers are one value per size. */
const PER_SIZE: readonly string[] = ["body", "bodies", "ease", "plan", "counts"];

function isInComment(words: string, at: number): boolean {
  const line = words.slice(words.lastIndexOf("\n", at) + 1, at);
  return /(?:^|\s)#/.test(line);
}

/** Puts a word at a place of a list, parted as its neighbours are. */
function insertIn(
  from: number,
  list: string,
  words: readonly RegExpMatchArray[],
  at: number,
  word: string,
): Edit {
  const neighbour = words[Math.max(0, at - 1)];
  const start = neighbour?.index ?? 0;
  const end = start + (neighbour?.[0].length ?? 0);
  if (at === 0)
    return {
      span: { from: from + start, to: from + start },
      text: `${word}${list.includes(",") ? "," : ""} `,
    };
  const comma = /^\s*,/.test(list.slice(end)) || /,\s*[([]?$/.test(list.slice(0, start));
  return { span: { from: from + end, to: from + end }, text: `${comma ? "," : ""} ${word}` };
}
