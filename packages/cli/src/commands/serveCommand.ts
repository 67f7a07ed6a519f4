import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";
import { keepDailyCopies } from "../shop/keepDailyCopies";
import { DATA_OPTION, openShopFor, type ShopPlace, shopPlaceOf } from "../shop/shopPlace";
import { version } from "../shop/version";
import type { Terminal } from "../Terminal";

const FIRST_PORT = 5170;
const PORTS_TRIED = 20;

export const serveCommand: Command = {
  name: "serve",
  needs: [],
  says: "the web app, on this machine only",
  options: {
    port: { value: "N", says: `the port; ${FIRST_PORT} or the next free one if left out` },
    data: DATA_OPTION,
  },
  async run({ options }, terminal) {
    const ports = readPorts(options.port);
    const place = shopPlaceOf(options.data);
    const stopped = terminal.stopAsked();
    const running = await start(ports, place, terminal);
    terminal.print(`Lapline: ${running.address}`);
    terminal.tell(`The shop is kept in ${place.words}. Ctrl-C stops.`);
    await stopped;
    await running.close();
    return 0;
  },
};

async function start(ports: readonly number[], place: ShopPlace, terminal: Terminal) {
  const report = (message: string) => terminal.tell(message);
  const shop = await openShopFor(place, terminal);
  try {
    // Only here, so that the other commands start without it.
    const { keepDemoBoards, startServer } = await import("@lapline/server");
    await keepDemoBoards(shop);
    const server = await startServer({ shop, webFolder: webFolder(), version, ports, report });
    const endCopies = keepDailyCopies(shop, place.folder, terminal);
    const close = async () => {
      await server.close();
      await endCopies();
      await shop.close();
    };
    return { address: server.address, close };
  } catch (error) {
    await shop.close();
    if (error instanceof Error && error.name === "PortsTakenError")
      throw new RefusedError(`${error.message}: name a free one with --port N.`);
    throw new RefusedError(`Cannot serve the shop in ${place.words}: ${reasonOf(error)}.`);
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
