import { ARMY_MEN } from "./data/army-men.ts";
import { ARMY_WOMEN } from "./data/army-women.ts";

/** Whose bodies a survey measured. Nobody's children are in one. */
export type Surveyed = "women" | "men";

/** What was measured on each person. The words say what it is on the body; `docs/bodies.md` says how it was taken. */
export type SurveyColumn =
  | "stature"
  | "weight"
  | "bust"
  | "waistAtNavel"
  | "hip"
  | "upperArmFlexed"
  | "wrist"
  | "neck"
  | "neckBase"
  | "biacromial"
  | "interscye"
  | "shoulderLength"
  | "shoulderToWrist"
  | "napeToNavel"
  | "napeHeight"
  | "shoulderHeight"
  | "underarmHeight"
  | "chestBreadth"
  | "waistBreadth"
  | "hipBreadth"
  | "calf"
  | "ankle"
  | "head"
  | "hand"
  | "handLength"
  | "footLength"
  | "footBall";

/**
 * A survey as it is compiled in: for each column its smallest value, the bits a value takes, and the distances from the
 * smallest, most significant bit first, without gaps between people, as base64.
 */
export interface PackedSurvey {
  readonly people: number;
  readonly columns: Readonly<Record<SurveyColumn, readonly [least: number, bits: number, packed: string]>>;
}

const PACKED: Readonly<Record<Surveyed, PackedSurvey>> = { women: ARMY_WOMEN, men: ARMY_MEN };

const unpacked = new Map<string, Int16Array>();

/** How many people the survey measured: 1,986 women, 4,082 men. */
export function peopleIn(population: Surveyed): number {
  return PACKED[population].people;
}

/**
 * One column of a survey, one entry a person, everybody in the same order in every column. Unpacked at the first call.
 *
 * @returns  whole millimetres; `weight` in tenths of a kilogram. Not to be written to: it is the only copy.
 * @see data/bodies/SOURCES.md: the 2012 US Army survey
 */
export function surveyColumn(population: Surveyed, column: SurveyColumn): Int16Array {
  const key = `${population} ${column}`;
  let values = unpacked.get(key);
  if (values === undefined) {
    const { people, columns } = PACKED[population];
    values = unpack(people, ...columns[column]);
    unpacked.set(key, values);
  }
  return values;
}

function unpack(people: number, least: number, bits: number, packed: string): Int16Array {
  const values = new Int16Array(people);
  const mask = 2 ** bits - 1;
  let held = 0;
  let heldBits = 0;
  let at = 0;
  for (let person = 0; person < people; person++) {
    // At most 11 bits wait and 6 come in, so 32-bit shifts hold them.
    for (; heldBits < bits; heldBits += 6) held = (held << 6) | sixBits(packed.charCodeAt(at++));
    heldBits -= bits;
    values[person] = least + ((held >> heldBits) & mask);
    held &= 2 ** heldBits - 1;
  }
  return values;
}

/** The value of a base64 letter: A-Z, a-z, 0-9, plus, slash. */
function sixBits(code: number): number {
  if (code >= 97) return code - 71;
  if (code >= 65) return code - 65;
  if (code >= 48) return code + 4;
  return code === 43 ? 62 : 63;
}
