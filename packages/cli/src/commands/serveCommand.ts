import { homedir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { keepDemoBoards, openFolderStore, PortsTakenError, startServer } from "@lapline/server";
import packageFile from "../../package.json" with { type: "json" };
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";

const FIRST_PORT = 5170;
const PORTS_TRIED = 20;

export const serveCommand: Command = {
  name: "serve",
  needs: [],
  says: "the web app, on this machine only",
  options: {
    port: { value: "N", says: `the port; ${FIRST_PORT} or the next free one if left out` },
    data: { value: "DIR", says: "the folder of board files; .lapline/boards in the home folder if left out" },
  },
  async run({ options }, terminal) {
    const ports = readPorts(options.port);
    const folder = resolve(
      typeof options.data === "string" ? options.data : join(homedir(), ".lapline", "boards"),
    );
    const stopped = terminal.stopAsked();
    const server = await start(ports, folder, (message) => terminal.tell(message));
    terminal.print(`Lapline: ${server.address}`);
    terminal.tell(`Boards are kept in ${folder}. Ctrl-C stops.`);
    await stopped;
    await server.close();
    return 0;
  },
};

async function start(ports: readonly number[], folder: string, report: (message: string) => void) {
  try {
    const store = await openFolderStore(folder);
    await keepDemoBoards(store);
    return await startServer({ store, webFolder: webFolder(), version: packageFile.version, ports, report });
  } catch (error) {
    if (error instanceof PortsTakenError)
      throw new RefusedError(`${error.message}: name a free one with --port N.`);
    throw new RefusedError(`Cannot serve the boards in ${folder}: ${reasonOf(error)}.`);
  }
}

/** The built web app lies beside this package, seen from its built file. */
function webFolder(): string {
  return join(dirname(fileURLToPath(import.meta.url)), "..", "..", "web", "dist");
}

function readPorts(asked: string | true | undefined): readonly number[] {
  if (asked === undefined) return Array.from({ length: PORTS_TRIED }, (_, i) => FIRST_PORT + i);
  const port = Number(asked);
  if (typeof asked === "string" && /^\d{1,5}$/.test(asked) && port <= 65_535) return [port];
  throw new RefusedError(
    `--port is a whole number from 0 (any free one) to 65535; ${JSON.stringify(asked)} was given.`,
  );
}
