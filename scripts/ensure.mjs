// Runs before `npm test` and `npm run try`, on nothing but Node itself: installs what the lock file names
// when node_modules is missing or holds something else, and is silent otherwise.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

/**
 * @typedef {{ version?: string, optional?: boolean, link?: boolean }} Locked
 * @typedef {{ packages?: Record<string, Locked> }} Lock
 */

/** Why an install is due, in words; undefined when what is installed is what the lock file names. */
function reasonToInstall() {
  const installedList = `${root}node_modules/.package-lock.json`;
  if (!existsSync(installedList)) return "nothing is installed yet";
  /** @type {Lock} */
  const wanted = JSON.parse(readFileSync(`${root}package-lock.json`, "utf8"));
  /** @type {Lock} */
  const installed = JSON.parse(readFileSync(installedList, "utf8"));
  // npm's own list of what it installed is compared by content: file times lie after a checkout.
  for (const [path, entry] of Object.entries(wanted.packages ?? {})) {
    if (path === "") continue;
    const there = installed.packages?.[path];
    // Binaries for other machines are listed as optional and rightly stay away.
    if (there === undefined && entry.optional) continue;
    if (there?.version !== entry.version || !existsSync(`${root}${path}`)) {
      return `the lock file names ${path.replace(/^.*node_modules\//, "")} ${entry.version}, which is not there`;
    }
  }
  return undefined;
}

const reason = reasonToInstall();
if (reason !== undefined) {
  process.stderr.write(`Installing with npm ci: ${reason}.\n`);
  const run = spawnSync("npm", ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit"],
    shell: process.platform === "win32",
  });
  if (run.error || run.status !== 0) {
    const why = run.error ? run.error.message : `npm ci ended with exit code ${run.status ?? run.signal}`;
    process.stderr.write(`The install did not succeed: ${why}. Run npm ci by hand to see more.\n`);
    process.exit(1);
  }
}
