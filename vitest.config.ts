import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["packages/*/src/**/*.test.{ts,tsx}", "packages/*/tests/**/*.test.ts", "tests/**/*.test.ts"],
    reporters: ["default", "./scripts/count-reporter.mjs"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
