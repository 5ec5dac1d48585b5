// Turns the tables of published sizes into src/bodies/data/charts.ts.
//   node scripts/bodies/make-charts.mjs
import { readTable, writeModule } from "./tables.mjs";

/** @type {Record<string, string>} measurement of the table, name in the house */
const NAMES = {
  bust_circ: "bust",
  chest_circ: "bust",
  centre_back_neck_to_wrist: "neck to wrist",
  back_waist_length: "back length",
  back_hip_length: "back hip length",
  cross_back_shoulder_to_shoulder: "cross back",
  arm_length_underarm_to_wrist: "arm length",
  upper_arm_circ: "upper arm",
  armhole_depth: "armhole depth",
  waist_circ: "waist",
  hip_circ: "hip",
};

/** @type {Record<string, string>} */
const POPULATIONS = { woman: "women", man: "men", youth: "youth", child: "child", baby: "baby" };

/** @param {Record<string, string>} table  @param {string | undefined} key */
function named(table, key) {
  const name = table[key ?? ""];
  if (name === undefined) throw new Error(`no name for "${key}"`);
  return name;
}

/** A cell as JSON: a number, text, or null where it is empty. @param {string | undefined} cell */
const json = (cell) =>
  cell === undefined || cell === ""
    ? "null"
    : Number.isFinite(Number(cell))
      ? String(Number(cell))
      : JSON.stringify(cell);
/** @param {string | undefined} cell */
const text = (cell) => JSON.stringify(cell ?? "");

/** @param {string} name  @param {string} type  @param {string[]} lines */
const list = (name, type, lines) =>
  `export const ${name}: readonly ${type}[] = [\n${lines.map((line) => `  [${line}],\n`).join("")}];\n`;

writeModule(
  "charts.ts",
  "make-charts.mjs",
  [
    `import type { EaseRow, GarmentEaseRow, HeadRow, LengthRow, LetterRow, SizeRow } from "../rows.ts";\n`,
    list(
      "SIZE_ROWS",
      "SizeRow",
      readTable("chart-sizes.csv").map((row) =>
        [
          text(named(POPULATIONS, row.population)),
          text(row.size),
          text(named(NAMES, row.measurement)),
          ...["in_min", "in_max", "cm_min", "cm_max"].map((column) => json(row[column])),
          text(row.status),
          ...(row.note ? [text(row.note)] : []),
        ].join(", "),
      ),
    ),
    list(
      "EASE_ROWS",
      "EaseRow",
      readTable("ease-words.csv").map((row) =>
        [
          text(row.source),
          text(row.word),
          json(row.least),
          json(row.most),
          text(row.unit),
          text(row.status),
          ...(row.note ? [text(row.note)] : []),
        ].join(", "),
      ),
    ),
    list(
      "GARMENT_EASE_ROWS",
      "GarmentEaseRow",
      readTable("garment-ease.csv").map((row) =>
        [
          text(row.garment),
          text(row.measurement),
          json(row.least_cm),
          json(row.most_cm),
          text(row.status),
        ].join(", "),
      ),
    ),
    list(
      "LENGTH_ROWS",
      "LengthRow",
      readTable("chart-lengths.csv").map((row) =>
        [
          text(named(POPULATIONS, row.population)),
          text(row.length),
          text(row.measured_from),
          json(row.drop_in),
          json(row.drop_cm),
          text(row.status),
          ...(row.note ? [text(row.note)] : []),
        ].join(", "),
      ),
    ),
    list(
      "HEAD_ROWS",
      "HeadRow",
      readTable("head-sizes.csv").map((row) =>
        [
          text(row.who),
          json(row.head_circ_in_min),
          json(row.head_circ_in_max),
          json(row.head_circ_cm_min),
          json(row.head_circ_cm_max),
          text(row.kind === "head" ? "head" : "hat"),
          text(row.source_key),
          text(row.status),
        ].join(", "),
      ),
    ),
    list(
      "LETTER_ROWS",
      "LetterRow",
      readTable("letter-codes.csv").map((row) =>
        [
          text(row.code),
          json(row.man_chest_cm_min),
          json(row.man_chest_cm_max),
          json(row.woman_bust_cm_min),
          json(row.woman_bust_cm_max),
          text(row.status_man),
          text(row.status_woman),
        ].join(", "),
      ),
    ),
  ].join("\n"),
);
