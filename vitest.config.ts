import { defineConfig } from "vitest/config";
import { readFindingPages } from "./scripts/manual.mjs";

export default defineConfig({
  define: { FINDING_PAGES: JSON.stringify(readFindingPages()) },
  test: {
    include: ["src/**/*.test.{ts,tsx}", "house/**/*.test.ts", "tools/**/*.test.ts"],
    environment: "node",
    maxWorkers: 2,
    // A cold proof of a whole garment takes a second, and a busy machine takes many times as long.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
  },
});
