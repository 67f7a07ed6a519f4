import { createServer, type Server } from "node:http";
import { getRequestListener } from "@hono/node-server";
import type { DeviceRole, Shop } from "@lapline/store";
import { type Access, offerOf, openAccess, type PairingOffer } from "./access/Access";
import { admitDevice } from "./access/admitDevice";
import { admitHere } from "./access/admitHere";
import { guardShared } from "./access/guardShared";
import { makeSharedServer, type ShareOptions, sharedAddress } from "./access/shareDoor";
import { createApp } from "./createApp";
import { guardLocal } from "./guardLocal";
import { listenOnFirstFree } from "./listenOnFirstFree";
import { loadWebFiles, type WebFile } from "./loadWebFiles";

const LOOPBACK = "127.0.0.1";
const EVERYWHERE = "0.0.0.0";

export interface ServerOptions {
  readonly shop: Shop;
  /** The built web app. */
  readonly webFolder: string;
  readonly version: string;
  /** Tried in this order until one is free; 0 is any free port. */
  readonly ports: readonly number[];
  readonly report: (message: string) => void;
  /** Lets the shop's devices in over the local network, by a door of its own; only this machine if left out. */
  readonly share?: ShareOptions;
}

export interface RunningServer {
  readonly port: number;
  readonly address: string;
  readonly shared: SharedDoor | null;
  /** Stops taking requests and drops the open connections; a write that has begun still lands. */
  close(): Promise<void>;
}

export interface SharedDoor {
  readonly port: number;
  readonly isSecure: boolean;
  addresses(): readonly string[];
  /** A new pairing code in the place of the last. */
  makeCode(role: DeviceRole): PairingOffer;
}

interface Parts extends Pick<ServerOptions, "shop" | "version" | "report"> {
  readonly web: ReadonlyMap<string, WebFile>;
  readonly access: Access;
}

/**
 * Starts the web app and the HTTP interface for this machine, and where the shop is shared once more for the local network, on a
 * port of its own: which door a request came in by says whether it needs a device's cookie. Throws where no port is free.
 */
export async function startServer({
  ports,
  webFolder,
  share,
  ...own
}: ServerOptions): Promise<RunningServer> {
  let [port, sharedPort] = [0, 0];
  const shared = share === undefined ? null : { ...sharedAddress(share, () => sharedPort), options: share };
  const access = openAccess(own.shop, share?.now ?? (() => new Date()), shared);
  const parts: Parts = { ...own, web: await loadWebFiles(webFolder), access };
  const here = createServer(listenerOf(createApp({ ...parts, guards: [guardLocal(() => port), admitHere] })));
  const servers: Server[] = [here];
  const close = async () => {
    access.answers.close();
    await Promise.all(servers.map(closeNow));
  };
  try {
    port = await listenOnFirstFree(here, LOOPBACK, ports);
    if (shared !== null) {
      const app = createApp({ ...parts, guards: [guardShared(shared), admitDevice(access)] });
      const there = makeSharedServer(shared.options, listenerOf(app));
      servers.push(there);
      sharedPort = await listenOnFirstFree(there, EVERYWHERE, shared.options.ports);
    }
  } catch (error) {
    await close();
    throw error;
  }
  for (const server of servers) server.on("error", (error) => own.report(error.message));
  return {
    port,
    address: `http://${LOOPBACK}:${port}/`,
    shared: shared && {
      port: sharedPort,
      isSecure: shared.isSecure,
      addresses: shared.addresses,
      makeCode: (role) => offerOf(access, access.desk.make(role)),
    },
    close,
  };
}

const listenerOf = (app: ReturnType<typeof createApp>) =>
  getRequestListener(app.fetch, { overrideGlobalObjects: false });

function closeNow(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
