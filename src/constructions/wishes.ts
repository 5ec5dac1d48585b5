import { CHART_NAMES, type Chart, chartNamed, type Measurement } from "../bodies/index.ts";
import { HOOKS, YARN_CLASSES, type YarnClass } from "../stitches/index.ts";
import type { Choices } from "./choices.ts";
import { type FabricPattern, isPlain } from "./fabric.ts";
import { FABRICS, fabricNamed } from "./fabrics.ts";
import { worksSideways } from "./panels.ts";
import { worksInRounds } from "./raglan.ts";

/** What a designer has said so far, in her own words; what is left out gets a usual value. */
export interface Wishes {
  readonly construction: string;
  readonly title?: string;
  readonly fabric?: string;
  readonly body?: string;
  /** Names, with spaces or commas between. */
  readonly sizes?: string;
  /** Stitches and rows over 10 cm, washed: "14 x 11"; one number alone is stitches. */
  readonly gauge?: string;
  /** Class of the yarn, 1 to 6. */
  readonly yarn?: string;
  readonly hook?: string;
  /** Finished less body at the bust, and at the upper arm, cm. */
  readonly ease?: string;
  readonly armEase?: string;
  readonly armhole?: string;
  readonly hem?: string;
  readonly sleeves?: boolean;
  readonly pockets?: boolean;
}

export type Chosen = { readonly choices: Choices } | { readonly problems: readonly string[] };

export const CONSTRUCTIONS = ["pullover", "raglan", "panels"] as const;

/** One sentence for each construction. */
export const CONSTRUCTION_WORDS: Readonly<Record<Choices["construction"], string>> = {
  pullover: "four flat pieces from the hem up, straight sides or a square notch under the arm",
  raglan: "from the neck down in joined rounds, body and sleeves divided at the underarm",
  panels: "an open vest or jacket of panels worked sideways, with picked-up bands",
};

/** The fabrics that a construction can be drafted in. */
export const fabricsFor = (construction: Choices["construction"]): readonly FabricPattern[] =>
  FABRICS.filter((fabric) => {
    if (construction === "raglan") return worksInRounds({ fabric });
    return construction === "panels" ? worksSideways({ fabric }) : true;
  });

/** Completes what was said with usual values, or says in sentences what cannot be. */
export function choose(wishes: Wishes): Chosen {
  const problems: string[] = [];
  const one = <T extends string>(
    said: string | undefined,
    known: readonly T[],
    what: string,
    usual: T,
  ): T => {
    const found = known.find((name) => name === said?.trim().toLowerCase());
    if (said !== undefined && found === undefined)
      problems.push(`There is no ${what} ${said}. There is: ${known.join(", ")}.`);
    return found ?? usual;
  };
  const number = (
    said: string | undefined,
    what: string,
    usual: number,
    least: number,
    most: number,
  ): number => {
    if (said === undefined) return usual;
    const value = Number(
      said
        .trim()
        .replace(",", ".")
        .replace(/\s*(?:cm|mm)$/, ""),
    );
    if (value >= least && value <= most) return value;
    problems.push(`${what} is a number from ${least} to ${most}, not ${said}.`);
    return usual;
  };
  const construction = one(wishes.construction, CONSTRUCTIONS, "construction", "pullover");
  const body = one(wishes.body, CHART_NAMES, "chart", "women, corrected");
  const chart = chartNamed(body);
  const fabrics = fabricsFor(construction);
  const name = one(
    wishes.fabric,
    FABRICS.map((fabric) => fabric.name),
    "fabric",
    construction === "pullover" ? "bumps" : "half double crochet",
  );
  const fabric = fabricNamed(name) as FabricPattern;
  if (!fabrics.includes(fabric))
    problems.push(
      `A garment of this construction cannot be drafted in ${name} yet. It can in: ${fabrics.map((each) => each.name).join(", ")}.`,
    );
  const sizes = sizesOf(wishes.sizes, chart, construction, problems);
  const yarnClass = YARN_CLASSES[number(wishes.yarn, "The class of a yarn", 4, 1, 6)] as YarnClass;
  const gauge = gaugeOf(wishes.gauge, fabric, yarnClass, problems);
  const hookMm = number(wishes.hook, "A hook in millimetres", usualHook(yarnClass), 2, 20);
  const forChildren = /^(youth|children|babies)/.test(body);
  const usual = usualEase(construction, forChildren);
  const choices: Choices = {
    construction,
    title: wishes.title?.trim() || "My design",
    body,
    sizes,
    fabric,
    gauge,
    hookMm,
    ribHookMm: smallerHook(hookMm),
    yarn: { class: yarnClass.number, ...usualBall(yarnClass.number) },
    ease: {
      bust: number(wishes.ease, "The ease at the bust in cm", usual.bust, -10, 60),
      upperArm: number(wishes.armEase, "The ease at the upper arm in cm", usual.upperArm, -5, 40),
    },
    armhole: one(wishes.armhole, ["notch", "straight"], "armhole", "notch"),
    hem: one(wishes.hem, ["post rib", "ridges"], "hem", "post rib"),
    // To the hip; a chart that has no nape to waist has nape to hip. Common practice, no source.
    bodyLength: chart?.values.has("back length") ? "135 % of back length" : "back hip length",
    neckDrop: /^babies/.test(body) ? 5 : forChildren ? 6 : 8,
    ribDepth: forChildren ? 4 : 5,
    sleeves: construction === "panels" ? (wishes.sleeves ?? false) : true,
    pockets: construction === "panels" && (wishes.pockets ?? false),
    forChildren,
  };
  const [row] = fabric.rows;
  if (construction === "raglan" && row && !isPlain(row.stitches)) return { problems };
  return problems.length > 0 ? { problems } : { choices };
}

