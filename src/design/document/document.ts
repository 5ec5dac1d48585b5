import type { Finding, PerSize, SizeRun, Span } from "../../base/index.ts";
import type { Chart, Cm, Measurement } from "../../bodies/index.ts";
import type { Expression, FabricGauge, GradingRule, Multiple, Swatch } from "../../sizing/index.ts";

/** A yarn as its band and the shop say. */
export interface Yarn {
  readonly name: string;
  readonly span: Span;
  /** 0 to 7 of the trade's table of weights; null where it is not said. */
  readonly yarnClass: number | null;
  readonly metres: number | null;
  readonly grams: number | null;
  readonly price: { readonly amount: number; readonly currency: string } | null;
  readonly colour: string | null;
  readonly fibre: string | null;
  /** What the rows call it, where that is neither its name nor its colour. */
  readonly called: string | null;
  /** Yarns that may be taken instead. */
  readonly instead: readonly Yarn[];
}

/** A stitch pattern in a yarn with a hook, with the swatches that measured it. */
export interface Fabric {
  readonly name: string;
  readonly span: Span;
  /** What it is made of, in the designer's words; null where that is not said. */
  readonly stitch: string | null;
  readonly hookMm: number | null;
  readonly yarn: string | null;
  readonly multiple: Multiple | null;
  readonly swatches: readonly Swatch[];
  /** Headings whose rows are worked in it, as written. */
  readonly headings: readonly string[];
  /** Null where no swatch was measured lying. */
  readonly gauge: FabricGauge | null;
}

/** Whom the sizes are for. */
export interface Body {
  readonly span: Span;
  /** The chart that was named or written; null for measurements alone. */
  readonly chart: Chart | null;
  /** cm of a measurement in each size of the design; null where nothing says it. */
  of(measurement: Measurement): PerSize<Cm | null>;
}

/** Finished less body at one measurement. */
export interface Ease {
  readonly measurement: Measurement;
  readonly span: Span;
  readonly wanted: PerSize<Cm>;
  /** The ease within which the garment still fits, where the design says so. */
  readonly range: { readonly least: PerSize<Cm>; readonly most: PerSize<Cm> } | null;
}

/** A finished measurement that is wanted. */
export interface PlannedMeasure {
  readonly name: string;
  readonly span: Span;
  /** As it is said. */
  readonly words: string;
  /** Null where the words were not understood. */
  readonly expression: Expression | null;
  readonly wanted: PerSize<Cm | null>;
}

/** What hanging does to a measure in one size. */
export interface HangOfSize {
  /** What it grows by, as a share of its length lying. */
  readonly growth: number;
  /** The same of each fabric in it that grows, by the name of its gauge. */
  readonly byGauge: ReadonlyMap<string, number>;
  /** Weight of it and of all below it. */
  readonly grams: number;
  /** The load on each cm of width at its top. */
  readonly gramsPerCm: number;
}

/** A measure that grows when the garment is worn. */
export interface Hang {
  readonly measure: string;
  /** Its name inside expressions. */
  readonly key: string;
  readonly span: Span;
  /** null where the plan does not say how long or how wide it is. */
  readonly perSize: PerSize<HangOfSize | null>;
}

/** A rule of a count or between counts, with its place. */
export interface PlacedRule {
  readonly rule: GradingRule;
  readonly span: Span;
  /** The count whose entry it stands in; null for one among the ties. */
  readonly count: string | null;
}

/** A whole number of stitches, rows or repeats in each size. */
export interface Count {
  readonly name: string;
  readonly span: Span;
  readonly keySpan: Span;
  readonly of: "stitches" | "rows" | "repeats";
  /** Name of the fabric it is counted in; null where none is said. */
  readonly fabric: string | null;
  /** The measure it makes; null for a count that is bound by ties or by hand. */
  readonly along: Expression | null;
  /** cm a stitch, row or repeat; null where no gauge is known. */
  readonly unit: Cm | null;
  /** cm that stitches outside the repeats add, for a count of repeats. */
  readonly plus: Cm;
  /** cm wanted, less `plus`. */
  readonly wanted: PerSize<Cm | null>;
  readonly multiple: Multiple | null;
  readonly order: "up" | "down" | "any" | null;
  readonly weight: number;
  /** The count it is the same as, where it needs no values of its own. */
  readonly sameAs: Expression | null;
  /** As written, or as it follows from `sameAs`; null where there are none. */
  readonly values: PerSize<number | null> | null;
  /** Where the values stand; null where they follow or are not written yet. */
  readonly valuesSpan: Span | null;
  /** Where an entry with the values would be written. */
  readonly insertAt: { readonly at: number; readonly before: string; readonly after: string };
}

/** A rule between counts, in a sentence of its own. */
export interface Tie {
  readonly span: Span;
  readonly words: string;
  readonly rule: GradingRule;
}

/** What grading makes as small as can be: the sum of all misses, or the largest of them first. */
export type Aim = "least sum" | "least worst";

/** A finding of the table that the designer has answered as meant. */
export interface TableAnswer {
  readonly code: string;
  readonly reason: string;
  readonly stamp: string | null;
  readonly span: Span;
}

/** How the garment is finished, and what is bought beyond what is used. */
export interface MakingHabits {
  /** As a share; null where it is not said. */
  readonly safety: number | null;
  /** Length left at each end of the yarn. */
  readonly tailCm: Cm | null;
  /** Length of all sewn seams together. */
  readonly seamsCm: PerSize<Cm | null> | null;
  /** Minutes of sewing, ends and washing. */
  readonly finishing: number | null;
}

/** What the design costs and brings in, as the designer says. */
export interface Costs {
  readonly span: Span;
  readonly currency: string | null;
  readonly price: number | null;
  readonly fee: number;
  readonly hours: number;
  readonly wage: number;
  readonly sold: number | null;
  /** The size whose yarn and making hours are among the costs. */
  readonly sample: number | null;
  /** Sums paid, by the designer's names. */
  readonly sums: readonly { readonly name: string; readonly amount: number }[];
}

/** The table at the head of a design, read. */
export interface DesignTable {
  /** The design from its beginning to the end of the table. */
  readonly text: string;
  readonly span: Span;
  /** First character of the text behind the table. */
  readonly to: number;
  readonly title: string | null;
  readonly terms: "US" | "UK" | null;
  readonly sizes: SizeRun;
  readonly sizesSpan: Span | null;
  readonly body: Body | null;
  readonly ease: readonly Ease[];
  readonly yarns: readonly Yarn[];
  readonly hooksMm: readonly number[];
  readonly fabrics: readonly Fabric[];
  readonly plan: readonly PlannedMeasure[];
  readonly aim: Aim;
  readonly hangs: readonly Hang[];
  readonly counts: readonly Count[];
  readonly ties: readonly Tie[];
  /** Every rule, those of counts and the ties. */
  readonly rules: readonly PlacedRule[];
  readonly making: MakingHabits;
  readonly costs: Costs | null;
  readonly asMeant: readonly TableAnswer[];
  readonly findings: readonly Finding[];
}
