import type { MiddlewareHandler } from "hono";
import { problem } from "../problem";

export interface SharedAddress {
  readonly isSecure: boolean;
  portOf(): number;
  /** Whether this machine is shared under a name or address. */
  isOwn(name: string): boolean;
}

const HOST = /^(\[[0-9a-f:]+\]|[a-z0-9.-]+)(?::(\d{1,5}))?$/;

/**
 * Lets in only requests addressed to this machine as it is shared, and none that a page from elsewhere sent. A name elsewhere can be made
 * to point here, and a page elsewhere can send requests here; the Host and Origin headers give both away.
 */
export function guardShared({ isSecure, portOf, isOwn }: SharedAddress): MiddlewareHandler {
  const [scheme, usual] = isSecure ? ["https", 443] : ["http", 80];
  return async (context, next) => {
    const host = context.req.header("host")?.toLowerCase() ?? "";
    const [, name = "", port = usual] = HOST.exec(host) ?? [];
    if (Number(port) !== portOf() || !isOwn(name)) {
      const detail = "This server answers only under the addresses that the shop's computer shows.";
      return problem({ status: 403, title: "Not addressed to this machine", detail });
    }
    const origin = context.req.header("origin")?.toLowerCase();
    if (origin !== undefined && origin !== `${scheme}://${host}`) {
      const detail = "The shop is read and changed only from the app's own pages.";
      return problem({ status: 403, title: "Sent from another page", detail });
    }
    return next();
  };
}
