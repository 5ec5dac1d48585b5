import type { Edit, Finding, SizeRun } from "../base/index.ts";
import type { Answer, PatternTree } from "../notation/index.ts";
import type { WorkedPattern } from "../working/index.ts";
import type { DesignProof } from "./document/design-proof.ts";

/** How much of a pattern was read and proved, in written instruction lines. */
export interface Coverage {
  readonly instructionLines: number;
  /** No words left over, and the counts follow in every size. */
  readonly read: number;
  /** Worked in every size, nothing wrong, nothing on trust. */
  readonly proved: number;
  /** Counts taken from what is printed. */
  readonly onTrust: number;
}

/** A finding that the designer has answered as meant. */
export interface AnsweredFinding {
  readonly finding: Finding;
  readonly answer: Answer;
}

/** A line that the designer vouches for, since it cannot be read. */
export interface VouchedLine {
  readonly piece: string;
  readonly row: string;
  readonly answer: Answer;
}

/** An answer that carries no stamp yet, and the edit that gives it one. */
export interface UnstampedAnswer {
  readonly answer: Answer;
  readonly edit: Edit;
}

/** The whole story of a design, as proved. What stands in its table at the head is there only where it has one. */
export interface Proof extends Partial<DesignProof> {
  readonly text: string;
  readonly title: string;
  readonly terms: "US" | "UK";
  readonly sizes: SizeRun;
  readonly tree: PatternTree;
  readonly worked: WorkedPattern;
  /** In the order of the text. Answered ones are not among them. */
  readonly findings: readonly Finding[];
  readonly answered: readonly AnsweredFinding[];
  readonly vouched: readonly VouchedLine[];
  readonly unstamped: readonly UnstampedAnswer[];
  readonly coverage: Coverage;
}
