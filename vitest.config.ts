import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["packages/*/src/**/*.test.{ts,tsx}", "packages/*/tests/**/*.test.ts", "tests/**/*.test.ts"],
    reporters: ["default", "./scripts/count-reporter.mjs"],
    /** A slow machine needs patience, not a second try. */
    testTimeout: 480_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 60_000 } },
    /** Browser tests wait more than they reckon: two files at once, even on two cores. */
    maxWorkers: 2,
  },
});
