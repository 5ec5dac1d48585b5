// The files of this repository that git keeps, for the checks that read them all.
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

/** Names from the root, with forward slashes; a file deleted but not yet committed is left out. @returns {string[]} */
export function keptFiles() {
  return execFileSync("git", ["ls-files", "-z"], { cwd: root, encoding: "utf8" })
    .split("\0")
    .filter((name) => name !== "" && existsSync(root + name));
}

/** @param {string} name  @returns {string | undefined} its text, or undefined for a binary file */
export function keptText(name) {
  const bytes = readFileSync(root + name);
  return bytes.includes(0) ? undefined : bytes.toString("utf8");
}
