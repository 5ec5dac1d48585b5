import { type PerSize, type Span, valueAt } from "../../base/index.ts";
import type { Amount, Instruction, PatternTree } from "../../notation/index.ts";
import { plainName } from "../../sizing/index.ts";
import type { WorkedLine, WorkedPattern } from "../../working/index.ts";
import type { Count } from "./document.ts";

/** How often a count came out of the rows, and what it came to. */
export interface WorkedCount {
  readonly name: string;
  /** As worked, where some row says it comes to this count or works by it; null where none does or it is not known. */
  readonly worked: PerSize<number | null>;
  /** The rows it was read off, in the order of the text. */
  readonly places: readonly Span[];
  /** Whether one of those was taken on trust. */
  readonly trust: boolean;
}

/**
 * Reads each count off the worked rows: a count of stitches where a row is printed to end with it, "({body sts} sts)", a
 * count of rows where rows are numbered up to it, "Rows 3-{body rows}", or are told to be so many in all, "{sleeve rows} rows".
 * The first place at which a size has it is taken; that later ones agree is proved with the rows.
 *
 * A count that no row comes to may be one that rows work by, "skip the next {neck sts} sts", "{bumps} times": where such a
 * line came out, the hands did just so many.
 */
export function readWorkedCounts(
  tree: PatternTree,
  worked: WorkedPattern,
  counts: readonly Count[],
): readonly WorkedCount[] {
  const lines = worked.pieces.flatMap((piece) => piece.lines);
  const instructions = tree.pieces.flatMap((piece) => piece.instructions);
  const pairs = instructions.flatMap((instruction, at) => {
    const line = lines[at];
    return line === undefined ? [] : [{ instruction, line: withRows(line, lines[at - 1], lines[at + 1]) }];
  });
  const reader = new CountReader(tree.sizes.length, counts);
  for (const { instruction, line } of pairs)
    for (const use of comesTo(tree.text, instruction, line)) reader.take(use, line.trust);
  const open = reader.open();
  if (open.size > 0)
    for (const { instruction, line } of pairs)
      for (const use of worksBy(tree.text, instruction, line))
        if (open.has(plainName(use.name))) reader.take(use, line.trust);
  return counts.map(({ name }) => ({ name, ...reader.found(name) }));
}

/** A line that makes no row in some size, "0 times", ends there with the row that the next line counts on from. */
function withRows(
  line: WorkedLine,
  before: WorkedLine | undefined,
  next: WorkedLine | undefined,
): WorkedLine {
  if (line.last.every((row) => row !== null)) return line;
  return {
    ...line,
    last: line.last.map((row, size) => {
      const earlier = before?.last[size] ?? null;
      return row === null && earlier !== null && next?.first[size] === earlier + 1 ? earlier : row;
    }),
  };
}

type Found = Omit<WorkedCount, "name">;

class CountReader {
  private readonly entries = new Map<string, { worked: (number | null)[]; places: Span[]; trust: boolean }>();
  private readonly byName: ReadonlyMap<string, Count>;

  constructor(
    private readonly sizes: number,
    counts: readonly Count[],
  ) {
    this.byName = new Map(counts.map((count) => [plainName(count.name), count] as const));
  }

  take({ name, of, values, span }: Use, trust: boolean): void {
    const count = this.byName.get(plainName(name));
    if (count === undefined || (of !== "any" && (of === "rows") !== (count.of === "rows"))) return;
    const entry = this.entries.get(count.name) ?? { ...this.nothing(), places: [] };
    this.entries.set(count.name, entry);
    entry.places.push(span);
    entry.trust ||= trust;
    for (const [size, known] of entry.worked.entries())
      if (known === null) entry.worked[size] = valueAt(values, size) ?? null;
  }

  /** Plain names of counts that no line came to. */
  open(): ReadonlySet<string> {
    return new Set(
      [...this.byName].flatMap(([plain, { name }]) =>
        this.found(name).worked.every((value) => value === null) ? [plain] : [],
      ),
    );
  }

