export { type BegunDesign, beginDesign } from "./begin.ts";
export type { Choices } from "./choices.ts";
export type { FabricPattern } from "./fabric.ts";
export { FABRICS, fabricNamed } from "./fabrics.ts";
export {
  type Chosen,
  CONSTRUCTION_WORDS,
  CONSTRUCTIONS,
  choose,
  fabricsFor,
  type Wishes,
} from "./wishes.ts";
