import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";

export interface Postgres {
  /** The address of a place of its own in the database, made empty. */
  makeShop(name: string): string;
  /** Kills the server and its helpers outright, as a power cut would, and starts it again. */
  killAndRestart(): Promise<void>;
  stop(): Promise<void>;
}

const DEBIAN_FOLDER = "/usr/lib/postgresql";

/** A throw-away server, reached through a socket in its own folder only. Throws with the package to install where none is there. */
export async function startPostgres(): Promise<Postgres> {
  const programs = findPrograms();
  const folder = mkdtempSync(join(tmpdir(), "lapline-pg-"));
  const user = userFor(folder);
  const data = join(folder, "data");
  const run = (program: string, args: readonly string[]) =>
    execFileSync(join(programs, program), args, { ...user, stdio: "pipe", cwd: folder });
  run("initdb", [
    "-D",
    data,
    "-U",
    "postgres",
    "--auth=trust",
    "-E",
    "UTF8",
    "--locale=C.UTF-8",
    "--no-sync",
  ]);
  let server = await start(programs, { folder, data, user });
  return {
    makeShop(name) {
      run("psql", ["-h", folder, "-U", "postgres", "-q", "-c", `create schema "${name}"`]);
      const path = encodeURIComponent(`-c search_path=${name}`);
      return `postgres:///postgres?host=${encodeURIComponent(folder)}&user=postgres&options=${path}`;
    },
    async killAndRestart() {
      const helpers = execFileSync("ps", ["-o", "pid=", "--ppid", String(server.pid)], { encoding: "utf8" });
      const gone = ended(server);
      for (const pid of [server.pid ?? 0, ...helpers.split(/\s+/).filter(Boolean).map(Number)])
        killIfThere(pid);
      await gone;
      server = await startAgain(programs, { folder, data, user });
    },
    async stop() {
      const gone = ended(server);
      if (server.kill("SIGQUIT")) await gone;
      await rm(folder, { recursive: true, force: true });
    },
  };
}

function findPrograms(): string {
  const versions = existsSync(DEBIAN_FOLDER) ? readdirSync(DEBIAN_FOLDER) : [];
  const folders = versions.map((version) => join(DEBIAN_FOLDER, version, "bin"));
  try {
    folders.push(execFileSync("pg_config", ["--bindir"], { encoding: "utf8" }).trim());
  } catch {
    // Comes with the client's package only; the folder may be there without it.
  }
  const found = folders
    .filter((each) => existsSync(join(each, "initdb")))
    .sort()
    .at(-1);
  if (found !== undefined) return found;
  throw new Error("No PostgreSQL server program is here: install it (Debian: apt-get install postgresql).");
}

/** PostgreSQL refuses to run as root. */
function userFor(folder: string): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const idOf = (flag: string) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
  const user = { uid: idOf("-u"), gid: idOf("-g") };
  chownSync(folder, user.uid, user.gid);
  return user;
}

interface Cluster {
  readonly folder: string;
  readonly data: string;
  readonly user: { uid?: number; gid?: number };
}

async function start(programs: string, { folder, data, user }: Cluster): Promise<ChildProcess> {
  // The disk is spared: what is killed here is the server, not the machine.
  const settings = [
    "listen_addresses=",
    "fsync=off",
    `unix_socket_directories=${folder}`,
    "log_min_messages=log",
  ];
  const args = ["-D", data, ...settings.flatMap((setting) => ["-c", setting])];
  const server = spawn(join(programs, "postgres"), args, {
    ...user,
    stdio: ["ignore", "ignore", "pipe"],
    cwd: folder,
  });
  const told: string[] = [];
  const lines = createInterface({ input: server.stderr });
  await new Promise<void>((resolve, reject) => {
    lines.on("line", (line) => {
      told.push(line);
      if (line.includes("ready to accept connections")) resolve();
    });
    server.once("error", reject);
    server.once("close", () => reject(new Error(`PostgreSQL did not start:\n${told.join("\n")}`)));
  });
  return server;
}

/** A helper that is killed may be there for a moment longer, and holds the memory that it shared: then the server does not start yet. */
async function startAgain(programs: string, cluster: Cluster): Promise<ChildProcess> {
  for (let left = 100; ; left--) {
    try {
      return await start(programs, cluster);
    } catch (error) {
      if (left === 0 || !String(error).includes("shared memory")) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => server.once("exit", () => resolve()));
}

function killIfThere(pid: number): void {
  try {
    if (pid > 0) process.kill(pid, "SIGKILL");
  } catch {
    // It ended by itself meanwhile.
  }
}
