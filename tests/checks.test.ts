import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ROOT } from "./sourceFiles";

/** The checks that are no tests of their own, so that one report tells of everything. */
test.each([
  ["format and lint", "biome", ["check", "--error-on-warnings", "."]],
  ["the engine's types, with nothing of Node or the browser in reach", "tsc", ["-p", "packages/engine"]],
  ["types", "tsc", ["-p", "."]],
  ["no file, export or package that nothing uses", "knip", ["--no-progress"]],
])("%s", (_, program, args) => {
  const options = { cwd: ROOT, encoding: "utf8", shell: process.platform === "win32" } as const;
  const { status, stdout, stderr } = spawnSync(join(ROOT, "node_modules", ".bin", program), args, options);
  expect(status, `${stdout}${stderr}`).toBe(0);
});
