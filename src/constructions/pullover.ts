import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { mainGauge, nearestOdd, postRibGauge, ridgeGauge, type StartGauge } from "./estimates.ts";
import { type FabricPattern, isPlain, tapers } from "./fabric.ts";
import { postRib, ridges } from "./ribs.ts";
import {
  count,
  fabricRow,
  type Reach,
  rowAfterSlips,
  rowFromJoin,
  rowsNamed,
  rowWords,
  sideOf,
  stitchesOf,
  type Whole,
} from "./row-words.ts";
import { straightRows } from "./straight-rows.ts";

/*
 * A pullover of four flat pieces, worked from the hem up: straight sides or a square notch under the arm, a neck cut out in
 * steps that keep the fabric's repeat, shoulders sloped in two steps, sleeves set straight into the side.
 * Rules: trade handbook, section 2.4 (drop shoulder, modified drop; neck and shoulder), and 3.3 (parity).
 */

/** What is settled once for all sizes, in stitches and rows. */
interface Cut {
  readonly fabric: FabricPattern;
  readonly multiple: { readonly of: number; readonly plus: number };
  /** Rows of the body and of the armhole come in these. */
  readonly rowsIn: number;
  /** Stitches taken off at one side of the front neck each time, and how many times. */
  readonly neckStep: number;
  readonly neckSteps: number;
  /** Rows of a front shoulder in the fabric, before its slope. */
  readonly frontRows: number;
  /** Stitches picked up along one side of the neck. */
  readonly backSide: number;
  readonly frontSide: number;
  readonly hemRows: number;
  readonly cuffRows: number;
  /** The sleeve top goes round the armhole, a little wider, so that it is eased in and never stretched. */
  readonly armholeTie: string;
}

function cutOf(choices: Choices): Cut {
  const { fabric, hem } = choices;
  const main = mainGauge(choices);
  const rib = postRibGauge(choices);
  // A post rib is mirrored at both edges, so the number of its stitches is odd or even in all sizes.
  const multiple = fabric.multiple.of === 1 && hem === "post rib" ? { of: 2, plus: 1 } : fabric.multiple;
  const rowsIn = fabric.rows.length % 2 === 0 ? fabric.rows.length : 2 * fabric.rows.length;
  const step = fabric.multiple.of * Math.max(1, Math.round(1.3 / main.stitchCm / fabric.multiple.of));
  const neckSteps = step * main.stitchCm > 2.5 ? 1 : 2;
  const slope = 2 * main.stitchCm;
  const frontRows =
    1 +
    rowsIn *
      Math.max(
        neckSteps === 2 ? Math.ceil(4 / rowsIn) : 1,
        Math.round((choices.neckDrop - slope) / main.rowCm / rowsIn),
      );
  return {
    fabric,
    multiple,
    rowsIn,
    neckStep: step,
    neckSteps,
    frontRows,
    backSide: Math.max(2, Math.round((main.rowCm + slope) / rib.stitchCm)),
    frontSide: Math.round((frontRows * main.rowCm + slope) / rib.stitchCm) + step * neckSteps,
    hemRows: ribRows(choices, hem),
    cuffRows: ribRows(choices, tapers(fabric) ? hem : "ridges"),
    armholeTie: armholeTie(main, Math.max(2, multiple.of)),
  };
}

/** @param repeat  stitches by which the sleeve top can change */
function armholeTie({ stitchCm, rowCm }: StartGauge, repeat: number): string {
  // Up to 2.5 cm are eased in without puckering, source: trade handbook, section 2.4 (set-in).
  const slack = Math.max(1, Math.min(repeat / 2, Math.floor(1.2 / stitchCm)));
  const { over, under } = smallFraction((2 * rowCm) / stitchCm);
  return `sleeve top sts is ${over} for every ${under} armhole rows plus ${slack + Math.round((2 * rowCm) / stitchCm)}, within ${slack}`;
}

/** The fraction with the smallest bottom, up to 12, that is within a hundredth of a value. */
function smallFraction(value: number): { readonly over: number; readonly under: number } {
  for (let under = 1; under < 12; under += 1) {
    const over = Math.round(value * under);
    if (Math.abs(over / under - value) < 0.01 * value) return { over, under };
  }
  return { over: Math.round(value * 12), under: 12 };
}

