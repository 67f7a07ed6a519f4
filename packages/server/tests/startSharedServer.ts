import type { IncomingMessage } from "node:http";
import type { DeviceRole } from "@lapline/store";
import type { SharedDoor } from "../src/index";
import { type Answer, type SentRequest, sendRequest } from "./sendRequest";
import { startTestServer, type TestServer } from "./startTestServer";

/** In the place of this machine's own, which differ from machine to machine. */
export const ADDRESS = "192.168.7.20";

export interface SharedServer extends TestServer {
  readonly shared: SharedDoor;
  /** The shop's clock, moved by the test. */
  readonly clock: { ms: number };
  /** The `Host` that devices name. */
  readonly host: string;
  /** Over the local network, as a device without a cookie or with one. */
  ask(request: SentRequest, cookie?: string): Promise<Answer>;
  /** Types in a code, which may be a wrong one. */
  typeIn(code: unknown, name?: unknown): Promise<Answer>;
  /** A device let in by a new code: its cookie. */
  pair(name: string, role: DeviceRole): Promise<string>;
}

/** The real server, shared over plain HTTP. */
export async function startSharedServer(): Promise<SharedServer> {
  const clock = { ms: Date.parse("2026-04-11T09:00:00Z") };
  const now = () => new Date(clock.ms);
  const server = await startTestServer({ now, share: { ports: [0], now, addresses: () => [ADDRESS] } });
  const { shared } = server;
  if (shared === null) throw new Error("the server is not shared");
  const host = `${ADDRESS}:${shared.port}`;
  const ask = (request: SentRequest, cookie?: string) =>
    sendRequest(shared.port, {
      ...request,
      headers: { host, ...(cookie === undefined ? {} : { cookie }), ...request.headers },
    });
  const typeIn = (code: unknown, name: unknown = "Phone") =>
    ask({
      method: "POST",
      path: "/api/access",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code, name }),
    });
  const pair = async (name: string, role: DeviceRole) =>
    cookieOf(await typeIn(shared.makeCode(role).code, name));
  return { ...server, shared, clock, host, ask, typeIn, pair };
}

/** What a browser would send back: `name=value`. */
export function cookieOf({ headers }: Pick<Answer, "headers"> | IncomingMessage): string {
  const set = headers["set-cookie"];
  const [pair = ""] = String(Array.isArray(set) ? set[0] : set).split(";");
  return pair;
}
