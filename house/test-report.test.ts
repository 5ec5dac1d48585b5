import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, expect, it } from "vitest";
import { summarize } from "../scripts/test-report.mjs";

const folder = mkdtempSync(path.join(tmpdir(), "reports-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** One report: file name to the outcomes of its tests, in order. */
function report(name: string, files: Record<string, string[]>, success: boolean): string {
  const testResults = Object.entries(files).map(([file, outcomes]) => ({
    name: file,
    status: success ? "passed" : "failed",
    assertionResults: outcomes.map((status, index) => ({ fullName: `test ${index}`, status })),
  }));
  const target = path.join(folder, name);
  writeFileSync(target, JSON.stringify({ success, testResults }));
  return target;
}

it("counts a test once, and as failed when it failed in any run", () => {
  const one = report("one.json", { a: ["passed", "passed", "skipped"] }, true);
  const two = report("two.json", { a: ["passed", "failed", "skipped"] }, false);
  expect(summarize([one]).line).toBe("2 passed, 0 failed, 1 skipped");
  expect(summarize([one, two]).line).toBe("1 passed, 1 failed, 1 skipped");
  expect(summarize([two, one]).line).toBe("1 passed, 1 failed, 1 skipped");
});

it("counts a file that could not be loaded, an error outside tests and a missing report", () => {
  expect(summarize([report("load.json", { a: [] }, false)]).line).toBe("0 passed, 1 failed");
  expect(summarize([report("outside.json", {}, false)]).line).toBe("0 passed, 1 failed");
  expect(summarize([path.join(folder, "none.json")]).line).toBe("0 passed, 1 failed");
});
