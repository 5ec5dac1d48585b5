// Reading the tables of data/bodies and writing the modules of src/bodies/data.
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const tables = fileURLToPath(new URL("../../data/bodies/", import.meta.url));
const modules = fileURLToPath(new URL("../../src/bodies/data/", import.meta.url));

/** @typedef {Record<string, string>} Row */

/**
 * The rows of one table by column name. Cells may stand in double quotes; a quote inside is doubled.
 * @param {string} name  file in data/bodies  @returns {Row[]}
 */
export function readTable(name) {
  const [head, ...rows] = readFileSync(tables + name, "utf8")
    .trimEnd()
    .split("\n")
    .map(cells);
  if (head === undefined || rows.length === 0) throw new Error(`${name} holds no rows`);
  return rows.map((row, index) => {
    if (row.length !== head.length) throw new Error(`${name} row ${index + 2} has ${row.length} cells`);
    return Object.fromEntries(head.map((column, at) => [column, row[at] ?? ""]));
  });
}

/** @param {string} line  @returns {string[]} */
function cells(line) {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((match) =>
    match[1] === undefined ? (match[2] ?? "") : match[1].replaceAll('""', '"'),
  );
}

/**
 * One column of a table as numbers. @param {Row[]} rows  @param {string} column  @returns {number[]}
 * @throws {Error} where a cell holds no number
 */
export function numbersOf(rows, column) {
  return rows.map((row, index) => {
    const cell = row[column];
    if (cell === undefined || cell === "" || !Number.isFinite(Number(cell)))
      throw new Error(`${column}, row ${index + 2}: "${cell}" is no number`);
    return Number(cell);
  });
}

/**
 * Writes a module of src/bodies/data with a first line that says where it comes from.
 * @param {string} name  @param {string} script  @param {string} body
 */
export function writeModule(name, script, body) {
  writeFileSync(
    modules + name,
    `// Made by scripts/bodies/${script} from data/bodies. Change the table or the script, not this file.\n\n${body}`,
  );
}
