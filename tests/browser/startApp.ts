import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepDemoBoards, openFolderStore, startServer } from "@lapline/server";
import { ROOT } from "../sourceFiles";

export interface RunningApp {
  readonly address: string;
  close(): Promise<void>;
}

/** The real server on a free port of this machine, with the demo boards in a folder of its own that goes with it. */
export async function startApp(): Promise<RunningApp> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-boards-"));
  const store = await openFolderStore(folder);
  await keepDemoBoards(store);
  const server = await startServer({
    store,
    webFolder: join(ROOT, "packages", "web", "dist"),
    version: "test",
    ports: [0],
    report: (message) => process.stderr.write(`${message}\n`),
  });
  const close = async () => {
    await server.close();
    await rm(folder, { recursive: true });
  };
  return { address: server.address, close };
}
