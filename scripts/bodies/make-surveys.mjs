// Packs the two Army surveys into src/bodies/data/army-women.ts and army-men.ts.
//   node scripts/bodies/make-surveys.mjs
// Each column is a run of whole numbers: millimetres, or tenths of a kilogram. A value is written as its distance from
// the column's smallest, in just as many bits as the largest distance needs, most significant bit first, without gaps;
// the bits are filled up to whole bytes at the end of the column and written as base64.
import { fileURLToPath } from "node:url";
import { numbersOf, readTable, writeModule } from "./tables.mjs";

/** @type {readonly (readonly [string, string, number])[]} column of the table, name in the module, factor */
export const COLUMNS = [
  ["stature_mm", "stature", 1],
  ["weight_kg", "weight", 10],
  ["chest_or_bust_circ_mm", "bust", 1],
  ["waist_circ_navel_mm", "waistAtNavel", 1],
  ["hip_buttock_circ_mm", "hip", 1],
  ["upper_arm_circ_flexed_mm", "upperArmFlexed", 1],
  ["wrist_circ_mm", "wrist", 1],
  ["neck_circ_mm", "neck", 1],
  ["neck_base_circ_mm", "neckBase", 1],
  ["biacromial_breadth_mm", "biacromial", 1],
  ["interscye_back_mm", "interscye", 1],
  ["shoulder_length_mm", "shoulderLength", 1],
  ["sleeve_acromion_to_wrist_mm", "shoulderToWrist", 1],
  ["back_length_nape_to_navel_level_mm", "napeToNavel", 1],
  ["nape_height_mm", "napeHeight", 1],
  ["shoulder_point_height_mm", "shoulderHeight", 1],
  ["underarm_height_mm", "underarmHeight", 1],
  ["chest_breadth_mm", "chestBreadth", 1],
  ["waist_breadth_mm", "waistBreadth", 1],
  ["hip_breadth_mm", "hipBreadth", 1],
  ["calf_circ_mm", "calf", 1],
  ["ankle_circ_mm", "ankle", 1],
  ["head_circ_mm", "head", 1],
  ["hand_circ_mm", "hand", 1],
  ["hand_length_mm", "handLength", 1],
  ["foot_length_mm", "footLength", 1],
  ["foot_ball_circ_mm", "footBall", 1],
];

/** @param {number[]} values  whole numbers  @returns {{ least: number, bits: number, packed: string }} */
export function pack(values) {
  const least = Math.min(...values);
  const bits = Math.max(1, (Math.max(...values) - least).toString(2).length);
  const bytes = Buffer.alloc(Math.ceil((values.length * bits) / 8));
  values.forEach((value, index) => {
    if (!Number.isInteger(value)) throw new Error(`${value} is no whole number`);
    for (let bit = 0; bit < bits; bit++) {
      if (((value - least) >> (bits - 1 - bit)) & 1) {
        const at = index * bits + bit;
        bytes[at >> 3] = (bytes[at >> 3] ?? 0) | (128 >> (at & 7));
      }
    }
  });
  return { least, bits, packed: bytes.toString("base64") };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const sex of ["women", "men"]) {
    const rows = readTable(`army-${sex}.csv`);
    const columns = COLUMNS.map(([column, name, factor]) => {
      const { least, bits, packed } = pack(
        numbersOf(rows, column).map((value) => Math.round(value * factor)),
      );
      return `    ${name}: [${least}, ${bits}, "${packed}"],\n`;
    });
    writeModule(
      `army-${sex}.ts`,
      "make-surveys.mjs",
      `import type { PackedSurvey } from "../survey.ts";

export const ARMY_${sex.toUpperCase()}: PackedSurvey = {
  people: ${rows.length},
  columns: {
${columns.join("")}  },
};
`,
    );
  }
}
