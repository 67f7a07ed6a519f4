import { spawn } from "node:child_process";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { ROOT } from "../sourceFiles";

/** The built command's server on a free port, as a process of its own. */
export async function startBuiltServer(folder: string, databaseUrl?: string) {
  const main = join(ROOT, "packages", "cli", "dist", "main.js");
  const env = { ...process.env, LAPLINE_DATABASE_URL: databaseUrl ?? "" };
  const child = spawn(process.execPath, [main, "serve", "--port", "0", "--data", folder], {
    env,
    stdio: ["ignore", "pipe", "pipe"],
  });
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  const told: string[] = [];
  createInterface({ input: child.stderr }).on("line", (line) => told.push(line));
  const lines = createInterface({ input: child.stdout });
  const address = await new Promise<string>((resolve, reject) => {
    lines.once("line", (line) => resolve(line.replace("Lapline: ", "")));
    child.once("close", () => reject(new Error(`the server did not start: ${told.join(" ")}`)));
  });
  return { child, address, ended, told };
}

/** What a process has worked so far (Linux, in its usual hundredths of a second); 0 where that cannot be read. */
export async function cpuSeconds(pid: number | undefined): Promise<number> {
  const status = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => "");
  const [user, system] = status
    .slice(status.lastIndexOf(")") + 2)
    .split(" ")
    .slice(11, 13);
  return (Number(user ?? 0) + Number(system ?? 0)) / 100;
}
