export { editAmount } from "./edit-amount.ts";
export { inspectTree } from "./inspect/inspect-tree.ts";
export { printAmount, printMeasure, printSizes } from "./print/amounts.ts";
export { printClauses, printInstruction } from "./print/instruction.ts";
export { type PrintedPattern, printPattern, printWhole } from "./print/pattern.ts";
export { sameTree } from "./print/same-tree.ts";
export type { PrintStyle } from "./print/style.ts";
export { readPattern } from "./read-pattern.ts";
export type * from "./tree.ts";
