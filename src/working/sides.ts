/** A side that a row's words tell, at a number of turns within its strand. */
export interface SideTold {
  readonly line: number;
  readonly flips: number;
  readonly side: "RS" | "WS";
  /** Said in the sentence, "with RS facing", "ending with a WS row", and not in the row's label. */
  readonly facing?: true;
}

/** What the turns of one strand say of its sides. */
export interface StrandSides {
  /** The side facing after so many turns; null where no word tells. */
  sideAt(flips: number): "RS" | "WS" | null;
  /** Lines whose words say the other side. */
  readonly contradicted: readonly SideTold[];
}

const other = (side: "RS" | "WS"): "RS" | "WS" => (side === "RS" ? "WS" : "RS");

/**
 * Finds which side faces at the start of a strand, so that most of the words about sides come true; those that do not are
 * contradicted. Where as many say one as the other, the first word holds.
 */
export function settleSides(told: readonly SideTold[]): StrandSides {
  const first = told[0];
  if (!first) return { sideAt: () => null, contradicted: [] };
  const startOf = (word: SideTold): "RS" | "WS" => (word.flips % 2 === 0 ? word.side : other(word.side));
  const right = told.filter((word) => startOf(word) === "RS").length;
  const start = right * 2 === told.length ? startOf(first) : right * 2 > told.length ? "RS" : "WS";
  return {
    sideAt: (flips) => (flips % 2 === 0 ? start : other(start)),
    contradicted: told.filter((word) => startOf(word) !== start),
  };
}
