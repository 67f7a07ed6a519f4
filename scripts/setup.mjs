/**
 * Installs what is missing, and only then: runs `npm ci` where the packages in node_modules are not those of the lock file, or
 * were put there by another Node or machine. It has no dependency, so that it runs on a bare clone.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
/** npm's own record of what it has put into node_modules, written last. */
const installedFile = join(root, "node_modules", ".package-lock.json");
const machineFile = join(root, "node_modules", ".lapline-machine");
const machine = [process.versions.modules, process.platform, process.arch].join(" ");

function isInstalled() {
  if (!existsSync(installedFile)) return false;
  if (existsSync(machineFile) && readFileSync(machineFile, "utf8") !== machine) return false;
  const wanted = packagesIn(join(root, "package-lock.json"));
  const installed = packagesIn(installedFile);
  // What is optional is for other machines, or npm has already found that it cannot be had here.
  return Object.entries(wanted)
    .filter(([path, entry]) => path.startsWith("node_modules/") && !entry.optional)
    .every(
      ([path, entry]) =>
        installed[path]?.version === entry.version && !!installed[path]?.link === !!entry.link,
    );
}

function packagesIn(lockFile) {
  return JSON.parse(readFileSync(lockFile, "utf8")).packages;
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
  if (isInstalled()) return;
  console.error("Installing what is missing (once, about half a minute) ...");
  const done = runNpm(["ci", "--loglevel", "error"]);
  if (done.status !== 0) {
    console.error(
      "The packages could not be installed: npm's own message stands above. Is the network there?",
    );
    process.exit(2);
  }
  writeFileSync(machineFile, machine);
}

/** Programs that only the tests need: a renderer, so that no page is judged by the library that made it, and the other database. */
const FOR_TESTS = [
  {
    debianPackage: "poppler-utils",
    isHere: () => !isMissing("pdftoppm"),
    checks: "the checks of printed pages",
  },
  { debianPackage: "postgresql", isHere: hasPostgresServer, checks: "the checks of the shop on PostgreSQL" },
];

/** Brings them where this user may install Debian packages, or names the packages to install. */
function setUpForTests() {
  for (const { debianPackage, isHere, checks } of FOR_TESTS) {
    if (isHere()) continue;
    if (process.getuid?.() === 0 && !isMissing("apt-get")) {
      console.error(`Installing ${debianPackage}, which ${checks} need ...`);
      spawnSync("apt-get", ["update", "-qq"], { stdio: ["ignore", 2, 2] });
      spawnSync("apt-get", ["install", "-y", "-qq", debianPackage], { stdio: ["ignore", 2, 2] });
    }
    if (isHere()) continue;
    console.error(
      `Missing: ${debianPackage} (Debian: apt-get install ${debianPackage}). Without it ${checks} fail.`,
    );
  }
}

/** Debian keeps the server's programs out of the search path, in a folder for each version. */
function hasPostgresServer() {
  const folder = "/usr/lib/postgresql";
  const versions = existsSync(folder) ? readdirSync(folder) : [];
  return (
    !isMissing("initdb") || versions.some((version) => existsSync(join(folder, version, "bin", "initdb")))
  );
}

function isMissing(program) {
  return spawnSync(program, ["--version"], { stdio: "ignore" }).error !== undefined;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  setUp();
  if (process.argv.includes("--for-tests")) setUpForTests();
}
