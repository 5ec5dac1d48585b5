export { workPattern } from "./work-pattern.ts";
export type {
  MadePiece,
  MadeRow,
  MadeStitches,
  Making,
  WorkedLine,
  WorkedPattern,
  WorkedPiece,
  WorkedSample,
} from "./worked.ts";
