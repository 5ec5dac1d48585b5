// Runs every check, or the ones named, and says which came out how. One failing does not hide the next.
//   node scripts/check.mjs            all of them
//   node scripts/check.mjs types lint only these
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { summarize } from "./test-report.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const require = createRequire(import.meta.url);
export const REPORT = ".check/unit.json";
const COMPILER = "7.0.2";

/** @typedef {{ does: string, run: () => string | undefined }} Check   run: what went wrong, or undefined */

/** @type {Record<string, Check>} */
const CHECKS = {
  types: {
    does: "strict types, by one compiler everywhere; the engine without a page or Node",
    run: checkTypes,
  },
  doors: {
    does: "imports between rooms go down, through the front door",
    run: () => node("scripts/doors.mjs"),
  },
  lint: {
    does: "form and lint",
    run: () => tool("@biomejs/biome", "biome", "check", "--error-on-warnings", "."),
  },
  dead: { does: "files and packages that nothing uses", run: () => tool("knip", "knip", "--no-progress") },
  build: { does: "the bundled command says the version it was built from", run: checkBuild },
  unit: { does: "tests: the rooms, the house, the links between pages", run: checkUnit },
};

/** @param {string[]} args  @returns {string | undefined} */
function node(...args) {
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  return run.status === 0 ? undefined : `ended with ${run.status ?? run.signal ?? run.error?.message}`;
}

/** Runs a tool of node_modules on this very Node, whatever `node` the shell would find. @param {string} name */
function toolPath(name, /** @type {string} */ bin) {
  const manifestPath = path.join(root, "node_modules", name, "package.json");
  const manifest = JSON.parse(readFileSync(manifestPath, "utf8"));
  const target = typeof manifest.bin === "string" ? manifest.bin : manifest.bin[bin];
  return path.join(path.dirname(manifestPath), target);
}

/** @param {string} name  @param {string} bin  @param {string[]} args */
function tool(name, bin, ...args) {
  return node(toolPath(name, bin), ...args);
}

function checkTypes() {
  const said = spawnSync(process.execPath, [toolPath("typescript", "tsc"), "-v"], {
    cwd: root,
    encoding: "utf8",
  });
  const version = said.stdout?.trim();
  if (version !== `Version ${COMPILER}`) return `the compiler is "${version}", and ${COMPILER} decides`;
  return (
    tool("typescript", "tsc", "-p", "tsconfig.json") ??
    tool("typescript", "tsc", "-p", "tsconfig.engine.json")
  );
}

function checkBuild() {
  const fault = node("scripts/build.mjs");
  if (fault !== undefined) return fault;
  const said = spawnSync(process.execPath, ["bin/loopwright.mjs", "--version"], {
    cwd: root,
    encoding: "utf8",
  });
  const { version } = require("../package.json");
  return said.status === 0 && said.stdout === `${version}\n`
    ? undefined
    : `said "${said.stdout}${said.stderr}"`;
}

function checkUnit() {
  mkdirSync(path.join(root, path.dirname(REPORT)), { recursive: true });
  rmSync(path.join(root, REPORT), { force: true });
  const fault = tool(
    "vitest",
    "vitest",
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${REPORT}`,
  );
  const { passed, failed, line } = summarize([path.join(root, REPORT)]);
  process.stdout.write(`${line}\n`);
  if (passed + failed === 0) return "no test ran";
  return fault ?? (failed > 0 ? `${failed} failed` : undefined);
}

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !Object.hasOwn(CHECKS, name));
if (unknown.length > 0) {
  console.error(`There is no check called ${unknown.join(", ")}. There are:`);
  for (const [name, { does }] of Object.entries(CHECKS)) console.error(`  ${name.padEnd(6)} ${does}`);
  process.exit(2);
}

/** @type {string[]} */
const results = [];
for (const name of asked.length > 0 ? asked : Object.keys(CHECKS)) {
  const check = /** @type {Check} */ (CHECKS[name]);
  process.stdout.write(`\n── ${name}: ${check.does}\n`);
  const start = performance.now();
  const fault = check.run();
  const took = `${((performance.now() - start) / 1000).toFixed(1)} s`;
  results.push(
    `${fault === undefined ? "good  " : "FAILED"} ${name.padEnd(6)} ${took}${fault === undefined ? "" : `  ${fault}`}`,
  );
  if (fault !== undefined) process.exitCode = 1;
}
process.stdout.write(`\n${results.join("\n")}\n`);
