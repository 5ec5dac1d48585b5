import type { Stitch } from "../stitch.ts";
import { DC, DTR, HDC, RECALLED, SC, SEEN, STEMS, type Stem, spellWith, TR } from "./stems.ts";

/** One more pull through one loop near the foot: about half a yarn over taller. */
function extended(stem: Stem): Stitch {
  return {
    code: `e${stem.code}`,
    us: { abbreviation: `e${stem.us.abbreviation}`, name: `extended ${stem.us.name}` },
    uk: { abbreviation: `e${stem.uk.abbreviation}`, name: `extended ${stem.uk.name}` },
    ...spellWith(stem, (form) => [`ex ${form}`, `ext ${form}`, `extended ${form}`]),
    family: stem.family,
    hold: "top",
    takes: 1,
    makes: 1,
    height: stem.height + 0.45,
    special: true,
    symbol: `e${stem.code}`,
    spoken: `extended ${stem.us.name}`,
    source: stem.code === "sc" ? `${SEEN}; height from memory` : RECALLED,
  };
}

/** Chain and stitch made in one go: stands on nothing and makes one place. */
function foundation(stem: Stem): Stitch {
  return {
    code: `f${stem.code}`,
    us: { abbreviation: `f${stem.us.abbreviation}`, name: `foundation ${stem.us.name}` },
    uk: { abbreviation: `f${stem.uk.abbreviation}`, name: `foundation ${stem.uk.name}` },
    ...spellWith(stem, (form) => [
      `foundation ${form}`,
      `fnd ${form}`,
      `found ${form}`,
      `fdn ${form}`,
      `chainless foundation ${form}`,
      `chainless ${form}`,
      `${form} foundation`,
    ]),
    family: stem.family,
    hold: "none",
    takes: 0,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: `f${stem.code}`,
    spoken: `foundation ${stem.us.name}`,
    source: `${RECALLED}; ${stem.heightSource}`,
  };
}

/** Joined to its neighbour along the upright, so that no gap stands between. */
function linked(stem: Stem): Stitch {
  return {
    code: `l${stem.code}`,
    us: { abbreviation: `l${stem.us.abbreviation}`, name: `linked ${stem.us.name}` },
    uk: { abbreviation: `l${stem.uk.abbreviation}`, name: `linked ${stem.uk.name}` },
    ...spellWith(stem, (form) => [`linked ${form}`, `lnk ${form}`]),
    family: stem.family,
    hold: "top",
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: `l${stem.code}`,
    spoken: `linked ${stem.us.name}`,
    source: RECALLED,
  };
}

/** Reaches over the row before into an earlier one; its top stands level with its row. */
function spike(stem: Stem): Stitch {
  const single = stem.code === "sc";
  const { alsoUs, alsoUk } = spellWith(stem, (form) => [
    `spike ${form}`,
    `long ${form}`,
    `${form} spike`,
    `dropped ${form}`,
  ]);
  const bare = single ? ["spike", "spike st", "spike stitch"] : [];
  return {
    code: `spike-${stem.code}`,
    us: { abbreviation: `spike ${stem.us.abbreviation}`, name: `spike ${stem.us.name}` },
    uk: { abbreviation: `spike ${stem.uk.abbreviation}`, name: `spike ${stem.uk.name}` },
    alsoUs: [...alsoUs, ...bare, ...(single ? ["lsc"] : [])],
    alsoUk: [...alsoUk, ...bare],
    family: stem.family,
    hold: "spike",
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: `spike-${stem.code}`,
    spoken: `spike ${stem.us.name}`,
    source: RECALLED,
  };
}

/** The two uprights of a herringbone stitch differ only in how the first loop is drawn through. */
function herringbone(stem: Stem): Stitch {
  return {
    code: `herringbone-${stem.code}`,
    us: { abbreviation: `hb${stem.us.abbreviation}`, name: `herringbone ${stem.us.name}` },
    uk: { abbreviation: `hb${stem.uk.abbreviation}`, name: `herringbone ${stem.uk.name}` },
    ...spellWith(stem, (form) => [`herringbone ${form}`, `${form} herringbone`]),
    family: stem.family,
    hold: "top",
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: stem.code,
    spoken: `herringbone ${stem.us.name}`,
    source: RECALLED,
  };
}

/** Ways of working one plain stitch: extended, linked, as a foundation, as a spike, in herringbone. */
export const VARIANTS: readonly Stitch[] = [
  ...[SC, HDC, DC, TR].map(extended),
  ...STEMS.slice(0, 5).map(foundation),
  ...[HDC, DC, TR, DTR].map(linked),
  ...[SC, HDC, DC, TR].map(spike),
  ...[HDC, DC].map(herringbone),
];
