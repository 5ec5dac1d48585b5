/** A whole number in the text: a count of the design with something added, or the number itself. */
export interface Whole {
  readonly count?: string;
  readonly plus?: number;
}

/** One row of a fabric, flat, on any number of stitches that its multiple allows. The number of stitches stays the same. */
export interface FabricRow {
  /** Turning chain, which never counts as a stitch: 1 or 2. */
  readonly chains: 1 | 2;
  readonly stitches: PlainRow | RepeatedRow;
}

/** The same stitch all along: "sc in each st across". */
export interface PlainRow {
  readonly plain: string;
  /** "BLO": said behind the stitch. */
  readonly loops?: string;
}

/** A repeat with what stands before and behind it. Words in US terms, with how many stitches of the row below they take. */
export interface RepeatedRow {
  readonly before?: string;
  readonly unit: string;
  /** Where edge stitches stand behind it, `takes` is without them. */
  readonly after?: { readonly words: string; readonly takes: number; readonly edge?: Whole };
}

/** A stitch pattern that a garment can be drafted in. */
export interface FabricPattern {
  /** What the designer chooses it by. */
  readonly name: string;
  /** One phrase for the table and the introduction: "one row of sc, one row of sc and dc". */
  readonly stitch: string;
  /** How it looks, one sentence. */
  readonly looks: string;
  /** Stitches of the repeat, and how many stand beside it. */
  readonly multiple: { readonly of: number; readonly plus: number };
  /** Of a wide repeat: the stitch that fills up beside the repeats of a sleeve, about as tall as a row. */
  readonly edge?: string;
  /** The repeat of rows; the first is a RS row. */
  readonly rows: readonly FabricRow[];
  /** Height of a row over the width of a stitch, where no swatch says it. From geometry of the stitches; a start only. */
  readonly aspect: number;
}

export const isPlain = (stitches: PlainRow | RepeatedRow): stitches is PlainRow => "plain" in stitches;

/** Whether a sleeve in this fabric can widen by a stitch at each end: every row or every WS row is of one stitch. */
export function tapers({ rows, multiple }: FabricPattern): boolean {
  const last = rows[rows.length - 1];
  return rows.length <= 2 && multiple.of <= 2 && last !== undefined && isPlain(last.stitches);
}
