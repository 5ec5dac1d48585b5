import { Edge } from "./edge.ts";
import { placeOf } from "./place.ts";

/** A ring of so many chains. Where a row works into each of them, it is a round of chains. */
export const ringOf = (chains: number): Edge =>
  new Edge([{ unit: [placeOf("ch", "ring", false, chains)], times: 1 }], true);

/** A chain closed without being twisted, to be worked chain by chain. */
export const closedChain = (chains: number): Edge =>
  new Edge([{ unit: [placeOf("ch", "foundation", true, chains)], times: 1 }], true);

/** A ring of yarn: it takes any number of stitches. */
export const RING = new Edge([{ unit: [placeOf("ch", "ring", false)], times: 1 }], true);

/** Whether an edge is a ring, of chains or of yarn, that is worked into as a whole. */
export const isRing = (edge: Edge | null | undefined): boolean => edge?.runs[0]?.unit[0]?.role === "ring";
