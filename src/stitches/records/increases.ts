import type { Stitch } from "../stitch.ts";
import { RECALLED, SC, SEEN_UK, STEMS, type Stem, spellWith, wordFor } from "./stems.ts";

/** A plain increase by one, and the double increase by two, each worked in one place. */
function increase(stem: Stem, count: 2 | 3): Stitch {
  const lead = count === 3 ? "double " : "";
  return {
    code: count === 2 ? `${stem.code}-inc` : `${stem.code}-double-inc`,
    us: {
      abbreviation: `${stem.us.abbreviation} ${lead}inc`,
      name: `${stem.us.name} ${lead}increase`,
    },
    uk: {
      abbreviation: `${stem.uk.abbreviation} ${lead}inc`,
      name: `${stem.uk.name} ${lead}increase`,
    },
    ...spellWith(stem, (form) => [
      `${form} ${lead}inc`,
      `${form} ${lead}increase`,
      ...(count === 2 ? [`inc ${form}`, `increase ${form}`] : []),
    ]),
    family: stem.family,
    hold: "top",
    takes: 1,
    makes: count,
    parts: Array.from({ length: count }, () => stem.code),
    height: stem.height,
    special: false,
    symbol: `${count}${stem.code}-in-one`,
    spoken: `${wordFor(count)} ${stem.us.name} in one stitch`,
    source: stem.code === "sc" && count === 2 ? SEEN_UK : RECALLED,
  };
}

const INVISIBLE_INCREASE: Stitch = {
  code: "invinc",
  us: { abbreviation: "inv inc", name: "invisible increase" },
  uk: { abbreviation: "inv inc", name: "invisible increase" },
  ...spellWith(SC, (form) => [`inv ${form} inc`, `invisible ${form} increase`]),
  family: "sc",
  hold: "top",
  takes: 1,
  makes: 2,
  parts: ["sc", "sc"],
  height: SC.height,
  special: true,
  symbol: "2sc-in-one",
  spoken: "invisible increase",
  source: RECALLED,
};

/** Stitches that make more than they take, named as one. */
export const INCREASES: readonly Stitch[] = [
  ...STEMS.flatMap((stem) => [increase(stem, 2), increase(stem, 3)]),
  INVISIBLE_INCREASE,
];
