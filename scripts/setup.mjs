/**
 * Installs what is missing, and only then: runs `npm ci` when the lock file, Node's native interface or the platform
 * differs from what the stamp inside node_modules says. It has no dependency, so that it runs on a bare clone.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const stampFile = join(root, "node_modules", ".lapline-setup");

/** The machine's Node and the lock file together decide what must lie in node_modules. */
function stampNow() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  return [lock, process.versions.modules, process.platform, process.arch].join(" ");
}

function refuseOldNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Lapline needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(2);
}

/** Runs npm by the path that npm itself hands down, and by name where Node was started directly. */
export function runNpm(args) {
  const npm = process.env.npm_execpath;
  const options = { cwd: root, stdio: ["ignore", 2, 2] };
  return npm?.endsWith(".js")
    ? spawnSync(process.execPath, [npm, ...args], options)
    : spawnSync("npm", args, { ...options, shell: process.platform === "win32" });
}

/** Installs the packages where they are missing or belong to another lock file, Node or machine. */
export function setUp() {
  refuseOldNode();
  const stamp = stampNow();
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return;
  console.error("Installing what is missing (once, about half a minute) ...");
  const done = runNpm(["ci", "--loglevel", "error"]);
  if (done.status !== 0) {
    console.error(
      "The packages could not be installed: npm's own message stands above. Is the network there?",
    );
    process.exit(2);
  }
  writeFileSync(stampFile, stamp);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) setUp();