/** Odd, so that the first row behind it is a RS row. */
const ribRows = (choices: Choices, rib: Choices["hem"]): number =>
  Math.max(
    3,
    nearestOdd(choices.ribDepth / (rib === "ridges" ? ridgeGauge(choices) : postRibGauge(choices)).rowCm),
  );

export function draftPullover(choices: Choices): DraftParts {
  const cut = cutOf(choices);
  const shape = choices.armhole;
  const tapered = tapers(choices.fabric);
  return {
    plan: planOf(choices, cut),
    counts: [...bodyCounts(cut, shape), ...(tapered ? taperedCounts(cut) : straightCounts(cut))],
    ties: [
      ...(shape === "notch" ? ["body sts is chest sts plus twice notch sts"] : []),
      "chest sts is back neck sts plus twice shoulder sts",
      cut.armholeTie,
    ],
    fabricsUsed: {
      postRib: true,
      ridges: choices.hem === "ridges" || !tapered,
    },
    introduction: [
      `A pullover in four flat pieces, worked from the hem up. ${choices.fabric.looks}`,
      shape === "notch"
        ? "The armhole is a shallow square notch, and the top of each sleeve is set straight into it."
        : "The sides run straight to the shoulder, which drops over the upper arm.",
    ],
    notions: "4 locking stitch markers, yarn needle.",
    notes: [
      "The turning chain never counts as a stitch. The first stitch of a row goes into the first stitch of the row below.",
      "Row numbers begin again with each section.",
      ...(tapered ? ["Where a size has 0, leave that step out and go on with the next."] : []),
    ],
    pieces: [
      ...back(cut, choices),
      ...front(cut, choices),
      ...(tapered ? taperedSleeve(cut, choices) : straightSleeve(cut, choices)),
      ...finishing(cut, choices),
    ],
  };
}

function planOf(choices: Choices, cut: Cut): DraftParts["plan"] {
  const rib = postRibGauge(choices);
  const sides = 2 * (cut.backSide + cut.frontSide) - 2 * cut.neckStep * cut.neckSteps;
  const share = Math.round((200 * rib.stitchCm) / mainGauge(choices).stitchCm);
  return [
    ["body width", "half of finished bust"],
    ["rib depth", `${choices.ribDepth} cm`],
    ["upper sleeve", "finished upper arm"],
    ["armhole depth", "half of upper sleeve"],
    ["hem to underarm", "135 % of back length minus armhole depth"],
    ...(choices.armhole === "notch"
      ? ([
          ["width across shoulders", "half of (cross back plus body width)"],
          ["notch", "half of (body width minus width across shoulders)"],
        ] as const)
      : ([["width across shoulders", "body width"]] as const)),
    ["neck width", "half of cross back plus 3 cm"],
    ["shoulder", "half of (width across shoulders minus neck width)"],
    ["neck opening", `${share} % of neck width plus ${Math.round(sides * rib.stitchCm * 2) / 2} cm`],
    ["cuff", tapers(choices.fabric) ? "a third of upper arm plus 12.5 cm" : "half of upper sleeve"],
    ["sleeve length", "neck to wrist minus half of width across shoulders"],
  ];
}

const multipleWords = ({ of, plus }: Cut["multiple"]): string =>
  of === 1 ? "" : `, multiple: ${of}${plus === 0 ? "" : ` + ${plus}`}`;

