// Adds up vitest's JSON reports. A test counts as failed when it failed in any of them.
//   node scripts/test-report.mjs a.json b.json    prints "N passed, N failed"
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/**
 * @typedef {{ fullName: string, status: string }} Assertion
 * @typedef {{ name: string, status: string, assertionResults: Assertion[] }} TestFile
 * @param {string[]} reports  paths of vitest JSON reports; one that is missing counts as one failure
 * @returns {{ passed: number, failed: number, skipped: number, line: string }}
 */
export function summarize(reports) {
  /** @type {Map<string, string>} */
  const outcome = new Map();
  /** @param {string} key  @param {string} status */
  const keep = (key, status) => {
    if (outcome.get(key) !== "failed") outcome.set(key, status);
  };
  for (const report of reports) {
    if (!existsSync(report)) {
      keep(`the run of ${report}`, "failed");
      continue;
    }
    const { testResults, success } = JSON.parse(readFileSync(report, "utf8"));
    const failedBefore = count(outcome, "failed");
    for (const file of /** @type {TestFile[]} */ (testResults)) {
      // A file that could not be loaded has failed without a single test to its name.
      if (file.status === "failed" && !file.assertionResults.some((one) => one.status === "failed")) {
        keep(file.name, "failed");
      }
      for (const [index, one] of file.assertionResults.entries()) {
        keep(`${file.name} ${index} ${one.fullName}`, one.status);
      }
    }
    // For instance an error outside any test.
    if (!success && count(outcome, "failed") === failedBefore && failedBefore === 0) keep(report, "failed");
  }
  const passed = count(outcome, "passed");
  const failed = count(outcome, "failed");
  const skipped = outcome.size - passed - failed;
  return {
    passed,
    failed,
    skipped,
    line: `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`,
  };
}

/** @param {Map<string, string>} outcome  @param {string} status */
const count = (outcome, status) => [...outcome.values()].filter((one) => one === status).length;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { passed, failed, line } = summarize(process.argv.slice(2).map((name) => path.resolve(name)));
  console.log(line);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
}
