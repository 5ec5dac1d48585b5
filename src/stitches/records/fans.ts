import type { Stitch } from "../stitch.ts";
import { DC, HDC, RECALLED, SC, SEEN, type Stem, spellWith, TR, wordFor } from "./stems.ts";

const times = (count: number, code: string): string[] => Array.from({ length: count }, () => code);

const SHELL: Stitch = {
  code: "shell",
  us: { abbreviation: "sh", name: "shell" },
  uk: { abbreviation: "sh", name: "shell" },
  alsoUs: ["shl", "shell st", "shell stitch"],
  alsoUk: ["shl", "shell st", "shell stitch"],
  family: "group",
  hold: "top",
  takes: 1,
  makes: 5,
  parts: times(5, "dc"),
  height: DC.height,
  special: true,
  varies: true,
  symbol: "5dc-in-one",
  spoken: "shell",
  source: `${SEEN}; taken as five dc where a pattern does not say, from memory`,
};

const FAN: Stitch = {
  code: "fan",
  us: { abbreviation: "fan", name: "fan" },
  uk: { abbreviation: "fan", name: "fan" },
  alsoUs: ["fan st", "fan stitch"],
  alsoUk: ["fan st", "fan stitch"],
  family: "group",
  hold: "top",
  takes: 1,
  makes: 7,
  parts: times(7, "dc"),
  height: DC.height,
  special: true,
  varies: true,
  symbol: "7dc-in-one",
  spoken: "fan",
  source: `${RECALLED}; taken as seven dc where a pattern does not say`,
};

function numberedShell(stem: Stem, count: number): Stitch {
  return {
    code: `${count}${stem.code}-shell`,
    us: { abbreviation: `${count}-${stem.us.abbreviation} shell`, name: `${count}-${stem.us.name} shell` },
    uk: { abbreviation: `${count}-${stem.uk.abbreviation} shell`, name: `${count}-${stem.uk.name} shell` },
    ...spellWith(stem, (form) => [
      `${count} ${form} sh`,
      `${count} ${form} shell`,
      `${count} ${form} fan`,
      `shell of ${count} ${form}`,
      `${wordFor(count)} ${form} shell`,
    ]),
    family: "group",
    hold: "top",
    takes: 1,
    makes: count,
    parts: times(count, stem.code),
    height: stem.height,
    special: true,
    symbol: `${count}${stem.code}-in-one`,
    spoken: `${wordFor(count)} ${stem.us.name} shell`,
    source: RECALLED,
  };
}

/** Two stitches with one chain between, in one place. */
function vStitch(stem: Stem): Stitch {
  const plain = stem.code === "dc";
  const { alsoUs, alsoUk } = spellWith(stem, (form) => [`${form} v st`, `${form} v stitch`, `v st ${form}`]);
  const bare = ["v st", "v stitch", "vs"];
  return {
    code: plain ? "v-stitch" : `${stem.code}-v-stitch`,
    us: {
      abbreviation: plain ? "V-st" : `${stem.us.abbreviation} V-st`,
      name: plain ? "V-stitch" : `${stem.us.name} V-stitch`,
    },
    uk: {
      abbreviation: plain ? "V-st" : `${stem.uk.abbreviation} V-st`,
      name: plain ? "V-stitch" : `${stem.uk.name} V-stitch`,
    },
    alsoUs: plain ? [...alsoUs, ...bare] : alsoUs,
    alsoUk: plain ? [...alsoUk, ...bare] : alsoUk,
    family: "group",
    hold: "top",
    takes: 1,
    makes: 3,
    parts: [stem.code, "ch 1", stem.code],
    height: stem.height,
    special: true,
    varies: true,
    symbol: `${stem.code}-v`,
    spoken: plain ? "V stitch" : `${stem.us.name} V stitch`,
    source: RECALLED,
  };
}

/** The second of two is worked into the place before the first: both places are taken, both stitches stand. */
function crossed(stem: Stem): Stitch {
  const plain = stem.code === "dc";
  const { alsoUs, alsoUk } = spellWith(stem, (form) => [
    `crossed ${form}`,
    `cross ${form}`,
    `x ${form}`,
    `cr ${form}`,
    `${form} cross`,
    `crossed ${form} pair`,
    `cross ${form} st`,
  ]);
  const bare = plain
    ? ["cross st", "cross stitch", "crossed st", "crossed stitch", "x st", "x stitch", "cr st"]
    : [];
  return {
    code: `crossed-${stem.code}`,
    us: { abbreviation: `crossed ${stem.us.abbreviation}`, name: `crossed ${stem.us.name}` },
    uk: { abbreviation: `crossed ${stem.uk.abbreviation}`, name: `crossed ${stem.uk.name}` },
    alsoUs: [...alsoUs, ...bare],
    alsoUk: [...alsoUk, ...bare],
    family: stem.family,
    hold: "top",
    takes: 2,
    makes: 2,
    parts: [stem.code, stem.code],
    height: stem.height,
    special: true,
    varies: true,
    symbol: `crossed-${stem.code}`,
    spoken: `crossed ${stem.us.name}`,
    source: RECALLED,
  };
}

const Y_STITCH: Stitch = {
  code: "y-stitch",
  us: { abbreviation: "Y-st", name: "Y-stitch" },
  uk: { abbreviation: "Y-st", name: "Y-stitch" },
  alsoUs: ["y st", "y stitch"],
  alsoUk: ["y st", "y stitch"],
  family: "group",
  hold: "top",
  takes: 1,
  makes: 3,
  parts: ["tr", "ch 1", "dc"],
  height: TR.height,
  special: true,
  varies: true,
  symbol: "y-stitch",
  spoken: "Y stitch",
  source: RECALLED,
};

const INVERTED_Y: Stitch = {
  code: "inverted-y",
  us: { abbreviation: "inv Y-st", name: "inverted Y-stitch" },
  uk: { abbreviation: "inv Y-st", name: "inverted Y-stitch" },
  alsoUs: ["inverted y", "inverted y st"],
  alsoUk: ["inverted y", "inverted y st"],
  family: "group",
  hold: "top",
  takes: 2,
  makes: 1,
  height: TR.height,
  special: true,
  varies: true,
  symbol: "inverted-y",
  spoken: "inverted Y stitch",
  source: RECALLED,
};

const SHELL_SIZES: readonly { readonly stem: Stem; readonly counts: readonly number[] }[] = [
  { stem: SC, counts: [3, 5] },
  { stem: HDC, counts: [3, 4, 5, 6, 7] },
  { stem: DC, counts: [3, 4, 5, 6, 7, 8, 9] },
  { stem: TR, counts: [3, 4, 5, 6, 7, 8, 9] },
];

const NUMBERED_SHELLS = SHELL_SIZES.flatMap(({ stem, counts }) =>
  counts.map((count) => numberedShell(stem, count)),
);
const V_STITCHES = [DC, HDC, TR].map(vStitch);

/** Shells, fans and other named groups that stand in one place and leave several. */
export const FANS: readonly Stitch[] = [
  SHELL,
  FAN,
  ...NUMBERED_SHELLS,
  ...V_STITCHES,
  ...[HDC, DC, TR].map(crossed),
  Y_STITCH,
  INVERTED_Y,
];

/** Codes of every stitch that goes by the bare name. */
export const FANS_BY_NAME: Readonly<Record<string, readonly string[]>> = {
  shell: ["fan", ...NUMBERED_SHELLS.map((stitch) => stitch.code)],
  fan: ["shell", ...NUMBERED_SHELLS.map((stitch) => stitch.code)],
  "v-stitch": V_STITCHES.slice(1).map((stitch) => stitch.code),
};
