import { spawn } from "node:child_process";
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
