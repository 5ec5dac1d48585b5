// The manual's pages on findings, as the command carries them.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const FINDINGS_FOLDER = fileURLToPath(new URL("../docs/findings/", import.meta.url));

/** @returns {Record<string, string>} Markdown by code, such as "rows/count-differs", and the list of all as "index" */
export function readFindingPages() {
  const names = readdirSync(FINDINGS_FOLDER, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => name.endsWith(".md"))
    .sort();
  return Object.fromEntries(
    names.map((name) => [name.slice(0, -".md".length), readFileSync(FINDINGS_FOLDER + name, "utf8")]),
  );
}
