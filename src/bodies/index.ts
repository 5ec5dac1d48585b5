export { type Amount, CM_PER_INCH, readAmount, type Unit } from "./amount.ts";
export {
  type ArmRelation,
  armRelation,
  BODY_ANSWERS,
  type BodyAnswer,
  bodyAnswer,
  bodyMeasures,
} from "./body-measures.ts";
export {
  answerOf,
  type Chart,
  type ChartAnswer,
  type ChartValue,
  holesOf,
  middlesOf,
  notedValues,
  sizesFor,
} from "./chart.ts";
export { type ChartAsk, type ChartFit, chartFit } from "./chart-fit.ts";
export { CHART_NAMES, chartNamed } from "./chart-names.ts";
export {
  type BodyLine,
  bodyLine,
  closedSteps,
  correctedChart,
  FEW_PEOPLE,
  measuredBusts,
  type SizeStep,
} from "./corrected.ts";
export {
  type Coverage,
  type CoverageQuestion,
  coverage,
  type GarmentSize,
  type NotJudged,
  type ShutOut,
  type SizeTaken,
  type Widening,
} from "./coverage.ts";
export {
  type EaseRange,
  type EaseWord,
  easeInCm,
  easeOf,
  easeWords,
  type GarmentEase,
  garmentEases,
} from "./ease.ts";
export { type GarmentLength, garmentLengths } from "./garment-lengths.ts";
export { type HeadSize, headSizes } from "./head-sizes.ts";
export { type LetterCode, letterCodes, lettersFor } from "./letter-codes.ts";
export {
  type Cm,
  lookupMeasurement,
  MEASUREMENTS,
  type Measurement,
  type MeasurementEntry,
  nearestMeasurement,
} from "./measurement.ts";
export { type ChartProblem, type ChartRead, readChart } from "./own-chart.ts";
export { isBelievable, personChart } from "./person-chart.ts";
export { publishedChart } from "./published.ts";
export type { Population, Status } from "./rows.ts";
export { peopleIn, type SurveyColumn, type Surveyed, surveyColumn } from "./survey.ts";
