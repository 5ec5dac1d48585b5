import { cellsOf, padEnd, widthOf } from "./cells.ts";
import type { Paint } from "./paint.ts";
import { hang, wrap } from "./wrap.ts";

/**
 * Sets a page of the manual for the terminal. It knows the Markdown that these pages use: headings, paragraphs, lists, fenced
 * patterns, tables, links, code, strong words.
 */
export function setPage(markdown: string, width: number, paint: Paint): string[] {
  const lines: string[] = [];
  for (const block of blocksOf(markdown)) {
    if (lines.length > 0) lines.push("");
    lines.push(...setBlock(block, width, paint));
  }
  return lines;
}

interface BlockOfPage {
  readonly is: "heading" | "fence" | "table" | "list" | "paragraph";
  readonly lines: readonly string[];
}

function blocksOf(markdown: string): BlockOfPage[] {
  const blocks: BlockOfPage[] = [];
  const lines = markdown.split(/\r?\n/);
  for (let at = 0; at < lines.length; ) {
    const line = lines[at] as string;
    if (line.trim() === "") {
      at++;
      continue;
    }
    if (line.startsWith("```")) {
      const end = lines.indexOf("```", at + 1);
      const stop = end === -1 ? lines.length : end;
      blocks.push({ is: "fence", lines: lines.slice(at + 1, stop) });
      at = stop + 1;
      continue;
    }
    const is = kindOf(line);
    let stop = at + 1;
    while (is !== "heading" && stop < lines.length && goesOn(lines[stop] as string, is)) stop++;
    blocks.push({ is, lines: lines.slice(at, stop) });
    at = stop;
  }
  return blocks;
}

const kindOf = (line: string): Exclude<BlockOfPage["is"], "fence"> =>
  /^#{1,6} /.test(line)
    ? "heading"
    : line.startsWith("|")
      ? "table"
      : /^[-*] /.test(line)
        ? "list"
        : "paragraph";

function goesOn(line: string, is: BlockOfPage["is"]): boolean {
  if (line.trim() === "" || line.startsWith("```") || kindOf(line) === "heading") return false;
  return is === "table" ? kindOf(line) === "table" : is === "list" || kindOf(line) === "paragraph";
}

function setBlock(block: BlockOfPage, width: number, paint: Paint): string[] {
  if (block.is === "fence") return block.lines.flatMap((line) => hang("    ", setCode(line, width - 4)));
  if (block.is === "table") return setTable(block.lines, width);
  const words = block.lines.join(" ");
  if (block.is === "heading") return setHeading(words, width, paint);
  if (block.is === "list") {
    const items = block.lines.reduce<string[]>((list, line) => {
      if (/^[-*] /.test(line) || list.length === 0) list.push(line.replace(/^[-*] /, ""));
      else list[list.length - 1] += ` ${line.trim()}`;
      return list;
    }, []);
    return items.flatMap((item) => hang("  - ", wrap(plainWords(item), width - 4)));
  }
  return wrap(plainWords(words), width);
}

function setHeading(line: string, width: number, paint: Paint): string[] {
  const title = wrap(plainWords(line.replace(/^#+ /, "")), width);
  if (!line.startsWith("# ")) return title.map(paint.strong);
  const rule = "=".repeat(Math.max(...title.map(widthOf)));
  return [...title.map(paint.strong), paint.quiet(rule)];
}

/** A line of a pattern keeps its spaces; one that is too long goes on below, set in by four. */
function setCode(line: string, width: number): string[] {
  if (widthOf(line) <= width)
    return [
      cellsOf(line)
        .map((cell) => cell.text)
        .join(""),
    ];
  const [first = "", ...rest] = wrap(line, width - 4);
  return [first, ...rest.map((more) => `    ${more}`)];
}

function setTable(lines: readonly string[], width: number): string[] {
  const rows = lines
    .filter((line) => !/^[|\s:-]+$/.test(line))
    .map((line) =>
      line
        .replace(/^\||\|\s*$/g, "")
        .split("|")
        .map((cell) => plainWords(cell.trim())),
    );
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns - 1 }, (_, at) =>
    Math.max(...rows.map((row) => widthOf(row[at] ?? ""))),
  );
  return rows.flatMap((row) => {
    const lead = `  ${widths.map((columnWidth, at) => `${padEnd(row[at] ?? "", columnWidth)}  `).join("")}`;
    const last = row[columns - 1] ?? "";
    const room = width - widthOf(lead);
    return room < 16
      ? [lead.trimEnd(), ...wrap(last, width - 6).map((line) => `      ${line}`)]
      : hang(lead, last === "" ? [""] : wrap(last, room));
  });
}

/** Words without the marks of Markdown. A link to the page of all findings becomes the command that shows it. */
function plainWords(words: string): string {
  return words
    .replace(/\[([^\]]+)\]\((?:\.\.\/)?index\.md[^)]*\)/g, "$1: loopwright check --explain index")
    .replace(/\[([^\]]+)\]\([^)]*\)/g, "$1")
    .replace(/\*\*([^*]+)\*\*/g, "$1")
    .replace(/`([^`]+)`/g, "$1");
}
