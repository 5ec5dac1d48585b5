import type { Choices } from "./choices.ts";
import type { DraftParts } from "./draft.ts";
import { mainGauge, nearestEven, ridgeGauge, type StartGauge } from "./estimates.ts";
import { type FabricPattern, isPlain, type PlainRow } from "./fabric.ts";
import { fitWords } from "./fit-words.ts";
import { count, fabricRow, rowsFrom, rowsNamed, rowWords, sideOf } from "./row-words.ts";
import { type Settled, ZERO_NOTE } from "./settled.ts";
import { armholeTie, sleeveCounts, sleevePiece, sleevePlan } from "./sleeve.ts";
import { straightRows } from "./straight-rows.ts";

/*
 * An open vest or jacket of panels worked sideways: rows run up and down, so that the number of rows makes the width. The right
 * front is worked from the side to the middle and the left front from the middle to the side, so that they mirror one another with
 * the right side of the fabric outside. Bands are picked up along the edges. Rules: trade handbook, sections 1.6, 2.4 (panels
 * sideways, drop shoulder), 3.7 and 3.8 (each front without its band is half of the back less half the band).
 */

/** Whether a fabric can be lengthened in the middle of a row with a chain: one stitch in every row. */
export function worksSideways({ fabric }: Pick<Choices, "fabric">): boolean {
  return fabric.multiple.of === 1 && fabric.rows.every(({ stitches }) => isPlain(stitches));
}

const BAND_CM = 3;
const PICKED = "in: ridges, of: stitches";

export function draftPanels(asked: Choices, settled: Settled): DraftParts {
  const choices: Choices = { ...asked, armhole: "straight" };
  const { sleeves, pockets } = choices;
  return {
    plan: planOf(choices),
    counts: [
      ...panelCounts(choices),
      ...(sleeves ? sleeveCounts(choices, settled) : armbandCounts()),
      ...(pockets ? pocketCounts() : []),
    ],
    ties: [
      "back rows is back neck rows plus twice shoulder rows",
      ...(sleeves ? [armholeTie(mainGauge(choices), "armhole sts")] : []),
    ],
    fabricsUsed: { postRib: sleeves && choices.hem === "post rib", ridges: true },
    introduction: [
      `${sleeves ? "A jacket" : "A vest"} of three panels, worked sideways in rows from edge to edge so that the rows run up and down. ${choices.fabric.looks}`,
      fitWords(choices),
      "The sides run straight to the shoulder, which drops over the upper arm. The bands are picked up along the edges and the fronts are left open.",
    ],
    notions: "4 locking stitch markers, yarn needle.",
    notes: [
      "The turning chain never counts as a stitch. The first stitch of a row goes into the first stitch of the row below.",
      "RS rows are worked from the hem up to the shoulder, WS rows from the shoulder down to the hem.",
      ...(sleeves && settled.zeros ? [ZERO_NOTE] : []),
    ],
    pieces: [
      ...panel("Back", choices.fabric, choices, "back rows"),
      "Fasten off.",
      "",
      ...rightFront(choices),
      ...leftFront(choices),
      ...(pockets ? pocketPiece(choices) : []),
      ...(sleeves ? sleevePiece(choices, settled) : []),
      ...finishing(choices),
    ],
  };
}

function planOf(choices: Choices): DraftParts["plan"] {
  const { sleeves, ribDepth, forChildren, pockets, bodyLength } = choices;
  return [
    ["body width", "half of finished bust"],
    ["body length", bodyLength],
    ["upper sleeve", "finished upper arm"],
    ["armhole depth", "half of upper sleeve"],
    ["width across shoulders", "body width"],
    ["neck width", "half of cross back plus 3 cm"],
    ["band width", `${BAND_CM} cm`],
    ["front neck drop", forChildren ? "7 cm" : "12 cm"],
    ["shoulder", "half of (width across shoulders minus neck width)"],
    ["front", "half of (body width minus band width)"],
    ...(sleeves
      ? ([
          ["rib depth", `${ribDepth} cm`],
          ["sleeve length", "neck to wrist minus half of width across shoulders"],
          ...sleevePlan(choices),
        ] as DraftParts["plan"])
      : []),
    ...(pockets
      ? ([
          ["pocket width", "two thirds of front, at most 16 cm"],
          ["pocket depth", forChildren ? "10 cm" : "16 cm"],
        ] as const)
      : []),
  ];
}

