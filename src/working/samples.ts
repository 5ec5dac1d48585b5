import type { Span } from "../base/index.ts";
import type { Clause, MultipleNote, PatternTree, Target } from "../notation/index.ts";
import type { Choices } from "./choices.ts";
import { Edge } from "./edge.ts";
import { placeOf, stitchPlace } from "./place.ts";
import { makesStitches } from "./segments.ts";

/*
 * A stitch pattern is told without a width: over a multiple of so many, or with no number at all. Its rows are worked on a sample of
 * a few repeats, and once more on a wider one, to see that they close on any number of repeats.
 */

/** The width that a piece of the pattern is worked on where the text leaves it open. */
export interface Sample {
  /** Where the text tells the rule, or the first row where it tells none. */
  readonly span: Span;
  readonly name: string;
  /** A multiple of this many, and this many more; null where the text tells no rule. */
  readonly of: number | null;
  readonly plus: number;
  readonly repeats: number | null;
  /** Stitches, or chains of the foundation. */
  readonly wide: number;
  readonly chains: boolean;
}

/** Which of the two samples is worked: the first is shown, the second only confirms it. */
export type SampleWidth = "sample" | "wider";

/** A sample is at least so wide, that its edges do not meet. */
const NARROWEST = 24;
const FEWEST_REPEATS = 5;

function repeatsOf(of: number, width: SampleWidth): number {
  const first = Math.max(FEWEST_REPEATS, Math.ceil(NARROWEST / of));
  return width === "sample" ? first : first + 2;
}

/** Chains of a foundation that is told as a multiple. */
export function chainsOfMultiple(
  { of, plus }: { readonly of: number; readonly plus: number },
  width: SampleWidth,
): number {
  return of * repeatsOf(of, width) + plus;
}

/** The sample begun by a chain that is told as a multiple; undefined where no chain is. */
export function sampleOfChain(clauses: readonly Clause[], width: SampleWidth): Sample | undefined {
  for (const clause of clauses) {
    if (clause.kind !== "chain" || !clause.multiple) continue;
    const { of, plus } = clause.multiple;
    const wide = chainsOfMultiple(clause.multiple, width);
    return { span: clause.span, name: "", of, plus, repeats: repeatsOf(of, width), wide, chains: true };
  }
  return undefined;
}

/** The rule of width that stands between two places of the text, the last where there are several. */
export function ruleBetween(tree: PatternTree, from: number, to: number): MultipleNote | undefined {
  return tree.multiples.filter(({ span }) => span.from >= from && span.to <= to).at(-1);
}

/** Headings under which the rows of a stitch pattern stand, for want of a rule of width. */
const NAMES_PATTERN = /\b(?:patterns?|patt|pat|stitch|st)\b/iu;
const NOT_A_STITCH = /\b(?:pieces?|notes?|abbreviations?|instructions?|special|the pattern)\b/iu;

export const namesStitchPattern = (heading: string): boolean =>
  NAMES_PATTERN.test(heading) && !NOT_A_STITCH.test(heading);

/** A sample for rows that need something to be worked into; null where what they need cannot be made up. */
export function sampleFor(
  clauses: readonly Clause[],
  rule: MultipleNote | undefined,
  where: { readonly span: Span; readonly name: string },
  choices: Choices,
  width: SampleWidth,
): Sample | null {
  const into = firstTarget(clauses);
  if (into === null) return null;
  const chains = into !== "nothing" && isChain(into);
  if (!chains && targetsOf(clauses).some(({ what }) => LACKING.has(what.is))) return null;
  if (!rule) {
    if (chains) return null;
    const readings = NARROWEST / 2;
    const wide = NARROWEST + choices.take(`sample-width:${where.span.from}`, readings, where.span);
    return { ...where, of: null, plus: 0, repeats: null, wide, chains };
  }
  // "A multiple of 4 sts + 2" with the chains of the first row to be added by the maker.
  const base = chains
    ? (rule.base ??
      (rule.counts === "chains" ? 0 : choices.take(`base-chain:${rule.span.from}`, 4, rule.span)))
    : 0;
  const plus = rule.plus + base;
  const repeats = repeatsOf(rule.of, width);
  const name = rule.name || where.name;
  return { span: rule.span, name, of: rule.of, plus, repeats, wide: rule.of * repeats + plus, chains };
}

/** Places that only rows of the pattern itself could have made. */
const LACKING: ReadonlySet<string> = new Set([
  "space",
  "row-end",
  "free-loop",
  "marked",
  "ring",
  "skipped",
  "corner",
  "join",
]);

/** Where the first stitch of a row goes; "nothing" where no place is said, null where the row makes its own beginning. */
function firstTarget(clauses: readonly Clause[]): Target | "nothing" | null {
  for (const clause of clauses) {
    switch (clause.kind) {
      case "work":
      case "group":
      case "skip":
        return clause.target.ref === "here" ? "nothing" : clause.target;
      case "repeat":
      case "size-only":
        return firstTarget(clause.body);
      case "choice":
        return firstTarget(clause.options[0] ?? []);
      case "join":
      case "join-yarn":
      case "along":
      case "evenly":
      case "repeat-rows":
      case "even":
      case "schedule":
      case "as-piece":
        return null;
      default:
    }
  }
  return null;
}

/** Every place that a row names. */
function targetsOf(clauses: readonly Clause[]): readonly Target[] {
  return clauses.flatMap((clause) => {
    switch (clause.kind) {
      case "work":
      case "skip":
        return clause.target.of ? [clause.target, clause.target.of] : [clause.target];
      case "group":
      case "repeat":
      case "size-only":
        return targetsOf(clause.body);
      case "choice":
        return clause.options.flatMap(targetsOf);
      default:
        return [];
    }
  });
}

/** Whether a row is worked into a foundation chain that lies before it. */
export function startsFromHook(clauses: readonly Clause[]): boolean {
  const into = firstTarget(clauses);
  return into !== null && into !== "nothing" && isChain(into);
}

const isChain = ({ what, from }: Target): boolean =>
  from === "hook" || what.is === "chain" || what.is === "foundation";

/** Whether a row begins with a foundation of its own: "ch 31, sc in 2nd ch from hook", "ch 6, join". */
export function makesFoundation(clauses: readonly Clause[]): boolean {
  const first = clauses.find(makesStitches);
  if (first?.kind !== "chain") return first?.kind === "work" && /^f(?:sc|hdc|dc|tr)$/u.test(first.stitch);
  if (first.multiple || (first.count.values[0] ?? 0) > LONGEST_TURNING) return true;
  const rest = clauses.slice(clauses.indexOf(first) + 1);
  const into = firstTarget(rest);
  return (
    rest.length === 0 ||
    rest.some((clause) => clause.kind === "join" && clause.ring) ||
    (into !== null && into !== "nothing" && into.from === "hook")
  );
}

/** No row begins with a longer chain that is not its foundation. */
const LONGEST_TURNING = 12;

/** What a sample is begun with: its foundation chain, or a row of the stitch that the first row names. */
export function edgeOfSample({ chains, wide }: Sample, clauses: readonly Clause[]): Edge {
  if (chains)
    return new Edge([{ unit: [placeOf("ch", "foundation", true, wide)], times: 1 }], false).reversed();
  const into = firstTarget(clauses);
  const code = into !== null && into !== "nothing" && into.what.is === "stitch" ? into.what.code : "sc";
  return new Edge([{ unit: [stitchPlace(code)], times: wide }], false);
}
