import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepDemoBoards, startServer } from "@lapline/server";
import { openShop } from "@lapline/store";
import { ROOT } from "../sourceFiles";

export interface AppOptions {
  /** The server's clock; the machine's if left out. */
  readonly now?: () => Date;
  /** The built app; the one of this tree if left out. */
  readonly webFolder?: string;
  /** Opens the door for other devices too, under the loopback's address, the one that every machine has. */
  readonly isShared?: boolean;
}

export interface RunningApp {
  readonly address: string;
  /** Where another device comes in; null where the shop is not shared. */
  readonly sharedAddress: string | null;
  /** A code that lets the next device in. */
  makeCode(role: "bench" | "keeper"): string;
  /** The server goes away: whoever asks is cut off without an answer; what it kept stays. */
  stop(): Promise<void>;
  /** It comes back under the same address. */
  start(): Promise<void>;
  close(): Promise<void>;
}

/** The real server on a free port of this machine, with the demo boards in a folder of its own that goes with it. */
export async function startApp(options: AppOptions = {}): Promise<RunningApp> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-boards-"));
  let running = await serve(folder, 0, options);
  await keepDemoBoards(running.shop);
  const { port, address } = running.server;
  const close = async () => {
    await running.server.close();
    await running.shop.close();
  };
  let letGo = async () => {};
  return {
    address,
    sharedAddress: running.server.shared?.addresses()[0] ?? null,
    makeCode(role) {
      const { shared } = running.server;
      const code = shared?.makeCode(role).code ?? null;
      if (code === null) throw new Error("the shop is not shared");
      return code;
    },
    async stop() {
      await close();
      letGo = await holdPort(port);
    },
    async start() {
      await letGo();
      running = await serve(folder, port, options);
    },
    async close() {
      await close();
      await rm(folder, { recursive: true });
    },
  };
}

/** Meanwhile no other server of the tests is given the port of one that is to come back. */
async function holdPort(port: number): Promise<() => Promise<void>> {
  const holder = createServer((asker) => asker.destroy());
  await new Promise<void>((resolve) => holder.listen(port, "127.0.0.1", resolve));
  return () => new Promise((resolve) => holder.close(() => resolve()));
}

const BUILT = join(ROOT, "packages", "web", "dist");

async function serve(
  folder: string,
  port: number,
  { now = () => new Date(), webFolder = BUILT, isShared = false }: AppOptions,
) {
  const report = (message: string) => void process.stderr.write(`${message}\n`);
  const shop = await openShop({ folder, engine: "test", now, report });
  const share = { ports: [0], now, addresses: () => ["127.0.0.1"] };
  const server = await startServer({
    shop,
    webFolder,
    version: "test",
    ports: [port],
    report,
    ...(isShared ? { share } : {}),
  });
  return { shop, server };
}
