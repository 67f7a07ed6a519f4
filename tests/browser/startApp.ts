import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepDemoBoards, startServer } from "@lapline/server";
import { openShop } from "@lapline/store";
import { ROOT } from "../sourceFiles";

export interface RunningApp {
  readonly address: string;
  /** The server goes away, as when its machine is turned off; what it kept stays. */
  stop(): Promise<void>;
  /** It comes back under the same address. */
  start(): Promise<void>;
  close(): Promise<void>;
}

/** The real server on a free port of this machine, with the demo boards in a folder of its own that goes with it. */
export async function startApp(): Promise<RunningApp> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-boards-"));
  let running = await serve(folder, 0);
  await keepDemoBoards(running.shop);
  const { port, address } = running.server;
  const stop = async () => {
    await running.server.close();
    await running.shop.close();
  };
  return {
    address,
    stop,
    async start() {
      running = await serve(folder, port);
    },
    async close() {
      await stop();
      await rm(folder, { recursive: true });
    },
  };
}

async function serve(folder: string, port: number) {
  const report = (message: string) => void process.stderr.write(`${message}\n`);
  const shop = await openShop({ folder, engine: "test", now: () => new Date(), report });
  const webFolder = join(ROOT, "packages", "web", "dist");
  const server = await startServer({ shop, webFolder, version: "test", ports: [port], report });
  return { shop, server };
}
