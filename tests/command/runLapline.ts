import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "../sourceFiles";

const LAUNCHER = join(ROOT, "packages", "cli", "bin", "lapline.mjs");

export interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Starts the real command; the home folder is moved too, so that a default cannot reach the person's own boards. */
export function startLapline(args: readonly string[], folder: string): ChildProcessWithoutNullStreams {
  const env = { ...process.env, HOME: folder, USERPROFILE: folder, INIT_CWD: "", npm_lifecycle_event: "" };
  return spawn(process.execPath, [LAUNCHER, ...args], { cwd: folder, env });
}

/** Runs the real command to its end. */
export function runLapline(
  args: readonly string[],
  folder: string,
  input: string | Uint8Array = "",
): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = startLapline(args, folder);
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on("data", (part: Buffer) => out.push(part));
    child.stderr.on("data", (part: Buffer) => err.push(part));
    child.on("error", reject);
    child.on("close", (code) => {
      resolve({ code, out: Buffer.concat(out).toString("utf8"), err: Buffer.concat(err).toString("utf8") });
    });
    // The command may stop reading before the end of what it is given.
    child.stdin.on("error", () => undefined);
    child.stdin.end(input);
  });
}
