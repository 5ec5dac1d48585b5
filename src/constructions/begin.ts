import { gradeDesign, type NotGraded, type Proof } from "../design/index.ts";
import type { LinearSolver } from "../sizing/index.ts";
import type { Choices } from "./choices.ts";
import { type DraftParts, documentOf } from "./draft.ts";
import { draftPanels } from "./panels.ts";
import { draftPullover } from "./pullover.ts";
import { draftRaglan } from "./raglan.ts";

/** A first draft with its counts chosen, or why no counts could be chosen for it. */
export type BegunDesign =
  | { readonly is: "begun"; readonly text: string; readonly proof: Proof }
  | { readonly is: "not graded"; readonly text: string; readonly why: NotGraded };

const DRAFTS: Readonly<Record<Choices["construction"], (choices: Choices) => DraftParts>> = {
  pullover: draftPullover,
  raglan: draftRaglan,
  panels: draftPanels,
};

/** Writes a design from a few choices: the whole document, with the best counts that its rules allow. */
export async function beginDesign(
  choices: Choices,
  solver: LinearSolver | null = null,
): Promise<BegunDesign> {
  const text = documentOf(choices, DRAFTS[choices.construction](choices));
  const graded = await gradeDesign(text, solver);
  if (graded.is !== "graded") return { is: "not graded", text, why: graded };
  return { is: "begun", text: graded.text, proof: graded.after };
}
