import type { Stitch } from "../stitch.ts";
import { RECALLED, SC, SEEN_UK, STEMS, type Stem, spellWith, wordFor } from "./stems.ts";

/** Ways several stitches closed as one are written: "dc2tog", "2dctog", "dc 2 together", "dc dec". */
// "3 sc dec" is not among them: it may be three decreases or one of three stitches, and only its pattern can say.
function togetherSpellings(form: string, count: number): readonly string[] {
  const word = wordFor(count);
  return [
    `${form} ${count} tog`,
    `${form} ${count} tg`,
    `${form} ${count} together`,
    `${form} ${word} tog`,
    `${form} ${word} together`,
    `${form}s ${count} together`,
    `${form}s ${word} together`,
    `${count} ${form} tog`,
    `${count} ${form}s tog`,
    `${count} ${form} together`,
    `${count} ${form}s together`,
    `${word} ${form} together`,
    `${word} ${form}s together`,
    `${form} ${count} dec`,
    ...(count === 2 ? [`${form} dec`, `dec ${form}`, `${form} decrease`, `decrease ${form}`] : []),
    // "double treble dec" would be a decrease of another stitch, so the word double only stands after the name.
    ...(count === 3 ? [`${form} double dec`, `${form} double decrease`] : []),
  ];
}

function together(stem: Stem, count: number): Stitch {
  const code = `${stem.code}${count}tog`;
  return {
    code,
    us: { abbreviation: `${stem.us.abbreviation}${count}tog`, name: `${stem.us.name} ${count} together` },
    uk: { abbreviation: `${stem.uk.abbreviation}${count}tog`, name: `${stem.uk.name} ${count} together` },
    ...spellWith(stem, (form) => togetherSpellings(form, count)),
    family: stem.family,
    hold: "top",
    takes: count,
    makes: 1,
    height: stem.height,
    special: false,
    symbol: code,
    spoken: `${stem.us.name} ${wordFor(count)} together`,
    source: `${SEEN_UK}; ${stem.heightSource}`,
  };
}

const INVISIBLE_DECREASE: Stitch = {
  code: "invdec",
  us: { abbreviation: "inv dec", name: "invisible decrease" },
  uk: { abbreviation: "inv dec", name: "invisible decrease" },
  ...spellWith(SC, (form) => [
    `inv ${form} dec`,
    `invisible ${form} decrease`,
    `${form} inv dec`,
    `${form} invisible decrease`,
  ]),
  family: "sc",
  hold: "top",
  takes: 2,
  makes: 1,
  height: SC.height,
  special: true,
  symbol: "sc2tog",
  spoken: "invisible decrease",
  source: RECALLED,
};

const MOST = 6;

/** Two to six stitches closed as one, and the invisible decrease. */
export const TOGETHERS: readonly Stitch[] = [
  ...STEMS.flatMap((stem) => Array.from({ length: MOST - 1 }, (_, index) => together(stem, index + 2))),
  INVISIBLE_DECREASE,
];
