import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "./sourceFiles";

/** Builds what is older than its sources, so that a test of the built thing never meets yesterday's. */
export function buildFirst(...names: ReadonlyArray<"cli" | "web">): void {
  execFileSync(process.execPath, [join(ROOT, "scripts", "build.mjs"), ...names], { stdio: "pipe" });
}