function bodyCounts(cut: Cut, shape: Choices["armhole"]): DraftParts["counts"] {
  const { fabric, multiple, rowsIn, neckStep, neckSteps, frontRows } = cut;
  const m = fabric.multiple;
  const taken = 2 * neckStep * neckSteps;
  const rows = `of: rows, ${rowsIn === 2 ? "parity: even" : `multiple: ${rowsIn}`}`;
  const short = fabric.rows.length + 4;
  return [
    ["body sts", `along: body width, in: main, of: stitches${multipleWords(multiple)}`],
    ["body rows", `along: hem to underarm minus rib depth, in: main, ${rows}`],
    ...(shape === "notch"
      ? ([
          [
            "notch sts",
            `along: notch, in: main, of: stitches${multipleWords({ of: m.of, plus: 0 })}, at least: 2`,
          ],
          ["notch rows", "along: notch, in: main, of: rows"],
          ["chest sts", `along: width across shoulders, in: main, of: stitches${multipleWords(multiple)}`],
        ] as const)
      : ([["chest sts", "same as: body sts"]] as const)),
    [
      "armhole rows",
      `along: armhole depth minus 1 row in main, in: main, ${rows}, at least: ${frontRows - 1 + short}`,
    ],
    ["front armhole rows", `of: rows, same as: armhole rows minus ${frontRows - 1}`],
    ...(m.of === 1
      ? ([["shoulder sts", "along: shoulder, in: main, of: stitches, at least: 4"]] as const)
      : ([
          ["shoulder repeats", `of: repeats, multiple: ${m.of}, at least: 1`],
          ["shoulder sts", `same as: ${m.of} times shoulder repeats${m.plus === 0 ? "" : ` plus ${m.plus}`}`],
        ] as const)),
    ["outer shoulder sts", "along: half of shoulder, in: main, of: stitches, at least: 2"],
    ["back neck sts", `along: neck width, in: main, of: stitches, at least: ${taken + 2}`],
    ["front neck sts", `same as: back neck sts minus ${taken}`],
    [
      "neckband sts",
      `along: neck opening, in: rib, of: stitches, same as: back neck sts plus front neck sts plus ${2 * (cut.backSide + cut.frontSide)}`,
    ],
  ];
}

function back(cut: Cut, choices: Choices): readonly string[] {
  const { fabric } = cut;
  const body = `{body sts} sts`;
  const chest = `{chest sts} sts`;
  const half = halfOf(cut);
  return [
    "# Back",
    ...hem(cut, choices, "body sts", cut.hemRows, choices.hem),
    "",
    "## Body",
    ...straightRows(fabric, 1, count("body rows"), body),
    "",
    "## Armholes",
    ...armholeStart(cut, choices),
    ...straightRows(fabric, choices.armhole === "notch" ? 2 : 1, count("armhole rows"), chest),
    "",
    "## Right shoulder",
    `Row 1 (RS): Ch ${fabricRow(fabric, 1).chains}, ${stitchesOf(fabricRow(fabric, 1), shoulder(cut, 0))}, turn, leaving the remaining {chest sts - shoulder sts} sts unworked. {shoulder sts} sts.`,
    `Row 2 (WS): Ch 1, sc in each st to last {outer shoulder sts} sts, turn, leaving these sts unworked. ${half} sts.`,
    `Row 3 (RS): Ch 1, sc in each st across. ${half} sts. Fasten off.`,
    "",
    "## Left shoulder",
    "With RS facing, skip the next {back neck sts} unworked sts of the last full row for the back neck and join yarn with a sl st in the next st.",
    `Row 1 (RS): ${rowFromJoin(fabricRow(fabric, 1), shoulder(cut, 0))} {shoulder sts} sts.`,
    `Row 2 (WS): Sl st in each of first {outer shoulder sts} sts, ch 1, sc in each of the next ${half} sts, turn. ${half} sts.`,
    `Row 3 (RS): Ch 1, sc in each st across. ${half} sts. Fasten off.`,
    "",
  ];
}

const halfOf = (_: Cut): string => "{shoulder sts - outer shoulder sts}";

/** A shoulder's first row, with the stitches that the front neck takes off later. */
function shoulder({ fabric }: Cut, more: number): Reach & { readonly to: "many" } {
  return {
    to: "many",
    stitches: count("shoulder sts", more),
    repeats: count("shoulder repeats", more / fabric.multiple.of),
  };
}

function hem(cut: Cut, choices: Choices, sts: string, rows: number, rib: Choices["hem"]): readonly string[] {
  const odd = cut.multiple.of % 2 === 0 && cut.multiple.plus % 2 === 1;
  return [
    "## Rib",
    `With ${choices.ribHookMm} mm hook, ch {${sts} + 1}.`,
    ...(rib === "ridges" ? ridges(rows, `{${sts}} sts`) : postRib(rows, `{${sts}} sts`, odd)),
    `Change to ${choices.hookMm} mm hook.`,
  ];
}

