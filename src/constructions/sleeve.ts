import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { nearestOdd, postRibGauge, ridgeGauge, type StartGauge } from "./estimates.ts";
import { isPlain, tapers } from "./fabric.ts";
import { postRib, ridges } from "./ribs.ts";
import { count, edgedFabric, fabricRow, rowsFrom } from "./row-words.ts";
import { type Settled, type Step, stepsWorked, sumOf } from "./settled.ts";
import { straightRows } from "./straight-rows.ts";

/*
 * A sleeve that is set straight into a side: from the cuff up where its fabric can widen by a stitch at each end, else straight from
 * the top down with a cuff that is drawn in. Rules: trade handbook, sections 2.4 (drop shoulder) and 3.6 (tapers).
 */

export interface Multiple {
  readonly of: number;
  readonly plus: number;
}

/** The multiple of a piece: a post rib is mirrored at both edges, so its number of stitches is odd or even in all sizes. */
export function pieceMultiple({ fabric, hem }: Choices): Multiple {
  return fabric.multiple.of === 1 && hem === "post rib" ? { of: 2, plus: 1 } : fabric.multiple;
}

/** Rows of a section come in these: whole repeats, and an even number, so that a section ends with a WS row. */
export const rowsIn = ({ fabric }: Choices): number =>
  fabric.rows.length % 2 === 0 ? fabric.rows.length : 2 * fabric.rows.length;

export const rowsWords = (choices: Choices): string =>
  rowsIn(choices) === 2 ? "parity: even" : `multiple: ${rowsIn(choices)}`;

export const multipleWords = ({ of, plus }: Multiple): string =>
  of === 1 ? "" : `, multiple: ${of}${plus === 0 ? "" : ` + ${plus}`}`;

/** Odd, so that the first row behind it is a RS row. */
export const ribRows = (choices: Choices, rib: Choices["hem"]): number =>
  Math.max(
    3,
    nearestOdd(choices.ribDepth / (rib === "ridges" ? ridgeGauge(choices) : postRibGauge(choices)).rowCm),
  );

/** The sleeve top goes round the armhole, a little wider, so that it is eased in and never stretched. */
export function armholeTie({ stitchCm, rowCm }: StartGauge, armhole: string): string {
  // Up to 2.5 cm are eased in without puckering, never less, source: trade handbook, section 2.4 (set-in). A little is left for rounding.
  const exact = armhole.endsWith("sts") ? 0 : (2 * rowCm) / stitchCm;
  const plus = Math.round(2 * (exact + 0.9 / stitchCm)) / 2;
  const within = Math.floor(10 * (1.4 / stitchCm - Math.abs(plus - exact - 0.9 / stitchCm))) / 10;
  const slack = `plus ${plus}, within ${within}`;
  if (armhole.endsWith("sts")) return `sleeve top sts is twice ${armhole} ${slack}`;
  const { over, under } = smallFraction((2 * rowCm) / stitchCm);
  return `sleeve top sts is ${over} for every ${under} ${armhole} ${slack}`;
}

/** The fraction with the smallest bottom, up to 40, that is within half a hundredth of a value. */
function smallFraction(value: number): { readonly over: number; readonly under: number } {
  let best = { over: Math.round(value), under: 1 };
  const off = ({ over, under }: typeof best): number => Math.abs(over / under - value);
  for (let under = 1; under <= 40 && off(best) > 0.005 * value; under += 1) {
    const next = { over: Math.round(value * under), under };
    if (off(next) < off(best)) best = next;
  }
  return best;
}

/** The rib that a piece begins with, on a count of stitches. */
export function ribStart(choices: Choices, sts: string, rib: Choices["hem"]): readonly string[] {
  const multiple = pieceMultiple(choices);
  const odd = multiple.of % 2 === 0 && multiple.plus % 2 === 1;
  const rows = ribRows(choices, rib);
  return [
    "## Rib",
    `With ${choices.ribHookMm} mm hook, ch {${sts} + 1}.`,
    ...(rib === "ridges" ? ridges(rows, `{${sts}} sts`) : postRib(rows, `{${sts}} sts`, odd)),
    `Change to ${choices.hookMm} mm hook.`,
  ];
}

/** What the plan says of a sleeve beside its length and width. */
export const sleevePlan = (choices: Choices): DraftParts["plan"] =>
  tapers(choices.fabric)
    ? [
        ["cuff", "a third of upper arm plus 12.5 cm"],
        ["straight at sleeve top", "5 cm"],
      ]
    : [["cuff", "half of upper sleeve"]];

/** Counts of a sleeve. The plan has to have "upper sleeve", "cuff", "sleeve length" and "rib depth". */
export const sleeveCounts = (choices: Choices, settled: Settled): DraftParts["counts"] =>
  tapers(choices.fabric) ? taperedCounts(choices, settled) : straightCounts(choices);

export const sleevePiece = (choices: Choices, settled: Settled): readonly string[] =>
  tapers(choices.fabric) ? taperedSleeve(choices, settled) : straightSleeve(choices);

const SLOW: Step = { name: "slow increases", stitches: "twice", rows: "4 times" };
const FAST: Step = { name: "fast increases", stitches: "twice", rows: "twice" };
const DOUBLE: Step = { name: "double increases", stitches: "4 times", rows: "twice" };

