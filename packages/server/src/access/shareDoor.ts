import type { RequestListener } from "node:http";
import { createServer, type Server } from "node:http";
import { createServer as createSecureServer } from "node:https";
import type { Sharing } from "./Access";
import type { SharedAddress } from "./guardShared";
import type { Tls } from "./loadTls";
import { isNear, listLocalAddresses } from "./localNetwork";

export interface ShareOptions {
  /** Tried in this order until one is free; 0 is any free port. */
  readonly ports: readonly number[];
  readonly now: () => Date;
  /** For HTTPS; plain HTTP if left out. */
  readonly tls?: Tls;
  /** This machine's addresses, only where a test needs others. */
  readonly addresses?: () => readonly string[];
}

/** Under what names and addresses the shop is shared: those of this machine, and those of its certificate. */
export function sharedAddress(
  { tls, addresses }: ShareOptions,
  portOf: () => number,
): SharedAddress & Sharing {
  const listOwn = addresses ?? listLocalAddresses;
  const isSecure = tls !== undefined;
  const [scheme, usual] = isSecure ? ["https", 443] : ["http", 80];
  return {
    isSecure,
    portOf,
    isOwn: (name) => listOwn().includes(name) || tls?.certificate.checkHost(name) !== undefined,
    addresses() {
      const behind = portOf() === usual ? "" : `:${portOf()}`;
      return [...namesIn(tls), ...listOwn()].map((name) => `${scheme}://${name}${behind}`);
    },
  };
}

/** Answers those who are in one of this machine's networks; others are hung up on. */
export function makeSharedServer({ tls }: ShareOptions, listener: RequestListener): Server {
  const server = tls === undefined ? createServer(listener) : createSecureServer(tls, listener);
  server.on("connection", (socket) => {
    if (!isNear(socket.remoteAddress ?? "")) socket.destroy();
  });
  return server;
}

function namesIn(tls: Tls | undefined): readonly string[] {
  const alternatives = tls?.certificate.subjectAltName ?? "";
  return [...alternatives.matchAll(/DNS:([a-z0-9.-]+)(?=,|$)/gi)].map(([, name = ""]) => name.toLowerCase());
}
