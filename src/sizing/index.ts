export {
  buttonsFor,
  frontStitches,
  type HolesInRow,
  holesInRow,
  holesInRows,
  mirrorPocket,
  type PocketPlace,
} from "./bands.ts";
export {
  capCurve,
  capRows,
  edgeLength,
  fitStaircases,
  quarterEllipse,
  type Run,
  type Staircase,
  type Staircases,
} from "./curve.ts";
export { CENTRED, deal, type Gaps, gapsInRound, spread } from "./distribute.ts";
export {
  decreaseEvenly,
  type EvenShaping,
  groupSteps,
  increaseEvenly,
  type ShapingStep,
  type StepGroup,
  shapingPlaces,
  tally,
  type Way,
} from "./even-shaping.ts";
export { bearableGaugeError, type GaugeError, rowsAtGauge, stretchNeeded, widthAtGauge } from "./gauge.ts";
export { type Conflict, canHold, findConflict, type Verdict } from "./grading/conflicts.ts";
export {
  type Graded,
  type Grading,
  type GradingResult,
  grade,
  gradeAtOnce,
  type Unsettled,
} from "./grading/grade.ts";
export {
  type HighsRuntime,
  highsSolver,
  type LinearAnswer,
  type LinearModel,
  type LinearOptions,
  type LinearSolver,
} from "./grading/linear-solver.ts";
export { type CountChange, findNextBest, gradeHolding, type NextBest } from "./grading/next-best.ts";
export {
  type BoundRule,
  checkProblem,
  type EqualRule,
  type GradingProblem,
  type GradingRule,
  type HoldRule,
  type MultipleRule,
  type OrderRule,
  type Quantity,
  type RatioRule,
  reachOf,
  type SumRule,
  type Term,
  USUAL_SMOOTHNESS,
} from "./grading/problem.ts";
export { costRules, type RuleCost } from "./grading/rule-costs.ts";
export { gradeWithSolver, USUAL_NODES } from "./grading/solve-sums.ts";
export {
  type Growth,
  type GrowthOfSize,
  growthAlong,
  growthOf,
  growthPerSize,
  growthUnder,
  type Hanging,
  lengthBeforeHanging,
} from "./growth.ts";
export {
  ANY_NUMBER,
  bezout,
  chainsFor,
  EVEN,
  fits,
  fittingAround,
  type Multiple,
  mergeMultiples,
  modulo,
  nearestFitting,
  ODD,
  roundingFloor,
} from "./multiples.ts";
export {
  FLAT_ENOUGH,
  groupPickUp,
  type PickUpGroup,
  type PickUpRatio,
  pickUpAlong,
  pickUpRatio,
  pickUpRatios,
} from "./pick-up.ts";
export { type CountList, type CountListRead, readCountList, readMultiple } from "./plan/count-list.ts";
export { type Expression, type Linear, linearOf, namesIn } from "./plan/expression.ts";
export { type FabricGauge, gaugeOfFabric } from "./plan/fabric-gauge.ts";
export { type Ordered, putInOrder } from "./plan/in-order.ts";
export {
  addLengths,
  exactly,
  type Length,
  type Lookup,
  lengthOf,
  plusMinusOf,
  timesLength,
} from "./plan/length.ts";
export { type MeasureRead, readMeasure, type Vocabulary } from "./plan/read-measure.ts";
export { breaksOf, type WrittenCounts } from "./plan/rule-breaks.ts";
export {
  completeReading,
  readSwatchMeasures,
  readSwatchState,
  type SwatchMeasures,
  type SwatchMeasuresRead,
} from "./plan/swatch-words.ts";
export { nearestName, plainName, type Slip } from "./plan/word-cursor.ts";
export { fitRib, goesOver, HEM_RIB, NECK_RIB, type Rib, type RibFit, type RibReading, ribOf } from "./rib.ts";
export {
  type Change,
  changeBetween,
  type Gauge,
  gaugeOf,
  lengthWhileWorking,
  readingIn,
  type Swatch,
  type SwatchReading,
  type SwatchState,
} from "./swatch.ts";
export {
  type Rate,
  type RateOrder,
  type ShapingSide,
  shapingRows,
  type Taper,
  type TaperRefused,
  taper,
  taperAtRates,
  taperBetween,
} from "./taper.ts";
export {
  type Estimate,
  learnFromTesters,
  measureOf,
  measureWithin,
  type PlusMinus,
  type Pooled,
  pool,
  type ReadingLimits,
  sizeOf,
  USUAL_LIMITS,
  uOfGauge,
  uOfLimit,
  uOfReading,
  uOfRounding,
} from "./uncertainty.ts";
export type { Cm, Count, Grams, Share } from "./units.ts";
