import type { Choices } from "./choices.ts";
import {
  mainGauge,
  postRibGauge,
  ridgeGauge,
  type StartGauge,
  stretchedWords,
  swatchWords,
} from "./estimates.ts";

/** What a construction says of a garment; the rest of the document is the same for all. */
export interface DraftParts {
  /** Name and words of each measure. */
  readonly plan: readonly (readonly [name: string, words: string])[];
  /** Name and entries of each count, without values. */
  readonly counts: readonly (readonly [name: string, entries: string])[];
  readonly ties: readonly string[];
  readonly fabricsUsed: { readonly postRib: boolean; readonly ridges: boolean };
  readonly introduction: readonly string[];
  readonly notions: string;
  readonly notes: readonly string[];
  readonly pieces: readonly string[];
}

/** Values of counts by name, one for each size. */
export type Values = ReadonlyMap<string, readonly (number | null)[]>;

/** The whole document, with the values of its counts where they are chosen already. */
export function documentOf(choices: Choices, parts: DraftParts, values: Values = new Map()): string {
  const cautions = choices.forChildren ? CAUTIONS : [];
  return [...head(choices, parts, values), ...opening(choices, parts), ...parts.pieces, ...cautions].join(
    "\n",
  );
}

/** Sources: EN 14682 and 16 CFR 1120 on cords, 16 CFR 1501 on small parts, the advice of paediatricians on babies' sleep. */
const CAUTIONS = [
  "# Important: a child's safety",
  "Cords, ties and drawstrings do not belong at the neck of a child's garment, and none with loose ends belong anywhere on it. Buttons, beads and pompons are not for children under three years; on an older child's garment they must hold when tugged. Babies under one year sleep without loose clothes or covers, so take the garment off for sleep. Follow your local rules for children's clothes, all the more if you sell one.",
  "",
];

function head(
  choices: Choices,
  { plan, counts, ties, fabricsUsed }: DraftParts,
  values: Values,
): readonly string[] {
  const { yarn, ease } = choices;
  const range = (wanted: number, about: number): string =>
    `${wanted} cm, from ${Math.round(wanted - about)} to ${Math.round(wanted + about)} cm`;
  return [
    "---",
    `title: ${JSON.stringify(choices.title)}`,
    "terms: US",
    `sizes: ${choices.sizes.join(choices.sizes.some((size) => size.includes(" ")) ? ", " : " ")}`,
    `body: ${choices.body}`,
    "ease:",
    `  bust: ${range(ease.bust, 5)}`,
    `  upper arm: ${range(ease.upperArm, 6)}`,
    "",
    "yarn:",
    `  main: { class: ${yarn.class}, metres: ${yarn.metres}, grams: ${yarn.grams}${yarn.price ? `, price: ${yarn.price}` : ""} }`,
    `hooks: ${choices.hookMm} mm, ${choices.ribHookMm} mm`,
    "# Swatches are estimated until you measure your own: work one, wash it, and write its numbers and its grams here.",
    "fabrics:",
    ...fabric("main", choices.hookMm, choices.fabric.stitch, mainGauge(choices), 1.12),
    ...(fabricsUsed.postRib
      ? fabric("rib", choices.ribHookMm, "dc around posts", postRibGauge(choices), 1.3)
      : []),
    ...(fabricsUsed.ridges
      ? fabric("ridges", choices.ribHookMm, "sc in back loops", ridgeGauge(choices), 1.3)
      : []),
    "",
    "plan:",
    ...plan.map(([name, words]) => `  ${name}: ${words}`),
    "",
    "counts:",
    ...counts.map(([name, entries]) => `  ${name}: { ${entries}${valueWords(entries, values.get(name))} }`),
    "",
    ...(ties.length > 0 ? ["ties:", ...ties.map((tie) => `  - ${tie}`), ""] : []),
    "---",
  ];
}

