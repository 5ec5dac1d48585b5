/** How a stitch goes into the work. */
export type Hold =
  /** Under a loop or both loops of a stitch top, into a chain or under a chain space. */
  | "top"
  /** Round the upright of a stitch, from the front or from the back. */
  | "front-post"
  | "back-post"
  /** Over the rows between, into an earlier row. */
  | "spike"
  /** Into nothing: chains and foundation stitches. */
  | "none";

/** The families that a name of a place speaks of: "in next dc" also means a dc2tog or a post dc. */
export type Family = "ch" | "sl st" | "sc" | "hdc" | "dc" | "tr" | "dtr" | "trtr" | "group";

/**
 * One stitch as data. Adding a stitch means adding one record.
 * Names are in US terms; `uk` has the British ones.
 */
export interface Stitch {
  /** Our own short name, the US abbreviation where there is one: "sc", "fpdc", "dc2tog", "cluster". */
  readonly code: string;
  readonly us: { readonly abbreviation: string; readonly name: string };
  readonly uk: { readonly abbreviation: string; readonly name: string };
  /** Further spellings met in patterns, US terms: "hdc dec". Letter case, dots, hyphens and spaces in them do not matter. */
  readonly alsoUs?: readonly string[];
  readonly alsoUk?: readonly string[];
  readonly family: Family;
  readonly hold: Hold;
  /** Places it takes one after the other: 1, 2 for a two-together, 0 for a chain. */
  readonly takes: number;
  /** Places it makes: 1, 2 for a plain increase, 5 for a five-stitch shell. Chains in `parts` are places too. */
  readonly makes: number;
  /**
   * What it makes, where that is not `makes` stitches of its own code: the codes in order, "ch 2" for a run of
   * two chains with the space under it. A V-stitch is ["dc", "ch 1", "dc"].
   */
  readonly parts?: readonly string[];
  /** Height in rows of single crochet. Source: computation notes, section 8 (sc, hdc, dc), else as `source` says. */
  readonly height: number;
  /** Whether patterns usually define it before use; a special stitch is named in counts as one thing. */
  readonly special: boolean;
  /** Whether the words differ between books, so that a pattern must define it ("cluster", "shell", "puff"). */
  readonly varies?: boolean;
  /** Code of the chart symbol. */
  readonly symbol: string;
  /** How it is said aloud, US: "single crochet two together". UK speech follows from the UK name. */
  readonly spoken: string;
  readonly source: string;
}