/** The first row of the armholes, where a notch is cut; a straight side has none. */
function armholeStart({ fabric }: Cut, { armhole }: Choices): readonly string[] {
  if (armhole === "straight") return ["Place a marker at each end of the last row."];
  const notch = count("notch sts");
  return [
    `Row 1 (RS): ${rowAfterSlips(fabricRow(fabric, 1), notch, { to: "last", left: notch })} {chest sts} sts.`,
  ];
}

function front(cut: Cut, choices: Choices): readonly string[] {
  const { fabric, neckStep, neckSteps } = cut;
  const taken = neckStep * neckSteps;
  const last = cut.frontRows;
  const half = halfOf(cut);
  const first = choices.armhole === "notch" ? 2 : 1;
  const told = first + fabric.rows.length - 1;
  const period = fabric.rows.length;
  const ending = first === 2 && period > 1 ? `, ending with Row ${period}` : "";
  const slopeSide = sideOf(last + 1);
  return [
    "# Front",
    "Work the rib and the body as for the Back. {body sts} sts.",
    "",
    "## Armholes",
    ...(choices.armhole === "straight" ? ["Place a marker at each end of the last row."] : []),
    `${rowsNamed(1, told)}: Work ${rowsNamed(1, told)} of the Back armholes. {chest sts} sts.`,
    `Rows ${told + 1}-{front armhole rows}: Rep ${rowsNamed(first, told)}${ending}. {chest sts} sts.`,
    "",
    "## Left front neck and shoulder",
    `Row 1 (RS): Ch ${fabricRow(fabric, 1).chains}, ${stitchesOf(fabricRow(fabric, 1), shoulder(cut, taken))}, turn, leaving the remaining {chest sts - shoulder sts - ${taken}} sts unworked. ${shoulderSts(taken)} sts.`,
    ...neckRows(cut, (row, step) => rowAfterSlips(row, step)),
    `Row ${last + 1} (${slopeSide}): Ch 1, sc in each st to last {outer shoulder sts} sts, turn, leaving these sts unworked. ${half} sts.`,
    `Row ${last + 2} (RS): Ch 1, sc in each st across. ${half} sts. Fasten off.`,
    "",
    "## Right front neck and shoulder",
    "With RS facing, skip the next {front neck sts} unworked sts of the last full row for the front neck and join yarn with a sl st in the next st.",
    `Row 1 (RS): ${rowFromJoin(fabricRow(fabric, 1), shoulder(cut, taken))} ${shoulderSts(taken)} sts.`,
    ...neckRows(cut, (row, step) => rowWords(row, { to: "last", left: step })),
    `Row ${last + 1} (${slopeSide}): Sl st in each of first {outer shoulder sts} sts, ch 1, sc in each of the next ${half} sts, turn. ${half} sts.`,
    `Row ${last + 2} (RS): Ch 1, sc in each st across. ${half} sts. Fasten off.`,
    "",
  ];
}

const shoulderSts = (more: number): string => (more === 0 ? "{shoulder sts}" : `{shoulder sts + ${more}}`);

/** Rows 2 to the slope of one side of the front neck: stitches come off at the neck edge of Row 2, and once more of Row 4. */
function neckRows(
  cut: Cut,
  shaped: (row: Cut["fabric"]["rows"][number], step: Whole) => string,
): readonly string[] {
  const { fabric, neckStep, neckSteps, frontRows } = cut;
  const lines: string[] = [];
  let more = neckStep * neckSteps;
  let row = 2;
  for (let step = 0; step < neckSteps; step += 1) {
    more -= neckStep;
    lines.push(
      `Row ${row} (WS): ${shaped(fabricRow(fabric, row), { plus: neckStep })} ${shoulderSts(more)} sts.`,
    );
    row += 1;
    if (step < neckSteps - 1) {
      lines.push(`Row ${row} (RS): ${rowWords(fabricRow(fabric, row))} ${shoulderSts(more)} sts.`);
      row += 1;
    }
  }
  return [...lines, ...straightRows(fabric, row, { plus: frontRows }, "{shoulder sts} sts")];
}

