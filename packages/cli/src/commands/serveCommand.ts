import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { ServerOptions, SharedDoor } from "@lapline/server";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { reasonOf } from "../reasonOf";
import { keepDailyCopies } from "../shop/keepDailyCopies";
import { FIRST_PORT, readPorts } from "../shop/readPorts";
import { readSharing, SHARE_OPTIONS } from "../shop/readSharing";
import { DATA_OPTION, openShopFor, type ShopPlace, shopPlaceOf } from "../shop/shopPlace";
import { tellOffer } from "../shop/tellOffer";
import { version } from "../shop/version";
import type { Terminal } from "../Terminal";

export const serveCommand: Command = {
  name: "serve",
  needs: [],
  says: "the web app, on this machine only or shared with the shop's devices",
  options: {
    port: { value: "N", says: `the port; ${FIRST_PORT} or the next free one if left out` },
    data: DATA_OPTION,
    ...SHARE_OPTIONS,
  },
  async run({ options }, terminal) {
    const ports = readPorts("port", options.port, FIRST_PORT);
    const sharing = await readSharing(options, terminal);
    const place = shopPlaceOf(options.data);
    const stopped = terminal.stopAsked();
    const running = await start({ ports, ...sharing, place }, terminal);
    terminal.print(`Lapline: ${running.address}`);
    terminal.tell(`The shop is kept in ${place.words}. Ctrl-C stops.`);
    if (running.shared !== null) tellShared(running.shared, terminal);
    await stopped;
    await running.close();
    return 0;
  },
};

interface Asked extends Pick<ServerOptions, "ports" | "share"> {
  readonly place: ShopPlace;
}

async function start({ place, ...how }: Asked, terminal: Terminal) {
  const report = (message: string) => terminal.tell(message);
  const shop = await openShopFor(place, terminal);
  try {
    // Only here, so that the other commands start without it.
    const { keepDemoBoards, startServer } = await import("@lapline/server");
    await keepDemoBoards(shop);
    const server = await startServer({ shop, webFolder: webFolder(), version, ...how, report });
    const endCopies = keepDailyCopies(shop, place.folder, terminal);
    const close = async () => {
      await server.close();
      await endCopies();
      await shop.close();
    };
    return { address: server.address, shared: server.shared, close };
  } catch (error) {
    await shop.close();
    if (error instanceof Error && error.name === "PortsTakenError")
      throw new RefusedError(
        `${error.message}: name a free one with --port N${how.share === undefined ? "" : " or --share-port N"}.`,
      );
    throw new RefusedError(`Cannot serve the shop in ${place.words}: ${reasonOf(error)}.`);
  }
}

/** What everybody must know before sharing without HTTPS. */
const LISTENED_TO =
  "This is plain HTTP: whoever is on the same network can listen to it, and take a device's place with what was heard. Share it in a network of your own only, or give a certificate (--cert, --key).";

function tellShared(shared: SharedDoor, terminal: Terminal): void {
  terminal.tell(`Shared on the local network: ${shared.addresses().join(" ")}`);
  if (!shared.isSecure) terminal.tell(LISTENED_TO);
  tellOffer(shared.makeCode("bench"), terminal);
  terminal.tell("Another code: the page Devices on this machine, or lapline pair.");
}

/** The built web app lies beside this package, seen from its built file. */
function webFolder(): string {
  return join(dirname(fileURLToPath(import.meta.url)), "..", "..", "web", "dist");
}