/** The sizes that were named, or all that the chart has every needed measurement of. */
function sizesOf(
  said: string | undefined,
  chart: Chart | undefined,
  construction: Choices["construction"],
  problems: string[],
): readonly string[] {
  if (!chart) return [];
  const needed = neededOf(chart, construction);
  const lacking = (size: string): readonly Measurement[] =>
    needed.filter((one) => !chart.values.get(one)?.[chart.sizes.indexOf(size)]);
  if (said === undefined) return chart.sizes.filter((size) => lacking(size).length === 0);
  // "12 months" is one name, though it has a space.
  const parts = said.includes(",") ? said.split(",") : said.split(/\s+/);
  const names = (chart.sizes.includes(said.trim()) ? [said] : parts)
    .map((name) => name.trim())
    .filter((name) => name !== "");
  const missing = names.filter((name) => !chart.sizes.includes(name));
  if (missing.length > 0)
    problems.push(`The chart has no size ${missing.join(", ")}. It has: ${chart.sizes.join(", ")}.`);
  if (names.length === 0) problems.push("Name at least one size.");
  const bare = names.filter((name) => chart.sizes.includes(name) && lacking(name).length > 0);
  if (bare.length > 0)
    problems.push(
      `The chart ${chart.name} does not say the ${[...new Set(bare.flatMap(lacking))].join(", ")} of ${bare.join(", ")}, and a draft needs it. Take other sizes or another chart.`,
    );
  return names;
}

/** What a body needs to be known by. */
const neededOf = ({ values }: Chart, construction: Choices["construction"]): readonly Measurement[] => [
  "bust",
  "upper arm",
  values.has("cross back") ? "cross back" : "shoulder width",
  values.has("back length") ? "back length" : "back hip length",
  ...(construction === "raglan" ? (["armhole depth", "arm length"] as const) : (["neck to wrist"] as const)),
];

function gaugeOf(
  said: string | undefined,
  fabric: FabricPattern,
  { gauge }: YarnClass,
  problems: string[],
): Choices["gauge"] {
  const middle = ((gauge.from ?? 12) + (gauge.to ?? gauge.from ?? 14)) / 2;
  const rowsFor = (stitches: number): number => Math.round((2 * stitches) / fabric.aspect) / 2;
  const usual = { stitches: Math.round(middle), rows: rowsFor(Math.round(middle)) };
  if (said === undefined) return usual;
  const read =
    /^\s*(\d{1,2}(?:[.,]\d+)?)\s*(?:sts?)?\s*(?:[x×,]|and)?\s*(\d{1,2}(?:[.,]\d+)?)?\s*(?:rows?)?\s*$/i.exec(
      said,
    );
  const stitches = Number(read?.[1]?.replace(",", "."));
  const rows = read?.[2] === undefined ? rowsFor(stitches) : Number(read[2].replace(",", "."));
  if (stitches >= 6 && stitches <= 30 && rows >= 2 && rows <= 50) return { stitches, rows };
  problems.push(
    `A gauge is stitches and rows over 10 cm, from 6 to 30 stitches, as in 14 x 11; not ${said}.`,
  );
  return usual;
}

/** Ease that the trade uses for such garments, cm. Common practice, no source; handbook section 2.1 has the ranges. */
function usualEase(construction: Choices["construction"], forChildren: boolean): Choices["ease"] {
  if (forChildren) return { bust: 10, upperArm: construction === "raglan" ? 5 : 8 };
  if (construction === "raglan") return { bust: 8, upperArm: 5 };
  return { bust: construction === "panels" ? 16 : 14, upperArm: 11 };
}

/** Metres in a ball of 50 g, by class. Common practice, no source: middle of trade handbook, section 4.3. */
const METRES_IN_50_G: Readonly<Record<number, number>> = { 1: 200, 2: 150, 3: 115, 4: 88, 5: 58, 6: 33 };

const usualBall = (yarnClass: number): { metres: number; grams: number } => ({
  metres: METRES_IN_50_G[yarnClass] ?? 88,
  grams: 50,
});

const regular = HOOKS.filter(({ kind }) => kind === "regular").map(({ mm }) => mm);

/** The hook in the middle of what the class is worked with. */
function usualHook({ hookMm }: YarnClass): number {
  const middle = ((hookMm.from ?? 5) + (hookMm.to ?? hookMm.from ?? 6)) / 2;
  return regular.reduce((best, mm) => (Math.abs(mm - middle) < Math.abs(best - middle) ? mm : best), 5);
}

/** About half a millimetre smaller, as ribs are worked. Common practice, no source. */
const smallerHook = (hookMm: number): number =>
  regular.filter((mm) => mm <= hookMm - 0.5).reduce((best, mm) => Math.max(best, mm), Math.min(...regular));
