import { gradeDesign, type NotGraded, type Proof, proveDesign } from "../design/index.ts";
import type { LinearSolver } from "../sizing/index.ts";
import type { Choices } from "./choices.ts";
import { type DraftParts, documentOf } from "./draft.ts";
import { whyNotWearable } from "./not-wearable.ts";
import { draftPanels } from "./panels.ts";
import { draftPullover } from "./pullover.ts";
import { draftRaglan } from "./raglan.ts";
import { type Settled, UNSETTLED } from "./settled.ts";

/** A first draft with its counts chosen, or why there is none: no counts keep its rules, or nobody could wear it. */
export type BegunDesign =
  | {
      readonly is: "begun";
      readonly text: string;
      readonly proof: Proof;
      /** Whether the counts are proved to be the best that the rules allow. */
      readonly best: boolean;
    }
  | {
      readonly is: "not wearable";
      readonly text: string;
      readonly proof: Proof;
      readonly why: readonly string[];
    }
  | { readonly is: "not graded"; readonly text: string; readonly why: NotGraded };

const DRAFTS: Readonly<Record<Choices["construction"], (choices: Choices, settled: Settled) => DraftParts>> =
  {
    pullover: draftPullover,
    raglan: draftRaglan,
    panels: draftPanels,
  };

/** Writes a design from a few choices: the whole document, with the best counts that its rules allow. */
export async function beginDesign(
  choices: Choices,
  solver: LinearSolver | null = null,
): Promise<BegunDesign> {
  const draft = DRAFTS[choices.construction];
  const [first, every] = UNSETTLED.map((settled) => ({
    settled,
    text: documentOf(choices, draft(choices, settled)),
  }));
  if (!first || !every) throw new Error("there is always a draft");
  let graded = await gradeDesign(first.text, solver);
  let { settled } = first;
  if (first.text !== every.text && !(graded.is === "graded" && sleeveComesOut(graded.after))) {
    const other = await gradeDesign(every.text, solver);
    if (other.is === "graded" || graded.is !== "graded") {
      graded = other;
      settled = every.settled;
    }
  }
  if (graded.is !== "graded") return { is: "not graded", text: every.text, why: graded };
  const written = settledText(choices, draft, graded.after, settled);
  const proof = proveDesign(written);
  const why = whyNotWearable(proof, choices);
  if (why.length > 0) return { is: "not wearable", text: written, proof, why };
  return { is: "begun", text: written, proof, best: graded.proved };
}

/** The text with the counts chosen, without the steps that no size works. */
function settledText(
  choices: Choices,
  draft: (typeof DRAFTS)["pullover"],
  { counts = [] }: Proof,
  drafted: Settled,
): string {
  const steps = counts.filter(({ of }) => of === "repeats");
  const without = steps.filter(({ values }) => values?.every((value) => value === 0)).map(({ name }) => name);
  const zeros = steps.some(({ name, values }) => !without.includes(name) && values?.includes(0));
  const values = new Map(counts.flatMap(({ name, values }) => (values ? [[name, values] as const] : [])));
  return documentOf(
    choices,
    draft(choices, { without: new Set([...drafted.without, ...without]), zeros }),
    values,
  );
}

/** A sleeve whose measures come closer than this, cm, needs no faster shaping. */
const CLOSE = 1.5;
const SLEEVE = new Set(["upper sleeve", "cuff", "sleeve length"]);

const sleeveComesOut = ({ finished = [] }: Proof): boolean =>
  finished.every(({ name, missed }) => !SLEEVE.has(name) || missed.every((cm) => Math.abs(cm ?? 0) < CLOSE));
