export {
  type Abbreviation,
  type AbbreviationKind,
  allAbbreviations,
  lookupAbbreviations,
} from "./abbreviations.ts";
export { codesCovered, coversPlace } from "./families.ts";
export { HOOKS, type Hook, type HookFound, lookupHook, nearestHook } from "./hooks.ts";
export {
  abbreviationIn,
  allStitches,
  hasStitch,
  lookupStitch,
  nameIn,
  normaliseSpelling,
  spellings,
  stitchOf,
} from "./lookup.ts";
export { meaningOf } from "./meanings.ts";
export type { Family, Hold, Stitch } from "./stitch.ts";
export { type ChartSymbol, symbolOf } from "./symbols.ts";
export {
  LONGEST_SIGN,
  TERM_PAIRS,
  TERM_SIGNS,
  type TermPair,
  type TermSign,
  type Terms,
  termSign,
  wordIn,
} from "./terms.ts";
export {
  COUNTING_BY_CHAINS,
  type Counting,
  countingOf,
  TURNING_CHAINS,
  type TurningChain,
  turningChainFor,
} from "./turning-chains.ts";
export {
  classesForHook,
  lookupYarnClasses,
  type Range,
  YARN_CLASSES,
  type YarnClass,
  yarnClass,
} from "./yarn-classes.ts";
