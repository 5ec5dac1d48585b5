import { type PerSize, type Span, valueAt } from "../../base/index.ts";
import type { Instruction, PatternTree } from "../../notation/index.ts";
import { plainName } from "../../sizing/index.ts";
import type { WorkedLine, WorkedPattern } from "../../working/index.ts";
import type { Count } from "./document.ts";

/** How often a count came out of the rows, and what it came to. */
export interface WorkedCount {
  readonly name: string;
  /** As worked, where some row says it comes to this count; null where none does or it is not known. */
  readonly worked: PerSize<number | null>;
  /** The rows it was read off, in the order of the text. */
  readonly places: readonly Span[];
  /** Whether one of those was taken on trust. */
  readonly trust: boolean;
}

/**
 * Reads each count off the worked rows: a count of stitches where a row is printed to end with it, "({body sts} sts)", a
 * count of rows where rows are numbered up to it, "Rows 3-{body rows}". The first place at which a size has it is taken;
 * that later ones agree is proved with the rows.
 */
export function readWorkedCounts(
  tree: PatternTree,
  worked: WorkedPattern,
  counts: readonly Count[],
): readonly WorkedCount[] {
  const lines = worked.pieces.flatMap((piece) => piece.lines);
  const found = new Map<string, { worked: (number | null)[]; places: Span[]; trust: boolean }>();
  const byName = new Map(counts.map((count) => [plainName(count.name), count] as const));
  tree.pieces
    .flatMap((piece) => piece.instructions)
    .forEach((instruction, at) => {
      const line = lines[at];
      if (line === undefined) return;
      for (const { name, of, values, span } of usesIn(tree.text, instruction, line)) {
        const count = byName.get(plainName(name));
        if (count === undefined || (of === "rows") !== (count.of === "rows")) continue;
        const entry = found.get(count.name) ?? {
          worked: tree.sizes.map(() => null),
          places: [],
          trust: false,
        };
        found.set(count.name, entry);
        entry.places.push(span);
        entry.trust ||= line.trust;
        for (const [size, known] of entry.worked.entries())
          if (known === null) entry.worked[size] = valueAt(values, size) ?? null;
      }
    });
  return counts.map(({ name }) => ({
    name,
    ...(found.get(name) ?? { worked: tree.sizes.map(() => null), places: [], trust: false }),
  }));
}

interface Use {
  readonly name: string;
  readonly of: "stitches" | "rows";
  readonly values: PerSize<number | null>;
  readonly span: Span;
}

function usesIn(text: string, instruction: Instruction, line: WorkedLine): Use[] {
  const uses: Use[] = [];
  for (const claim of instruction.claims) {
    // Counts of another row, of a part or of a change say nothing about this row's whole.
    if (claim.ofRow || claim.index !== undefined || claim.change || claim.eachSide) continue;
    for (const part of claim.parts) {
      const name = nameIn(text, part.amount.span);
      if (name === null) continue;
      const kinds = part.kind === "any" ? line.stitches : line.kinds[part.kind];
      if (kinds) uses.push({ name, of: "stitches", values: kinds, span: part.span });
    }
  }
  const rows = instruction.label?.rows ?? [];
  const last = rows[rows.length - 1];
  const name = last && nameIn(text, last.to.span);
  if (last && name) uses.push({ name, of: "rows", values: line.last, span: last.to.span });
  return uses;
}

/** The name in braces that stands at a place all by itself. */
function nameIn(text: string, { from, to }: Span): string | null {
  return /^\{\s*([^{}]+?)\s*\}$/.exec(text.slice(from, to).trim())?.[1] ?? null;
}
