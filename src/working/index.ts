export { workPattern } from "./work-pattern.ts";
export type { WorkedLine, WorkedPattern, WorkedPiece, WorkedSample } from "./worked.ts";
