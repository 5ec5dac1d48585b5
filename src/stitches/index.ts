export { codesCovered, coversPlace } from "./families.ts";
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
export type { Family, Hold, Stitch } from "./stitch.ts";
export type { Terms } from "./terms.ts";
