import { CLUSTERS } from "./records/clusters.ts";
import { EDGINGS } from "./records/edgings.ts";
import { FANS } from "./records/fans.ts";
import { INCREASES } from "./records/increases.ts";
import { PLAIN } from "./records/plain.ts";
import { POSTS } from "./records/posts.ts";
import { TOGETHERS } from "./records/togethers.ts";
import { VARIANTS } from "./records/variants.ts";
import type { Stitch } from "./stitch.ts";

/** Every stitch the house knows, plain ones first. Tunisian crochet is not here. */
export const DICTIONARY: readonly Stitch[] = [
  ...PLAIN,
  ...TOGETHERS,
  ...INCREASES,
  ...POSTS,
  ...VARIANTS,
  ...CLUSTERS,
  ...FANS,
  ...EDGINGS,
];
