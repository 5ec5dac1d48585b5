import type { Span } from "../base/index.ts";
import { type Instruction, type PrintStyle, printAmount, printWhole } from "../notation/index.ts";
import type { Terms } from "../stitches/index.ts";
import type { WorkedLine } from "../working/index.ts";
import type { Proof } from "./proof.ts";
import { proveDesign } from "./prove.ts";

/** A pattern set anew, with what was left as it stood. */
export interface Tidied {
  readonly is: "tidied";
  readonly text: string;
  readonly before: Proof;
  /** Rows that stand as the designer wrote them: not read, or not said as clearly in clean notation. */
  readonly asWritten: readonly Span[];
}

/** Why nothing was set anew. */
export interface NotTidied {
  readonly is: "has a table" | "rows not read" | "comes out otherwise";
  readonly before: Proof;
  /** The rows that stand in the way. */
  readonly rows: readonly Span[];
}

/** A row kept as it was can change how the next one is worked; it soon comes to an end. */
const MOST_PASSES = 6;

/**
 * Sets the rows of a pattern in clean notation, one a line, each with its count in every size behind it. What is no row, and what was
 * not read, stays as it is. The new text is proved, and a row that does not come to the same stitches is put back as it was.
 *
 * @param terms  the terms to set it in; its own where they are not given. Other terms need every row to be read
 */
export function tidyPattern(text: string, terms?: Terms): Tidied | NotTidied {
  const before = proveDesign(text);
  const { tree, worked } = before;
  const not = (is: NotTidied["is"], rows: readonly Span[] = []): NotTidied => ({ is, before, rows });
  // Braces would be printed as the numbers they stand for now.
  if (before.table !== undefined) return not("has a table");
  const lines = worked.pieces.flatMap((piece) => piece.lines);
  const unread = lines.filter((line) => !line.read && isMade(line)).map((line) => line.span);
  if (terms !== undefined && terms !== tree.terms && unread.length > 0) return not("rows not read", unread);
  const lineAt = new Map(lines.map((line) => [line.span.from, line]));
  const kept = new Set<number>(unread.map((span) => span.from));
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const style: PrintStyle = {
      terms: terms ?? tree.terms,
      sizes: tree.sizes,
      counts: (row) => countsBehind(row, lineAt.get(row.span.from)),
      keeps: (row) => kept.has(row.span.from),
    };
    const printed = printWhole(tree, style);
    const other = comesOutOtherwise(
      lines,
      proveDesign(printed.text, { terms: style.terms, sizes: tree.sizes }),
    );
    if (other === null) return not("comes out otherwise");
    if (other.length === 0)
      return {
        is: "tidied",
        text: printed.text,
        before,
        asWritten: printed.asWritten.map((row) => row.span),
      };
    if (other.every((line) => kept.has(line.span.from)))
      return not(
        "comes out otherwise",
        other.map((line) => line.span),
      );
    for (const line of other) kept.add(line.span.from);
  }
  return not("comes out otherwise");
}

const isMade = (line: WorkedLine): boolean => line.kind !== "other";

/** A proved count where the row printed none; null leaves what it printed. */
function countsBehind(row: Instruction, line: WorkedLine | undefined): string | null {
  if (row.claims.length > 0 || line === undefined || !line.proved || line.sample !== undefined) return null;
  if (line.kind !== "row" && line.kind !== "round") return null;
  const { stitches } = line;
  if (stitches.every((count) => count === null || count === 0)) return null;
  const [count = null] = stitches;
  const values = stitches.every((other) => other === count) ? [count] : stitches;
  return `${printAmount({ values })} ${values.every((one) => one === 1) ? "st" : "sts"}`;
}

/** The lines that come to other stitches than before; null where there are not as many lines. */
function comesOutOtherwise(lines: readonly WorkedLine[], after: Proof): readonly WorkedLine[] | null {
  const made = lines.filter(isMade);
  const now = after.worked.pieces.flatMap((piece) => piece.lines).filter(isMade);
  if (made.length !== now.length) return null;
  return made.filter((line, at) => {
    const there = now[at] as WorkedLine;
    return (
      JSON.stringify(line.stitches) !== JSON.stringify(there.stitches) ||
      JSON.stringify(line.side) !== JSON.stringify(there.side)
    );
  });
}
