import type { Span } from "../base/index.ts";

/**
 * What went wrong in one row of one size, as plain numbers. Troubles of several sizes at one place become one finding.
 */
export type Trouble =
  | {
      readonly is: "repeat-leaves";
      readonly span: Span;
      readonly have: number;
      readonly takes: number;
      readonly fixed: number;
    }
  | { readonly is: "not-enough"; readonly span: Span; readonly have: number; readonly need: number }
  | {
      readonly is: "left-over";
      readonly span: Span;
      readonly left: number;
      readonly have: number;
      readonly announced: boolean;
    }
  | { readonly is: "nothing-there"; readonly span: Span; readonly place: string }
  | { readonly is: "chain-from-hook"; readonly span: Span; readonly nth: number; readonly chains: number }
  | { readonly is: "worked-on-nothing"; readonly span: Span }
  | { readonly is: "turn-missing"; readonly span: Span }
  | { readonly is: "turn-doubled"; readonly span: Span }
  | { readonly is: "join-missing"; readonly span: Span }
  | { readonly is: "evenly-unsaid"; readonly span: Span; readonly offer: number | null }
  | { readonly is: "cannot-shape"; readonly span: Span; readonly have: number; readonly change: number }
  | { readonly is: "rejoin-nowhere"; readonly span: Span }
  | { readonly is: "row-not-found"; readonly span: Span; readonly asked: string }
  | { readonly is: "piece-not-found"; readonly span: Span; readonly asked: string }
  | { readonly is: "number-skips"; readonly span: Span; readonly expected: number; readonly found: number }
  | { readonly is: "number-repeats"; readonly span: Span; readonly found: number }
  | {
      readonly is: "ends-on-other-side";
      readonly span: Span;
      readonly asked: "RS" | "WS" | number;
      readonly rows: number;
    }
  | { readonly is: "more-rows"; readonly span: Span; readonly needs: number; readonly has: number }
  | {
      readonly is: "misses-count";
      readonly span: Span;
      readonly from: number;
      readonly to: number;
      readonly wanted: number;
    }
  | {
      readonly is: "outside-measure";
      readonly span: Span;
      readonly workedCm: number;
      readonly statedCm: number;
    }
  | {
      readonly is: "chain-two-ways";
      readonly span: Span;
      readonly chains: number;
      readonly stitch: string;
      readonly here: boolean;
    }
  | {
      readonly is: "count-differs";
      readonly span: Span;
      readonly of: string | null;
      readonly printed: number;
      readonly worked: number;
    }
  | {
      readonly is: "change-differs";
      readonly span: Span;
      /** The row that says the change, where it is another than the one at hand. */
      readonly row: string | null;
      readonly change: "inc" | "dec";
      /** Stitches gained, or lost where the words say a decrease. */
      readonly printed: number;
      readonly worked: number;
    }
  /** Rows that a sentence says there are. */
  | { readonly is: "rows-told"; readonly span: Span; readonly told: number; readonly worked: number }
  | {
      readonly is: "repeated-row";
      readonly span: Span;
      readonly repeated: string;
      readonly time: number;
      readonly inner: Trouble;
    };

const STOPPING: ReadonlySet<Trouble["is"]> = new Set([
  "repeat-leaves",
  "not-enough",
  "left-over",
  "nothing-there",
  "chain-from-hook",
  "worked-on-nothing",
  "count-differs",
  "change-differs",
  "misses-count",
  "cannot-shape",
  "more-rows",
]);

/** Whether a trouble stops a maker: the choice of a reading is judged by these. */
export function stopsMaker(trouble: Trouble): boolean {
  return STOPPING.has(trouble.is === "repeated-row" ? trouble.inner.is : trouble.is);
}

/** Ends the work on a row at once: it cannot be gone on with. */
export class Stuck extends Error {
  constructor(readonly trouble: Trouble) {
    super(trouble.is);
  }
}

/** Ends the work on a row whose outcome cannot be known, without anything being wrong: an edge taken on trust, a remark. */
export class Unknowable extends Error {}
