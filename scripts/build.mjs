/**
 * Builds the command and the web app where they are missing or older than their sources. It has no dependency, so that the
 * command can call it on a bare clone. `node scripts/build.mjs [cli] [web]`; both if none is named.
 */
import { existsSync, readdirSync, statSync, utimesSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { runNpm, setUp } from "./setup.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const packages = join(root, "packages");
const lockFile = join(root, "package-lock.json");

const BUILDS = {
  cli: {
    output: "cli/dist/main.js",
    from: ["engine", "contract", "present", "nest", "store", "server", "cli"],
  },
  web: { output: "web/dist/index.html", from: ["engine", "contract", "present", "nest", "web"] },
};
const NOT_SOURCE = new Set(["node_modules", "dist", "tests"]);

/** When anything in the folder last changed. A folder's own time, below the first, tells of files taken away. */
function newestIn(folder) {
  let newest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (NOT_SOURCE.has(entry.name) || entry.name.includes(".test.")) continue;
    const path = join(folder, entry.name);
    newest = Math.max(newest, statSync(path).mtimeMs, entry.isDirectory() ? newestIn(path) : 0);
  }
  return newest;
}

function isFresh(output, from) {
  if (!existsSync(output)) return false;
  const sources = [...from.map((name) => newestIn(join(packages, name))), statSync(lockFile).mtimeMs];
  return statSync(output).mtimeMs >= Math.max(...sources);
}

/** Installs and builds what the named packages need; messages go to standard error. */
export function ensureBuilt(names) {
  setUp();
  for (const name of names) {
    const { output, from } = BUILDS[name];
    const path = join(packages, output);
    if (isFresh(path, from)) continue;
    // The output is dated to when its build began, so that a source changed meanwhile is still newer.
    const began = new Date();
    console.error(`Building ${name === "cli" ? "the command" : "the web app"} ...`);
    if (runNpm(["run", "--silent", "build", "-w", `@lapline/${name}`]).status !== 0) process.exit(2);
    utimesSync(path, began, began);
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  // A test that builds first hands down its own, with which the page would carry what is for development only.
  process.env.NODE_ENV = "production";
  const asked = process.argv.slice(2);
  ensureBuilt(asked.length > 0 ? asked : Object.keys(BUILDS));
}
