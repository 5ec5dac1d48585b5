import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["src/**/*.test.{ts,tsx}", "house/**/*.test.ts"],
    environment: "node",
    maxWorkers: 2,
    passWithNoTests: false,
  },
});
