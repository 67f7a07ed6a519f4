import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepDemoBoards, startServer } from "@lapline/server";
import { openShop } from "@lapline/store";
import { ROOT } from "../sourceFiles";

export interface RunningApp {
  readonly address: string;
  close(): Promise<void>;
}

/** The real server on a free port of this machine, with the demo boards in a folder of its own that goes with it. */
export async function startApp(): Promise<RunningApp> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-boards-"));
  const report = (message: string) => void process.stderr.write(`${message}\n`);
  const shop = await openShop({ folder, engine: "test", now: () => new Date(), report });
  await keepDemoBoards(shop);
  const server = await startServer({
    shop,
    webFolder: join(ROOT, "packages", "web", "dist"),
    version: "test",
    ports: [0],
    report,
  });
  const close = async () => {
    await server.close();
    await shop.close();
    await rm(folder, { recursive: true });
  };
  return { address: server.address, close };
}
