import type { Hold, Stitch } from "../stitch.ts";
import { SEEN_UK, STEMS, type Stem, spellWith, wordFor } from "./stems.ts";

interface Side {
  readonly hold: Hold;
  /** "front" or "back". */
  readonly word: "front" | "back";
  /** The letter of that word in abbreviations. */
  readonly letter: "f" | "b";
}

const SIDES: readonly Side[] = [
  { hold: "front-post", word: "front", letter: "f" },
  { hold: "back-post", word: "back", letter: "b" },
];

const HEIGHT_NOTE =
  "height taken as that of the plain stitch; round a post it comes out a little lower, no source";

/** Ways a stitch round the post is written, from one form of its stem: "fpdc", "dc-fp", "front post dc", "rtrf", "tr/rf". */
function postSpellings({ word, letter }: Side, form: string): readonly string[] {
  return [
    `${letter}p ${form}`,
    `${form} ${letter}p`,
    `${word} post ${form}`,
    `${form} ${word} post`,
    `r ${form} ${letter}`,
    `r${letter} ${form}`,
    `${form} r${letter}`,
    `raised ${form} ${word}`,
    `raised ${word} ${form}`,
    `${word} raised ${form}`,
    `${form} raised ${word}`,
  ];
}

/** The few of them that decreases are made from. */
function postBases({ word, letter }: Side, form: string): readonly string[] {
  return [
    `${letter}p ${form}`,
    `${form} ${letter}p`,
    `${word} post ${form}`,
    `r ${form} ${letter}`,
    `raised ${form} ${word}`,
  ];
}

function post(stem: Stem, side: Side): Stitch {
  return {
    code: `${side.letter}p${stem.code}`,
    us: {
      abbreviation: `${side.letter.toUpperCase()}P${stem.us.abbreviation}`,
      name: `${side.word} post ${stem.us.name}`,
    },
    uk: {
      abbreviation: `R${stem.uk.abbreviation}${side.letter.toUpperCase()}`,
      name: `raised ${stem.uk.name} ${side.word}`,
    },
    ...spellWith(stem, (form) => postSpellings(side, form)),
    family: stem.family,
    hold: side.hold,
    takes: 1,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: `${side.letter}p${stem.code}`,
    spoken: `${side.word} post ${stem.us.name}`,
    source: `${SEEN_UK}; ${HEIGHT_NOTE}`,
  };
}

function postTogether(stem: Stem, side: Side, count: number): Stitch {
  const code = `${side.letter}p${stem.code}${count}tog`;
  return {
    code,
    us: {
      abbreviation: `${side.letter.toUpperCase()}P${stem.us.abbreviation}${count}tog`,
      name: `${side.word} post ${stem.us.name} ${count} together`,
    },
    uk: {
      abbreviation: `R${stem.uk.abbreviation}${side.letter.toUpperCase()}${count}tog`,
      name: `raised ${stem.uk.name} ${side.word} ${count} together`,
    },
    ...spellWith(stem, (form) =>
      postBases(side, form).flatMap((spelling) => [
        `${spelling} ${count} tog`,
        `${spelling} ${count} together`,
        `${spelling} ${wordFor(count)} together`,
        `${count} ${spelling} tog`,
        ...(count === 2 ? [`${spelling} dec`, `${spelling} decrease`] : []),
      ]),
    ),
    family: stem.family,
    hold: side.hold,
    takes: count,
    makes: 1,
    height: stem.height,
    special: true,
    symbol: code,
    spoken: `${side.word} post ${stem.us.name} ${wordFor(count)} together`,
    source: `from memory, formed as the other names of its kind; ${HEIGHT_NOTE}`,
  };
}

/** Stitches round the upright of the stitch below, from the front and from the back, with their decreases. */
export const POSTS: readonly Stitch[] = SIDES.flatMap((side) => [
  ...STEMS.map((stem) => post(stem, side)),
  ...STEMS.flatMap((stem) => [postTogether(stem, side, 2), postTogether(stem, side, 3)]),
]);
