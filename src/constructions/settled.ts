/** What is known of a draft once its counts are chosen. */
export interface Settled {
  /** Counts of steps that no size works: the text does without them. */
  readonly without: ReadonlySet<string>;
  /** Whether some size leaves out a step that others work. */
  readonly zeros: boolean;
}

/** Steps that shape as fast as can be, which a garment only has where slower ones do not come far enough. */
const FASTEST = ["double increases", "quick decreases"] as const;

/** Before anything is chosen: first without the fastest steps, and then with every step. */
export const UNSETTLED: readonly Settled[] = [
  { without: new Set(FASTEST), zeros: true },
  { without: new Set(), zeros: true },
];

export const ZERO_NOTE = "Where a size has 0, leave that step out and go on with the next.";

/** A step of shaping that may be left out: how often it is worked, and what one time of it adds or takes. */
export interface Step {
  readonly name: string;
  /** "twice", "4 times". */
  readonly stitches: string;
  readonly rows: string;
}

/** The steps that some size works. */
export const stepsWorked = (steps: readonly Step[], { without }: Settled): readonly Step[] =>
  steps.filter(({ name }) => !without.has(name));

/** ", plus twice slow increases plus 4 times double increases", or the same with minus. */
export const sumOf = (steps: readonly Step[], of: "stitches" | "rows", sign = "plus"): string =>
  steps.map((step) => ` ${sign} ${step[of]} ${step.name}`.replace(/ {2,}/g, " ")).join("");
