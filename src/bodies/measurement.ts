/** Centimetres. */
export type Cm = number;

/** A measurement of a body, by the one word this house has for it. */
export type Measurement =
  | "bust"
  | "waist"
  | "hip"
  | "upper arm"
  | "wrist"
  | "neck"
  | "head"
  | "hand"
  | "cross back"
  | "shoulder width"
  | "back at underarm"
  | "back length"
  | "back hip length"
  | "armhole depth"
  | "arm length"
  | "neck to wrist"
  | "height";

/** What a measurement is and what a designer may call it. */
export interface MeasurementEntry {
  readonly name: Measurement;
  /** Round the body, across it, or along it. */
  readonly kind: "girth" | "breadth" | "length";
  /** How it is taken, in one phrase. */
  readonly taken: string;
  /** Other names, lower case. */
  readonly also: readonly string[];
  /** cm outside which a number is likelier a slip of unit or key than a body: babies to the largest adults. */
  readonly believable: readonly [least: Cm, most: Cm];
}

/** All measurements, in the order in which charts list them. Other names: common practice, no source. */
export const MEASUREMENTS: readonly MeasurementEntry[] = [
  {
    name: "bust",
    kind: "girth",
    taken: "round the fullest part of the chest",
    also: ["chest", "full bust", "bust circumference", "chest circumference", "bust girth", "chest girth"],
    believable: [25, 200],
  },
  {
    name: "neck to wrist",
    kind: "length",
    taken: "from the bone at the nape, over the shoulder, to the wrist",
    also: [
      "centre back neck to wrist",
      "center back neck to wrist",
      "centre back neck to cuff",
      "nape to wrist",
    ],
    believable: [15, 120],
  },
  {
    name: "back length",
    kind: "length",
    taken: "from the bone at the nape down to the waist",
    also: ["back waist length", "nape to waist", "back waist"],
    believable: [10, 65],
  },
  {
    name: "back hip length",
    kind: "length",
    taken: "from the bone at the nape down to the hip",
    also: ["nape to hip"],
    believable: [20, 100],
  },
  {
    name: "cross back",
    kind: "breadth",
    taken: "by tape over the back from shoulder to shoulder",
    also: ["crossback", "cross back shoulder to shoulder", "shoulder to shoulder"],
    believable: [12, 75],
  },
  {
    name: "shoulder width",
    kind: "breadth",
    taken: "in a straight line from shoulder bone to shoulder bone",
    also: ["shoulders", "shoulder breadth", "biacromial breadth"],
    believable: [12, 65],
  },
  {
    name: "back at underarm",
    kind: "breadth",
    taken: "by tape across the back between the folds at the rear of the arms",
    also: ["back width", "across back", "back width at underarm", "interscye"],
    believable: [12, 75],
  },
  {
    name: "arm length",
    kind: "length",
    taken: "from the underarm to the wrist",
    also: ["arm length to underarm", "underarm to wrist", "sleeve length to underarm", "inside arm"],
    believable: [8, 75],
  },
  {
    name: "upper arm",
    kind: "girth",
    taken: "round the arm at its fullest above the elbow, hanging relaxed",
    also: ["bicep", "biceps", "upper arm circumference", "upper arm girth"],
    believable: [9, 80],
  },
  {
    name: "armhole depth",
    kind: "length",
    taken: "how far the underarm lies below the top of the shoulder or the nape, straight down",
    also: ["armhole", "scye depth", "underarm depth"],
    believable: [5, 40],
  },
  {
    name: "waist",
    kind: "girth",
    taken: "round the waist; at its narrowest in published charts, at the navel in the survey",
    also: ["waist circumference", "waist girth"],
    believable: [25, 200],
  },
  {
    name: "hip",
    kind: "girth",
    taken: "round the fullest part of the seat",
    also: ["hips", "full hip", "hip circumference", "hip girth"],
    believable: [25, 220],
  },
  {
    name: "wrist",
    kind: "girth",
    taken: "round the wrist",
    also: ["wrist circumference"],
    believable: [6, 30],
  },
  {
    name: "hand",
    kind: "girth",
    taken: "round the knuckles without the thumb",
    also: ["hand circumference", "knuckles"],
    believable: [7, 40],
  },
  {
    name: "neck",
    kind: "girth",
    taken: "round the neck where a collar sits, at its base",
    also: ["neck base", "neck circumference", "neck girth"],
    believable: [15, 70],
  },
  {
    name: "head",
    kind: "girth",
    taken: "round the head above the brows",
    also: ["head circumference", "head girth"],
    believable: [25, 75],
  },
  {
    name: "height",
    kind: "length",
    taken: "standing, without shoes",
    also: ["stature", "body height"],
    believable: [40, 230],
  },
];

const byName = new Map(
  MEASUREMENTS.flatMap((entry) => [entry.name, ...entry.also].map((name) => [name, entry] as const)),
);

/** The entry of a measurement by any of its names, however it is spaced or capitalised; undefined where none is meant. */
export function lookupMeasurement(name: string): MeasurementEntry | undefined {
  return byName.get(plainName(name));
}

/** The measurement whose name is nearest to a misspelt one, for a remedy; undefined where nothing is near. */
export function nearestMeasurement(name: string): Measurement | undefined {
  const wanted = plainName(name);
  let best: { name: Measurement; away: number } | undefined;
  for (const [known, entry] of byName) {
    const away = editsBetween(wanted, known);
    if (away <= Math.max(1, Math.floor(known.length / 3)) && (best === undefined || away < best.away))
      best = { name: entry.name, away };
  }
  return best?.name;
}

const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[_\-/\s]+/g, " ")
    .trim();

/** Letters put in, left out or changed to come from one word to the other. */
function editsBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const change = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
