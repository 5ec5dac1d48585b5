import type { PerSize, Span } from "../../base/index.ts";
import type { YarnProof } from "../prove-yarn.ts";
import type { Choice } from "./choice.ts";
import type { DesignTable, PlannedMeasure } from "./document.ts";
import type { FinishedMeasure, MadeFrom } from "./finished.ts";

/** A count of the design, as written, as worked and as it could be. */
export interface ProvedCount {
  readonly name: string;
  readonly span: Span;
  readonly of: "stitches" | "rows" | "repeats";
  readonly fabric: string | null;
  /** As written or as it follows from others; null where there are none. */
  readonly values: PerSize<number | null> | null;
  readonly multiple: number;
  readonly remainder: number;
  /** Stitches, rows or repeats that the plan would have, not whole; null where it makes no measure. */
  readonly wanted: PerSize<number | null>;
  /** Read off the worked rows; null where no row says it, or it is not known. */
  readonly worked: PerSize<number | null>;
  readonly from: MadeFrom;
  /** Rows it was read off. */
  readonly places: readonly Span[];
}

/** A rule between counts, and by how much it is missed in each size, in counts or in cm. */
export interface ProvedTie {
  readonly text: string;
  readonly span: Span;
  readonly measured: "counts" | "cm";
  /** From the counts as worked, where rows say them; 0 where it holds exactly, null where a size has no count. */
  readonly difference: PerSize<number | null>;
  /** Most that it may be missed by. */
  readonly within: number;
}

/** What a proof says of the table at the head of a design. */
export interface DesignProof {
  readonly table: DesignTable;
  readonly plan: readonly PlannedMeasure[];
  readonly counts: readonly ProvedCount[];
  /** As worked: from the counts of the worked rows and the gauge of the washed swatch. */
  readonly finished: readonly FinishedMeasure[];
  readonly ties: readonly ProvedTie[];
  /** How the counts as written stand to the best there are; null where there is nothing to choose. */
  readonly choice: Choice | null;
  /** Yarn, hours and money. */
  readonly yarn: YarnProof;
}
