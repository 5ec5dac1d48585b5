import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { mainGauge, postRibGauge } from "./estimates.ts";
import type { Whole } from "./fabric.ts";
import { type FabricPattern, tapers } from "./fabric.ts";
import { fitWords } from "./fit-words.ts";
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
} from "./row-words.ts";
import { type Settled, ZERO_NOTE } from "./settled.ts";
import {
  armholeTie,
  type Multiple,
  multipleWords,
  pieceMultiple,
  ribStart,
  rowsIn,
  rowsWords,
  sleeveCounts,
  sleevePiece,
  sleevePlan,
} from "./sleeve.ts";
import { straightRows } from "./straight-rows.ts";

/*
 * A pullover of four flat pieces, worked from the hem up: straight sides or a square notch under the arm, a neck cut out in
 * steps that keep the fabric's repeat, shoulders sloped in two steps, sleeves set straight into the side.
 * Rules: trade handbook, section 2.4 (drop shoulder, modified drop; neck and shoulder), and 3.3 (parity).
 */

/** What is settled once for all sizes, in stitches and rows. */
interface Cut {
  readonly fabric: FabricPattern;
  readonly multiple: Multiple;
  /** Stitches taken off at one side of the front neck each time, and how many times. */
  readonly neckStep: number;
  readonly neckSteps: number;
  /** Rows of a front shoulder in the fabric, before its slope. */
  readonly frontRows: number;
  /** Stitches picked up along one side of the neck. */
  readonly backSide: number;
  readonly frontSide: number;
  /** The sleeve top goes round the armhole, a little wider, so that it is eased in and never stretched. */
  readonly armholeTie: string;
}

function cutOf(choices: Choices): Cut {
  const { fabric } = choices;
  const main = mainGauge(choices);
  const rib = postRibGauge(choices);
  const multiple = pieceMultiple(choices);
  const inRows = rowsIn(choices);
  const step = fabric.multiple.of * Math.max(1, Math.round(1.3 / main.stitchCm / fabric.multiple.of));
  const slope = 2 * main.stitchCm;
  // A second step needs two rows more, which coarse rows have no room for.
  const neckSteps = step * main.stitchCm > 2.5 || 5 * main.rowCm + slope > 1.3 * choices.neckDrop ? 1 : 2;
  const frontRows =
    1 +
    inRows *
      Math.max(
        neckSteps === 2 ? Math.ceil(4 / inRows) : 1,
        Math.round((choices.neckDrop - slope) / main.rowCm / inRows),
      );
  return {
    fabric,
    multiple,
    neckStep: step,
    neckSteps,
    frontRows,
    backSide: Math.max(2, Math.round((main.rowCm + slope) / rib.stitchCm)),
    frontSide: Math.round((frontRows * main.rowCm + slope) / rib.stitchCm) + step * neckSteps,
    armholeTie: armholeTie(main, "armhole rows"),
  };
}

export function draftPullover(choices: Choices, settled: Settled): DraftParts {
  const cut = cutOf(choices);
  const shape = choices.armhole;
  const tapered = tapers(choices.fabric);
  return {
    plan: planOf(choices, cut),
    counts: [...bodyCounts(cut, choices), ...sleeveCounts(choices, settled)],
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
      `A pullover of four flat pieces, worked in rows from the hem up and sewn together. ${choices.fabric.looks}`,
      fitWords(choices),
      shape === "notch"
        ? "The armhole is a shallow square notch, and the top of each sleeve is set straight into it."
        : "The sides run straight to the shoulder, which drops over the upper arm.",
    ],
    notions: "4 locking stitch markers, yarn needle.",
    notes: [
      "The turning chain never counts as a stitch. The first stitch of a row goes into the first stitch of the row below.",
      "Row numbers begin again with each section.",
      ...(tapered && settled.zeros ? [ZERO_NOTE] : []),
    ],
    pieces: [
      ...back(cut, choices),
      ...front(cut, choices),
      ...sleevePiece(choices, settled),
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
    ["hem to underarm", `${choices.bodyLength} minus armhole depth`],
    ...(choices.armhole === "notch"
      ? ([
          ["width across shoulders", "half of (cross back plus body width)"],
          ["notch", "half of (body width minus width across shoulders)"],
        ] as const)
      : ([["width across shoulders", "body width"]] as const)),
    ["neck width", "half of cross back plus 3 cm"],
    ["shoulder", "half of (width across shoulders minus neck width)"],
    ["neck opening", `${share} % of neck width plus ${Math.round(sides * rib.stitchCm * 2) / 2} cm`],
    ...sleevePlan(choices),
    ["sleeve length", "neck to wrist minus half of width across shoulders"],
  ];
}

function bodyCounts(cut: Cut, choices: Choices): DraftParts["counts"] {
  const shape = choices.armhole;
  const { fabric, multiple, neckStep, neckSteps, frontRows } = cut;
  const m = fabric.multiple;
  const taken = 2 * neckStep * neckSteps;
  const rows = `of: rows, ${rowsWords(choices)}`;
  // The front has the rows that are written out and at least two more before the neck.
  const told = fabric.rows.length + (shape === "notch" ? 1 : 0);
  const short = rowsIn(choices) * Math.ceil((told + 2) / rowsIn(choices));
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
    ...ribStart(choices, "body sts", choices.hem),
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
    `Row 2 (WS): Sl st in each of first {outer shoulder sts} sts, ch 1, sc in each of next ${half} sts, turn. ${half} sts.`,
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
    `Row ${last + 1} (${slopeSide}): Sl st in each of first {outer shoulder sts} sts, ch 1, sc in each of next ${half} sts, turn. ${half} sts.`,
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
