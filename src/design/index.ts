export type { AnsweredFinding, Coverage, Proof, UnstampedAnswer, VouchedLine } from "./proof.ts";
export { applyEdits, proveDesign } from "./prove.ts";
