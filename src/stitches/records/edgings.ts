import type { Stitch } from "../stitch.ts";
import { DC, RECALLED, SC, SEEN, spellWith } from "./stems.ts";

/** A small ring of chains closed where it began: it stands on the edge and is not counted. */
function picot(chains: number): Stitch {
  const usual = chains === 3;
  const numbered = [`ch ${chains} picot`, `${chains} ch picot`, `picot ${chains}`, `${chains} chain picot`];
  const bare = usual ? ["pic", "picot st", "picot stitch"] : [];
  return {
    code: usual ? "picot" : `ch${chains}-picot`,
    us: {
      abbreviation: usual ? "picot" : `ch-${chains} picot`,
      name: usual ? "picot" : `chain ${chains} picot`,
    },
    uk: {
      abbreviation: usual ? "picot" : `${chains}-ch picot`,
      name: usual ? "picot" : `${chains} chain picot`,
    },
    alsoUs: [...numbered, ...bare],
    alsoUk: [...numbered, ...bare],
    family: "group",
    hold: "top",
    takes: 0,
    makes: 0,
    height: 0,
    special: true,
    ...(usual ? { varies: true } : {}),
    symbol: `picot-${chains}`,
    spoken: usual ? "picot" : `chain ${chains} picot`,
    source: usual ? `${RECALLED}; taken as three chains where a pattern does not say` : RECALLED,
  };
}

const REVERSE: Stitch = {
  code: "rsc",
  us: { abbreviation: "rsc", name: "reverse single crochet" },
  uk: { abbreviation: "rdc", name: "reverse double crochet" },
  alsoUs: ["rev sc", "reverse sc", "crab st", "crab stitch", "crab", "shrimp stitch", "rev single crochet"],
  alsoUk: ["rev dc", "reverse dc", "crab st", "crab stitch", "crab", "shrimp stitch", "rev double crochet"],
  family: "sc",
  hold: "top",
  takes: 1,
  makes: 1,
  height: 0.8,
  special: true,
  symbol: "rsc",
  spoken: "reverse single crochet",
  source: `${SEEN}; height from memory`,
};

const TWISTED: Stitch = {
  code: "twisted-sc",
  us: { abbreviation: "twisted sc", name: "twisted single crochet" },
  uk: { abbreviation: "twisted dc", name: "twisted double crochet" },
  ...spellWith(SC, (form) => [`tw ${form}`, `twisted ${form}`, `twist ${form}`]),
  family: "sc",
  hold: "top",
  takes: 1,
  makes: 1,
  height: SC.height,
  special: true,
  symbol: "twisted-sc",
  spoken: "twisted single crochet",
  source: RECALLED,
};

const LOOP_FORMS = ["loop st", "lp st", "loop stitch", "fur st", "fur stitch"];

const LOOP: Stitch = {
  code: "loop-stitch",
  us: { abbreviation: "loop st", name: "loop stitch" },
  uk: { abbreviation: "loop st", name: "loop stitch" },
  alsoUs: [...LOOP_FORMS, "loop sc"],
  alsoUk: [...LOOP_FORMS, "loop dc"],
  family: "sc",
  hold: "top",
  takes: 1,
  makes: 1,
  height: SC.height,
  special: true,
  symbol: "loop-stitch",
  spoken: "loop stitch",
  source: RECALLED,
};

const BULLION_FORMS = ["bullion", "bullion st", "bullion stitch", "roll st", "roll stitch", "bull st"];

const BULLION: Stitch = {
  code: "bullion",
  us: { abbreviation: "bullion", name: "bullion stitch" },
  uk: { abbreviation: "bullion", name: "bullion stitch" },
  alsoUs: BULLION_FORMS,
  alsoUk: BULLION_FORMS,
  family: "group",
  hold: "top",
  takes: 1,
  makes: 1,
  height: DC.height,
  special: true,
  varies: true,
  symbol: "bullion",
  spoken: "bullion stitch",
  source: RECALLED,
};

const PICOTS = [3, 2, 4, 5, 6].map(picot);

/** Picots and single crochets worked in another way: backwards, twisted, with a long loop. */
export const EDGINGS: readonly Stitch[] = [...PICOTS, REVERSE, TWISTED, LOOP, BULLION];

/** Codes of every stitch that goes by the bare name. */
export const EDGINGS_BY_NAME: Readonly<Record<string, readonly string[]>> = {
  picot: PICOTS.slice(1).map((stitch) => stitch.code),
};
