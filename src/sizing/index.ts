export { bearableGaugeError, type GaugeError, rowsAtGauge, stretchNeeded, widthAtGauge } from "./gauge.ts";
export {
  type Growth,
  type GrowthOfSize,
  growthOf,
  growthPerSize,
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
