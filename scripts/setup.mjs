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
const lock = readFileSync(join(root, "package-lock.json"));
const stamp = [
  createHash("sha256").update(lock).digest("hex"),
  process.versions.modules,
  process.platform,
  process.arch,
].join(" ");

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Lapline needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(2);
}

if (!existsSync(stampFile) || readFileSync(stampFile, "utf8") !== stamp) {
  console.error("Installing what is missing (once, about half a minute) ...");
  const done = spawnSync("npm", ["ci"], { cwd: root, stdio: ["ignore", "ignore", "inherit"] });
  if (done.status !== 0) process.exit(done.status ?? 1);
  writeFileSync(stampFile, stamp);
}