/** A count that is the same as others follows them and is not written. */
function valueWords(entries: string, values: readonly (number | null)[] | undefined): string {
  if (values === undefined || entries.includes("same as:")) return "";
  return `, is: ${new Set(values).size === 1 ? values[0] : values.join(" ")}`;
}

function fabric(
  name: string,
  hookMm: number,
  stitch: string,
  gauge: StartGauge,
  stretch: number,
): readonly string[] {
  return [
    `  ${name}:`,
    `    hook: ${hookMm} mm`,
    `    stitch: ${stitch}`,
    `    swatch: { washed: ${swatchWords(gauge)}, stretched: ${stretchedWords(gauge, stretch)} }`,
  ];
}

const SPECIAL: Readonly<Record<string, string>> = {
  FPdc: "FPdc: Yarn over, insert hook from front to back to front around the post of the next st, pull up a loop, (yarn over, pull through 2 loops) twice.",
  BPdc: "BPdc: Work as for FPdc, but insert hook from back to front to back around the post of the next st.",
  puff: "Puff: (Yarn over, insert hook in st, pull up a loop) 3 times in the same st, yarn over, pull through all 7 loops.",
};

const ABBREVIATIONS: readonly (readonly [word: string, pattern: RegExp, meaning: string])[] = [
  ["BLO", /\bBLO\b/, "back loop only"],
  ["BPdc", /\bBPdc\b/, "back post double crochet"],
  ["ch", /\bch\b/i, "chain"],
  ["dc", /\bdc\b/i, "double crochet"],
  ["dc2tog", /\bdc2tog\b/i, "double crochet 2 together"],
  ["FPdc", /\bFPdc\b/, "front post double crochet"],
  ["hdc", /\bhdc\b/i, "half double crochet"],
  ["hdc2tog", /\bhdc2tog\b/i, "half double crochet 2 together"],
  ["rem", /\brem\b/i, "remaining"],
  ["rep", /\brep\b/i, "repeat"],
  ["rnd(s)", /\brnds?\b/i, "round(s)"],
  ["RS", /\bRS\b/, "right side"],
  ["sc", /\bsc\b/i, "single crochet"],
  ["sc2tog", /\bsc2tog\b/i, "single crochet 2 together"],
  ["sl st", /\bsl st\b/i, "slip stitch"],
  ["sp(s)", /\bsps?\b/i, "space(s)"],
  ["st(s)", /\bsts?\b/i, "stitch(es)"],
  ["WS", /\bWS\b/, "wrong side"],
];

function opening(choices: Choices, { introduction, notions, notes, pieces }: DraftParts): readonly string[] {
  const text = pieces.join("\n");
  const special = Object.keys(SPECIAL).filter((word) => new RegExp(`\\b${word}\\b`).test(text));
  const { stitchCm, rowCm } = mainGauge(choices);
  const tenth = (value: number): string => String(Math.round(value * 2) / 2);
  return [
    ...introduction,
    "",
    "# Materials",
    `Yarn: class ${choices.yarn.class}, ${choices.yarn.metres} m in ${choices.yarn.grams} g.`,
    `Hooks: ${choices.hookMm} mm for the pieces, ${choices.ribHookMm} mm for ribs, or the sizes that give the gauge.`,
    `Notions: ${notions}`,
    "",
    "# Gauge",
    `${tenth(10 / stitchCm)} sts and ${tenth(10 / rowCm)} rows = 10 cm [4"] in ${choices.fabric.stitch} with the ${choices.hookMm} mm hook, washed and dried flat.`,
    "",
    "# Abbreviations (US terms)",
    ABBREVIATIONS.filter(([, pattern]) => pattern.test(text))
      .map(([word, , meaning]) => `${word} = ${meaning}`)
      .join("; "),
    "",
    ...(special.length > 0
      ? ["# Special stitches", ...special.map((word) => SPECIAL[word] as string), ""]
      : []),
    "# Notes",
    ...notes.map((note, at) => `${at + 1}. ${note}`),
    "",
  ];
}
