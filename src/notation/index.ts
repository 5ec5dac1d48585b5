export type * from "./tree.ts";
export { inspectTree } from "./inspect/inspect-tree.ts";
export { readPattern } from "./read-pattern.ts";
