import type { Stitch } from "../stitch.ts";
import { RECALLED, SEEN_UK, STEMS } from "./stems.ts";

const CHAIN: Stitch = {
  code: "ch",
  us: { abbreviation: "ch", name: "chain" },
  uk: { abbreviation: "ch", name: "chain" },
  alsoUs: ["chain stitch", "chain st", "ch st", "chn"],
  alsoUk: ["chain stitch", "chain st", "ch st", "chn"],
  family: "ch",
  hold: "none",
  takes: 0,
  makes: 1,
  // A chain lies along the row; what stands up in a turning chain is in the table of turning chains.
  height: 0,
  special: false,
  symbol: "ch",
  spoken: "chain",
  source: SEEN_UK,
};

const SLIP_STITCH: Stitch = {
  code: "sl st",
  us: { abbreviation: "sl st", name: "slip stitch" },
  uk: { abbreviation: "ss", name: "slip stitch" },
  alsoUs: ["ss", "slip st", "sl stitch", "slp st", "slip-stitch"],
  alsoUk: ["sl st", "slip st", "sl stitch", "slp st", "slip-stitch"],
  family: "sl st",
  hold: "top",
  takes: 1,
  makes: 1,
  height: 0.25,
  special: false,
  symbol: "sl-st",
  spoken: "slip stitch",
  source: `${SEEN_UK}; height from memory, almost none`,
};

const YARN_OVER_SLIP_STITCH: Stitch = {
  code: "yo sl st",
  us: { abbreviation: "yo sl st", name: "yarn over slip stitch" },
  uk: { abbreviation: "yrh ss", name: "yarn round hook slip stitch" },
  alsoUs: ["yss", "yoss", "hdc sl st", "half double slip stitch", "hdss"],
  alsoUk: ["yo ss", "yo sl st", "htr ss", "half treble slip stitch"],
  family: "sl st",
  hold: "top",
  takes: 1,
  makes: 1,
  height: 0.5,
  special: true,
  symbol: "yo-sl-st",
  spoken: "yarn over slip stitch",
  source: RECALLED,
};

const UPRIGHTS: readonly Stitch[] = STEMS.map((stem) => ({
  code: stem.code,
  us: { abbreviation: stem.us.abbreviation, name: stem.us.name },
  uk: { abbreviation: stem.uk.abbreviation, name: stem.uk.name },
  alsoUs: stem.us.forms,
  alsoUk: stem.uk.forms,
  family: stem.family,
  hold: "top",
  takes: 1,
  makes: 1,
  height: stem.height,
  special: false,
  symbol: stem.code,
  spoken: stem.us.name,
  source: `${SEEN_UK}; ${stem.heightSource}`,
}));

/** Chain, slip stitches and the plain uprights from single crochet to triple treble. */
export const PLAIN: readonly Stitch[] = [CHAIN, SLIP_STITCH, YARN_OVER_SLIP_STITCH, ...UPRIGHTS];
