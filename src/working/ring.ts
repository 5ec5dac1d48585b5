import { Edge } from "./edge.ts";
import { placeOf } from "./place.ts";

/** A ring, of chains or of yarn: it takes any number of stitches. */
export const RING = new Edge([{ unit: [placeOf("ch", "ring", false)], times: 1 }], true);
