import type { HttpBindings } from "@hono/node-server";
import { StoreUnavailableError } from "@lapline/store";
import type { MiddlewareHandler } from "hono";
import { problem } from "../problem";
import { type Access, setAsker } from "./Access";
import { expiryFrom, giveToken, hashOfToken, readToken } from "./deviceCookie";
import { mayBench } from "./mayBench";

/** A device is written down as seen this often at most. */
const SEEN_AGAIN_MS = 5 * 60_000;
/** Where a device asks who it is, and pairs. */
const OPEN = "/api/access";

/** On the local network: lets a device in by its cookie, to do what its role may; whatever is not a call is the page itself. */
export function admitDevice(access: Access): MiddlewareHandler<{ Bindings: HttpBindings }> {
  const isSecure = access.sharing?.isSecure ?? false;
  return async (context, next) => {
    const { method, path } = context.req;
    if (!isCall(path)) return next();
    const since = access.answers.moment();
    const token = readToken(context, isSecure);
    const device = token === null ? null : await access.devices.find(hashOfToken(token));
    setAsker(context, { isHere: false, device });
    if (device === null || token === null) return path === OPEN ? next() : notPaired();
    if (device.role !== "keeper" && path !== OPEN && !mayBench(method, path)) return keepersOnly();
    access.answers.add(device.id, context.env.outgoing, since);
    const isSeen = await see(access, device.id, device.seenAt);
    await next();
    if (isSeen) giveToken(context, token, isSecure);
  };
}

const isCall = (path: string) => path === "/api" || path.startsWith("/api/");

/** Lengthens the time that the device is let in for. A disk that takes nothing just now keeps nobody from reading. */
async function see({ devices, now }: Access, id: string, seenAt: string): Promise<boolean> {
  if (now().getTime() < Date.parse(seenAt) + SEEN_AGAIN_MS) return false;
  try {
    await devices.see(id, expiryFrom(now()));
    return true;
  } catch (error) {
    if (error instanceof StoreUnavailableError) return false;
    throw error;
  }
}

function notPaired(): Response {
  const detail =
    "This device is not let in, or not any more. The code that the shop's computer shows lets it in.";
  // RFC 9110, 15.5.2, asks for a challenge; no browser knows this scheme, so that none asks for a password.
  return problem({ status: 401, title: "Not paired", detail }, { "www-authenticate": "Pairing-Code" });
}

function keepersOnly(): Response {
  const detail = "A device at the bench may read and add. Ask a keeper, or do it at the shop's computer.";
  return problem({ status: 403, title: "For keepers", detail });
}