function panelCounts(choices: Choices): DraftParts["counts"] {
  const stitches = "in: main, of: stitches";
  const { rowCm } = mainGauge(choices);
  const least = nearestEven(4 / rowCm);
  return [
    ["long sts", `along: body length, ${stitches}`],
    ["back rows", "along: body width minus 1 row in ridges, in: main, of: rows, parity: even"],
    ["shoulder rows", `along: shoulder, in: main, of: rows, parity: even, at least: ${least}`],
    ["back neck rows", `along: neck width, in: main, of: rows, parity: even, at least: ${least}`],
    ["front neck rows", "along: front minus shoulder, in: main, of: rows, parity: odd, at least: 5"],
    ["front rows", "same as: shoulder rows plus front neck rows, of: rows"],
    ["neck drop sts", `along: front neck drop, ${stitches}, at least: 3`],
    ["front sts", "same as: long sts minus neck drop sts"],
    ["armhole sts", `along: armhole depth, ${stitches}, at least: 4`],
    ["side sts", "same as: long sts minus armhole sts"],
    ["front edge sts", `along: body length minus front neck drop, ${PICKED}`],
    ["neck side sts", `along: front neck drop plus front minus shoulder, ${PICKED}`],
    ["back neck sts", `along: neck width, ${PICKED}`],
    ["band sts", "same as: twice front edge sts plus twice neck side sts plus back neck sts"],
    ["hem sts", `along: twice front plus body width, ${PICKED}`],
  ];
}

const armbandCounts = (): DraftParts["counts"] => [["armband sts", `along: twice armhole depth, ${PICKED}`]];

const pocketCounts = (): DraftParts["counts"] => [
  ["pocket sts", "along: pocket width, in: main, of: stitches, at least: 5"],
  ["pocket rows", "along: pocket depth, in: main, of: rows, parity: even, at least: 4"],
];

function panel(name: string, fabric: FabricPattern, choices: Choices, rows: string): readonly string[] {
  return [
    `# ${name}`,
    `With ${choices.hookMm} mm hook, ch {long sts + 1}.`,
    "Foundation row (WS): Sc in 2nd ch from hook and in each ch across, turn. {long sts} sts.",
    ...straightRows(fabric, 1, count(rows), "{long sts} sts"),
  ];
}

function rightFront(choices: Choices): readonly string[] {
  const { fabric } = choices;
  const left = count("neck drop sts");
  return [
    ...panel("Right front", fabric, choices, "shoulder rows"),
    "",
    "## Right front neck",
    `Row 1 (RS): ${rowWords(fabricRow(fabric, 1), { to: "last", left })} {front sts} sts.`,
    ...straightFrom(fabric, 2, "{front neck rows}", "{front sts} sts"),
    "Fasten off.",
    "",
  ];
}

/** Rows from the second of a section on, where its number may be 1: nothing more is then worked. */
function straightFrom(fabric: FabricPattern, from: number, last: string, sts: string): readonly string[] {
  const period = fabric.rows.length;
  if (period === 1) return [`Rows ${from}-${last}: ${rowWords(fabricRow(fabric, 1))} ${sts}.`];
  return [
    `Row ${from} (${sideOf(from)}): ${rowWords(fabricRow(fabric, from))} ${sts}.`,
    `Row ${from + 1} (${sideOf(from + 1)}): ${rowWords(fabricRow(fabric, from + 1))} ${sts}.`,
    `Rows ${from + 2}-${last}: Rep Rows ${from} and ${from + 1}. ${sts}.`,
  ];
}

const ORDINALS = ["", "", "2nd", "3rd", "4th"];

