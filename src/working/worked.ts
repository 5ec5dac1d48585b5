import type { Finding, PerSize, Span } from "../base/index.ts";

/** How one written instruction line came out. */
export interface WorkedLine {
  /** Label as written, without its separator: "Row 7 (RS)", "Next 4 rows", "Ch 58" lines have "Foundation". */
  readonly label: string;
  readonly kind: "foundation" | "row" | "round" | "edge" | "other";
  /** Span of the whole instruction. */
  readonly span: Span;
  /** Number of the first and the last row the line makes, per size; null where the size does not work it. */
  readonly first: PerSize<number | null>;
  readonly last: PerSize<number | null>;
  /** No remark stands inside an instruction clause, and its counts follow in every size. */
  readonly read: boolean;
  /** Side that faces the maker on the line's last row. */
  readonly side: PerSize<"RS" | "WS" | null>;
  /** Stitches after the line's last row, as the pattern counts stitches; null where they are not known. */
  readonly stitches: PerSize<number | null>;
  /** The same by kind, keyed by the pattern's own words: "dc", "ch-2 sp", "shell". */
  readonly kinds: Readonly<Record<string, PerSize<number | null>>>;
  readonly printed: PerSize<number | null> | null;
  readonly printedKinds: Readonly<Record<string, PerSize<number | null>>> | null;
  /** Every count of the line was proved by working it; false where a count was taken on trust or is not known. */
  readonly proved: boolean;
  /** The line's count was taken from what is printed, in some size. */
  readonly trust: boolean;
}

export interface WorkedPiece {
  readonly name: string;
  readonly lines: readonly WorkedLine[];
}

/** Everything a maker's hands found out about a pattern. */
export interface WorkedPattern {
  readonly sizes: readonly string[];
  readonly pieces: readonly WorkedPiece[];
  readonly findings: readonly Finding[];
  /** Choices made once for the whole document, each in a sentence: "The ch 3 at the start of a row counts as a dc." */
  readonly conventions: readonly string[];
}