function taperedCounts(choices: Choices, settled: Settled): DraftParts["counts"] {
  const multiple = pieceMultiple(choices);
  const steps = stepsWorked([SLOW, FAST, DOUBLE], settled);
  const upTo = (step: Step): string => sumOf(steps.slice(0, steps.indexOf(step) + 1), "stitches");
  return [
    ["cuff sts", `along: cuff, in: main, of: stitches${multipleWords(multiple)}`],
    ...steps.map(({ name }) => [name, "of: repeats, order: any"] as const),
    ...steps
      .filter((step) => step !== DOUBLE)
      .map((step) => [`sleeve sts after ${step.name}`, `same as: cuff sts plus 2${upTo(step)}`] as const),
    [
      "sleeve top sts",
      `along: upper sleeve, in: main, of: stitches, same as: cuff sts plus 2${sumOf(steps, "stitches")}`,
    ],
    [
      "increase rows",
      `of: rows, order: any, same as: ${sumOf(steps, "rows").replace(/^ plus /, "")}${steps.length > 0 ? " plus 4" : ""}`,
    ],
    // A little weight, so that the shaping is spread over the sleeve where any spread would do.
    [
      "straight rows",
      "along: straight at sleeve top, in: main, of: rows, order: any, parity: even, at least: 4, weight: 0.2",
    ],
    [
      "sleeve rows",
      `along: sleeve length minus rib depth, in: main, of: rows, ${rowsWords(choices)}, order: any, same as: increase rows plus straight rows`,
    ],
  ];
}

function taperedSleeve(choices: Choices, settled: Settled): readonly string[] {
  const { fabric } = choices;
  const period = fabric.rows.length;
  const even = fabricRow(fabric, 2);
  const stitch = isPlain(even.stitches) ? even.stitches : { plain: "sc" };
  const steps = stepsWorked([SLOW, FAST, DOUBLE], settled);
  const words = (many: number): string => {
    const loops = stitch.loops ? ` ${stitch.loops}` : "";
    const one = `${stitch.plain}${loops}`;
    return `Ch ${even.chains}, ${many} ${one} in first st, ${one} in each st to last st, ${many} ${one} in last st, turn.`;
  };
  const keeping =
    period === 1
      ? "Keeping on with Row 1 on all other rows"
      : "Keeping on with Row 1 on every RS row and Row 2 on all remaining WS rows";
  const every = (step: Step, row: string): string => {
    const before =
      steps[0] === step ? `${keeping}, work the increase row again` : "Then work the increase row";
    return `${before} on every ${row} row {${step.name}} times. {sleeve sts after ${step.name}} sts.`;
  };
  return [
    "# Sleeves (make 2)",
    ...ribStart(choices, "cuff sts", choices.hem),
    "",
    "## Sleeve",
    ...straightRows(fabric, 1, { plus: 3 }, "{cuff sts} sts"),
    `Row 4 (WS) (increase row): ${words(2)} {cuff sts + 2} sts.`,
    ...(steps.includes(SLOW) ? [every(SLOW, "4th")] : []),
    ...(steps.includes(FAST) ? [every(FAST, "2nd")] : []),
    ...(steps.includes(DOUBLE)
      ? [
          `Double increase row (used below): ${words(3)} 4 sts increased.`,
          "Next rows: Work (Row 1, Double increase row) {double increases} times. {sleeve top sts} sts.",
        ]
      : []),
    `Work ${period === 1 ? "Row 1" : "Rows 1 and 2 alternately"} for {straight rows} more rows, ending with a WS row. {sleeve rows} rows, {sleeve top sts} sts.`,
    `Fasten off.${choices.armhole === "notch" ? " Place markers {notch rows} rows below the top at each side." : ""}`,
    "",
  ];
}

function straightCounts(choices: Choices): DraftParts["counts"] {
  const multiple = pieceMultiple(choices);
  const odd = choices.fabric.multiple.plus % 2 === 1;
  const { of, plus } = choices.fabric.multiple;
  const edged = choices.fabric.edge !== undefined;
  return [
    ...(edged
      ? ([
          ["sleeve repeats", "of: repeats, at least: 1"],
          // So many more fill up to the next repeat at both edges together.
          ["sleeve edge sts", `of: stitches, order: any, at least: 2, at most: ${1 + of / 2}`],
          [
            "sleeve top sts",
            `along: upper sleeve, in: main, of: stitches, same as: ${of} times sleeve repeats plus twice sleeve edge sts plus ${plus}`,
          ],
        ] as const)
      : ([
          ["sleeve top sts", `along: upper sleeve, in: main, of: stitches${multipleWords(multiple)}`],
        ] as const)),
    [
      "sleeve rows",
      `along: sleeve length minus rib depth, in: main, of: rows, ${rowsWords(choices)}, order: any`,
    ],
    [
      "cuff sts",
      `along: cuff, in: ridges, of: stitches, same as: half of ${odd ? "(sleeve top sts plus 1)" : "sleeve top sts"}`,
    ],
  ];
}

function straightSleeve(choices: Choices): readonly string[] {
  const odd = choices.fabric.multiple.plus % 2 === 1;
  return [
    "# Sleeves (make 2)",
    "Worked from the top down.",
    "",
    "## Sleeve",
    `With ${choices.hookMm} mm hook, ch {sleeve top sts + 1}.`,
    "Foundation row (WS): Sc in 2nd ch from hook and in each ch across, turn. {sleeve top sts} sts.",
    ...straightRows(
      edgedFabric(choices.fabric, count("sleeve edge sts")),
      1,
      count("sleeve rows"),
      "{sleeve top sts} sts",
    ),
    "",
    "## Cuff",
    `Change to ${choices.ribHookMm} mm hook.`,
    `Row 1 (RS): Ch 1, ${odd ? "sc in first st, " : ""}*sc2tog over next 2 sts; rep from * across, turn. {cuff sts} sts.`,
    "Row 2 (WS): Ch 1, sc BLO in each st across, turn. {cuff sts} sts.",
    `${rowsFrom(3, ribRows(choices, "ridges"))}: Rep Row 2. {cuff sts} sts. Fasten off.`,
    ...(choices.armhole === "notch" ? ["Place markers {notch rows} rows below the top at each side."] : []),
    "",
  ];
}
