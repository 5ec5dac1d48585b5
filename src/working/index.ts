export { workPattern } from "./work-pattern.ts";
export type { WorkedLine, WorkedPattern, WorkedPiece } from "./worked.ts";
