import type { MiddlewareHandler } from "hono";
import { problem } from "./problem";

const NAMES = ["localhost", "127.0.0.1", "[::1]"];
const READING = new Set(["GET", "HEAD", "OPTIONS"]);

/**
 * Lets in only requests that were addressed to this machine by its own name, and writes only from the app's own pages or
 * from a program. A page elsewhere on the web can send a request here, and a name elsewhere can be made to point here; the
 * Origin and Host headers give both away.
 */
export function guardLocal(portOf: () => number): MiddlewareHandler {
  return async (context, next) => {
    const here = NAMES.flatMap((name) => (portOf() === 80 ? [name, `${name}:80`] : [`${name}:${portOf()}`]));
    const host = context.req.header("host")?.toLowerCase() ?? "";
    if (!here.includes(host)) {
      const detail = `This server answers only as http://127.0.0.1:${portOf()}/.`;
      return problem({ status: 403, title: "Not addressed to this machine", detail });
    }
    const origin = context.req.header("origin")?.toLowerCase();
    const own = origin === undefined || here.some((name) => origin === `http://${name}`);
    if (!READING.has(context.req.method) && !own) {
      const detail = "Boards can be changed only from the app's own pages.";
      return problem({ status: 403, title: "Sent from another page", detail });
    }
    return next();
  };
}
