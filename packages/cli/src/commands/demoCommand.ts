import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { makeFolder } from "@lapline/store/makeFolder";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";

export const demoCommand: Command = {
  name: "demo",
  needs: ["DIR"],
  says: "writes the demo boards of the north shed into a folder",
  options: {},
  async run({ given: [folder = ""] }, terminal) {
    const files = DEMO_BOARDS.map(({ fileName, text }) => ({ path: join(folder, fileName), text }));
    try {
      const missing = await filesToWrite(files);
      await makeFolder(folder);
      for (const { path, text } of missing) await writeFile(path, text, { flag: "wx" });
    } catch (error) {
      if (error instanceof RefusedError) throw error;
      throw new RefusedError(`Cannot write the demo boards into ${folder}: ${reasonOf(error)}.`);
    }
    for (const { path } of files) terminal.print(path);
    return 0;
  },
};

interface DemoFile {
  readonly path: string;
  readonly text: string;
}

/** Those that are not there yet. A file of the same name with other content is somebody's work and is left alone. */
async function filesToWrite(files: readonly DemoFile[]): Promise<readonly DemoFile[]> {
  const missing: DemoFile[] = [];
  for (const file of files) {
    const there = await readIfThere(file.path);
    if (there === null) missing.push(file);
    else if (there !== file.text) {
      throw new RefusedError(
        `${file.path} is there already and is not the demo board: name another folder. Nothing was written.`,
      );
    }
  }
  return missing;
}

async function readIfThere(path: string): Promise<string | null> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}
