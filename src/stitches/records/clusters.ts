import type { Stitch } from "../stitch.ts";
import { DC, DTR, HDC, RECALLED, SEEN, type Stem, spellWith, TR, wordFor } from "./stems.ts";

/** Several unfinished or gathered stitches that stand in one place and end as one. */
interface Lump {
  readonly name: string;
  readonly abbreviation: string;
  /** Further spellings of the bare name. */
  readonly forms: readonly string[];
  /** What the bare name means where a pattern does not say; books differ. */
  readonly usual: { readonly stem: Stem; readonly count: number };
  readonly numbered: readonly { readonly stem: Stem; readonly counts: readonly number[] }[];
  readonly source: string;
}

const LUMPS: readonly Lump[] = [
  {
    name: "cluster",
    abbreviation: "CL",
    forms: ["cl", "cluster", "clus", "clu", "cl st", "cluster st", "cluster stitch"],
    usual: { stem: DC, count: 3 },
    numbered: [
      { stem: HDC, counts: [2, 3, 4, 5] },
      { stem: DC, counts: [2, 3, 4, 5, 6] },
      { stem: TR, counts: [2, 3, 4, 5, 6] },
      { stem: DTR, counts: [2, 3, 4, 5] },
    ],
    source: SEEN,
  },
  {
    name: "bobble",
    abbreviation: "bo",
    forms: ["bo", "bobble", "bob", "bobble st", "bobble stitch", "mb"],
    usual: { stem: DC, count: 5 },
    numbered: [
      { stem: HDC, counts: [3, 4, 5] },
      { stem: DC, counts: [3, 4, 5, 6, 7] },
      { stem: TR, counts: [3, 4, 5, 6, 7] },
    ],
    source: RECALLED,
  },
  {
    name: "puff stitch",
    abbreviation: "puff",
    forms: ["puff", "ps", "puff st", "puff stitch", "pf st", "puf"],
    usual: { stem: HDC, count: 3 },
    numbered: [
      { stem: HDC, counts: [2, 3, 4, 5, 6] },
      { stem: DC, counts: [3, 4, 5] },
    ],
    source: RECALLED,
  },
  {
    name: "popcorn",
    abbreviation: "pc",
    forms: ["pc", "pop", "popcorn", "popcorn st", "popcorn stitch", "pop st", "pc st", "pcn"],
    usual: { stem: DC, count: 5 },
    numbered: [
      { stem: HDC, counts: [4, 5] },
      { stem: DC, counts: [3, 4, 5, 6, 7] },
      { stem: TR, counts: [4, 5, 6] },
    ],
    source: SEEN,
  },
];

/** First word of the name, as it stands in codes and symbols: "puff" of "puff stitch". */
const short = (lump: Lump): string => lump.name.split(" ")[0] ?? lump.name;

function bare(lump: Lump): Stitch {
  const { stem, count } = lump.usual;
  return {
    code: short(lump),
    us: { abbreviation: lump.abbreviation, name: lump.name },
    uk: { abbreviation: lump.abbreviation, name: lump.name },
    alsoUs: lump.forms,
    alsoUk: lump.forms,
    family: "group",
    hold: "top",
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    varies: true,
    symbol: `${count}${stem.code}-${short(lump)}`,
    spoken: lump.name,
    source: `${lump.source}; taken as ${wordFor(count)} ${stem.us.abbreviation} where a pattern does not say, from memory`,
  };
}

function numbered(lump: Lump, stem: Stem, count: number): Stitch {
  const code = `${count}${stem.code}-${short(lump)}`;
  return {
    code,
    us: {
      abbreviation: `${count}-${stem.us.abbreviation} ${lump.abbreviation}`,
      name: `${count}-${stem.us.name} ${lump.name}`,
    },
    uk: {
      abbreviation: `${count}-${stem.uk.abbreviation} ${lump.abbreviation}`,
      name: `${count}-${stem.uk.name} ${lump.name}`,
    },
    ...spellWith(stem, (form) =>
      lump.forms.flatMap((word) => [
        `${count} ${form} ${word}`,
        `${word} of ${count} ${form}`,
        `${wordFor(count)} ${form} ${word}`,
        // "dc bobble" says which stitch and leaves the number to custom.
        ...(count === customary(lump) ? [`${form} ${word}`] : []),
      ]),
    ),
    family: "group",
    hold: "top",
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    varies: true,
    symbol: code,
    spoken: `${wordFor(count)} ${stem.us.name} ${lump.name}`,
    source: RECALLED,
  };
}

const customary = (lump: Lump): number => lump.usual.count;

/** The bean stitch: a small puff drawn from one loop after another; its name is used loosely. */
const BEAN: Stitch = {
  code: "bean",
  us: { abbreviation: "bean st", name: "bean stitch" },
  uk: { abbreviation: "bean st", name: "bean stitch" },
  alsoUs: ["bean", "mini bean", "mini bean st", "mini bean stitch"],
  alsoUk: ["bean", "mini bean", "mini bean st", "mini bean stitch"],
  family: "group",
  hold: "top",
  takes: 1,
  makes: 1,
  height: HDC.height,
  special: true,
  varies: true,
  symbol: "3hdc-puff",
  spoken: "bean stitch",
  source: RECALLED,
};

/** Clusters, bobbles, puffs and popcorns: worked in one place, counted as one. */
export const CLUSTERS: readonly Stitch[] = [
  ...LUMPS.flatMap((lump) => [
    bare(lump),
    ...lump.numbered.flatMap(({ stem, counts }) => counts.map((count) => numbered(lump, stem, count))),
  ]),
  BEAN,
];

/** Codes of every stitch that goes by the bare name: "cluster" speaks of a 3-dc cluster too. */
export const CLUSTERS_BY_NAME: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  LUMPS.map((lump) => [
    short(lump),
    lump.numbered.flatMap(({ stem, counts }) => counts.map((count) => `${count}${stem.code}-${short(lump)}`)),
  ]),
);
