import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { nearestOdd, postRibGauge, ridgeGauge, type StartGauge } from "./estimates.ts";
import { isPlain, tapers } from "./fabric.ts";
import { postRib, ridges } from "./ribs.ts";
import { count, fabricRow } from "./row-words.ts";
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

/** @param repeat  stitches by which the sleeve top can change */
export function armholeTie({ stitchCm, rowCm }: StartGauge, armhole: string, repeat: number): string {
  // Up to 2.5 cm are eased in without puckering, source: trade handbook, section 2.4 (set-in).
  const slack = Math.max(1, Math.min(repeat / 2, Math.floor(1.2 / stitchCm)));
  const { over, under } = smallFraction((2 * rowCm) / stitchCm);
  if (armhole.endsWith("sts")) return `sleeve top sts is twice ${armhole} plus ${slack}, within ${slack}`;
  return `sleeve top sts is ${over} for every ${under} ${armhole} plus ${slack + Math.round((2 * rowCm) / stitchCm)}, within ${slack}`;
}

/** The fraction with the smallest bottom, up to 12, that is within a hundredth of a value. */
function smallFraction(value: number): { readonly over: number; readonly under: number } {
  for (let under = 1; under < 12; under += 1) {
    const over = Math.round(value * under);
    if (Math.abs(over / under - value) < 0.01 * value) return { over, under };
  }
  return { over: Math.round(value * 12), under: 12 };
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

/** Counts of a sleeve. The plan has to have "upper sleeve", "cuff", "sleeve length" and "rib depth". */
export const sleeveCounts = (choices: Choices): DraftParts["counts"] =>
  tapers(choices.fabric) ? taperedCounts(choices) : straightCounts(choices);

export const sleevePiece = (choices: Choices): readonly string[] =>
  tapers(choices.fabric) ? taperedSleeve(choices) : straightSleeve(choices);

function taperedCounts(choices: Choices): DraftParts["counts"] {
  const multiple = pieceMultiple(choices);
  const rows = rowsWords(choices);
  return [
    ["cuff sts", `along: cuff, in: main, of: stitches${multipleWords(multiple)}`],
    ["slow increases", "of: repeats, order: any"],
    ["fast increases", "of: repeats, order: any"],
    ["double increases", "of: repeats, order: any"],
    ["sleeve sts after slow increases", "same as: cuff sts plus 2 plus twice slow increases"],
    ["sleeve sts after fast increases", "same as: sleeve sts after slow increases plus twice fast increases"],
    [
      "sleeve top sts",
      "along: upper sleeve, in: main, of: stitches, same as: sleeve sts after fast increases plus 4 times double increases",
    ],
    [
      "increase rows",
      "of: rows, order: any, same as: 4 times slow increases plus twice fast increases plus twice double increases plus 4",
    ],
    ["straight rows", "of: rows, order: any, parity: even, at least: 4"],
    [
      "sleeve rows",
      `along: sleeve length minus rib depth, in: main, of: rows, ${rows}, order: any, same as: increase rows plus straight rows`,
    ],
  ];
}

function taperedSleeve(choices: Choices): readonly string[] {
  const { fabric } = choices;
  const period = fabric.rows.length;
  const even = fabricRow(fabric, 2);
  const stitch = isPlain(even.stitches) ? even.stitches : { plain: "sc" };
  const words = (many: number): string => {
    const loops = stitch.loops ? ` ${stitch.loops}` : "";
    const one = `${stitch.plain}${loops}`;
    return `Ch ${even.chains}, ${many} ${one} in first st, ${one} in each st to last st, ${many} ${one} in last st, turn.`;
  };
  const keeping =
    period === 1
      ? "Keeping on with Row 1 on all other rows"
      : "Keeping on with Row 1 on every RS row and Row 2 on all remaining WS rows";
  return [
    "# Sleeves (make 2)",
    ...ribStart(choices, "cuff sts", choices.hem),
    "",
    "## Sleeve",
    ...straightRows(fabric, 1, { plus: 3 }, "{cuff sts} sts"),
    `Row 4 (WS) (increase row): ${words(2)} {cuff sts + 2} sts.`,
    `${keeping}, work the increase row again on every 4th row {slow increases} times. {sleeve sts after slow increases} sts.`,
    "Then work the increase row on every 2nd row {fast increases} times. {sleeve sts after fast increases} sts.",
    `Double increase row (used below): ${words(3)} 4 sts increased.`,
    "Next rows: Work (Row 1, Double increase row) {double increases} times. {sleeve top sts} sts.",
    `Work ${period === 1 ? "Row 1" : "Rows 1 and 2 alternately"} for {straight rows} more rows, ending with a WS row. {sleeve rows} rows, {sleeve top sts} sts.`,
    `Fasten off.${choices.armhole === "notch" ? " Place markers {notch rows} rows below the top at each side." : ""}`,
    "",
  ];
}

function straightCounts(choices: Choices): DraftParts["counts"] {
  const multiple = pieceMultiple(choices);
  const odd = choices.fabric.multiple.plus % 2 === 1;
  return [
    ["sleeve top sts", `along: upper sleeve, in: main, of: stitches${multipleWords(multiple)}`],
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
    ...straightRows(choices.fabric, 1, count("sleeve rows"), "{sleeve top sts} sts"),
    "",
    "## Cuff",
    `Change to ${choices.ribHookMm} mm hook.`,
    `Row 1 (RS): Ch 1, ${odd ? "sc in first st, " : ""}*sc2tog over next 2 sts; rep from * across, turn. {cuff sts} sts.`,
    "Row 2 (WS): Ch 1, sc BLO in each st across, turn. {cuff sts} sts.",
    `Rows 3-${ribRows(choices, "ridges")}: Rep Row 2. {cuff sts} sts. Fasten off.`,
    ...(choices.armhole === "notch" ? ["Place markers {notch rows} rows below the top at each side."] : []),
    "",
  ];
}
