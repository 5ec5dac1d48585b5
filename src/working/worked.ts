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
  /** Where the text leaves the width open: what the counts are of. Absent where the text says how wide the piece is. */
  readonly sample?: WorkedSample;
}

/** The sample on which a stitch pattern without a width was worked. */
export interface WorkedSample {
  /** Stitches or chains that it is wide. */
  readonly wide: number;
  /** How many repeats that is; null where no rule of width is told. */
  readonly repeats: number | null;
  /** Stitches that the row's count grows by with each repeat more; null where that is not known. */
  readonly perRepeat: PerSize<number | null>;
}

export interface WorkedPiece {
  readonly name: string;
  readonly lines: readonly WorkedLine[];
}

/** So many stitches of one kind in one colour. */
export interface MadeStitches {
  /** Dictionary code or special stitch of the pattern; "ch" for each chain; "?" where the kind is not told. */
  readonly kind: string;
  /** As the pattern names it; null where none was named so far. */
  readonly colour: string | null;
  readonly count: number;
}

/** A row as it was made, or several alike told as a whole: what the yarn went into. */
export interface MadeRow {
  /** Where the words of its instruction begin: the span of its line. */
  readonly at: number;
  /** The heading it stands under. */
  readonly section: string;
  /** How many rows; null where a measure alone says it. */
  readonly rows: number | null;
  /** Length of the piece from its beginning after the last of them, cm, where a measure says it. */
  readonly untilCm: number | null;
  /** Stitches across with the chains between them, on average over the rows; null where they are not known. */
  readonly stitches: number | null;
  /** What one row is made of, its turning chains and joins with it. */
  readonly made: readonly MadeStitches[];
  /** The yarn was joined anew for it. */
  readonly begins: boolean;
}

/** A piece as it was made in one size. */
export interface MadePiece {
  /** The foundation chains, joined to no row; the yarn begins at each. */
  readonly chains: readonly MadeStitches[];
  readonly rows: readonly MadeRow[];
}

/** One piece in every size. */
export interface Making {
  readonly name: string;
  /** How many of it are made: "make 2". */
  readonly times: PerSize<number>;
  /** null where the size does not make it. */
  readonly made: PerSize<MadePiece | null>;
}

/** Everything a maker's hands found out about a pattern. */
export interface WorkedPattern {
  readonly sizes: readonly string[];
  readonly pieces: readonly WorkedPiece[];
  /** The pieces of the garment, what each row of them is made of, in every size. */
  readonly made: readonly Making[];
  readonly findings: readonly Finding[];
  /** Choices made once for the whole document, each in a sentence: "The ch 3 at the start of a row counts as a dc." */
  readonly conventions: readonly string[];
}
