import type { Span } from "./span.ts";

/** An error stops a maker; a warning may; a note is what an editor would ask. */
export type Severity = "error" | "warning" | "note";

/** A change of the text that mends a finding: the span is replaced by the words. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** What a designer may do about a finding: a sentence and, where there is one right answer, the edits that do it. */
export interface Remedy {
  readonly say: string;
  readonly edits?: readonly Edit[];
}

/** Where a finding belongs. */
export interface Whereabouts {
  readonly span: Span;
  /** A second place at fault, such as the row before. */
  readonly also?: Span;
  /** Heading of the piece, as the pattern has it; null outside pieces. */
  readonly piece: string | null;
  /** The row's own label, such as "Row 12 (WS)"; null outside rows. */
  readonly row: string | null;
  /** Indices of the sizes at fault; empty when the finding is not about sizes. */
  readonly sizes: readonly number[];
}

/** Something the designer should know: what, where, in which sizes, why, what to do. */
export interface Finding extends Whereabouts {
  readonly code: string;
  readonly severity: Severity;
  readonly what: string;
  readonly why: string;
  readonly todo: readonly Remedy[];
}

/** One kind of finding: its code and its wording, made from facts that are plain data. */
export interface FindingKind<Facts> {
  readonly code: string;
  readonly severity: Severity;
  /** Makes the finding of these facts at this place. */
  at(where: Whereabouts, facts: Facts, edits?: readonly Remedy[]): Finding;
}

/** What one kind of finding is declared with. */
interface Declaration<Facts> {
  readonly code: string;
  readonly severity: Severity | ((facts: Facts) => Severity);
  readonly what: (facts: Facts) => string;
  readonly why: (facts: Facts) => string;
  readonly todo: (facts: Facts) => readonly string[];
}

const declared = new Map<string, FindingKind<never>>();

/**
 * Declares a kind of finding; one file a kind.
 *
 * @throws {Error} when two files declare the same code: the program's mistake
 */
export function declare<Facts>(declaration: Declaration<Facts>): FindingKind<Facts> {
  const { code, severity } = declaration;
  if (declared.has(code)) throw new Error(`finding ${code} is declared twice`);
  const kind: FindingKind<Facts> = {
    code,
    severity: typeof severity === "function" ? "error" : severity,
    at: (where, facts, remedies = []) => ({
      ...where,
      code,
      severity: typeof severity === "function" ? severity(facts) : severity,
      what: declaration.what(facts),
      why: declaration.why(facts),
      todo: joinRemedies(remedies, declaration.todo(facts)),
    }),
  };
  declared.set(code, kind as FindingKind<never>);
  return kind;
}

/** Every code that has been declared by the rooms loaded so far, in alphabetical order. */
export function declaredCodes(): string[] {
  return [...declared.keys()].sort();
}

/** The declared remedies in their order, with the edits of those that have some; others that were given come first. */
function joinRemedies(given: readonly Remedy[], declared: readonly string[]): readonly Remedy[] {
  const own = given.filter((remedy) => !declared.includes(remedy.say));
  return [...own, ...declared.map((say) => given.find((remedy) => remedy.say === say) ?? { say })];
}
