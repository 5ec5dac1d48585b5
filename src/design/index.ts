export type { Choice } from "./document/choice.ts";
export type { DesignProof, ProvedCount, ProvedTie } from "./document/design-proof.ts";
export type {
  Aim,
  Body,
  Count,
  DesignTable,
  Ease,
  Fabric,
  PlannedMeasure,
  Tie,
  Yarn,
} from "./document/document.ts";
export { addSize, setEntry } from "./document/edit-table.ts";
export type { FinishedMeasure, MadeFrom } from "./document/finished.ts";
export { type CountChange, gradeDesign, type NotGraded, type Regraded } from "./document/grade-design.ts";
export { nextBestChoice, type RuleCost, ruleCosts } from "./document/rule-costs.ts";
export { type WhomItFits, whomItFits } from "./document/whom-it-fits.ts";
export type { AnsweredFinding, Coverage, Proof, UnstampedAnswer, VouchedLine } from "./proof.ts";
export { applyEdits, proveDesign } from "./prove.ts";
export type { DesignBusiness, YarnInstead, YarnProof } from "./prove-yarn.ts";
export { type NotTidied, type Tidied, tidyPattern } from "./tidy.ts";
