#!/usr/bin/env node
// Starts the bundled command. In a source checkout the bundle is made anew when a source file is newer.
import { existsSync, readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const bundle = `${root}dist/loopwright.mjs`;

/** @param {string} folder  @returns {number} the latest change in it, ms */
function latestChange(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    latest = Math.max(latest, entry.isDirectory() ? latestChange(path) : statSync(path).mtimeMs);
  }
  return latest;
}

function bundleIsBehind() {
  if (!existsSync(`${root}src/command/main.ts`)) return false;
  if (!existsSync(bundle)) return true;
  const built = statSync(bundle).mtimeMs;
  return (
    ["src", "docs/findings"].some((folder) => latestChange(root + folder) > built) ||
    statSync(`${root}package.json`).mtimeMs > built
  );
}

if (bundleIsBehind()) {
  const { buildCommand } = await import("../scripts/build.mjs");
  await buildCommand();
}
const { main, processTerminal } = await import(new URL("../dist/loopwright.mjs", import.meta.url).href);
process.exitCode = await main(process.argv.slice(2), processTerminal());
