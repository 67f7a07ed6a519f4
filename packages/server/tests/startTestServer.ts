import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepDemoBoards, openFolderStore, startServer } from "../src/index";
import { type Answer, type SentRequest, sendRequest } from "./sendRequest";

export interface TestServer {
  readonly port: number;
  /** Holds `boards`, `web`, and a file `secret.txt` beside them that nobody may reach. */
  readonly folder: string;
  readonly reports: readonly string[];
  send(request: SentRequest): Promise<Answer>;
  close(): Promise<void>;
}

/** The real server on a free port, with the demo boards and a small web app. */
export async function startTestServer(): Promise<TestServer> {
  const folder = await mkdtemp(join(tmpdir(), "lapline-server-"));
  await mkdir(join(folder, "web", "assets"), { recursive: true });
  await writeFile(join(folder, "web", "index.html"), "<!doctype html><title>first page</title>");
  await writeFile(join(folder, "web", "assets", "app-1a2b.js"), "export {};");
  await writeFile(join(folder, "secret.txt"), "secret");
  const store = await openFolderStore(join(folder, "boards"));
  await keepDemoBoards(store);
  const reports: string[] = [];
  const server = await startServer({
    store,
    webFolder: join(folder, "web"),
    version: "1.2.3",
    ports: [0],
    report: (message) => reports.push(message),
  });
  return {
    port: server.port,
    folder,
    reports,
    send: (request) => sendRequest(server.port, request),
    close: async () => {
      await server.close();
      await rm(folder, { recursive: true });
    },
  };
}
