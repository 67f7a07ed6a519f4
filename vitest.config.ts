import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["packages/*/src/**/*.test.{ts,tsx}", "packages/*/tests/**/*.test.ts", "tests/**/*.test.ts"],
    reporters: ["default", "./scripts/count-reporter.mjs"],
    testTimeout: 120_000,
    /** Browser tests wait more than they reckon: two files at once, even on two cores. */
    maxWorkers: 2,
    hookTimeout: 120_000,
  },
});
