import { ARM_RELATION } from "./data/arm-relation.ts";
import type { Cm, Measurement } from "./measurement.ts";
import { peopleIn, type SurveyColumn, type Surveyed, surveyColumn } from "./survey.ts";

/** What the health survey adds to the Army survey, which measured flexed arms and no very large bodies. */
export interface ArmRelation {
  /** cm by which a flexed arm is above the relaxed arm of a body of the same weight and stature, on average. */
  readonly flexedAbove: Cm;
  /** Spread of that difference from person to person, cm. */
  readonly sd: Cm;
  /** People of the health survey the relaxed arm was fitted on. */
  readonly fittedOn: number;
  /** The relaxed arm's straight line on the hip in the health survey, cm; sd about the line. */
  readonly byHip: { readonly slope: number; readonly base: Cm; readonly sd: Cm; readonly r: number };
  /** The Army survey's largest hip, and the share of the health survey's people whose hip is larger. */
  readonly largestHip: Cm;
  readonly hipsBeyond: number;
  /** Median relaxed arm of the health survey's people within 4 kg of the weight that goes with a large bust. */
  readonly largeArms: readonly {
    readonly bust: Cm;
    readonly weight: number;
    readonly people: number;
    readonly arm: Cm;
  }[];
}

/** How a body measurement is had from what the survey measured. */
export interface BodyAnswer {
  readonly measurement: Measurement;
  /** What the survey measured, in words. */
  readonly measured: string;
  /** How that differs from what a tape on a maker would find; empty where it does not. */
  readonly mismatch: string;
  /** Columns, each with the factor it enters with; the rest is added. */
  readonly from: readonly (readonly [column: SurveyColumn, factor: number])[];
  /** The flexed arm's surplus is taken off. */
  readonly relaxed?: true;
}

/** Which survey measure answers for which measurement. The only list of them: coverage and corrected charts both read it. */
export const BODY_ANSWERS: readonly BodyAnswer[] = [
  {
    measurement: "bust",
    measured: "largest level girth at the bust point, lightly dressed, at the end of a quiet breath in",
    mismatch: "",
    from: [["bust", 1]],
  },
  {
    measurement: "neck to wrist",
    measured: "half the width between the shoulder bones, plus shoulder point to wrist with the arm straight",
    mismatch: "A tape over the shoulder's slope and a bent elbow finds a little more.",
    from: [
      ["biacromial", 0.5],
      ["shoulderToWrist", 1],
    ],
  },
  {
    measurement: "back length",
    measured: "tape from nape to the level of the navel",
    mismatch: "The natural waist lies higher, so a back to the waist is shorter than this.",
    from: [["napeToNavel", 1]],
  },
  {
    measurement: "shoulder width",
    measured: "calliper from shoulder bone to shoulder bone, seated",
    mismatch: "A tape over the curve of the back finds more, by an amount nobody measured here.",
    from: [["biacromial", 1]],
  },
  {
    measurement: "back at underarm",
    measured: "tape across the back between the rear armpit folds",
    mismatch: "",
    from: [["interscye", 1]],
  },
  {
    measurement: "arm length",
    measured: "shoulder point to wrist, less how far the underarm lies below the shoulder point",
    mismatch: "A difference of measured lengths, not a tape along the inside of the arm.",
    from: [
      ["shoulderToWrist", 1],
      ["shoulderHeight", -1],
      ["underarmHeight", 1],
    ],
  },
  {
    measurement: "upper arm",
    measured: "girth of the raised, flexed arm, less what flexing adds on average",
    mismatch: "A flexed arm is larger: a sleeve that must not bind when the arm bends wants ease for it.",
    from: [["upperArmFlexed", 1]],
    relaxed: true,
  },
  {
    measurement: "armhole depth",
    measured: "how far the underarm lies below the nape, straight down",
    mismatch:
      "Published charts run from the shoulder's edge and hold room already; leave room below the underarm and for the arm.",
    from: [
      ["napeHeight", 1],
      ["underarmHeight", -1],
    ],
  },
  {
    measurement: "waist",
    measured: "girth at the level of the navel",
    mismatch:
      "Published charts mean the narrowest part, which one study of 292 women found 8 cm smaller on average.",
    from: [["waistAtNavel", 1]],
  },
  {
    measurement: "hip",
    measured: "girth where the seat is fullest",
    mismatch: "",
    from: [["hip", 1]],
  },
  { measurement: "wrist", measured: "girth of the wrist", mismatch: "", from: [["wrist", 1]] },
  {
    measurement: "hand",
    measured: "girth over the knuckles without the thumb",
    mismatch: "A closed cuff has to pass the thumb too.",
    from: [["hand", 1]],
  },
  { measurement: "neck", measured: "girth at the base of the neck", mismatch: "", from: [["neckBase", 1]] },
  {
    measurement: "head",
    measured: "girth above the brows, over the hair",
    mismatch: "",
    from: [["head", 1]],
  },
  { measurement: "height", measured: "standing, without shoes", mismatch: "", from: [["stature", 1]] },
];

/** The answer for a measurement; a cross back is answered by the shoulder width. Undefined where the survey has none. */
export function bodyAnswer(measurement: Measurement): BodyAnswer | undefined {
  const wanted = measurement === "cross back" ? "shoulder width" : measurement;
  return BODY_ANSWERS.find((answer) => answer.measurement === wanted);
}

const computed = new Map<string, Float64Array>();

/**
 * A measurement of every person in a survey, cm, everybody in the same order every time. Worked out at the first call.
 *
 * @throws {RangeError} where the survey cannot answer; ask `bodyAnswer` first
 */
export function bodyMeasures(population: Surveyed, measurement: Measurement): Float64Array {
  const answer = bodyAnswer(measurement);
  if (answer === undefined) throw new RangeError(`the survey has no ${measurement}`);
  const key = `${population} ${answer.measurement}`;
  let values = computed.get(key);
  if (values === undefined) {
    const base = answer.relaxed ? -ARM_RELATION[population].flexedAbove : 0;
    const columns = answer.from.map(
      ([column, factor]) => [surveyColumn(population, column), factor / 10] as const,
    );
    values = Float64Array.from({ length: peopleIn(population) }, (_, person) =>
      columns.reduce((sum, [column, factor]) => sum + factor * (column[person] ?? 0), base),
    );
    computed.set(key, values);
  }
  return values;
}

/** What the health survey says of arms and of bodies larger than any in the Army survey. */
export function armRelation(population: Surveyed): ArmRelation {
  return ARM_RELATION[population];
}
