import type { Instruction, PatternTree } from "../notation/index.ts";
import type { ChainsCounted } from "./counting.ts";
import type { LineOutcome } from "./maker.ts";

/** An instruction with the piece it stands in. */
export interface Placed {
  readonly instruction: Instruction;
  readonly piece: string;
  readonly pieceAt: number;
}

/** A pattern as all its sizes worked it, side by side. */
export interface WorkedSizes {
  readonly tree: PatternTree;
  readonly placed: readonly Placed[];
  /** By size, then by instruction. */
  readonly outcomes: readonly (readonly LineOutcome[])[];
  /** The same on wider samples; null where no stitch pattern is worked on a sample. */
  readonly wider: readonly (readonly LineOutcome[])[] | null;
  /** Which chains inside its rows the pattern counts as stitches. */
  readonly chainsCount: ChainsCounted;
}

/** How each size came out at one instruction. */
export function outcomesAt(work: WorkedSizes, at: number): readonly LineOutcome[] {
  return work.outcomes.map((lines) => lines[at] as LineOutcome);
}

/** A row as findings call it. */
export function sayRow({ instruction }: Placed): string {
  return instruction.label?.words ?? "This line";
}

/** What the last row before an instruction is called. */
export function labelBefore({ placed, outcomes }: WorkedSizes, at: number): string {
  for (let before = at - 1; before >= 0; before--) {
    const outcome = outcomes
      .map((lines) => lines[before])
      .find((line) => line?.worked && line.made !== "nothing");
    if (!outcome) continue;
    return outcome.made === "foundation"
      ? "the foundation"
      : (placed[before]?.instruction.label?.words ?? "the row before");
  }
  return "the row before";
}
