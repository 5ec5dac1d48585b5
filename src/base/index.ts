export {
  declare,
  declaredCodes,
  type Edit,
  type Finding,
  type FindingKind,
  type Remedy,
  type Severity,
  type Whereabouts,
} from "./finding.ts";
export { Kept } from "./kept.ts";
export {
  agree,
  capital,
  counted,
  inSizes,
  ordinal,
  plural,
  type SizedNumbers,
  said,
  sayCm,
  sayNumbers,
  sentence,
} from "./say.ts";
export { namesOf, ONE_SIZE, type PerSize, type SizeRun, sayList, valueAt } from "./sizes.ts";
export { joinSpans, LineIndex, type Position, type Span } from "./span.ts";