function taperedCounts(cut: Cut): DraftParts["counts"] {
  const { multiple, rowsIn } = cut;
  const rows = rowsIn === 2 ? "parity: even" : `multiple: ${rowsIn}`;
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

function taperedSleeve(cut: Cut, choices: Choices): readonly string[] {
  const { fabric } = cut;
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
    ...hem(cut, choices, "cuff sts", cut.cuffRows, choices.hem),
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

function straightCounts({ multiple, fabric, rowsIn }: Cut): DraftParts["counts"] {
  const odd = fabric.multiple.plus % 2 === 1;
  return [
    ["sleeve top sts", `along: upper sleeve, in: main, of: stitches${multipleWords(multiple)}`],
    [
      "sleeve rows",
      `along: sleeve length minus rib depth, in: main, of: rows, ${rowsIn === 2 ? "parity: even" : `multiple: ${rowsIn}`}, order: any`,
    ],
    [
      "cuff sts",
      `along: cuff, in: ridges, of: stitches, same as: half of ${odd ? "(sleeve top sts plus 1)" : "sleeve top sts"}`,
    ],
  ];
}

function straightSleeve(cut: Cut, choices: Choices): readonly string[] {
  const odd = cut.fabric.multiple.plus % 2 === 1;
  return [
    "# Sleeves (make 2)",
    "Worked from the top down.",
    "",
    "## Sleeve",
    `With ${choices.hookMm} mm hook, ch {sleeve top sts + 1}.`,
    "Foundation row (WS): Sc in 2nd ch from hook and in each ch across, turn. {sleeve top sts} sts.",
    ...straightRows(cut.fabric, 1, count("sleeve rows"), "{sleeve top sts} sts"),
    "",
    "## Cuff",
    `Change to ${choices.ribHookMm} mm hook.`,
    `Row 1 (RS): Ch 1, ${odd ? "sc in first st, " : ""}*sc2tog over next 2 sts; rep from * across, turn. {cuff sts} sts.`,
    "Row 2 (WS): Ch 1, sc BLO in each st across, turn. {cuff sts} sts.",
    `Rows 3-${cut.cuffRows}: Rep Row 2. {cuff sts} sts. Fasten off.`,
    ...(choices.armhole === "notch" ? ["Place markers {notch rows} rows below the top at each side."] : []),
    "",
  ];
}

function finishing(cut: Cut, choices: Choices): readonly string[] {
  const notch = choices.armhole === "notch";
  return [
    "# Finishing",
    "Wash the pieces and dry them flat to the measurements.",
    "Shoulders: Hold front and back with right sides together and sew the {shoulder sts} sts of each front shoulder to the {shoulder sts} sts of the back shoulder, stitch for stitch.",
    `Sleeves: Pin the center stitch of the sleeve top to the shoulder seam. Sew the sleeve top to the armhole edge${notch ? ", then sew the {notch rows} row ends above each marker to the {notch sts} unworked or slip-stitched sts of the armhole notch" : ", between the markers"}.`,
    "Side seams: Sew the sleeve seam and the side seam from the cuff to the underarm and on to the hem, row for row.",
    "",
    "## Neckband",
    `With RS facing and ${choices.ribHookMm} mm hook, join yarn with a sl st at the right shoulder seam.`,
    `Rnd 1: Ch 1, work ${cut.backSide} sc evenly down the right back neck, sc in each of {back neck sts} sts across the back neck, ${cut.backSide} sc evenly up the left back neck, ${cut.frontSide} sc evenly down the left front neck, sc in each of {front neck sts} sts across the front neck, ${cut.frontSide} sc evenly up the right front neck; join with a sl st in first sc. {neckband sts} sts.`,
    "Rnd 2: Ch 1, hdc in each st around; join with a sl st in first hdc. {neckband sts} sts.",
    "Rnd 3: Ch 1, *FPdc around next st, BPdc around next st; rep from * around; join with a sl st in first FPdc. {neckband sts} sts. Fasten off.",
    "",
    "Weave in the ends. Wash by hand or as the yarn label says, and dry flat.",
    "",
  ];
}
