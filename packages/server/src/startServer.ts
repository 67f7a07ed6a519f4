import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import type { Shop } from "@lapline/store";
import { createApp } from "./createApp";
import { loadWebFiles } from "./loadWebFiles";

const LOOPBACK = "127.0.0.1";

export interface ServerOptions {
  readonly shop: Shop;
  /** The built web app. */
  readonly webFolder: string;
  readonly version: string;
  /** Tried in this order until one is free; 0 is any free port. */
  readonly ports: readonly number[];
  readonly report: (message: string) => void;
}

export interface RunningServer {
  readonly port: number;
  readonly address: string;
  /** Stops taking requests and drops the open connections; a write that has begun still lands. */
  close(): Promise<void>;
}

/** Starts the web app and the HTTP interface, reachable from this machine only. Throws where no port is free. */
export async function startServer({ ports, webFolder, ...parts }: ServerOptions): Promise<RunningServer> {
  let port = 0;
  const app = createApp({ ...parts, web: await loadWebFiles(webFolder), portOf: () => port });
  const server = createServer(getRequestListener(app.fetch, { overrideGlobalObjects: false }));
  port = await listenOnFirstFree(server, ports);
  server.on("error", (error) => parts.report(error.message));
  return { port, address: `http://${LOOPBACK}:${port}/`, close: () => closeNow(server) };
}

async function listenOnFirstFree(server: Server, ports: readonly number[]): Promise<number> {
  for (const port of ports) {
    const taken = await listen(server, port);
    if (taken === null) return (server.address() as AddressInfo).port;
    if (taken.code !== "EADDRINUSE" && taken.code !== "EACCES") throw taken;
  }
  throw new PortsTakenError(ports);
}

function listen(server: Server, port: number): Promise<NodeJS.ErrnoException | null> {
  return new Promise((resolve) => {
    server.once("error", resolve);
    server.listen(port, LOOPBACK, () => {
      server.off("error", resolve);
      resolve(null);
    });
  });
}

function closeNow(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

/** None of the ports that were to be tried could be had. */
export class PortsTakenError extends Error {
  override readonly name = "PortsTakenError";

  constructor(ports: readonly number[]) {
    super(
      ports.length === 1 ? `port ${ports[0]} is taken` : `ports ${ports[0]} to ${ports.at(-1)} are taken`,
    );
  }
}