  found(name: string): Found {
    return this.entries.get(name) ?? this.nothing();
  }

  private nothing(): { worked: (number | null)[]; places: Span[]; trust: boolean } {
    return { worked: Array.from({ length: this.sizes }, () => null), places: [], trust: false };
  }
}

interface Use {
  readonly name: string;
  readonly of: "stitches" | "rows" | "any";
  readonly values: PerSize<number | null>;
  readonly span: Span;
}

/** Counts that a line ends with. */
function comesTo(text: string, instruction: Instruction, line: WorkedLine): Use[] {
  const uses: Use[] = [];
  for (const claim of instruction.claims) {
    // Counts of another row, of a part or of a change say nothing about this row's whole.
    if (claim.ofRow || claim.index !== undefined || claim.change || claim.eachSide) continue;
    for (const part of claim.parts) {
      const name = nameIn(text, part.amount.span);
      if (name === null) continue;
      if (part.kind === "unit" && ROWS.test(part.words))
        uses.push({ name, of: "rows", values: rowsOf(line, part.amount.values), span: part.span });
      const kinds = part.kind === "any" ? line.stitches : line.kinds[part.kind];
      if (kinds) uses.push({ name, of: "stitches", values: kinds, span: part.span });
    }
  }
  for (const { kind, span } of instruction.clauses) {
    const told = kind === "aside" ? TOLD_ROWS.exec(text.slice(span.from, span.to)) : null;
    if (!told) continue;
    const [words, braces = ""] = told;
    const from = span.from + told.index + words.lastIndexOf(braces);
    const at = { from, to: from + braces.length };
    uses.push({ name: nameIn(text, at) ?? "", of: "rows", values: line.last, span: at });
  }
  const rows = instruction.label?.rows ?? [];
  const last = rows[rows.length - 1];
  const name = last && nameIn(text, last.to.span);
  if (last && name) uses.push({ name, of: "rows", values: line.last, span: last.to.span });
  return uses;
}

/** Rows in all, or those of the line alone where just these are said. */
const rowsOf = ({ first, last }: WorkedLine, said: PerSize<number | null>): PerSize<number | null> =>
  last.map((end, size) => {
    const begin = first[size] ?? null;
    const own = end === null || begin === null ? null : end - begin + 1;
    return own !== null && own === (valueAt(said, size) ?? null) ? own : end;
  });

/** "You have now worked {increase rows} rows." */
const TOLD_ROWS =
  /\b(?:worked|made|done|completed|have)\b[^{}]{0,40}(\{[^{}]{1,200}\})\s{1,4}(?:rows?|rnds?|rounds?)\b/i;
const ROWS = /\b(?:rows?|rnds?|rounds?)\s*$/i;

/** Counts by which a line is worked, where it came out. */
function worksBy(text: string, instruction: Instruction, line: WorkedLine): Use[] {
  // Lines that make no row, such as "skip the next 20 sts and join yarn", are proved by the rows behind them.
  const cameOut = line.read && !line.trust && (line.proved || line.kind === "other");
  if (!cameOut) return [];
  return amountsIn(instruction.clauses).flatMap(({ span, values }): Use[] => {
    const name = nameIn(text, span);
    return name === null ? [] : [{ name, of: "any", values, span }];
  });
}

/** Every number that clauses are told by, however deep it stands in them. */
function amountsIn(part: unknown): Amount[] {
  if (Array.isArray(part)) return part.flatMap(amountsIn);
  if (typeof part !== "object" || part === null) return [];
  const inside = Object.values(part).flatMap(amountsIn);
  return isAmount(part) ? [part, ...inside] : inside;
}

const isAmount = (part: object): part is Amount =>
  "span" in part && "values" in part && Array.isArray(part.values);

/** The name in braces that stands at a place all by itself. */
function nameIn(text: string, { from, to }: Span): string | null {
  return /^\{\s*([^{}]+?)\s*\}$/.exec(text.slice(from, to).trim())?.[1] ?? null;
}
