/** From one number to another, both included; null where the table leaves an end open. */
export interface Range {
  readonly from: number | null;
  readonly to: number | null;
}

/** One of the eight classes of yarn thickness. All ranges are guidelines, as the table says of itself. */
export interface YarnClass {
  readonly number: 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7;
  readonly name: string;
  /** Trade names that are sold under it, lower case. */
  readonly called: readonly string[];
  /** Stitches over 10 cm (4 in) of crochet. */
  readonly gauge: Range;
  /** Code of the stitch that the gauge is counted in: double crochet for lace, single crochet for all others. */
  readonly gaugeStitch: "sc" | "dc";
  readonly hookMm: Range;
  /** Wraps in one inch; tables differ widely. */
  readonly wrapsPerInch: Range;
  /** British and Australian ply, approximately. */
  readonly ply: readonly number[];
  readonly note?: string;
}

const range = (from: number | null, to: number | null): Range => ({ from, to });

/** Source: public copies of the general table of yarn weights (two or more agree); ply from one source. */
export const YARN_CLASSES: readonly YarnClass[] = [
  {
    number: 0,
    name: "Lace",
    called: ["lace", "fingering", "10-count crochet thread", "thread"],
    gauge: range(32, 42),
    gaugeStitch: "dc",
    hookMm: range(1.5, 2.25),
    wrapsPerInch: range(30, 40),
    ply: [1, 2, 3],
    note: "gauge in double crochet, unlike every other class",
  },
  {
    number: 1,
    name: "Super Fine",
    called: ["super fine", "sock", "fingering", "baby"],
    gauge: range(21, 32),
    gaugeStitch: "sc",
    hookMm: range(2.25, 3.5),
    wrapsPerInch: range(14, 30),
    ply: [4],
  },
  {
    number: 2,
    name: "Fine",
    called: ["fine", "sport", "baby"],
    gauge: range(16, 20),
    gaugeStitch: "sc",
    hookMm: range(3.5, 4.5),
    wrapsPerInch: range(12, 18),
    ply: [5],
  },
  {
    number: 3,
    name: "Light",
    called: ["light", "dk", "double knitting", "light worsted"],
    gauge: range(12, 17),
    gaugeStitch: "sc",
    hookMm: range(4.5, 5.5),
    wrapsPerInch: range(11, 15),
    ply: [8],
  },
  {
    number: 4,
    name: "Medium",
    called: ["medium", "worsted", "afghan", "aran"],
    gauge: range(11, 14),
    gaugeStitch: "sc",
    hookMm: range(5.5, 6.5),
    wrapsPerInch: range(9, 12),
    ply: [10],
  },
  {
    number: 5,
    name: "Bulky",
    called: ["bulky", "chunky", "craft", "rug"],
    gauge: range(8, 11),
    gaugeStitch: "sc",
    hookMm: range(6.5, 9),
    wrapsPerInch: range(6, 9),
    ply: [12],
  },
  {
    number: 6,
    name: "Super Bulky",
    called: ["super bulky", "super chunky", "roving"],
    gauge: range(6, 9),
    gaugeStitch: "sc",
    hookMm: range(9, 16),
    wrapsPerInch: range(5, 6),
    ply: [],
    note: "before class 7 came, this was the last and read 5-9 stitches, 9 mm and up",
  },
  {
    number: 7,
    name: "Jumbo",
    called: ["jumbo", "roving"],
    gauge: range(null, 5),
    gaugeStitch: "sc",
    hookMm: range(16, null),
    wrapsPerInch: range(1, 4),
    ply: [],
    note: "added about 2014; counts are the most there may be",
  },
];

/** @throws {RangeError} on a number other than 0 to 7 */
export function yarnClass(number: number): YarnClass {
  const one = YARN_CLASSES.find((each) => each.number === number);
  if (one === undefined) throw new RangeError(`yarn classes go from 0 to 7, got ${number}`);
  return one;
}

/**
 * Classes that words speak of: "4", "#4", "class 4", "DK", "worsted weight", "8 ply". More than one where a trade name
 * is sold under several ("fingering"); none where the words are not known.
 */
export function lookupYarnClasses(words: string): readonly YarnClass[] {
  const plain = words
    .toLowerCase()
    .replace(/\bweight\b|\byarn\b/gu, "")
    .replace(/\s+/gu, " ")
    .trim();
  const number = /^(?:#|class )?\s*([0-7])$/u.exec(plain);
  if (number !== null) return [yarnClass(Number(number[1]))];
  const ply = /^(\d+)[ -]?ply$/u.exec(plain);
  if (ply !== null) return YARN_CLASSES.filter((one) => one.ply.includes(Number(ply[1])));
  return YARN_CLASSES.filter((one) => one.called.includes(plain));
}

/** Classes whose table names this hook. */
export function classesForHook(mm: number): readonly YarnClass[] {
  return YARN_CLASSES.filter(
    ({ hookMm }) => (hookMm.from ?? 0) <= mm && mm <= (hookMm.to ?? Number.POSITIVE_INFINITY),
  );
}
