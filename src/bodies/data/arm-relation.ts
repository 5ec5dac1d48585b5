// Made by scripts/bodies/make-arm-relation.mjs from data/bodies. Change the table or the script, not this file.

import type { ArmRelation } from "../body-measures.ts";
import type { Surveyed } from "../survey.ts";

export const ARM_RELATION: Readonly<Record<Surveyed, ArmRelation>> = {
  women: {
    flexedAbove: 0.64,
    sd: 1.39,
    fittedOn: 3855,
    byHip: { slope: 0.3117, base: -1.316, sd: 2.79, r: 0.868 },
    largestHip: 134.1,
    hipsBeyond: 0.0737,
    largeArms: [
      { bust: 124.5, weight: 100.6, people: 234, arm: 38.2 },
      { bust: 134.6, weight: 111.7, people: 132, arm: 40.6 },
      { bust: 144.8, weight: 122.9, people: 95, arm: 42.7 },
      { bust: 154.9, weight: 134.1, people: 51, arm: 45.2 },
    ],
  },
  men: {
    flexedAbove: 2.12,
    sd: 1.87,
    fittedOn: 3488,
    byHip: { slope: 0.3275, base: 0.114, sd: 2.63, r: 0.836 },
    largestHip: 130.5,
    hipsBeyond: 0.0343,
    largeArms: [
      { bust: 124.5, weight: 112.9, people: 205, arm: 39.3 },
      { bust: 134.6, weight: 127.9, people: 119, arm: 41.7 },
      { bust: 144.8, weight: 142.9, people: 32, arm: 45 },
      { bust: 154.9, weight: 157.9, people: 23, arm: 46.8 },
    ],
  },
};
