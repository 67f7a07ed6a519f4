import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openShop, type Shop } from "@lapline/store";
import { keepDemoBoards, type ServerOptions, type SharedDoor, startServer } from "../src/index";
import { holdToContract } from "./holdToContract";
import { type Answer, type SentRequest, sendRequest } from "./sendRequest";

export interface TestOptions {
  readonly now?: () => Date;
  readonly share?: ServerOptions["share"];
}

export interface TestServer {
  readonly port: number;
  readonly shared: SharedDoor | null;
  /** Holds `shop`, `web`, and a file `secret.txt` beside them that nobody may reach. */
  readonly folder: string;
  readonly shop: Shop;
  readonly reports: readonly string[];
  send(request: SentRequest): Promise<Answer>;
  close(): Promise<void>;
}

const nine = () => new Date("2026-04-11T09:00:00Z");

/** The real server on a free port, with the demo boards and a small web app. */
export async function startTestServer({ now = nine, share }: TestOptions = {}): Promise<TestServer> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-server-"));
  await mkdir(join(folder, "web", "assets"), { recursive: true });
  await writeFile(join(folder, "web", "index.html"), "<!doctype html><title>first page</title>");
  await writeFile(join(folder, "web", "assets", "app-1a2b.js"), "export {};");
  await writeFile(join(folder, "secret.txt"), "secret");
  const reports: string[] = [];
  const report = (message: string) => void reports.push(message);
  const shop = await openShop({ folder: join(folder, "shop"), engine: "1.2.3", now, report });
  await keepDemoBoards(shop);
  const server = await startServer({
    shop,
    webFolder: join(folder, "web"),
    version: "1.2.3",
    ports: [0],
    report,
    ...(share === undefined ? {} : { share }),
  });
  return {
    port: server.port,
    shared: server.shared,
    folder,
    shop,
    reports,
    async send(request) {
      const answer = await sendRequest(server.port, request);
      holdToContract(request, answer);
      return answer;
    },
    close: async () => {
      await server.close();
      await shop.close();
      await rm(folder, { recursive: true });
    },
  };
}