function leftFront(choices: Choices): readonly string[] {
  const { fabric } = choices;
  const back = fabricRow(fabric, 2);
  const { plain, loops } = back.stitches as PlainRow;
  const stitch = loops ? `${plain} ${loops}` : plain;
  const period = fabric.rows.length;
  const rest = count("shoulder rows");
  return [
    "# Left front",
    `With ${choices.hookMm} mm hook, ch {front sts + 1}.`,
    "Foundation row (WS): Sc in 2nd ch from hook and in each ch across, turn. {front sts} sts.",
    `Row 1 (RS): ${rowWords(fabricRow(fabric, 1))} {front sts} sts.`,
    ...straightFrom(fabric, 2, "{front neck rows}", "{front sts} sts"),
    "Do not fasten off.",
    "",
    "## Left shoulder",
    `Row 1 (WS): Ch {neck drop sts + ${back.chains}}, ${plain} in ${ORDINALS[back.chains + 1]} ch from hook and in each of next {neck drop sts - 1} ch, ${stitch} in each st across, turn. {long sts} sts.`,
    ...(period === 1
      ? [`Rows 2-{shoulder rows}: ${rowWords(fabricRow(fabric, 1))} {long sts} sts.`]
      : [
          `Row 2 (RS): ${rowWords(fabricRow(fabric, 1))} {long sts} sts.`,
          `Row 3 (WS): ${rowWords(fabricRow(fabric, 2))} {long sts} sts.`,
          `Rows 4-{${rest.count}}: Rep Rows 2 and 3, ending with Row 2. {long sts} sts.`,
        ]),
    "Fasten off.",
    "",
  ];
}

function pocketPiece(choices: Choices): readonly string[] {
  return [
    "# Pockets (make 2)",
    `With ${choices.hookMm} mm hook, ch {pocket sts + 1}.`,
    "Foundation row (WS): Sc in 2nd ch from hook and in each ch across, turn. {pocket sts} sts.",
    ...straightRows(choices.fabric, 1, count("pocket rows"), "{pocket sts} sts"),
    "Fasten off, leaving a long tail for sewing.",
    "",
  ];
}

function finishing(choices: Choices): readonly string[] {
  const rows = Math.max(2, Math.round(BAND_CM / ridgeGauge(choices).rowCm));
  const more = (sts: string): string =>
    `${rowsFrom(2, rows)}: Ch 1, sc BLO in each st across, turn. {${sts}} sts. Fasten off.`;
  const main: StartGauge = mainGauge(choices);
  const up = Math.round(4 / main.stitchCm);
  return [
    "# Finishing",
    "Wash the panels and dry them flat to the measurements.",
    "Shoulders: Lay the fronts on the back with right sides together and sew the row ends of {shoulder rows} rows of each front to the back, row for row, from the armhole edge inwards.",
    "Side seams: Sew the {side sts} sts from the hem upwards, stitch for stitch; the {armhole sts} sts above stay open for the armhole.",
    ...(choices.sleeves
      ? [
          "Sleeves: Pin the center stitch of the sleeve top to the shoulder seam and sew the sleeve top into the armhole. Sew the sleeve seam, row for row.",
        ]
      : []),
    ...(choices.pockets
      ? [
          `Pockets: Sew a pocket to each front, its lower edge ${up} sts above the hem, with the same distance to the front edge on both sides.`,
        ]
      : []),
    "",
    "## Hem band",
    `With RS facing and ${choices.ribHookMm} mm hook, join yarn with a sl st at the lower corner of the left front.`,
    "Row 1 (RS): Ch 1, work {hem sts} sc evenly along the lower edge, turn. {hem sts} sts.",
    more("hem sts"),
    "",
    "## Front band",
    `With RS facing and ${choices.ribHookMm} mm hook, join yarn with a sl st at the lower corner of the right front.`,
    "Row 1 (RS): Ch 1, work {front edge sts} sc evenly up the right front edge, {neck side sts} sc evenly along the right neck edge, {back neck sts} sc evenly across the back neck, {neck side sts} sc evenly along the left neck edge, {front edge sts} sc evenly down the left front edge, turn. {band sts} sts.",
    more("band sts"),
    "",
    ...(choices.sleeves
      ? []
      : [
          "## Armhole bands (make 2)",
          `With RS facing and ${choices.ribHookMm} mm hook, join yarn with a sl st at the side seam.`,
          "Rnd 1: Ch 1, work {armband sts} sc evenly around the armhole; join with a sl st in first sc. {armband sts} sts.",
          `${rowsNamed(2, rows).replace("Row", "Rnd")}: Ch 1, sc BLO in each st around; join. {armband sts} sts. Fasten off.`,
          "",
        ]),
    "Weave in the ends. Wash by hand or as the yarn label says, and dry flat.",
    "",
  ];
}
