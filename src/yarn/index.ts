export { apart, type Disagreement, disagreements, MOST_APART, SWATCH_DOUBT } from "./agreement.ts";
export { type Purchase, purchaseOf, USUAL_SAFETY, type YarnBall } from "./buying.ts";
export { firstFall, METRES_A_YARD, pulloverMetres } from "./class-range.ts";
export { type Business, type Earnings, earningsOf } from "./earnings.ts";
export {
  estimateYarn,
  type PieceYarn,
  type TwoWays,
  type YarnEstimate,
  type YarnTotal,
} from "./estimate.ts";
export {
  type FabricSwatch,
  type NamedYarn,
  USUAL_TAIL_CM,
  type YarnFabric,
  type YarnJob,
} from "./job.ts";
export { type ClassedYarn, type Substitution, substitute } from "./substitute.ts";
